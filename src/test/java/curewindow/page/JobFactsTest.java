package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.guide.JobFacts;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JobFactsTest {

  /** With common spaces in place of those that keep an hour and its half of the day together. */
  private static String plain(String text) {
    return text.replace('\u00A0', ' ').replace('\u202F', ' ');
  }

  private final JobFacts tint = new JobFacts(Demo.tint().view());
  private final JobFacts coated = new JobFacts(Demo.coatedFilm().view());

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "hold.windows-up.until | Friday, December 4, 2 PM",
        "hold.windows-up.likely | Thursday, December 3",
        "hold.windows-up.day | Friday, December 4",
        "shop.name | Longs Peak Film & Coat",
        "shop.phone | +1 303 555 0142",
        "shop.email | hello@care.example",
        "shop.address | 1180 Quarry Street, Denver, CO 80204",
        "job.first-name | Ana",
        "job.car | the blue four-door",
        "job.place | Denver, Colorado",
        "job.pickup | Tuesday, December 1, 4 PM",
        "job.parking | outside by day and in a garage at night",
        "film.tint | Harbor 35 and Harbor 20",
        "spots.tint | front door windows, rear door windows and rear window",
        "vlt.tint | 31% and 20%",
        "warranty.tint | until December 1, 2036"
      })
  void valuesAreInWords(String name, String text) {
    assertEquals(Optional.of(text), tint.value(name).map(JobFactsTest::plain));
  }

  @ParameterizedTest
  @CsvSource({
    "hold.wipers.until",
    "hold.windows-up",
    "hold.windows-up.why",
    "film.wrap",
    "vlt.wrap",
    "warranty.wrap",
    "shop.fax",
    "job.secret",
    "nothing",
    "hold",
    "a.b.c"
  })
  void whatTheJobLacksIsEmpty(String name) {
    assertEquals(Optional.empty(), tint.value(name));
  }

  @Test
  void aVisitIsAFactWhereOneIsPlanned() {
    JobFacts facts = new JobFacts(Demo.tint().view());
    assertTrue(facts.has("visit", "planned"));
    assertEquals(Optional.of("Mon, Jan 4"), facts.value("visit.day").map(JobFactsTest::plain));
    assertFalse(new JobFacts(Demo.nothingToHold().view()).has("visit", "planned"));
  }

  @Test
  void untilHasItsArticleInSpanish() {
    assertEquals(
        Optional.of("el miércoles 2 de diciembre a las 4 p.m."),
        new JobFacts(Demo.coatedFilm().view())
            .value("hold.keep-dry.until")
            .map(JobFactsTest::plain)
            .map(t -> t.replace("p. m.", "p.m.")));
    String html = Demo.coatedFilm().html();
    assertTrue(html.contains("hasta el miércoles"), "in the guides");
    assertFalse(html.contains("hasta miércoles"));
    assertFalse(html.contains("m.."), "two stops");
  }

  @ParameterizedTest
  @CsvSource({
    "service, tint, wrap",
    "spot, back-glass, windshield",
    "hold, windows-up, wipers",
    "found, old-film, chip",
    "finish, gloss, matte",
    "material, pet, tpu",
    "parking, garage, heated",
    "parking, outside, shade",
    "body, sedan, van",
    "paint, dark, light",
    "fact, defroster, wipers",
    "fact, rolls, cabin"
  })
  void termsAreTrueOfTheirJobOnly(String kind, String is, String isNot) {
    assertTrue(tint.has(kind, is));
    assertFalse(tint.has(kind, isNot));
  }

  @Test
  void coatingOverFilmIsKnown() {
    assertTrue(coated.has("over", "film"));
    assertFalse(tint.has("over", "film"));
    assertTrue(coated.has("film-finish", "gloss"));
    Demo filmLast = Demo.coatedFilm();
    filmLast.items.clear();
    filmLast.fit("paint-coating", "tidewater-paint", "2026-11-30T12:00", -1, "hood");
    filmLast.fit("paint-film", "fieldcoat-gloss", "2026-12-01T12:00", -1, "hood");
    assertFalse(new JobFacts(filmLast.view()).has("over", "film"));
    Demo elsewhere = Demo.coatedFilm();
    elsewhere.items.clear();
    elsewhere.fit("paint-film", "fieldcoat-gloss", "2026-11-30T12:00", -1, "hood");
    elsewhere.fit("paint-coating", "tidewater-paint", "2026-12-01T12:00", -1, "wheels");
    assertFalse(new JobFacts(elsewhere.view()).has("over", "film"));
  }

  @Test
  void publicFactsShowEveryClauseAndNoJob() {
    PublicFacts facts =
        new PublicFacts(Demo.shop("S"), Demo.WORDS.of("en"), "tint", Optional.empty());
    assertTrue(facts.has("hold", "windows-up"));
    assertEquals(Optional.of("the date on your own page"), facts.value("hold.windows-up.until"));
    assertEquals(Optional.of("+1 303 555 0142"), facts.value("shop.phone"));
    assertEquals(Optional.of("your film"), facts.value("film.tint"));
    assertEquals(Optional.of("you"), facts.value("job.first-name"));
  }
}
