package curewindow.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problem;
import curewindow.site.LoadedShop;
import curewindow.site.PressedDemo;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Films are added and changed at the desk, with what that does to the dates beside the form. */
class FilmScreenTest {

  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-30T18:00:00Z"), ZoneOffset.UTC);

  @TempDir Path dir;

  /** The demo's shop.yaml and one of its jobs; its films are the program's. */
  @BeforeEach
  void lay() throws IOException {
    PressedDemo.layOutShop(shop(), "Q-3101");
  }

  private Path shop() {
    return dir.resolve("shop");
  }

  private Path films() {
    return shop().resolve("content/catalogue/films.yaml");
  }

  private Desk open() throws IOException {
    return Desk.open(new Desk.Setting(shop(), dir.resolve("out"), 0, Optional.empty(), CLOCK));
  }

  private static Map<String, List<String>> form(String version, String... pairs) {
    Map<String, List<String>> form = new TreeMap<>();
    form.put("version", List.of(version));
    form.put("do", List.of("save"));
    for (int i = 0; i < pairs.length; i += 2) {
      form.put(pairs[i], List.of(pairs[i + 1]));
    }
    return form;
  }

  private static Map<String, List<String>> tern(String version, String... more) {
    Map<String, List<String>> form =
        form(
            version,
            "service",
            "tint",
            "name",
            "Tern 15",
            "material",
            "PET",
            "thickness",
            "1.5 mil",
            "permeance",
            "",
            "vlt",
            "15",
            "metal-asked",
            "yes");
    form.putAll(form(version, more));
    return form;
  }

  private List<String> errors() {
    return LoadedShop.load(shop(), CLOCK).errors().stream().map(Problem::oneLine).toList();
  }

  @Test
  void aFilmIsAddedToACopyOfTheProgramsOwn() throws IOException {
    String program = Files.readString(Path.of("content/catalogue/films.yaml"));
    try (Desk desk = open()) {
      Browser browser = new Browser(desk);
      String version = Browser.version(browser.get("/film?service=tint"));
      assertFalse(Files.exists(films()));
      HttpResponse<String> added = browser.post("/film", tern(version));
      assertEquals("/films?done=saved", Browser.leadsTo(added), added.body());
      String shelf = browser.get("/films").body();
      assertTrue(shelf.contains("href=\"/film/tern-15\""), shelf);
    }
    // 1.5 mil is 38.1 micrometres, and 43 x 12 / 38.1 is 13.5; see UsualPermeance.
    String entry =
        "  tern-15: {service: tint, name: Tern 15, material: PET, thickness: 38.1,"
            + " permeance: 13.5, vlt: 15}\n";
    int after = program.indexOf("  fieldcoat-gloss:");
    assertEquals(
        program.substring(0, after) + entry + program.substring(after),
        Files.readString(films()),
        "it stands after the last film of its service");
    assertTrue(Files.exists(shop().resolve("content/copies.sha256")));
    assertEquals(List.of(), errors());
  }

  @Test
  void aNameThatAnotherFilmHasIsRefusedInOneSentence() throws IOException {
    try (Desk desk = open()) {
      Browser browser = new Browser(desk);
      String version = Browser.version(browser.get("/film?service=tint"));
      for (String name : List.of("Harbor 35", "harbor  35 ", "HÁRBOR-35")) {
        HttpResponse<String> refused = browser.post("/film", tern(version, "name", name));
        assertEquals(422, refused.statusCode(), name);
        assertEquals(2, refused.body().split("class=\"wrong\">").length, refused.body());
        assertTrue(refused.body().contains("Another film has this name already."), name);
        Map<String, List<String>> look = tern(version, "name", name, "do", "look");
        assertTrue(browser.post("/film", look).body().contains("has this name already"), name);
      }
      HttpResponse<String> other =
          browser.post("/film/harbor-50", form(version, "name", "Harbor 70"));
      assertEquals(422, other.statusCode());
      assertFalse(Files.exists(films()));
      assertEquals(303, browser.post("/film/harbor-50", form(version, "vlt", "51")).statusCode());
      version = Browser.version(browser.get("/film/harbor-50"));
      HttpResponse<String> own =
          browser.post("/film/harbor-50", form(version, "name", "HARBOR 50"));
      assertEquals(303, own.statusCode(), "its own name, written another way");
    }
  }

  @Test
  void aFilmThatNoCarHasIsRemovedAndAllElseStays() throws IOException {
    String program = Files.readString(Path.of("content/catalogue/films.yaml"));
    String with = program.replace("  harbor-20:", "  # darker than most want\n  harbor-20:");
    Files.createDirectories(films().getParent());
    Files.writeString(films(), with);
    try (Desk desk = open()) {
      Browser browser = new Browser(desk);
      assertTrue(browser.get("/film/harbor-20").body().contains("\"/film/harbor-20/remove\""));
      HttpResponse<String> asked = browser.get("/film/harbor-20/remove");
      assertTrue(asked.body().contains("Remove Harbor 20?"), asked.body());
      assertEquals(with, Files.readString(films()), "asking removes nothing");
      String version = Browser.version(asked);
      HttpResponse<String> gone = browser.post("/film/harbor-20/remove", form(version));
      assertEquals("/films?done=removed", Browser.leadsTo(gone), gone.body());
      assertFalse(browser.get("/films").body().contains("Harbor 20"));
      assertEquals(404, browser.get("/film/harbor-20/remove").statusCode());
      HttpResponse<String> late = browser.post("/film/harbor-5/remove", form(version));
      assertEquals(409, late.statusCode());
      assertTrue(late.body().contains("Somebody else changed this"), late.body());
      assertEquals(404, browser.post("/film/none/remove", form(version)).statusCode());
    }
    int from = with.indexOf("  harbor-20:");
    int to = with.indexOf("  harbor-5:");
    assertEquals(with.substring(0, from) + with.substring(to), Files.readString(films()));
    assertEquals(List.of(), errors());
  }

  @Test
  void aFilmThatCarsHaveStaysAndAtMostFiveAreNamed() throws IOException {
    String job = Files.readString(shop().resolve("jobs/Q-3101.yaml"));
    for (int i = 0; i < 6; i++) {
      String id = "Q-319" + i;
      Files.writeString(shop().resolve("jobs/" + id + ".yaml"), job.replaceFirst("Q-3101", id));
    }
    assertEquals(List.of(), errors());
    String film = LoadedShop.load(shop(), CLOCK).jobs().get(0).items().get(0).film();
    try (Desk desk = open()) {
      Browser browser = new Browser(desk);
      String version = Browser.version(browser.get("/film/" + film));
      for (HttpResponse<String> answer :
          List.of(
              browser.get("/film/" + film + "/remove"),
              browser.post("/film/" + film + "/remove", form(version)))) {
        String page = answer.body();
        assertTrue(page.contains("It has to stay, as 7 cars have it:"), page);
        assertEquals(6, page.split("href=\"/job/").length, page);
        assertTrue(page.contains(">2 more</a>") && page.contains("href=\"/find?q="), page);
        assertFalse(page.contains("Remove it"), page);
      }
      // A car gets the film in a file, which the desk has not read yet.
      Path late = shop().resolve("jobs/Q-3199.yaml");
      String other = film.equals("harbor-5") ? "harbor-70" : "harbor-5";
      version = Browser.version(browser.get("/film/" + other + "/remove"));
      Files.writeString(late, job.replaceFirst("Q-3101", "Q-3199").replace(film, other));
      HttpResponse<String> refused = browser.post("/film/" + other + "/remove", form(version));
      assertEquals(422, refused.statusCode());
      assertTrue(refused.body().contains("/job/Q-3199"), refused.body());
      assertFalse(Files.exists(films()));
    }
  }

  @Test
  void aChangeKeepsCommentsAndOrder() throws IOException {
    String own =
        """
        # Our shelf.
        films:
          # the best seller
          harbor-35:  # on the left
            {service: tint, name: Harbor 35, material: PET, thickness: 38, permeance: 13.6, vlt: 35}  # 60 in
          harbor-70:
            service: tint
            name: Harbor 70   # the light one
            material: PET
            permeance: 13.6
          harbor-50: {service: tint, name: Harbor 50, material: PET, permeance: 13.6}
          harbor-20: {service: tint, name: "Harbor {20}", material: PET, permeance: 13.6} # last
        """;
    Files.createDirectories(films().getParent());
    Files.writeString(films(), own);
    try (Desk desk = open()) {
      Browser browser = new Browser(desk);
      for (String id : List.of("harbor-35", "harbor-70", "harbor-20")) {
        String version = Browser.version(browser.get("/film/" + id));
        Map<String, List<String>> change = form(version, "permeance", "5.2");
        assertEquals("/films?done=saved", Browser.leadsTo(browser.post("/film/" + id, change)));
      }
      assertEquals(
          own.replace("permeance: 13.6, vlt", "permeance: 5.2, vlt")
              .replace("    permeance: 13.6\n", "    permeance: 5.2\n")
              .replace("permeance: 13.6} # last", "permeance: 5.2} # last"),
          Files.readString(films()));
      String version = Browser.version(browser.get("/film/harbor-50"));
      Files.writeString(films(), Files.readString(films()) + "# later\n");
      String theirs = Files.readString(films());
      HttpResponse<String> late =
          browser.post("/film/harbor-50", form(version, "permeance", "6.1"));
      assertEquals(409, late.statusCode());
      assertTrue(late.body().contains("value=\"6.1\""), "what was typed is kept");
      assertEquals(theirs, Files.readString(films()));
    }
  }

  @Test
  void whatIsWrongStandsAtItsFieldAndNothingIsWritten() throws IOException {
    try (Desk desk = open()) {
      Browser browser = new Browser(desk);
      String version = Browser.version(browser.get("/film?service=tint"));
      HttpResponse<String> answer =
          browser.post("/film", tern(version, "vlt", "150", "material", "", "name", "Tern"));
      assertEquals(422, answer.statusCode());
      assertTrue(
          Pattern.compile("id=\"vlt\"[^>]*><b class=\"wrong\">This has to be from 0 to 100")
              .matcher(answer.body())
              .find(),
          answer.body());
      assertTrue(
          Pattern.compile("id=\"material\"[^>]*><b class=\"wrong\">Please fill this in.")
              .matcher(answer.body())
              .find(),
          answer.body());
      assertFalse(Files.exists(films()));
    }
  }

  @Test
  void aChangeThatWouldBreakAJobIsRefused() throws IOException {
    try (Desk desk = open()) {
      Browser browser = new Browser(desk);
      String version = Browser.version(browser.get("/film/harbor-35"));
      HttpResponse<String> answer =
          browser.post("/film/harbor-35", form(version, "service", "paint-film"));
      assertEquals(422, answer.statusCode());
      assertTrue(answer.body().contains("<p class=\"warn\">"), answer.body());
      assertFalse(Files.exists(films()));
    }
    assertEquals(List.of(), errors());
  }

  @Test
  void theDaysStandBesideTheForm() throws IOException {
    try (Desk desk = open()) {
      Browser browser = new Browser(desk);
      HttpResponse<String> now = browser.get("/film/harbor-35");
      assertFalse(now.body().contains("was: "), now.body());
      Map<String, List<String>> look = form(Browser.version(now), "permeance", "3.4");
      look.put("do", List.of("look"));
      HttpResponse<String> then = browser.post("/film/harbor-35", look);
      // A quarter of the water goes through, so that haze takes longer; the glue does not care.
      assertTrue(days(then, "Haze is normal") > days(now, "Haze is normal"), then.body());
      assertEquals(days(now, "Windows stay up"), days(then, "Windows stay up"));
      assertTrue(then.body().contains("was: " + days(now, "Haze is normal") + " days"));
      assertTrue(then.body().contains("middle of November"), then.body());
      assertFalse(Files.exists(films()), "looking writes nothing");
    }
  }

  /** As Windows and scales write numbers in most of Europe; 38.1 micrometres are 1.5 mil. */
  @Test
  void aDecimalCommaIsAsGoodAsAPoint() throws IOException {
    try (Desk desk = open()) {
      Browser browser = new Browser(desk);
      String film = Browser.version(browser.get("/film?service=tint"));
      Map<String, List<String>> tern =
          tern(film, "thickness", "1,5 mil", "permeance", "0,5", "vlt", "15,5 %");
      assertEquals("/films?done=saved", Browser.leadsTo(browser.post("/film", tern)));
      String version = Browser.version(browser.get("/rules/tint"));
      // Nobody knows whether these are one day or a thousand hours.
      HttpResponse<String> unsure =
          browser.post("/rules/tint", form(version, "rules[1].floor", "1,000"));
      assertEquals(422, unsure.statusCode(), unsure.body());
      HttpResponse<String> saved =
          browser.post("/rules/tint", form(version, "rules[1].floor", "24,5"));
      assertEquals("/films?done=saved", Browser.leadsTo(saved), saved.body());
    }
    assertTrue(
        Files.readString(films()).contains("thickness: 38.1, permeance: 0.5, vlt: 15.5}"),
        Files.readString(films()));
    Path holds = shop().resolve("content/catalogue/holds.yaml");
    assertTrue(Files.readString(holds).contains("floor: 24.5, limit: 10}"));
    assertEquals(List.of(), errors());
  }

  @Test
  void theNumbersOfARuleAreChangedWhereTheyStand() throws IOException {
    Path holds = shop().resolve("content/catalogue/holds.yaml");
    String program = Files.readString(Path.of("content/catalogue/holds.yaml"));
    // The first rule: tint, windows-up, bond 48, floor 24, limit 10.
    try (Desk desk = open()) {
      Browser browser = new Browser(desk);
      HttpResponse<String> now = browser.get("/rules/tint");
      String version = Browser.version(now);
      Map<String, List<String>> form = form(version, "rules[1].floor", "240");
      form.put("do", List.of("look"));
      HttpResponse<String> then = browser.post("/rules/tint", form);
      assertEquals(10, days(then, "Windows stay up"), then.body());
      assertTrue(then.body().contains("was: " + days(now, "Windows stay up") + " days"));
      assertFalse(Files.exists(holds), "looking writes nothing");
      for (String wrong : List.of("", "many", "-1", "500")) {
        HttpResponse<String> refused =
            browser.post("/rules/tint", form(version, "rules[1].floor", wrong));
        assertEquals(422, refused.statusCode(), wrong);
        assertTrue(refused.body().contains("class=\"wrong\">"), refused.body());
        assertFalse(Files.exists(holds), wrong);
      }
      form = form(version, "rules[1].floor", "36", "rules[1].limit", "12", "rules[1].hold", "x");
      assertEquals("/films?done=saved", Browser.leadsTo(browser.post("/rules/tint", form)));
      assertEquals(409, browser.post("/rules/tint", form).statusCode());
      assertEquals(404, browser.get("/rules/nothing").statusCode());
    }
    assertEquals(
        program.replace(
            "windows-up, where: rolls, need: {bond: 48}, floor: 24, limit: 10}",
            "windows-up, where: rolls, need: {bond: 48}, floor: 36, limit: 12}"),
        Files.readString(holds));
    assertEquals(List.of(), errors());
  }

  private static int days(HttpResponse<String> page, String hold) {
    Matcher found =
        Pattern.compile("<b>" + hold + "</b> <span class=\"when\">([0-9]+) days?<")
            .matcher(page.body());
    assertTrue(found.find(), page.body());
    return Integer.parseInt(found.group(1));
  }
}
