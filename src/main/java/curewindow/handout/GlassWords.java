package curewindow.handout;

import curewindow.cure.CureItem;
import curewindow.cure.Release;
import curewindow.shop.CureCases;
import curewindow.shop.Hold;
import curewindow.told.JobView;
import curewindow.told.Safety;
import curewindow.words.Isolates;
import curewindow.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The values of the stickers that say which window stays up: one for each side of the car. */
final class GlassWords {

  /** A spot that rolls names the windows of both doors. */
  private static final List<String> SIDES = List.of("left", "right");

  private GlassWords() {}

  /** The dates on the stickers; none where all that has one may be done at pickup. */
  static List<Release> dates(JobView view) {
    return view.timeline().releases().stream()
        .filter(r -> view.catalogue().is(r.hold(), Hold.Mark.STICKER))
        .filter(r -> view.timeline().isAhead(r))
        .toList();
  }

  /** The spots whose windows get a sticker after pickup, by id. */
  static List<String> of(JobView view) {
    return dates(view).stream().flatMap(r -> spots(view, r)).distinct().sorted().toList();
  }

  private static Stream<String> spots(JobView view, Release sticker) {
    return CureCases.of(view.job(), view.shop(), view.catalogue(), view.place()).items().stream()
        .filter(item -> item.rules().stream().anyMatch(r -> r.hold().equals(sticker.hold())))
        .map(CureItem::spot)
        .distinct()
        .sorted();
  }

  static List<Map<String, Object>> of(JobView view, int codeNumber) {
    List<Map<String, Object>> stickers = new ArrayList<>();
    for (Release release : dates(view)) {
      spots(view, release)
          .flatMap(spot -> SIDES.stream().map(side -> sideOf(view.words(), spot, side)))
          .map(glass -> sticker(view, codeNumber, release, glass))
          .forEach(stickers::add);
    }
    return stickers;
  }

  private static String sideOf(Words words, String spot, String side) {
    String own = "handout.window." + spot + "-" + side;
    return words.has(own)
        ? words.text(own)
        : words.text("handout.window." + side, Map.of("glass", words.text("spot." + spot)));
  }

  private static Map<String, Object> sticker(
      JobView view, int codeNumber, Release release, String glass) {
    Words words = view.words();
    Map<String, Object> sticker = CommonWords.of(view, codeNumber);
    sticker.put("date", CommonWords.stamp(view, release));
    sticker.put("say", say(release.hold(), words));
    sticker.put("glass", glass);
    sticker.put("job", Isolates.own(view.job().id(), words));
    sticker.put("carrier", words.text("handout.window.carrier"));
    sticker.put("danger", Safety.of(List.of(release), view));
    return sticker;
  }

  /** What stands before the date: a sentence of the hold's own, or what is short for it. */
  private static String say(String hold, Words words) {
    String own = "hold." + hold + ".sticker";
    return words.has(own)
        ? words.text(own)
        : words.text("hold." + hold + ".short") + " " + words.text("handout.card.until");
  }
}
