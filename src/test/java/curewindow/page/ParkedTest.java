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
import curewindow.told.JobView;
import curewindow.told.Parkings;
import curewindow.told.Printed;
import curewindow.told.PrintedDate;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
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

  /** The views of all cases, the noted one first. */
  private static JobView[] views(JobView noted) {
    Parkings cases = cases(noted);
    return IntStream.range(0, cases.cases().size())
        .mapToObj(i -> noted.parked(cases.showing(i)))
        .toArray(JobView[]::new);
  }

  /** A page as it is seen when one of its cases was chosen. */
  private static Document chosen(int number, JobView... views) {
    Document page = Jsoup.parse(Demo.html(views));
    for (Element e : page.select("[data-g]:not([data-p])")) {
      Element of = page.selectFirst("[data-p][data-g=" + e.attr("data-g") + "]");
      while (!List.of(of.attr("data-p").split(" ")).contains(String.valueOf(number))) {
        of = of.nextElementSibling();
      }
      e.text(of.text());
    }
    for (Element e : page.select("[data-p]")) {
      if (List.of(e.attr("data-p").split(" ")).contains(String.valueOf(number))) {
        e.removeAttr("hidden");
      } else {
        e.remove();
      }
    }
    page.select("[hidden]").remove();
    return page;
  }

  private static String plain(String text) {
    return text.replace('\u00A0', ' ');
  }

  /** Another case has no calendar of all dates, and its link says what it gives. */
  @Test
  void theCalendarOfAChosenParkingSaysThatItHasTheMainDates() {
    JobView[] views = views(Demo.tint().view());
    assertEquals(
        List.of("Add to your calendar", "all dates"),
        chosen(0, views).select(".top .tel a").eachText());
    Document other = Jsoup.parse(Demo.html(views));
    assertEquals(List.of("Add main dates to calendar"), other.select("#chosen").eachText());
    assertEquals(
        "{\"cases\":[[],[0,1],[0,0,2,2]],\"lines\":[\"BEGIN\",\"1\",\"2\"]}",
        other.selectFirst("#ics").data().strip());
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
    assertTrue(Jsoup.parse(Demo.html(noted)).select("#parking, [data-p]").isEmpty());
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
  void theChoiceNamesEachCaseAndHasTheNotedOneChosen() {
    Document page = Jsoup.parse(Demo.html(views(Demo.tint().view())));
    assertEquals(
        "Where do you park? Your dates depend on it.", page.select("#parking legend").text());
    assertEquals(
        List.of(
            "Outside by day and in a garage at night (what we wrote down), or in a garage, or in a heated garage",
            "Outside",
            "Outside in the shade"),
        page.select("#parking label").eachText());
    assertEquals(
        List.of("", "outside/", "shade/"),
        page.select("#parking [name=parking]").eachAttr("value"));
    assertEquals(List.of(""), page.select("#parking [checked]").eachAttr("value"));
    assertTrue(page.selectFirst("#parking fieldset").hasAttr("hidden"), "it takes a script");
  }

  @Test
  void withoutAScriptEachCaseHasItsOwnDates() {
    List<Element> still = Jsoup.parse(Demo.html(views(Demo.tint().view()))).select(".still tbody");
    assertEquals(3, still.size());
    assertEquals("Outside", still.get(1).select("th[colspan]").text());
    assertEquals(8, still.get(1).select("td").size(), "all dates of this demo differ");
    assertEquals(
        List.of(
            "Windows stay up Fri, Dec 4, 2 PM",
            "Windows stay up Sat, Dec 5, 2 PM",
            "Windows stay up Sun, Dec 6, 2 PM"),
        still.stream().map(e -> plain(e.select("tr").get(1).text())).toList());
  }

  @Test
  void thePageOfAnotherParkingGoesByItThroughout() {
    Document page = chosen(1, views(Demo.tint().view()));
    assertTrue(page.select(".answer").first().text().contains("December 5"));
    assertTrue(
        plain(page.select("li[data-hold=windows-up]").text()).contains("until Sat, Dec 5 2 PM"));
    assertEquals("Parked outside · change", page.select("#parking summary").text());
    String whole = plain(page.select("#normal, #care").text());
    assertTrue(whole.contains("Saturday, December 5, 2 PM"), whole);
    assertFalse(whole.contains("Friday, December 4, 2 PM"), whole);
  }

  /** The script empties that place, and would lose what other places take from there. */
  @Test
  void theAnswersAddendumHasNoWordsOfOtherParkings() {
    Document page = Jsoup.parse(Demo.html(views(Demo.atLimit().view())));
    assertTrue(page.select(".also").text().contains("60% cured"), page.select(".also").text());
    assertEquals(List.of(), page.select(".also *").eachText());
  }

  @Test
  void theChoiceIsInTheLanguageOfThePage() {
    Document page = chosen(2, views(Demo.coatedFilm().view()));
    assertEquals(
        "¿Dónde estaciona? De eso dependen sus fechas.",
        Jsoup.parse(Demo.html(views(Demo.coatedFilm().view()))).select("legend").text());
    assertFalse(page.select("#parking").text().contains("shade"), page.select("#parking").text());
  }

  @Test
  void aCardThatHoldsAsNotedIsTooEarlyForTheSakeOfTheParkingAlone() {
    PrintedDate card =
        new PrintedDate("windows-up", Demo.at("2026-12-04T14:00"), Demo.at("2026-12-04T14:00"))
            .slowed(true);
    Printed printed = new Printed(List.of(card), Optional.empty());
    JobView[] views = views(Demo.tint().view().withPrinted(printed));
    assertTrue(chosen(0, views).select(".card").isEmpty(), "it holds as noted");
    String said = plain(chosen(1, views).select("main > .card").text());
    assertEquals(
        "The card says Friday, December 4, 2 PM for “Windows stay up”. It takes longer where"
            + " you park now: wait until Saturday, December 5, 2 PM.",
        said);
  }

  @Test
  void aCardThatIsTooEarlyEvenAsNotedIsNotBlamedOnTheParking() {
    PrintedDate card =
        new PrintedDate("windows-up", Demo.at("2026-12-03T14:00"), Demo.at("2026-12-03T14:00"))
            .slowed(true);
    JobView view = outside(Demo.tint()).withPrinted(new Printed(List.of(card), Optional.empty()));
    assertTrue(chosen(0, view).select("main > .card").text().contains("It has been colder"));
  }

  /** Where the car stands is said beside the dates; the card is right for where it was noted. */
  @Test
  void thatAnotherParkingIsSoonerThanTheCardIsNoNews() {
    Map<ParkingPlan, Timeline> dates =
        Map.of(new ParkingPlan(Parking.HEATED, Parking.HEATED), later(Demo.tint().view(), -24));
    PrintedDate card =
        new PrintedDate("windows-up", Demo.at("2026-12-04T14:00"), Demo.at("2026-12-04T14:00"));
    JobView noted = Demo.tint().view().withPrinted(new Printed(List.of(card), Optional.empty()));
    Parkings cases = Parkings.of(noted, dates);
    Document page = chosen(1, noted.parked(cases), noted.parked(cases.showing(1)));
    assertTrue(page.select(".answer").text().contains("December 3"), page.select("h1").text());
    assertTrue(page.select(".card, .now .note").isEmpty());
  }

  /** What another case adds to the page as it is sent, in bytes. */
  @Test
  void aCaseIsLight() throws IOException {
    for (Demo demo : List.of(Demo.tint(), Demo.coatedFilm())) {
      JobView[] views = views(demo.view());
      int more = (gzipped(Demo.html(views)) - gzipped(Demo.html(demo.view()))) / 2;
      assertTrue(more <= 650, demo.car + ": " + more + " bytes");
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
