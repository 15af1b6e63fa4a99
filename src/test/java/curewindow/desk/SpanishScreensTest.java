package curewindow.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.site.CalledShop;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.TextNode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * No screen of the Spanish desk says anything in English unmarked, though the shop and its
 * customers speak English. What people typed is invented without the words that are looked for.
 */
class SpanishScreensTest {

  /** Words of English sentences and dates that no Spanish text has. */
  private static final Pattern ENGLISH =
      Pattern.compile(
          "\\b(the|and|of|with|until|since|is|are|was|were|be|this|that|from|for|you|your|their|it"
              + "|what|when|where|which|will|may|on|at|by|to|days?|hours?|cars?|windows?|wait|not"
              + "|page|card|file|files|shop|missing|check|write|add|mon|tue|wed|thu|fri|sat|sun"
              + "|monday|tuesday|wednesday|thursday|friday|saturday|sunday"
              + "|january|february|april|june|july|august|november|december|germany|egypt)\\b",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CHARACTER_CLASS);

  /** What is no sentence: addresses, names of files and commands, what people typed. */
  private static final Pattern NO_SENTENCE =
      Pattern.compile(
          "https?://\\S+|sftp://\\S+|\\S+@\\S+|[\\w/-]+[.](yaml|csv|pem)|/\\S+|--\\S+|curewindow"
              + "|CUREWINDOW\\w+|comando (check|import|send)|Quillhaven Film & Coatings"
              + "|“[^”]*”|Pick-up( time)?|Order no|Rear window|Whole front"
              + "|Newfoundland and Labrador|District of Columbia");

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

  private void again() throws IOException {
    desk.close();
    desk = DeskClient.open(folder, DeskClient.NOW);
  }

  private Document get(String path) {
    return page(HttpRequest.newBuilder(desk.at(path)));
  }

  private Document post(String path, String... fields) {
    return page(DeskClient.sent(desk.at(path), DeskClient.form(List.of(fields))));
  }

  private Document page(HttpRequest.Builder request) {
    return Jsoup.parse(desk.send(request.header("Cookie", "language=es")).body());
  }

  /** All that a person reads or hears of a screen, but for what is marked as another language. */
  private static List<String> texts(Document page) {
    List<String> texts = new ArrayList<>();
    for (Element element : page.getAllElements()) {
      if (element.closest("[lang]:not([lang=es])") != null) {
        continue;
      }
      element.textNodes().stream().map(TextNode::text).forEach(texts::add);
      for (String name : List.of("aria-label", "title", "placeholder", "alt", "data-copied")) {
        texts.add(element.attr(name));
      }
    }
    return texts;
  }

  private static void assertSpanish(Document page) {
    assertEquals("es", page.selectFirst("html").attr("lang"), page.text());
    for (String text : texts(page)) {
      String said = NO_SENTENCE.matcher(text.replace('\u00A0', ' ')).replaceAll("");
      assertTrue(!ENGLISH.matcher(said).find(), () -> page.title() + ": " + text);
    }
  }

  /** Q-3101 was promised too much, Q-3300 cannot be read, Q-3301 is gone. */
  private void somethingToTell() throws IOException {
    desk.pressed("Q-3101");
    Files.writeString(
        desk.shop.resolve("printed-dates.csv"),
        """
        job,hold,state,date,printed
        Q-3101,windows-up,safe-by,2026-11-26T09:00-08:00,2026-11-24T17:00
        Q-3101,defroster,safe-by,2026-11-26T10:00-08:00,2026-11-24T17:00
        """);
    Files.writeString(desk.shop.resolve("jobs/Q-3300.yaml"), "id: Q-3300\nfirst-name: [\n");
    again();
  }

  @Test
  void theScreensOfTheDay() throws IOException {
    somethingToTell();
    Document today = get("/");
    assertEquals(2, today.select("#h-calls ~ ul li").size(), today.text());
    assertTrue(today.text().contains("Q-3300"), today.text());
    assertSpanish(today);
    assertSpanish(get("/find?q=q-31"));
    assertSpanish(get("/find?q=zzz"));
    assertSpanish(get("/job/Q-3300"));
    assertSpanish(get("/nowhere"));
    post("/job/Q-3101/told", "hold", "windows-up", "date", now("windows-up", today));
    post("/job/Q-3101/called", "question", "other", "outcome", "solved");
    for (String job : List.of("Q-3101", "Q-3102", "Q-3108")) {
      assertSpanish(get("/job/" + job));
      assertSpanish(get("/job/" + job + "/change"));
      assertSpanish(get("/job/" + job + "/hand-over"));
    }
    assertTrue(get("/job/Q-3101").select("dl.facts").text().contains("Se lo dijimos."));
  }

  private static String now(String hold, Document today) {
    return today.selectFirst("form:has(input[value=" + hold + "]) input[name=date]").attr("value");
  }

  @Test
  void theScreensOfACar() {
    assertSpanish(get("/new"));
    assertSpanish(get("/new?as=Q-3101"));
    for (String film : List.of("harbor-35", "fieldcoat-gloss")) {
      String[] car = DeskClient.car("Q-3118", film, "do", "look", "car.text", "");
      assertSpanish(post("/new", car));
      post("/new", DeskClient.car("Q-3118", film, "car.text", ""));
      assertSpanish(get("/job/Q-3118"));
      assertSpanish(get("/job/Q-3118/hand-over"));
    }
    Document today = get("/");
    assertEquals("Miércoles, 25 de noviembre", today.selectFirst("h1").text());
    String pickups = today.select("#h-pickups ~ ul").text();
    assertTrue(pickups.contains("camioneta familiar") && !pickups.contains("wagon"), pickups);
  }

  /** What a person can mend in a file by hand is said, and not only by the command. */
  @Test
  void whatIsWrongInAFileIsSaid() throws IOException {
    Path file = desk.shop.resolve("jobs/Q-3300.yaml");
    Files.writeString(file, "id: Q-3300\nfirst-name: [\n");
    again();
    String broken = get("/job/Q-3300").select("main").text();
    assertTrue(broken.contains("línea 3: Aquí o en la línea de arriba falta"), broken);
  }

  @Test
  void theScreensOfTheShop() {
    assertSpanish(get("/shop"));
    for (String town : List.of("Munich", "Cairo", "47.6, -122.3", "Sevile")) {
      assertSpanish(post("/shop", "do", "look", "town", town, "name", "Quillhaven", "version", ""));
    }
    assertSpanish(get("/films"));
    assertSpanish(get("/film"));
    assertSpanish(get("/film/harbor-35"));
    assertSpanish(get("/film/harbor-35/remove"));
    for (String service : List.of("tint", "paint-film", "wrap", "coating")) {
      assertSpanish(get("/rules/" + service));
    }
  }

  @Test
  void theScreensOfAnImport() {
    assertSpanish(get("/import"));
    Document map = post("/import", "rows", ImportedTable.TEXT, "map", "", "do", "read");
    assertSpanish(map);
    List<String> form = new ArrayList<>();
    ((org.jsoup.nodes.FormElement) map.selectFirst("main form"))
        .formData()
        .forEach(f -> form.addAll(List.of(f.key(), f.value())));
    form.addAll(List.of("do", "keep"));
    Document rows = post("/import", form.toArray(String[]::new));
    assertTrue(rows.text().contains("Q-3140"), rows.text());
    assertSpanish(rows);
  }

  @Test
  void theCallsOfAShop() throws IOException {
    Path called = Files.createDirectories(folder.resolve("called/shop"));
    CalledShop.layOut(called);
    desk.close();
    desk = DeskClient.open(folder.resolve("called"), CalledShop.CLOCK.instant());
    Document calls = get("/calls?since=&changed=2026-10-16");
    assertTrue(calls.select("table").size() > 3, calls.text());
    assertSpanish(calls);
  }

  /** Whoever changes the language after a press reads what came of it in that one. */
  @Test
  void whatCameOfAPressIsSaidInTheLanguageOfWhoLooks() throws IOException {
    Path file = desk.shop.resolve("shop.yaml");
    Files.writeString(
        file,
        Files.readString(file).replaceFirst("(?s)send:.*", "") + "send:\n  to: /no/such/folder\n");
    again();
    String at = desk.post("/job/Q-3101/press").headers().firstValue("Location").orElseThrow();
    assertTrue(desk.page(at).contains("Nothing was sent: /no/such/folder"), desk.page(at));
    Document spanish = get(at);
    assertTrue(spanish.select(".steps").text().contains("No se envió nada"), spanish.text());
    assertSpanish(spanish);
  }
}
