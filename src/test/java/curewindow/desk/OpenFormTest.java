package curewindow.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.Release;
import curewindow.shop.Job;
import curewindow.site.LoadedShop;
import curewindow.words.Words;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What becomes of a form that is open for a while, while other things go on. */
class OpenFormTest {

  @TempDir Path folder;
  private DeskClient desk;

  @BeforeEach
  void open() throws IOException {
    desk = DeskClient.open(folder);
  }

  @AfterEach
  void close() {
    desk.close();
  }

  /** The same desk some time later: noon is past. */
  private void later(Duration time) throws IOException {
    desk.close();
    desk = DeskClient.open(folder, DeskClient.NOW.plus(time));
  }

  /** A form as a browser without script sends it: names and values of all that is filled in. */
  private static List<String> form(Document page, String wanted, String... given) {
    List<String> fields = new ArrayList<>(List.of("do", wanted));
    List<String> others = List.of(given);
    for (Element e : page.select("#job [name]:not(button)")) {
      boolean box = e.attr("type").matches("checkbox|radio");
      boolean known = others.contains(e.attr("name"));
      if (!known && (!box || e.hasAttr("checked"))) {
        String chosen = e.select("option[selected]").attr("value");
        fields.addAll(List.of(e.attr("name"), e.is("select") ? chosen : e.val()));
      }
    }
    fields.addAll(others);
    return fields;
  }

  private Document sent(String path, List<String> fields) {
    return Jsoup.parse(desk.post(path, fields.toArray(String[]::new)).body());
  }

  private static String value(Document page, String name) {
    return page.select("[id=\"" + name + "\"]").val();
  }

  private Document withFilm() {
    Document empty = Jsoup.parse(desk.page("/new"));
    return sent(
        "/new", form(empty, "look", "items[1].film", "harbor-35", "items[1].spots", "back-glass"));
  }

  @Test
  void timesThatNobodyTouchedAreThoseOfTheSave() throws IOException {
    Document page = withFilm();
    assertEquals("2026-11-25T12:00", value(page, "items[1].finished"));
    later(Duration.ofMinutes(47));
    Document look = sent("/new", form(page, "look"));
    assertEquals("2026-11-25T12:45", value(look, "items[1].finished"));
    assertEquals("2026-11-25T13:00", value(look, "pickup"));
    assertEquals(303, desk.post("/new", form(page, "save").toArray(String[]::new)).statusCode());
    String file = Files.readString(desk.shop.resolve("jobs/Q-3117.yaml"));
    assertTrue(file.contains("finished: 2026-11-25T12:45"), file);
    assertTrue(file.contains("pickup: 2026-11-25T13:00"), file);
  }

  @Test
  void timesThatSomebodyTypedStay() throws IOException {
    Document page = withFilm();
    List<String> typed = form(page, "look", "items[1].finished", "2026-11-25T11:10");
    Document with = sent("/new", typed);
    Document two = sent("/new", form(with, "add"));
    later(Duration.ofMinutes(47));
    Document look = sent("/new", form(two, "look"));
    assertEquals("2026-11-25T11:10", value(look, "items[1].finished"));
    assertEquals("2026-11-25T12:45", value(look, "items[2].finished"));
    Document dropped = sent("/new", form(look, "drop:1"));
    later(Duration.ofMinutes(65));
    Document one = sent("/new", form(dropped, "look"));
    assertEquals("2026-11-25T13:05", value(one, "items[1].finished"), "the second one's");
  }

  @Test
  void placesThatFitAreThereAgainWithTheFilmBefore() {
    Document glass = withFilm();
    Document hood = sent("/new", form(glass, "look", "items[1].film", "fieldcoat-gloss"));
    assertEquals(List.of(), checked(hood));
    Document both = sent("/new", form(hood, "look", "items[1].spots", "hood"));
    Document back = sent("/new", form(both, "look", "items[1].film", "harbor-35"));
    assertEquals(List.of("back-glass"), checked(back));
    Document again = sent("/new", form(back, "look", "items[1].film", "fieldcoat-gloss"));
    assertEquals(List.of("hood"), checked(again));
    assertEquals(303, desk.post("/new", form(back, "save").toArray(String[]::new)).statusCode());
    assertEquals(
        List.of("back-glass"),
        desk.loaded().job("Q-3117").orElseThrow().items().get(0).spots(),
        "only what fits is saved");
  }

  private static List<String> checked(Document page) {
    return page.select("input[name=\"items[1].spots\"][checked]").eachAttr("value");
  }

  @Test
  void whatTheOtherOnePutStandsBesideOnesOwn() {
    Document mine = Jsoup.parse(desk.page("/job/Q-3101/change"));
    Document theirs = Jsoup.parse(desk.page("/job/Q-3101/change"));
    String path = "/job/Q-3101/change";
    List<String> other = form(theirs, "save", "first-name", "Odette", "parking.day", "garage");
    assertEquals(303, desk.post(path, other.toArray(String[]::new)).statusCode());
    Document told = sent(path, form(mine, "save", "first-name", "Marta", "parking.day", "shade"));
    String name = told.select("[data-field=first-name] .wrong").text();
    assertTrue(name.contains("saved “Odette”"), name);
    assertTrue(told.select("[data-field=parking.day] .wrong").text().contains("saved “Garage”"));
    assertEquals("Marta", value(told, "first-name"));
  }

  @Test
  void aFormOfACarWhoseFileIsGoneKeepsItsText() throws Exception {
    Document page = Jsoup.parse(desk.page("/job/Q-3101/change"));
    List<String> typed = form(page, "save", "first-name", "Marta");
    desk.pressed("Q-3101");
    String text = Files.readString(desk.shop.resolve("jobs/Q-3101.yaml"));
    Files.delete(desk.shop.resolve("jobs/Q-3101.yaml"));
    // At once, and when the desk has seen it.
    assertKept(typed, "is gone");
    later(Duration.ZERO);
    assertKept(typed, "Bring jobs/Q-3101.yaml back");
    assertTrue(desk.page("/job/Q-3101").contains("Bring jobs/Q-3101.yaml back"));
    Files.writeString(
        desk.shop.resolve("jobs/Q-3101.yaml"), text.replace("film: harbor-35", "film: harbour"));
    later(Duration.ZERO);
    assertKept(typed, "harbour");
    String car = desk.page("/job/Q-3101");
    assertTrue(car.contains("Q-3101.yaml") && car.contains("harbour"), car);
    String found = desk.page("/find?q=Mara");
    assertTrue(
        found.contains("1 car was not looked through") && found.contains("/job/Q-3101"), found);
    assertFalse(desk.page("/find?q=Ana").contains("not looked through"));
    assertTrue(desk.page("/find?q=3101").contains("/job/Q-3101"));
    assertEquals(404, desk.get("/job/Q-9999").statusCode());
    assertTrue(desk.page("/job/Q-9999").contains("nothing at this address"));
  }

  private void assertKept(List<String> typed, String told) {
    HttpResponse<String> answer = desk.post("/job/Q-3101/change", typed.toArray(String[]::new));
    assertTrue(answer.statusCode() >= 400, "" + answer.statusCode());
    assertTrue(answer.body().contains("value=\"Marta\""), answer.body());
    assertTrue(answer.body().contains(told), answer.body());
  }

  @Test
  void aWrongNumberTellsNoEffect() {
    Document page = Jsoup.parse(desk.page("/rules/tint"));
    assertTrue(page.select(".holds li").size() > 3, page.html());
    String name = page.select("#items input").first().attr("name");
    Document wrong = sent("/rules/tint", form(page, "look", name, "many"));
    assertEquals(0, wrong.select(".holds li").size(), wrong.html());
    assertTrue(wrong.select(".beside").text().contains("until the number is right"), wrong.html());
    Document right = sent("/rules/tint", form(page, "look", name, "400"));
    assertTrue(right.select(".holds small").text().contains("was:"), right.html());
  }

  /** A roll of 120 cars: all of them are on the list (a roll does 10 to 30; ours, no source). */
  @Test
  void allCarsOfARollAreListed() throws IOException {
    String text = Files.readString(desk.shop.resolve("jobs/Q-3101.yaml"));
    for (int i = 0; i < 620; i++) {
      String id = "R-" + (1000 + i);
      String roll = i < 120 ? "RL-0707" : "RL-0808";
      Files.writeString(
          desk.shop.resolve("jobs/" + id + ".yaml"),
          text.replace("Q-3101", id).replace("H35-0611", roll));
    }
    later(Duration.ZERO);
    Document all = Jsoup.parse(desk.page("/find?q=RL-0707"));
    assertEquals(120, all.select("ul.cards li").size());
    assertTrue(all.text().contains("120 cars."), all.text());
    Document first = Jsoup.parse(desk.page("/find?q=RL-0"));
    assertEquals(200, first.select("ul.cards li").size());
    assertTrue(first.text().contains("Cars 1 to 200 of 620."), first.text());
    Document rest = first;
    for (int part = 0; part < 3; part++) {
      rest = Jsoup.parse(desk.page(rest.select("a:contains(Those after)").attr("href")));
    }
    assertEquals(20, rest.select("ul.cards li").size());
    assertEquals(1, rest.select("a:contains(Those before)").size());
    assertEquals(0, rest.select("a:contains(Those after)").size());
  }

  /**
   * The bay lets a car go at night where that is when it is ready; nobody is there. A Saturday in
   * the demo shop ends at 1 PM, and Monday begins at 8:30.
   */
  @Test
  void aCarIsKeptInUntilSomebodyIsThere() {
    String look =
        desk.post(
                "/new",
                DeskClient.car(
                    "Q-3118",
                    "fieldcoat-gloss",
                    "do",
                    "look",
                    "items[1].spots",
                    "hood",
                    "items[1].finished",
                    "2026-11-28T11:30",
                    "pickup",
                    "2026-11-28T12:45"))
            .body()
            .replace('\u00A0', ' ');
    List<String> advice = Jsoup.parse(look).select("#advice p").eachText();
    assertTrue(advice.size() > 1, look);
    assertTrue(advice.get(2).contains("until Monday, November 30, 8:30 AM"), advice::toString);
  }

  /** No sleep: whoever has written a file by hand asks for it the next moment. */
  @Test
  void aFileWrittenByHandIsKnownAtOnce() throws IOException {
    Path jobs = desk.shop.resolve("jobs");
    String job = Files.readString(jobs.resolve("Q-3101.yaml"));
    Path by = jobs.resolve("Q-3190.yaml");
    Files.writeString(by, job.replace("Q-3101", "Q-3190").replace("Mara", "Oda"));
    assertEquals(200, desk.get("/job/Q-3190").statusCode());
    Files.writeString(by, job.replace("Q-3101", "Q-3190").replace("Mara", "Odalis"));
    assertTrue(desk.page("/job/Q-3190").contains("Q-3190 · Odalis"));
    Files.writeString(
        jobs.resolve("Q-3191.yaml"),
        job.replace("Q-3101", "Q-3191").replaceFirst("pickup: \\S+", "pickup: 2026-11-25T16:00"));
    assertTrue(desk.page("/").contains("/job/Q-3191"), desk.page("/"));
    Files.writeString(jobs.resolve("Q-3192.yaml"), job.replace("Q-3101", "Q-3192"));
    assertTrue(desk.page("/find?q=q-319").contains("/job/Q-3192"));
    Files.writeString(jobs.resolve("Q-3192.yaml"), "id: Q-3192\n");
    assertTrue(desk.page("/job/Q-3192").contains("its file cannot be read"));
    Files.delete(jobs.resolve("Q-3192.yaml"));
    assertFalse(desk.page("/find?q=q-319").contains("/job/Q-3192"));
  }

  private List<String> advice(String finished, String pickup) {
    String[] car =
        DeskClient.car(
            "Q-3118",
            "fieldcoat-gloss",
            "do",
            "look",
            "items[1].spots",
            "hood",
            "items[1].finished",
            finished,
            "pickup",
            pickup);
    String look = desk.post("/new", car).body().replace('\u00A0', ' ');
    return Jsoup.parse(look).select("#advice p").eachText();
  }

  /**
   * A lamp that would let the car go when the bay alone does is work for nothing: here both wait
   * for Monday 8:30.
   */
  @Test
  void aLampThatGainsNothingIsNotAdvised() {
    List<String> weekend = advice("2026-11-28T11:30", "2026-11-28T12:45");
    assertEquals(3, weekend.size(), weekend::toString);
    assertTrue(weekend.get(2).startsWith("Keep it in"), weekend::toString);
    List<String> week = advice("2026-11-24T08:45", "2026-11-24T12:45");
    assertTrue(week.stream().anyMatch(a -> a.startsWith("Or give each part")), week::toString);
  }

  /** On the closed Sunday of the pickup nobody hands the car over, though a lamp makes it ready. */
  @Test
  void aPickupOnAClosedDayIsNotNamedAsIfWeWereOpen() {
    for (String finished : List.of("2026-11-28T11:30", "2026-11-29T09:00", "2026-11-28T18:00")) {
      List<String> sunday = advice(finished, "2026-11-29T10:00");
      assertTrue(sunday.size() > 2, sunday::toString);
      assertFalse(sunday.toString().contains("until Sunday"), sunday::toString);
    }
  }

  /** Where the limit ends a hold, though nothing is left to be careful with, it says so. */
  @Test
  void aHardLimitSaysThatItIsOne() {
    LoadedShop demo = LoadedShop.load(Path.of("content/demo"), DeskClient.clock(DeskClient.NOW));
    Words words = demo.words().of("en");
    int hard = 0;
    for (Job job : demo.jobs()) {
      List<Release> releases = demo.view(job, "0").timeline().releases();
      List<DatesBeside.Row> rows = DatesBeside.of(demo, job, words).rows();
      for (int i = 0; i < releases.size(); i++) {
        Release release = releases.get(i);
        boolean ends =
            release.waitsFor().isEmpty()
                && release.end() instanceof Release.AtLimit limit
                && !limit.isGentle();
        hard += ends ? 1 : 0;
        assertEquals(
            ends, rows.get(i).reason().startsWith("The longest we ask"), job.id() + rows.get(i));
      }
    }
    assertTrue(hard > 0, "the demo has some");
  }
}
