package curewindow.desk;

import curewindow.shop.Catalogue;
import curewindow.shop.JobDraft;
import curewindow.shop.JobDraft.ItemDraft;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What a car's form carries along beside what is typed.
 *
 * @param following names of the times that nobody touched: they are now until the form is saved
 * @param kept by the number of an item the spots that were chosen for another film, and that this
 *     one cannot lie on
 */
record FormMemory(Set<String> following, Map<Integer, List<String>> kept) {

  /** Begins the name beside a time that nobody touched, which has its value. */
  static final String NOW = "now:";

  static final String PICKUP = "pickup";

  /** Nothing. */
  static final FormMemory NONE = new FormMemory(Set.of(), Map.of());

  FormMemory {
    following = Set.copyOf(following);
    kept = Map.copyOf(kept);
  }

  /** A form in which nobody touched any time. */
  static FormMemory fresh(JobDraft draft) {
    Set<String> all = new TreeSet<>(finished(draft));
    all.add(PICKUP);
    return new FormMemory(all, Map.of());
  }

  /** What a form carried along. A time that is another by now was touched. */
  static FormMemory of(Request.Values form, Catalogue catalogue) {
    Set<String> following = new TreeSet<>();
    Map<Integer, List<String>> kept = new LinkedHashMap<>();
    Stream<String> times =
        IntStream.rangeClosed(1, JobForm.MOST_ITEMS).mapToObj(FormMemory::finished);
    Stream.concat(times, Stream.of(PICKUP))
        .filter(name -> form.has(NOW + name) && form.one(NOW + name).equals(form.one(name)))
        .forEach(following::add);
    for (int n = 1; n <= JobForm.MOST_ITEMS; n++) {
      List<String> fit = JobForm.spots(form, n, catalogue);
      List<String> others =
          JobForm.chosen(form, n).filter(s -> !fit.contains(s) && isSpot(s, catalogue)).toList();
      if (!others.isEmpty()) {
        kept.put(n, others);
      }
    }
    return new FormMemory(following, kept);
  }

  private static boolean isSpot(String spot, Catalogue catalogue) {
    return catalogue.spots().containsKey(spot);
  }

  /** The name under which spots of another film are carried along. */
  static String keptName(int number) {
    return JobForm.name(number, JobForm.KEPT);
  }

  private static String finished(int number) {
    return JobForm.name(number, "finished");
  }

  private static List<String> finished(JobDraft draft) {
    return IntStream.rangeClosed(1, draft.items().size()).mapToObj(FormMemory::finished).toList();
  }

  /**
   * A job whose untouched times are those of now.
   *
   * @param now when work is finished
   * @param soon when the car is picked up
   */
  JobDraft at(JobDraft draft, String now, String soon) {
    List<ItemDraft> items = new ArrayList<>();
    for (int i = 0; i < draft.items().size(); i++) {
      ItemDraft item = draft.items().get(i);
      items.add(following.contains(finished(i + 1)) ? item.finishedAt(now) : item);
    }
    JobDraft moved = draft.withItems(items);
    return following.contains(PICKUP) ? moved.withPickup(soon) : moved;
  }

  /**
   * What the form carries along after a button added something, took it off or filled it in.
   *
   * @param wanted what the button says
   * @param draft the job by now
   */
  FormMemory after(String wanted, JobDraft draft) {
    Set<String> times = new TreeSet<>(following);
    if (wanted.startsWith("usual:")) {
      times.addAll(finished(draft));
      return new FormMemory(times, Map.of());
    }
    if (wanted.equals("add")) {
      times.add(finished(draft.items().size()));
    }
    int gone = JobForm.dropped(wanted);
    return gone > 0 ? without(gone, times) : new FormMemory(times, kept);
  }

  /** Each item behind the one that was taken off has a number less. */
  private static FormMemory without(int gone, Set<String> times) {
    Set<String> left = new TreeSet<>();
    for (int n = 1; n <= JobForm.MOST_ITEMS; n++) {
      if (n != gone && times.contains(finished(n))) {
        left.add(finished(n > gone ? n - 1 : n));
      }
    }
    if (times.contains(PICKUP)) {
      left.add(PICKUP);
    }
    return new FormMemory(left, Map.of());
  }
}
