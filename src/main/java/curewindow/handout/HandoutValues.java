package curewindow.handout;

import curewindow.cure.Release;
import curewindow.shop.Handout;
import curewindow.told.JobView;
import curewindow.told.Safety;
import curewindow.told.Urgency;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** What the templates can show of one job, and which dates that tells. */
final class HandoutValues {

  /** How many dates are stamped. */
  private static final int STAMPED = 2;

  private HandoutValues() {}

  /**
   * The values of a job's handouts.
   *
   * @param room how much of each list has room
   * @return one map for each; several stickers, one of anything else
   */
  static List<Map<String, Object>> of(JobView view, Handout kind, ListRoom room, int codeNumber) {
    if (kind == Handout.WINDOW_UP) {
      return GlassWords.of(view, codeNumber);
    }
    List<Release> all = dates(view, kind, room, codeNumber);
    List<Release> stamped = stamped(view);
    Map<String, Object> values = CommonWords.of(view, codeNumber);
    values.put("paper", kind.id());
    values.put("dates", stamped.stream().map(r -> CommonWords.stamp(view, r)).toList());
    values.put(
        "more",
        all.stream()
            .filter(r -> !stamped.contains(r))
            .map(r -> CommonWords.line(view, r))
            .toList());
    values.put("sight", Safety.of(all, view));
    values.put("then", view.words().text("handout.tag.then"));
    if (kind == Handout.HANG_TAG) {
      values.put("off", view.words().text("handout.tag.off"));
    }
    if (isSheet(kind)) {
      int known = dates(view, Integer.MAX_VALUE).size();
      values.putAll(CareWords.of(view, all, known, room, codeNumber));
    }
    return List.of(values);
  }

  /** The releases whose dates stand on a job's handout. */
  static List<Release> dates(JobView view, Handout kind, ListRoom room, int codeNumber) {
    return switch (kind) {
      case WINDOW_UP -> GlassWords.dates(view);
      case WALLET, WALLET_INCH, LABEL_SMALL -> stamped(view);
      case LABEL_62 -> dates(view, STAMPED + 2);
      case HANG_TAG, LABEL_4X6 -> dates(view, STAMPED + 5);
      case CARE_A5, CARE_LETTER -> dates(view, room.of(CareWords.DATES, codeNumber));
    };
  }

  private static boolean isSheet(Handout kind) {
    return kind == Handout.CARE_A5 || kind == Handout.CARE_LETTER;
  }

  /** The dates that matter most, in the order in which they come. */
  private static List<Release> stamped(JobView view) {
    return byDate(urgent(view, STAMPED));
  }

  /** The stamped ones, then the most urgent of the others that are still to come at pickup. */
  private static List<Release> dates(JobView view, int most) {
    List<Release> dates = new ArrayList<>(urgent(view, STAMPED));
    urgent(view, most).stream()
        .filter(r -> view.timeline().isAhead(r) && !dates.contains(r))
        .forEach(dates::add);
    return byDate(dates);
  }

  private static List<Release> urgent(JobView view, int most) {
    return Urgency.all(view).stream().limit(most).toList();
  }

  private static List<Release> byDate(List<Release> releases) {
    return releases.stream().sorted(Comparator.comparing(r -> r.end().at())).toList();
  }
}
