package curewindow.shop;

import curewindow.cure.HoldKind;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/**
 * One thing to hold off from, or to accept as normal.
 *
 * @param id such as {@code windows-up}
 * @param kind what it asks of the customer
 * @param rank how much it matters when it is put before the customer; 1 is first
 * @param forbids what must not get at the work meanwhile, in words of the shop's own choice
 * @param brings what doing it brings along; it waits for every hold that forbids that
 * @param after ids of the holds that must be over first
 * @param wants what helps it along, in the words of {@code forbids}
 * @param marks what else is true of it
 */
public record Hold(
    String id,
    HoldKind kind,
    int rank,
    Set<String> forbids,
    Set<String> brings,
    List<String> after,
    Set<String> wants,
    Set<Mark> marks) {

  /** Something true of a hold. */
  public enum Mark {
    /** Danger ends it at once, and its safety text is printed with it. */
    SAFETY("safety"),
    /** One of the few dates that people plan by. */
    MAIN("main"),
    /** It stands on the window stickers. */
    STICKER("sticker"),
    /** Nobody can keep it on the way home, so that the shop is told before the car leaves. */
    ROAD("road");

    private final String id;

    Mark(String id) {
      this.id = id;
    }

    /**
     * The name used in files.
     *
     * @return lower case
     */
    public String id() {
      return id;
    }
  }

  /** Refuses missing parts. */
  public Hold {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(kind, "kind");
    forbids = inOrder(forbids);
    brings = inOrder(brings);
    after = List.copyOf(after);
    wants = inOrder(wants);
    marks = inOrder(marks);
  }

  /** As a catalogue is told apart from another one by its text, a set reads alike each time. */
  private static <T> Set<T> inOrder(Set<T> values) {
    return Collections.unmodifiableSet(new TreeSet<>(values));
  }

  /**
   * A hold that has nothing to do with any other.
   *
   * @param id such as {@code windows-up}
   * @param kind what it asks of the customer
   * @param rank how much it matters
   */
  public Hold(String id, HoldKind kind, int rank) {
    this(id, kind, rank, Set.of(), Set.of(), List.of(), Set.of(), Set.of());
  }

  /**
   * Whether something is true of it.
   *
   * @param mark what
   * @return true where the catalogue says so
   */
  public boolean is(Mark mark) {
    return marks.contains(mark);
  }

  /**
   * Whether this hold, while it runs, forbids what the end of another would allow.
   *
   * @param other the other hold
   * @return true where the other has to wait for this one
   */
  public boolean holdsBack(Hold other) {
    return !id.equals(other.id)
        && (other.after.contains(id) || other.brings.stream().anyMatch(forbids::contains));
  }
}
