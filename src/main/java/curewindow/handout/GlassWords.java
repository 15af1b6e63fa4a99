package curewindow.handout;

import curewindow.cure.CureItem;
import curewindow.cure.Release;
import curewindow.page.JobView;
import curewindow.page.Safety;
import curewindow.shop.CureCases;
import curewindow.shop.Hold;
import curewindow.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The values of the stickers that say which window stays up: one for each side of the car. */
final class GlassWords {

  /** A spot that rolls names the windows of both doors. */
  private static final int SIDES = 2;

  private GlassWords() {}

  /** The date on the stickers; none where the windows may be lowered at pickup. */
  static List<Release> dates(JobView view) {
    return view.timeline().releases().stream()
        .filter(r -> isSticker(view, r.hold()))
        .filter(r -> r.end().at().isAfter(view.timeline().pickup()))
        .toList();
  }

  /** The spots with windows that must stay up after pickup, by id. */
  static List<String> of(JobView view) {
    return dates(view).isEmpty()
        ? List.of()
        : CureCases.of(view.job(), view.shop(), view.catalogue(), view.place()).items().stream()
            .filter(item -> item.rules().stream().anyMatch(rule -> isSticker(view, rule.hold())))
            .map(CureItem::spot)
            .distinct()
            .sorted()
            .toList();
  }

  private static boolean isSticker(JobView view, String hold) {
    return view.catalogue().is(hold, Hold.Mark.STICKER);
  }

  static List<Map<String, Object>> of(JobView view, int codeNumber) {
    Words words = view.words();
    List<Map<String, Object>> stickers = new ArrayList<>();
    for (String spot : of(view)) {
      for (int side = 0; side < SIDES; side++) {
        Map<String, Object> sticker = CommonWords.of(view, codeNumber);
        sticker.put("date", CommonWords.stamp(view, dates(view).get(0)));
        sticker.put("say", words.text("handout.window.say"));
        sticker.put("glass", words.text("spot." + spot));
        sticker.put("stick", words.text("handout.window.stick"));
        sticker.put("danger", Safety.of(dates(view), view));
        stickers.add(sticker);
      }
    }
    return stickers;
  }
}
