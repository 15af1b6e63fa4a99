package curewindow.page;

import curewindow.cure.CureItem;
import curewindow.cure.HoldKind;
import curewindow.cure.HoldRule;
import curewindow.cure.Release;
import curewindow.shop.CureCases;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What to hold off from on each fitted item of a job, with the dates of the job. */
final class CarHolds {

  /**
   * Holds that end at the same time.
   *
   * @param when until when, in words
   * @param to when these words are no longer true, seconds since 1970
   * @param then what is said from {@code to} on
   * @param names the holds
   */
  record Line(String when, Optional<Long> to, String then, String names) {}

  private record Until(String when, Optional<Long> to, String then) {}

  private final JobView view;
  private final Dated dated;

  /** What applies to each item, by its position in the job. */
  private final Map<Integer, Set<String>> holds = new LinkedHashMap<>();

  CarHolds(JobView view) {
    this.view = view;
    this.dated = new Dated(view);
    for (CureItem item :
        CureCases.of(view.job(), view.shop(), view.catalogue(), view.place()).items()) {
      Set<String> ids = holds.computeIfAbsent(item.item(), i -> new LinkedHashSet<>());
      item.rules().stream()
          .filter(r -> r.kind() == HoldKind.HOLD)
          .map(HoldRule::hold)
          .forEach(ids::add);
    }
  }

  /** The holds of the item at a position, by their end; those of one end in one line. */
  List<Line> of(int item) {
    Set<String> ids = holds.getOrDefault(item, Set.of());
    Map<Until, List<String>> lines = new LinkedHashMap<>();
    for (Release release : view.timeline().releases()) {
      if (ids.contains(release.hold())) {
        lines
            .computeIfAbsent(until(release), u -> new ArrayList<>())
            .add(view.words().text("hold." + release.hold() + ".label"));
      }
    }
    return lines.entrySet().stream()
        .map(
            e ->
                new Line(
                    e.getKey().when(),
                    e.getKey().to(),
                    e.getKey().then(),
                    String.join(" · ", e.getValue())))
        .toList();
  }

  private Until until(Release release) {
    return new Until(
        dated.until(release),
        Optional.of(release.end().at().getEpochSecond()),
        dated.free(release));
  }
}
