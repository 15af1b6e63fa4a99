package curewindow.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problem;
import curewindow.shop.Shop;
import curewindow.site.LoadedShop;
import curewindow.site.Press;
import curewindow.site.PressReport;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A shop is set up at the desk, and changed there later, without a file being opened by hand. */
class SetUpTest {

  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-30T18:00:00Z"), ZoneOffset.UTC);

  @TempDir Path dir;

  private Path shop() {
    return dir.resolve("shop");
  }

  private Desk open() throws IOException {
    return Desk.open(new Desk.Setting(shop(), dir.resolve("out"), 0, Optional.empty(), CLOCK));
  }

  /** The form of our invented shop, filled in; pairs of names and values go over it. */
  private static Map<String, List<String>> form(String... more) {
    Map<String, List<String>> form = new TreeMap<>();
    form.put("name", List.of("Quillhaven Film & Coatings"));
    form.put("phone", List.of("+1 206 555 0142"));
    form.put("texts", List.of("same"));
    form.put("street", List.of("18 Tern Yard", "Quillhaven, WA 98000", ""));
    form.put("address", List.of("https://care.quillhaven.example/"));
    form.put("language", List.of("en"));
    form.put("place", List.of("seattle"));
    form.put("opening.mon", List.of("open"));
    form.put("opening.mon.from", List.of("08:30"));
    form.put("opening.mon.to", List.of("17:30"));
    List.of("tue", "wed", "thu", "fri").forEach(d -> form.put("opening." + d, List.of("same")));
    List.of("sat", "sun").forEach(d -> form.put("opening." + d, List.of("closed")));
    form.put("do", List.of("save"));
    for (int i = 0; i < more.length; i += 2) {
      form.put(more[i], List.of(more[i + 1]));
    }
    return form;
  }

  private LoadedShop load() {
    return LoadedShop.load(shop(), CLOCK);
  }

  private List<String> errors() {
    return load().errors().stream().map(Problem::oneLine).toList();
  }

  private static List<String> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).map(Path::toString).sorted().toList();
    }
  }

  @Test
  void anEmptyFolderBecomesAShopThatCanBePressed() throws IOException {
    Files.createDirectories(shop());
    try (Desk desk = open()) {
      Browser browser = new Browser(desk);
      for (String path : List.of("/", "/new", "/find", "/shop", "/films", "/job/1001")) {
        assertEquals("/set-up", Browser.leadsTo(browser.get(path)), path);
      }
      assertEquals(200, browser.get("/set-up").statusCode());
      HttpResponse<String> answer = browser.post("/set-up", form());
      assertEquals(303, answer.statusCode(), answer.body());
      assertEquals("/new", Browser.leadsTo(answer));
      HttpResponse<String> first = browser.get("/new");
      assertEquals(200, first.statusCode());
      assertTrue(first.body().contains("Quillhaven Film &amp; Coatings"), first.body());
    }
    assertEquals(List.of(), errors());
    Shop shop = load().shop().orElseThrow();
    assertEquals("+1 206 555 0142", shop.textNumber().orElseThrow());
    assertEquals("America/Los_Angeles", shop.zone().getId());
    assertEquals(List.of("18 Tern Yard", "Quillhaven, WA 98000"), shop.street());
    assertEquals(5, shop.opening().size());
    assertEquals(shop.opening().get(DayOfWeek.MONDAY), shop.opening().get(DayOfWeek.FRIDAY));
    assertEquals(List.of(), shop.closed());
    assertEquals(List.of(), load().jobs(), "no sample is taken for a customer");
    PressReport report = Press.run(load(), dir.resolve("out"), CLOCK, () -> "23456789BCDF");
    assertTrue(Files.isRegularFile(dir.resolve("out/site/index.html")), report.toString());
  }

  @Test
  void whatIsWrongStandsAtItsFieldAndNothingIsWritten() throws IOException {
    try (Desk desk = open()) {
      Browser browser = new Browser(desk);
      HttpResponse<String> answer =
          browser.post(
              "/set-up",
              form(
                  "name", "",
                  "phone", "12",
                  "address", "care.quillhaven.example",
                  "place", "",
                  "opening.mon.to", "07:00"));
      assertEquals(422, answer.statusCode());
      String page = answer.body();
      assertAt(page, "id=\"name\"", "Please fill this in.");
      assertAt(page, "id=\"phone\"", "phone cannot be used: 12");
      assertAt(page, "id=\"address\"", "address is not the address of a web site");
      assertAt(page, "name=\"opening.mon.to\"", "the hours of mon cannot be read: 8:30-7:00");
      assertAt(page, "name=\"town\"", "Please fill this in.");
      assertTrue(page.contains("value=\"18 Tern Yard\""), "what was right is kept");
      assertFalse(Files.exists(shop()));
      assertEquals("/set-up", Browser.leadsTo(browser.get("/")));
    }
  }

  /** A problem stands behind its field, before the next one. */
  private static void assertAt(String page, String field, String problem) {
    int at = page.indexOf(field);
    assertTrue(at >= 0, field);
    int next = page.indexOf("<input", at);
    String behind = page.substring(at, next < 0 ? page.length() : next);
    assertTrue(behind.contains("class=\"wrong\">" + problem), field + ": " + behind);
  }

  /** Whenever a desk is killed, as many of the files are there as it had come to. */
  @ParameterizedTest
  @ValueSource(ints = {0, 2, 9})
  void aFolderThatWasCutOffIsSetUpAgain(int written) throws IOException {
    try (Desk desk = open()) {
      new Browser(desk).post("/set-up", form());
    }
    List<String> whole = files(shop());
    List<String> kept = whole.stream().filter(f -> !f.endsWith("shop.yaml")).toList();
    Files.delete(shop().resolve("shop.yaml"));
    for (String file : kept.subList(Math.min(written, kept.size()), kept.size())) {
      Files.delete(Path.of(file));
    }
    Files.createDirectories(shop().resolve("content/schemas"));
    Files.writeString(shop().resolve("content/schemas/.half-12.tmp"), "{ \"cut");
    Files.writeString(shop().resolve(".half-13.tmp"), "name: Quillh");
    try (Desk desk = open()) {
      HttpResponse<String> answer = new Browser(desk).post("/set-up", form());
      assertEquals("/new", Browser.leadsTo(answer), answer.body());
    }
    assertTrue(files(shop()).containsAll(whole));
    assertEquals(List.of(), errors());
  }

  @Test
  void whatIsInTheFolderAlreadyStays() throws IOException {
    Path films = shop().resolve("content/catalogue/films.yaml");
    Files.createDirectories(films.getParent());
    String own = "films:\n  tern-15: {service: tint, name: Tern, material: PET, permeance: 9}\n";
    Files.writeString(films, own);
    try (Desk desk = open()) {
      assertEquals("/new", Browser.leadsTo(new Browser(desk).post("/set-up", form())));
    }
    assertEquals(own, Files.readString(films));
  }

  @Test
  void aShopWhoseFolderIsAwayForAMomentIsNotSetUpAnew() throws IOException {
    try (Desk desk = open()) {
      Browser browser = new Browser(desk);
      browser.post("/set-up", form());
      Files.move(shop(), dir.resolve("away"));
      HttpResponse<String> answer = browser.post("/set-up", form());
      assertEquals("/", Browser.leadsTo(answer));
      assertFalse(Files.exists(shop()));
    }
  }

  @Test
  void aPlaceIsFoundByNameInAnyLanguageAndByItsPoint() throws IOException {
    try (Desk desk = open()) {
      Browser browser = new Browser(desk);
      for (String town : List.of("wien", "Viena", "vienna")) {
        String page = browser.post("/set-up", town(town)).body();
        assertTrue(page.contains("value=\"vienna\""), town);
        // The normals of the table: -1.5 and 3.3 to 16 and 28 degrees Celsius; told in Fahrenheit.
        assertTrue(page.contains("January 3"), page);
      }
      String typo = browser.post("/set-up", town("Seatle")).body();
      assertTrue(typo.contains("value=\"seattle\""), typo);
      // The harbor of Seattle, from memory.
      String point = browser.post("/set-up", town("47.60, -122.34")).body();
      assertTrue(point.indexOf("value=\"seattle\"") < point.indexOf("value=\"vancouver\""), point);
      assertTrue(point.contains(" km away"), point);
    }
  }

  private static Map<String, List<String>> town(String town) {
    return form("place", "", "town", town, "do", "look");
  }

  @Test
  void aChangeKeepsOrderAndCommentsAndIsRefusedWhereSomebodyWasFaster() throws IOException {
    try (Desk desk = open()) {
      Browser browser = new Browser(desk);
      browser.post("/set-up", form());
      Path file = shop().resolve("shop.yaml");
      Files.writeString(
          file,
          Files.readString(file)
              .replace("  mon: 8:30-17:30", "  mon: 8:30-12:30, 13:30-17:30  # lunch\n  # spring")
              .replace("place: seattle", "place: seattle  # the bay is there"));
      String before = Files.readString(file);
      String version = Browser.version(browser.get("/shop"));
      String lunch = "as 8:30-12:30, 13:30-17:30";
      Map<String, List<String>> change =
          form("version", version, "phone", "+1 206 555 0199", "opening.mon", lunch);
      assertEquals("/?done=saved", Browser.leadsTo(browser.post("/shop", change)));
      String after = Files.readString(file);
      assertEquals(
          before
              .replace("phone: +1 206 555 0142", "phone: \"+1 206 555 0199\"")
              .replace("text-number: \"+1 206 555 0142\"", "text-number: \"+1 206 555 0199\"")
              .replace("  tue: 8:30-17:30", "  tue: \"8:30-12:30, 13:30-17:30\"")
              .replace("  wed: 8:30-17:30", "  wed: \"8:30-12:30, 13:30-17:30\"")
              .replace("  thu: 8:30-17:30", "  thu: \"8:30-12:30, 13:30-17:30\"")
              .replace("  fri: 8:30-17:30", "  fri: \"8:30-12:30, 13:30-17:30\""),
          after);
      HttpResponse<String> late =
          browser.post("/shop", form("version", version, "phone", "+1 206 555 0100"));
      assertEquals(409, late.statusCode());
      assertTrue(late.body().contains("Somebody else changed this"), late.body());
      assertTrue(late.body().contains("value=\"+1 206 555 0100\""), "what was typed is kept");
      assertEquals(after, Files.readString(file));
      HttpResponse<String> wrong =
          browser.post("/shop", form("version", Browser.version(late), "email", "none"));
      assertEquals(422, wrong.statusCode());
      assertAt(wrong.body(), "id=\"email\"", "email cannot be used");
      assertEquals(after, Files.readString(file));
    }
    assertEquals(List.of(), errors());
  }

  @Test
  void aBrokenShopFileCanBeMendedInTheForm() throws IOException {
    try (Desk desk = open()) {
      new Browser(desk).post("/set-up", form());
    }
    Path file = shop().resolve("shop.yaml");
    Files.writeString(
        file, Files.readString(file).replace("phone: +1 206 555 0142", "phone: none"));
    try (Desk desk = open()) {
      Browser browser = new Browser(desk);
      assertEquals(503, browser.get("/").statusCode());
      String version = Browser.version(browser.get("/shop"));
      HttpResponse<String> answer = browser.post("/shop", form("version", version));
      assertEquals("/?done=saved", Browser.leadsTo(answer), answer.body());
      assertEquals(200, browser.get("/").statusCode());
    }
  }

  @Test
  void theDeskSetsUpInSpanishToo() throws IOException {
    try (Desk desk = open()) {
      Browser browser = new Browser(desk);
      String cookie = browser.get("/language?to=es").headers().firstValue("Set-Cookie").orElse("");
      String page = browser.get("/set-up", cookie.split(";")[0]).body();
      assertTrue(page.contains("<html lang=\"es\""), page);
      assertTrue(page.contains("<span>Lunes</span>") || page.contains("<span>lunes</span>"), page);
      assertTrue(
          Pattern.compile("value=\"es\" checked=").matcher(page).find(),
          "the shop speaks it too, unless told otherwise");
    }
  }
}
