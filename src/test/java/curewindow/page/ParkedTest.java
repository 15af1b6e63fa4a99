package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.climate.MonthNormals;
import curewindow.climate.Place;
import curewindow.cure.Parking;
import curewindow.cure.ParkingPlan;
import curewindow.cure.Release;
import curewindow.cure.Timeline;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.GZIPOutputStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** In {@link Demo#tint} the shop noted a car that stands outside by day, in a garage by night. */
class ParkedTest {

  private static final ParkingPlan NOTED = new ParkingPlan(Parking.OUTSIDE, Parking.GARAGE);

  /** Every date of the demo later by some hours. */
  private static Timeline later(JobView view, int hours) {
    Duration by = Duration.ofHours(hours);
    return new Timeline(
        view.timeline().pickup(),
        view.timeline().zone(),
        view.timeline().releases().stream().map(r -> moved(r, by)).toList());
  }

  private static Release moved(Release r, Duration by) {
    return new Release(
        r.hold(),
        r.kind(),
        r.end().movedTo(new Release.SafeBy(r.end().at().plus(by))),
        r.likely().plus(by),
        r.because(),
        r.becauseLikely(),
        r.waitsFor());
  }

  /** Outside a day later, in the shade two days, garages as noted. */
  private static Parkings cases(JobView noted) {
    Map<ParkingPlan, Timeline> dates = new LinkedHashMap<>();
    for (ParkingPlan plan : Parkings.others(noted)) {
      int hours = Map.of(Parking.OUTSIDE, 24, Parking.SHADE, 48).getOrDefault(plan.day(), 0);
      dates.put(plan, later(noted, hours));
    }
    return Parkings.of(noted, dates);
  }

  private static JobView outside(Demo demo) {
    JobView noted = demo.view();
    return noted.parked(cases(noted).showing(1));
  }

  private static String html(JobView view) {
    return Demo.html(view);
  }

  private static String plain(String text) {
    return text.replace('\u00A0', ' ');
  }

  @Test
  void parkingsWithEqualDatesAreOneCaseAndTheNotedOneIsFirst() {
    Parkings cases = cases(Demo.tint().view());
    assertEquals(
        List.of("", "outside/", "shade/"),
        cases.cases().stream().map(Parkings.Case::name).toList());
    assertEquals(3, cases.cases().get(0).plans().size(), "noted, garage and heated");
    assertEquals(NOTED, cases.cases().get(0).plans().get(0));
    assertTrue(cases.noted().isEmpty());
    assertEquals("", cases.showing(2).noted().orElseThrow().name());
    assertEquals("shade/", cases.showing(2).name());
    assertThrows(IllegalArgumentException.class, () -> cases.showing(3));
    assertThrows(IllegalArgumentException.class, () -> cases.showing(-1));
  }

  /** Published normals, from memory: Seattle in December 5.6 degrees, Dubai 21.4, in June 34.2. */
  @Test
  void aHeatedGarageIsNoChoiceWhereAndWhenNobodyHeats() {
    assertTrue(offersHeated(-8, 8, 5));
    assertTrue(offersHeated(2.8, 8.3, 5.6));
    assertFalse(offersHeated(16.6, 26.2, 20));
    assertFalse(offersHeated(28.6, 39.8, 34));
    assertTrue(offersHeated(11.9, 20, 12), "15.95 on average");
    assertFalse(offersHeated(12.1, 20, 12), "16.05 on average");
  }

  private static boolean offersHeated(double least, double most, double dewPoint) {
    JobView view = Demo.tint().view();
    MonthNormals month = new MonthNormals(least, most, Math.min(dewPoint, most), 4);
    Place place =
        new Place(
            "there",
            "There",
            view.place().latitude(),
            view.place().longitude(),
            100,
            view.place().zone(),
            Collections.nCopies(12, month),
            "from memory");
    JobView there =
        new JobView(
            view.job(),
            view.shop(),
            view.catalogue(),
            place,
            view.timeline(),
            view.visit(),
            view.words(),
            view.address(),
            view.token(),
            view.printed(),
            view.parkings());
    return Parkings.others(there).stream().anyMatch(p -> p.night() == Parking.HEATED);
  }

  @Test
  void whereParkingMakesNoDifferenceNothingIsAsked() {
    JobView noted = Demo.tint().view();
    Map<ParkingPlan, Timeline> same = new LinkedHashMap<>();
    Parkings.others(noted).forEach(plan -> same.put(plan, noted.timeline()));
    assertEquals(Parkings.NONE, Parkings.of(noted, same));
    assertTrue(Jsoup.parse(html(noted)).select("#parking").isEmpty());
  }

  /** The words that differ in likelihood alone make no other case: nothing is promised by them. */
  @Test
  void anotherLikelyDateAloneIsNoOtherCase() {
    JobView noted = Demo.tint().view();
    Timeline sooner =
        new Timeline(
            noted.timeline().pickup(),
            noted.timeline().zone(),
            noted.timeline().releases().stream()
                .map(
                    r ->
                        new Release(
                            r.hold(),
                            r.kind(),
                            r.end(),
                            r.likely().minusSeconds(7200),
                            r.because(),
                            r.becauseLikely(),
                            r.waitsFor()))
                .toList());
    ParkingPlan garage = new ParkingPlan(Parking.GARAGE, Parking.GARAGE);
    assertEquals(Parkings.NONE, Parkings.of(noted, Map.of(garage, sooner)));
  }

  @Test
  void theTimetableNamesEachCaseWithItsDatesAndMarksTheOneShown() {
    JobView noted = Demo.tint().view();
    Document page = Jsoup.parse(html(noted.parked(cases(noted))));
    List<Element> rows = page.select("#parking tbody tr");
    assertEquals(3, rows.size());
    assertEquals(
        "Outside by day, in a garage by night, or in a garage, or in a heated garage",
        rows.get(0).select("a").text());
    assertEquals("as we noted it · shown here", rows.get(0).select(".state").text());
    assertEquals("index.html#main", rows.get(0).select("a").attr("href"));
    assertEquals("Outside", rows.get(1).select("a").text());
    assertEquals("outside/index.html", rows.get(1).select("a").attr("href"));
    assertEquals("Sat, Dec 5 2 PM", plain(rows.get(1).select("td").first().text()));
    assertEquals("Sun, Dec 6 2 PM", plain(rows.get(2).select("td").first().text()));
    assertEquals(
        List.of("The car stands", "Windows stay up", "All over"),
        page.select("#parking thead th").eachText());
    assertEquals(1, page.select("#parking [aria-current=page]").size());
    assertTrue(page.select("main > .note").isEmpty());
  }

  @Test
  void thePageOfAnotherParkingGoesByItThroughoutAndLeadsBack() {
    Document page = Jsoup.parse(html(outside(Demo.tint())));
    Element first = page.selectFirst("main").child(0);
    assertEquals(
        "These dates are for a car that stands outside. The shop’s card is for a car outside by"
            + " day, in a garage by night: dates as noted",
        first.text());
    assertEquals("../index.html#main", first.select("a").attr("href"));
    assertTrue(page.select(".answer .say").first().text().contains("December 5"));
    assertTrue(plain(page.select("#twin").text()).contains("safe by Saturday, December 5, 2 PM"));
    assertEquals("Sat, Dec 5 2 PM", plain(page.select("tr[data-hold=windows-up] time").text()));
    assertTrue(page.select("figure ~ .note").text().contains("for a car that stands outside."));
    assertEquals("Outside", page.select("#parking [aria-current=page]").text());
    assertEquals(
        List.of("../index.html#main", "../outside/index.html", "../shade/index.html"),
        page.select("#parking a").eachAttr("href"));
    assertEquals(
        "https://care.example/C/7F3K9QX2M4TB/outside/",
        outside(Demo.tint()).address().toString(),
        "where its calendar leads");
  }

  @Test
  void theHeadOfTheTableIsTheSameOnThePageOfEachCase() {
    JobView noted = Demo.coatedFilm().view();
    Parkings cases = cases(noted);
    List<List<String>> heads =
        List.of(0, 1, 2).stream()
            .map(i -> Jsoup.parse(html(noted.parked(cases.showing(i)))))
            .map(page -> page.select("#parking thead th").eachText())
            .distinct()
            .toList();
    assertEquals(1, heads.size(), heads.toString());
    assertEquals("El auto está", heads.get(0).get(0));
  }

  @Test
  void aCardThatHoldsAsNotedIsTooEarlyForTheSakeOfTheParkingAlone() {
    PrintedDate card =
        new PrintedDate("windows-up", Demo.at("2026-12-04T14:00"), Demo.at("2026-12-04T14:00"))
            .slowed(true);
    JobView view = outside(Demo.tint()).withPrinted(new Printed(List.of(card), Optional.empty()));
    String said = plain(Jsoup.parse(html(view)).select("main > .card").text());
    assertEquals(
        "The card says Friday, December 4, 2 PM for “Windows stay up”. It takes longer where"
            + " the car is parked now. Please wait until Saturday, December 5, 2 PM.",
        said);
  }

  @Test
  void aCardThatIsTooEarlyEvenAsNotedIsNotBlamedOnTheParking() {
    PrintedDate card =
        new PrintedDate("windows-up", Demo.at("2026-12-03T14:00"), Demo.at("2026-12-03T14:00"))
            .slowed(true);
    JobView view = outside(Demo.tint()).withPrinted(new Printed(List.of(card), Optional.empty()));
    assertTrue(
        Jsoup.parse(html(view)).select("main > .card").text().contains("It has been colder"));
  }

  @Test
  void thatAnotherParkingIsSoonerThanTheCardIsSaidOnceAtTheTop() {
    JobView noted = Demo.tint().view();
    Map<ParkingPlan, Timeline> dates =
        Map.of(new ParkingPlan(Parking.HEATED, Parking.HEATED), later(noted, -24));
    PrintedDate card =
        new PrintedDate("windows-up", Demo.at("2026-12-04T14:00"), Demo.at("2026-12-04T14:00"));
    JobView heated = noted.parked(Parkings.of(noted, dates).showing(1));
    Document page =
        Jsoup.parse(html(heated.withPrinted(new Printed(List.of(card), Optional.empty()))));
    assertTrue(page.select(".card, .now .note").isEmpty());
    assertTrue(page.select("main > .note").text().contains("The shop’s card is for a car outside"));
  }

  /** The choice may take 350 bytes of the page as it is sent. */
  @Test
  void theTimetableIsLight() throws IOException {
    for (Demo demo : List.of(Demo.tint(), Demo.coatedFilm())) {
      JobView noted = demo.view();
      int plain = gzipped(html(noted));
      int choice = gzipped(html(noted.parked(cases(noted)))) - plain;
      assertTrue(choice <= 350, demo.car + ": " + choice + " bytes");
    }
  }

  private static int gzipped(String text) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (GZIPOutputStream gzip = new GZIPOutputStream(bytes)) {
      gzip.write(text.getBytes(StandardCharsets.UTF_8));
    }
    return bytes.size();
  }
}
