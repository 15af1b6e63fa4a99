package curewindow.calendar;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * How often the dates of one calendar were moved since they were first given out, and which of them
 * were taken back (RFC 5545, 3.8.7).
 *
 * @param of the revision of each event, by the event's name
 * @param gone events that were given out before and are no longer there
 */
public record Revisions(Map<String, Revision> of, List<Gone> gone) {

  /** Copies what is given. */
  public Revisions {
    of = Map.copyOf(of);
    gone = List.copyOf(gone);
  }

  /**
   * How an event stands.
   *
   * @param sequence 0 at first, and higher with each move of the date
   * @param changed when date or text last changed, second precision
   */
  public record Revision(int sequence, Instant changed) {
    /** Refuses missing parts. */
    public Revision {
      Objects.requireNonNull(changed, "changed");
      if (sequence < 0) {
        throw new IllegalArgumentException("the sequence is not below 0");
      }
    }
  }

  /**
   * An event that was taken back.
   *
   * @param name its name
   * @param start when it was
   * @param revision its last revision, at which it was taken back
   */
  public record Gone(String name, CareEvent.Start start, Revision revision) {}

  /** The calendar was never given out before. */
  public static final Revisions FIRST = new Revisions(Map.of(), List.of());

  Revision of(CareEvent event, Instant first) {
    return of.getOrDefault(event.name(), new Revision(0, first));
  }
}
