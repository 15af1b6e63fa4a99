package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.Driver;
import curewindow.cure.HoldKind;
import curewindow.problem.Problems;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The catalogue that a new shop starts from. */
class StartingCatalogueTest {

  /**
   * Starting holds: common practice, no source; entered a second time here, service, hold, need (B
   * bond, D dry-out, X crosslink), floor in hours and limit or horizon in days, and where it
   * applies.
   */
  private static final String TABLE =
      """
      tint windows-up B48 24/10 rolls
      tint hand-wash B24 24/4
      tint machine-wash B48 48/10
      tint pressure-wash B48 48/10
      tint defroster B72+D96 72/14 defroster
      tint inside-glass B168+D240 168/30 not windshield
      tint demist B96+D240 96/30 windshield
      tint haze D336 168/180
      tint water-pockets D336 168/180
      paint-film rain B24 12/2
      paint-film rinse B24 24/3
      paint-film hand-wash B96 72/14
      paint-film pressure-wash B240 168/28
      paint-film machine-wash B336 240/30
      paint-film topper B168+D240 168/45
      paint-film water-pockets D240 72/180
      wrap rinse B24 24/3
      wrap hand-wash B96 72/14
      wrap pressure-wash B240 168/28
      wrap machine-wash B336 240/30
      windshield-film wipers B48 24/5 wipers
      windshield-film hand-wash B72 48/7
      windshield-film pressure-wash B240 168/28
      windshield-film machine-wash B336 240/30
      windshield-film water-pockets D240 72/180
      headlight-film hand-wash B72 48/7
      headlight-film pressure-wash B240 168/28
      headlight-film machine-wash B336 240/30
      headlight-film headlight-bubbles D240 72/180
      fabric-coating seats X12 4/1 not door-panels
      fabric-coating wet-clean X96 120/14
      """;

  /** The same for each coating on the outside. */
  private static final String OUTSIDE_COATING =
      """
      keep-dry X24 12/3
      rinse X36 24/5
      hand-wash X96 120/14
      pressure-wash X168 168/21
      machine-wash X168 168/21
      topper X336 168/45
      full-cure X336 168/45
      """;

  /** Later care: common practice, no source. Service, yearly check, months to top up, years. */
  private static final String UPKEEP =
      """
      tint no - 10
      paint-film yes - 10
      wrap yes - 5
      windshield-film yes - 2
      headlight-film yes - 5
      paint-coating yes 12 -
      glass-coating no 6 -
      wheel-coating no 12 -
      fabric-coating no 12 -
      """;

  private static final Catalogue CATALOGUE = new CatalogueReader(files(), new Problems()).read();

  private static ShopFiles files() {
    return new ShopFiles(Path.of("target/no-such-shop"));
  }

  @Test
  void itReadsWithoutProblems() {
    Problems problems = new Problems();
    new CatalogueReader(files(), problems).read();
    assertEquals(List.of(), problems.all());
  }

  @Test
  void theRulesAreTheStartingHolds() {
    Set<String> expected = new TreeSet<>(TABLE.lines().toList());
    for (String coating : List.of("paint-coating", "glass-coating", "wheel-coating")) {
      OUTSIDE_COATING.lines().forEach(line -> expected.add(coating + " " + line));
    }
    Set<String> actual = new TreeSet<>();
    CATALOGUE.rules().forEach(rule -> actual.add(shown(rule)));
    assertEquals(String.join("\n", expected), String.join("\n", actual));
    assertEquals(expected.size(), CATALOGUE.rules().size());
  }

  private static String shown(RuleFor r) {
    String need =
        Stream.of(Driver.BOND, Driver.DRY_OUT, Driver.CROSSLINK)
            .filter(d -> r.rule().need().containsKey(d))
            .map(d -> letter(d) + number(r.rule().need().get(d)))
            .collect(Collectors.joining("+"));
    String only = r.spots().isEmpty() ? "" : r.spots().get(0);
    String not = r.exceptSpots().isEmpty() ? only : "not " + r.exceptSpots().get(0);
    String where = r.fact().map(SpotFact::id).orElse(not);
    String hours = number(r.rule().floorHours()) + "/" + number(r.rule().limitHours() / 24);
    return String.join(" ", r.service(), r.rule().hold(), need, hours, where).strip();
  }

  private static String letter(Driver driver) {
    return switch (driver) {
      case BOND -> "B";
      case DRY_OUT -> "D";
      case CROSSLINK -> "X";
    };
  }

  private static String number(double hours) {
    return String.format(Locale.ROOT, "%.0f", hours);
  }

  @Test
  void settlesAreToldFromHolds() {
    assertEquals(HoldKind.SETTLE, CATALOGUE.holds().get("haze").kind());
    assertEquals(HoldKind.SETTLE, CATALOGUE.holds().get("water-pockets").kind());
    assertEquals(1, CATALOGUE.holds().get("keep-dry").rank());
    long ranks = CATALOGUE.holds().values().stream().map(Hold::rank).distinct().count();
    assertEquals(CATALOGUE.holds().size(), ranks);
  }

  @Test
  void everythingIsUsed() {
    Set<String> films =
        CATALOGUE.films().values().stream().map(Film::service).collect(Collectors.toSet());
    assertEquals(CATALOGUE.services().keySet(), films);
    Set<String> spots =
        CATALOGUE.services().values().stream()
            .flatMap(s -> s.spots().stream())
            .collect(Collectors.toSet());
    assertEquals(CATALOGUE.spots().keySet(), spots);
    Set<String> holds =
        CATALOGUE.rules().stream().map(r -> r.rule().hold()).collect(Collectors.toSet());
    assertEquals(CATALOGUE.holds().keySet(), holds);
  }

  @Test
  void polyesterScalesAsOneOverThickness() {
    // PET 12 um passes 43 g/m2 a day at 38 C and 90 % RH (ASTM E96 figure of a film maker); a metal
    // layer is taken to halve it (our estimate, no source).
    for (Film film : CATALOGUE.films().values()) {
      if (film.material().equals("PET")) {
        double plain = 43.0 * 12 / film.thickness().orElseThrow();
        double wanted = film.metallised() ? plain / 2 : plain;
        assertEquals(wanted, film.permeance(), 0.05, film.id());
      }
    }
  }

  @Test
  void everythingHasWordsInBothLanguages() {
    for (String language : List.of("en", "es")) {
      String file = "content/words/" + language + "/catalogue.yaml";
      Map<String, String> words = YamlTexts.read(files(), file, new Problems()).orElseThrow();
      CATALOGUE.services().keySet().forEach(id -> named(words, "service." + id));
      CATALOGUE.spots().keySet().forEach(id -> named(words, "spot." + id));
      FindingKind.ids().forEach(id -> named(words, "finding." + id));
      CatalogueReader.FILM_FINISHES.forEach(id -> named(words, "finish." + id));
      for (String id : CATALOGUE.holds().keySet()) {
        Hold hold = CATALOGUE.holds().get(id);
        Stream.of("label", "until", "done", "short", "event")
            .forEach(part -> named(words, "hold." + id + "." + part));
        assertTrue(words.get("hold." + id + ".until").contains("{when}"), id);
        if (hold.kind() == HoldKind.HOLD) {
          assertTrue(words.get("hold." + id + ".gently").contains("{full}"), id);
        } else {
          named(words, "hold." + id + ".season");
        }
        assertEquals(hold.is(Hold.Mark.SAFETY), words.containsKey("hold." + id + ".safety"), id);
        assertTrue(!words.get("hold." + id + ".done").contains("{"), id);
        assertTrue(words.get("hold." + id + ".short").split(" ").length <= 5, id);
      }
    }
  }

  private static void named(Map<String, String> words, String key) {
    assertTrue(words.containsKey(key) && !words.get(key).isBlank(), key);
  }

  /** What touches the view out, a way out of danger, or the drive home; common practice. */
  @Test
  void safetyEndsAHold() {
    for (String id : List.of("defroster", "demist", "wipers", "windows-up", "seats")) {
      assertTrue(CATALOGUE.holds().get(id).is(Hold.Mark.SAFETY), id);
    }
  }

  @Test
  void laterCare() {
    StringBuilder table = new StringBuilder();
    CATALOGUE
        .services()
        .forEach(
            (id, service) ->
                table.append(
                    String.format(
                        Locale.ROOT,
                        "%s %s %s %s%n",
                        id,
                        service.upkeep().yearlyCheck() ? "yes" : "no",
                        number(service.upkeep().topUpMonths()),
                        number(service.upkeep().replaceYears()))));
    assertEquals(UPKEEP, table.toString().replace("\r\n", "\n"));
  }

  private static String number(OptionalInt value) {
    return value.isPresent() ? String.valueOf(value.getAsInt()) : "-";
  }
}
