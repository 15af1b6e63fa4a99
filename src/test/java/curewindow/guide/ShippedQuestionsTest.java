package curewindow.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problems;
import curewindow.shop.Catalogue;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopFolder;
import curewindow.words.WordsLibrary;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the questions that come with the program answer to different cars. */
class ShippedQuestionsTest {

  private static final ShopFiles FILES = new ShopFiles(Path.of("no-such-shop"));
  private static final Catalogue CATALOGUE = ShopFolder.read(FILES, Instant.EPOCH).catalogue();
  private static final GuideLibrary GUIDES =
      GuideLibrary.read(
          FILES, WordsLibrary.open(FILES), CATALOGUE, List.of("ar", "en", "es"), new Problems());

  /** Each language's word for a coating, and for the wipers. */
  private static final Map<String, List<String>> SAID =
      Map.of(
          "en", List.of("coating", "wipers"),
          "es", List.of("recubrimiento", "limpiaparabrisas"),
          "ar", List.of("طبقة", "المسّاحات"));

  private static Guide guide(String language, String id) {
    return GUIDES.find(language, id).orElseThrow();
  }

  /** A car of which these terms are true; every hold ends on its own name. */
  private static GuideFacts car(String... terms) {
    return new GuideFacts() {
      @Override
      public boolean has(String kind, String name) {
        return terms.length == 0 || List.of(terms).contains(kind + " " + name);
      }

      @Override
      public Optional<String> value(String name) {
        return Optional.of("[" + name + "]");
      }
    };
  }

  private static GuideQuestion question(String language, String id, GuideFacts car) {
    return guide(language, "normal").questions(car).stream()
        .filter(q -> q.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void whatCameUpLaterNeverPushesOutTheLikeliest() {
    List<String> ids =
        List.of(
            "drive-through",
            "toll-tag",
            "sticker-glue",
            "sunshade",
            "remote-start",
            "ice",
            "sensors",
            "dog",
            "child-seat",
            "fuel",
            "bugs",
            "cover",
            "salt");
    for (String language : SAID.keySet()) {
      for (String id : ids) {
        assertTrue(question(language, id, car()).later(), language + " " + id);
      }
    }
  }

  @Test
  void theyTellThisCarsOwnDate() {
    Map<String, String> dates =
        Map.ofEntries(
            Map.entry("drive-through", "windows-up.until"),
            Map.entry("toll-tag", "inside-glass.full"),
            Map.entry("sticker-glue", "inside-glass.until"),
            Map.entry("sunshade", "demist.full"),
            Map.entry("remote-start", "defroster.until"),
            Map.entry("ice", "demist.until"),
            Map.entry("dog", "seats.until"),
            Map.entry("child-seat", "seats.until"),
            Map.entry("fuel", "keep-dry.until"),
            Map.entry("bugs", "keep-dry.until"),
            Map.entry("cover", "hand-wash.until"),
            Map.entry("salt", "rinse.until"));
    for (String language : SAID.keySet()) {
      dates.forEach(
          (id, hold) -> {
            String html = question(language, id, car()).html();
            assertTrue(html.contains("[hold." + hold + "]"), language + " " + html);
          });
    }
  }

  /** The public pages show every part: each has to say whom it means. */
  @Test
  void whoeverIsToldToKeepDryIsToldThatItIsForACoating() {
    for (String language : SAID.keySet()) {
      String coating = SAID.get(language).get(0);
      for (String id : List.of("normal", "washing")) {
        List<String> unnamed =
            guide(language, id)
                .html(car())
                .lines()
                .filter(line -> line.contains("hold.keep-dry.until"))
                .filter(line -> !line.toLowerCase(Locale.ROOT).contains(coating))
                .toList();
        assertEquals(List.of(), unnamed, language + " " + id);
      }
    }
  }

  @Test
  void aCarWhoseWipersAreOffIsToldSoWhenItRains() {
    String film = "service windshield-film";
    for (String language : SAID.keySet()) {
      String wipers = SAID.get(language).get(1);
      for (String other : List.of("hold wipers", "hold rain", "service paint-coating")) {
        String html = question(language, "rain", car(film, "hold wipers", other)).html();
        assertTrue(html.contains(wipers) && html.contains("hold.wipers.until"), html);
      }
      assertFalse(question(language, "rain", car("service tint")).html().contains(wipers));
    }
  }

  @Test
  void aTintAloneNeedsNoDryPlace() {
    for (String language : SAID.keySet()) {
      for (String id : List.of("rain", "parking")) {
        String html = question(language, id, car("service tint", "hold windows-up")).html();
        assertFalse(html.contains("keep-dry"), html);
      }
    }
  }

  @Test
  void rainIsNoHoseWhereTheRinseStillHasToWait() {
    Map<String, String> hoses = Map.of("en", "hose", "es", "manguera", "ar", "الخرطوم");
    hoses.forEach(
        (language, hose) -> {
          String wrap = question(language, "rain", car("service wrap", "hold rinse")).html();
          assertTrue(wrap.contains(hose), wrap);
          String tint = question(language, "rain", car("service tint")).html();
          assertFalse(tint.contains(hose), tint);
        });
  }

  @Test
  void onlyACoatingOutsideIsSaidToStopNoRocks() {
    Map<String, String> rocks = Map.of("en", "rock chips", "es", "piedras", "ar", "الحجارة");
    rocks.forEach(
        (language, rock) -> {
          assertTrue(guide(language, "coating").html(car("service paint-coating")).contains(rock));
          assertFalse(
              guide(language, "coating").html(car("service fabric-coating")).contains(rock));
        });
  }
}
