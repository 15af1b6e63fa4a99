package curewindow.handout;

import curewindow.cure.Release;
import curewindow.told.JobView;
import curewindow.told.Safety;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The values that a hang tag's template can show: one stamped date, and the others in a list. */
final class TagWords {

  private static final int DATES = 6;

  private TagWords() {}

  /** The most urgent date, then those of the others that are still to come at pickup. */
  static List<Release> dates(JobView view) {
    List<Release> urgent = UrgentDates.of(view, DATES);
    List<Release> shown = new ArrayList<>();
    for (Release release : urgent) {
      if (shown.isEmpty() || release.end().at().isAfter(view.timeline().pickup())) {
        shown.add(release);
      }
    }
    return shown;
  }

  static Map<String, Object> of(JobView view, int codeNumber) {
    List<Release> dates = dates(view);
    Map<String, Object> tag = CommonWords.of(view, codeNumber);
    tag.put("dates", dates.stream().limit(1).map(r -> CommonWords.stamp(view, r)).toList());
    tag.put("more", dates.stream().skip(1).map(r -> CommonWords.line(view, r)).toList());
    tag.put("sight", Safety.of(dates, view));
    tag.put("off", view.words().text("handout.tag.off"));
    tag.put("then", view.words().text("handout.tag.then"));
    return tag;
  }
}
