package curewindow.desk;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.intake.ForeignTable;
import curewindow.intake.Intake;
import curewindow.intake.IntakePlan;
import curewindow.problem.Problems;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jsoup.Connection.KeyVal;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.FormElement;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The screens of the import: a table, how it is read, what becomes of its rows. */
class ImportScreenTest {

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

  private Document post(List<String> fields) {
    HttpResponse<String> answer = desk.post("/import", fields.toArray(String[]::new));
    assertTrue(List.of(200, 422).contains(answer.statusCode()), answer.statusCode() + "");
    return Jsoup.parse(answer.body());
  }

  private static String coded(byte[] bytes) {
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  private Document sent(byte[] table, String map) {
    return post(List.of("table", coded(table), "name", "Diary.csv", "map", map, "do", "read"));
  }

  private Document sent(String table) {
    return sent(table.getBytes(StandardCharsets.UTF_8), "");
  }

  /** A form as a browser sends it by a button, with some values changed. */
  private static List<String> form(Document page, String button, Map<String, String> changed) {
    List<String> fields = new ArrayList<>();
    for (KeyVal field : ((FormElement) page.selectFirst("main form")).formData()) {
      if (!changed.containsKey(field.key())) {
        fields.addAll(List.of(field.key(), field.value()));
      }
    }
    changed.forEach((name, value) -> fields.addAll(List.of(name, value)));
    fields.addAll(List.of("do", button));
    return fields;
  }

  private Document press(Document page, String button, Map<String, String> changed) {
    return post(form(page, button, changed));
  }

  private Document press(Document page, String button) {
    return press(page, button, Map.of());
  }

  private static List<String> rows(Document page) {
    return page.select(".rows tbody tr").stream()
        .map(
            r ->
                r.child(0).text()
                    + " "
                    + r.child(1).text()
                    + " "
                    + r.selectFirst("b").text()
                    + r.select("p").eachText())
        .toList();
  }

  private String map(String name) throws IOException {
    return Files.readString(desk.shop.resolve("imports/" + name + ".yaml"));
  }

  private Document previewed() {
    return press(sent(ImportedTable.bytes(), ""), "keep", Map.of("fixed.service", "tint"));
  }

  @Test
  void aTableIsReadAndItsGoodJobsAreThere() throws IOException {
    Document form = sent(ImportedTable.bytes(), "");
    assertEquals("diary", form.selectFirst("[name=map]").val());
    assertEquals(
        List.of("job", "first-name", "body", "paint", "pickup", "pickup", "film", "spots"),
        form.select("[name=column]").stream()
            .map(s -> s.selectFirst("option[selected]"))
            .limit(8)
            .map(Element::val)
            .toList());
    assertEquals("day-first", form.selectFirst("[name=dates] option[selected]").val());
    Document rows = press(form, "keep", Map.of("fixed.service", "tint"));
    assertEquals(3, rows(rows).size());
    assertTrue(rows(rows).get(0).startsWith("3 Q-3141 problem[Area: “Whole front” is not known"));
    assertTrue(rows(rows).get(1).startsWith("4 Q-3142 problem[Pick-up: The hour is missing"));
    assertEquals("2 Q-3140 good[]", rows(rows).get(2));
    assertEquals("Import the good job", rows.selectFirst("button.main").text());
    assertFalse(Files.exists(desk.shop.resolve("jobs/Q-3140.yaml")), "only looked at");
    Document done = press(rows, "take");
    assertEquals("1 job imported, from 1 row", done.selectFirst(".counts li").text());
    assertEquals("2 Q-3140 imported[]", rows(done).get(2));
    assertEquals(List.of(), done.select("button.main"), "nothing is left to import");
    assertEquals("Jörg", desk.loaded().job("Q-3140").orElseThrow().firstName());
    assertEquals(200, desk.get("/job/Q-3140").statusCode(), "the desk sees it at once");
    assertEquals("2 Q-3140 already there[]", rows(sent(ImportedTable.bytes(), "diary")).get(2));
  }

  /** Who took a column for another one sees it before anything is written. */
  @Test
  void whatWasReadFromAGoodRowStandsBesideIt() {
    Document rows = previewed();
    assertEquals(
        List.of(
            "J\u00F6rg \u00B7 sedan \u00B7 Dark",
            "Window tint \u00B7 Harbor 35 \u00B7 rear window \u00B7 H-1",
            "November 24, 2026, 2:30 PM",
            "November 24, 2026, 5 PM"),
        rows.select("tr.good td").stream()
            .skip(3)
            .map(cell -> cell.text().replace('\u00A0', ' '))
            .toList());
    assertEquals("5", rows.selectFirst("tr.left td[colspan]").attr("colspan"));
    assertEquals(3, rows.selectFirst("tr.left").select("td").size());
    assertEquals(7, press(rows, "take").select("tr.good td").size(), "also once it is imported");
  }

  /** The screen shows what the command would tell, in its own words, and offers the same rest. */
  @Test
  void theRowsAreThoseOfTheCommand() throws IOException {
    Document shown = previewed();
    ForeignTable table =
        ForeignTable.of("Diary.csv", ImportedTable.bytes(), new Problems()).orElseThrow();
    IntakePlan plan = Intake.plan(table, "diary", desk.loaded());
    List<String> told =
        plan.rows().stream()
            .flatMap(r -> r.problems().stream())
            .map(new ImportTold("Diary.csv", desk.loaded().words().of("en"))::text)
            .toList();
    assertEquals(told, shown.select(".rows p").eachText());
    HttpRequest.Builder request =
        DeskClient.sent(
            desk.at("/import"), DeskClient.form(form(press(shown, "take"), "rest", Map.of())));
    HttpResponse<byte[]> rest = desk.bytes(request);
    ImportTold words = new ImportTold("Diary.csv", desk.loaded().words().of("en"));
    assertArrayEquals(plan.rest(words::text).orElseThrow(), rest.body());
    assertEquals(
        "attachment; filename*=UTF-8''Diary-rest.csv",
        rest.headers().firstValue("Content-Disposition").orElseThrow());
    String text = new String(rest.body(), ImportedTable.CODING);
    assertEquals(3, text.lines().count(), text);
    String mended = text.replace("Whole front", "Rear window").replace("2026;;", "2026;16:00;");
    Document again = press(sent(mended.getBytes(ImportedTable.CODING), "diary"), "take");
    assertEquals("2 jobs imported, from 2 rows", again.selectFirst(".counts li").text());
  }

  @Test
  void oneNameOfTheirsMayBeSeveralOfOurs() throws IOException {
    Document form = sent(ImportedTable.bytes(), "");
    String front =
        form.select("[name=their.spots]").stream()
            .filter(i -> i.val().equals("Whole front"))
            .findFirst()
            .orElseThrow()
            .nextElementSibling()
            .selectFirst("input")
            .attr("name");
    List<String> fields =
        form(form, "keep", Map.of("fixed.service", "tint", "hour.pickup", "16:30"));
    fields.addAll(List.of(front, "windshield", front, "front-door-glass"));
    Document rows = press(post(fields), "take");
    assertEquals("3 jobs imported, from 3 rows", rows.selectFirst(".counts li").text());
    assertEquals(
        List.of("windshield", "front-door-glass"),
        desk.loaded().job("Q-3141").orElseThrow().items().get(0).spots());
    assertTrue(
        Files.readString(desk.shop.resolve("jobs/Q-3142.yaml")).contains("2026-11-24T16:30"));
    assertTrue(map("diary").contains("\"Whole front\": [\"windshield\", \"front-door-glass\"]"));
  }

  @Test
  void rowsMayBePasted() {
    Document form =
        post(List.of("rows", ImportedTable.TEXT.replace(';', '\t'), "map", "", "do", "read"));
    assertEquals("pasted", form.selectFirst("[name=map]").val());
    Document rows = press(form, "keep", Map.of("fixed.service", "tint"));
    assertEquals("2 Q-3140 good[]", rows(rows).get(2));
  }

  @Test
  void aTimeOfDayBeforeItsDayIsUnderstood() {
    String swapped =
        ImportedTable.TEXT
            .replace("Pick-up;Pick-up time", "Pick-up time;Pick-up")
            .replace("24/11/2026;17:00", "17:00;24/11/2026")
            .replace("24/11/2026;;", ";24/11/2026;");
    Document rows = press(sent(swapped), "keep", Map.of("fixed.service", "tint"));
    assertEquals("2 Q-3140 good[]", rows(rows).get(2), rows::text);
  }

  @Test
  void whatIsLackingIsToldAndNothingIsKept() {
    Document form = press(sent(ImportedTable.TEXT.replace("Done;", "Zz;")), "keep");
    assertEquals(
        "Still missing: Finished. Choose it for one of their columns, or under what is the same in"
            + " all rows.",
        form.select(".warn").text());
    assertFalse(Files.exists(desk.shop.resolve("imports/diary.yaml")));
    assertEquals("outside", form.selectFirst("[name=fixed.parking-day] option[selected]").val());
  }

  /** A column that is chosen by hand has names that nobody was asked for yet. */
  @Test
  void newNamesAreAskedForOnce() {
    Document form = sent(ImportedTable.TEXT.replace("Color", "Z").replace("black", "Kohle"));
    assertEquals(List.of(), form.select("[name=their.paint]"));
    List<String> fields = form(form, "keep", Map.of("fixed.service", "tint"));
    int column = fields.indexOf("Z") + 2;
    assertEquals("", fields.get(column), () -> fields.toString());
    fields.set(column, "paint");
    Document asked = post(fields);
    assertTrue(asked.text().contains("Now say what their names are called here."), asked.text());
    assertTrue(asked.select("[name=their.paint]").eachAttr("value").contains("Kohle"));
    Document rows = press(asked, "keep");
    assertTrue(rows(rows).stream().anyMatch(r -> r.startsWith("2 Q-3140 problem")), rows::text);
  }

  @Test
  void whatAPersonWroteIntoAMapIsNeverLost() throws IOException {
    Document rows = previewed();
    String own = map("diary") + "# Ask Mara about the rest.\n";
    Files.writeString(desk.shop.resolve("imports/diary.yaml"), own);
    Document form = press(rows, "change");
    assertEquals("diary-2", form.selectFirst("[name=map]").val());
    assertTrue(form.text().contains("diary has notes of its own"), form.text());
    press(form, "keep", Map.of("fixed.parking-day", "garage"));
    assertEquals(own, map("diary"));
    assertTrue(map("diary-2").contains("parking-day: \"garage\""));
    Document taken = press(form, "keep", Map.of("map", "diary", "fixed.parking-day", "garage"));
    assertTrue(taken.text().contains("There is one of this name already"), taken.text());
    assertEquals(own, map("diary"));
  }

  @Test
  void aMapIsChangedWhereNobodyElseDid() throws IOException {
    Document rows = previewed();
    Document form = press(rows, "change");
    Document other = press(rows, "change");
    assertEquals("diary", form.selectFirst("[name=map]").val());
    press(form, "keep", Map.of("fixed.parking-day", "garage"));
    String changed = map("diary");
    assertTrue(changed.contains("parking-day: \"garage\""), changed);
    Document late = press(other, "keep", Map.of("fixed.parking-day", "shade"));
    assertTrue(late.text().contains("it is another by now"), late.text());
    assertEquals(changed, map("diary"));
    assertEquals("shade", late.selectFirst("[name=fixed.parking-day] option[selected]").val());
  }

  /** Names that this table does not have are still there for the next one that does. */
  @Test
  void namesOfOtherTablesAreKept() throws IOException {
    previewed();
    String other = ImportedTable.TEXT.replace("black", "Nacht").replace("white", "Nacht");
    Document rows = sent(other.getBytes(StandardCharsets.UTF_8), "diary");
    Document form = press(rows, "change");
    assertEquals(List.of("Nacht"), form.select("[name=their.paint]").eachAttr("value"));
    press(form, "keep", Map.of("ours.paint.0", "dark"));
    assertTrue(map("diary").contains("\"Nacht\": \"dark\""), map("diary"));
    assertTrue(map("diary").contains("\"black\": \"dark\""), map("diary"));
  }

  @Test
  void ofALongTableWhatHasAProblemIsSeen() {
    StringBuilder table = new StringBuilder(ImportedTable.TEXT.lines().findFirst().orElseThrow());
    String good = ImportedTable.TEXT.lines().skip(1).findFirst().orElseThrow();
    IntStream.range(0, 500)
        .forEach(i -> table.append("\r\n").append(good.replace("Q-3140", "Q-" + (4000 + i))));
    table.append("\r\n").append(good.replace("Rear window", "Nowhere"));
    Document rows = press(sent(table.toString()), "keep", Map.of("fixed.service", "tint"));
    assertEquals(ImportRows.SHOWN, rows(rows).size());
    assertTrue(rows(rows).get(0).startsWith("502 Q-3140 problem"), rows(rows).get(0));
    assertTrue(rows.text().contains("301 more rows are not shown."), rows.text());
    assertEquals("Import the 500 good jobs", rows.selectFirst("button.main").text());
  }

  @Test
  void whatIsNoTableIsToldWithoutAFault() {
    assertTrue(post(List.of("do", "read")).text().contains("Choose a file or paste some rows"));
    Document line = post(List.of("rows", "just a line", "do", "read"));
    assertTrue(line.text().contains("There is no row below the names of the columns"), line.text());
    assertEquals("just a line", line.selectFirst("textarea").wholeText(), "nothing is lost");
    Document code = post(List.of("table", "!!", "name", "x", "do", "read"));
    assertTrue(code.text().contains("Choose a file or paste some rows"), code.text());
    Document large = post(List.of("table", "A".repeat(SentTable.MOST / 3 * 4 + 8), "do", "read"));
    assertTrue(large.text().contains("too large for the desk"), large.text());
    Document bytes = sent(new byte[] {0, -1, 10, 13, 34, 10, 44}, "");
    assertEquals(1, bytes.select("main form").size());
  }

  @Test
  void whatATableHoldsIsNeverTakenForHtml() {
    String bad = "<script>alert(1)</script>";
    Document form =
        post(
            List.of(
                "table",
                coded(
                    (ImportedTable.TEXT.replace("Price", bad).replace("black", bad))
                        .getBytes(StandardCharsets.UTF_8)),
                "name",
                "../../" + bad + ".csv",
                "do",
                "read"));
    assertEquals(1, form.select("script").size(), "its own");
    assertTrue(form.text().contains(bad), form.text());
    Document rows = press(form, "keep", Map.of("fixed.service", "tint"));
    assertEquals(1, rows.select("script").size(), "its own");
    assertTrue(rows(rows).stream().anyMatch(r -> r.contains(bad)), rows::text);
  }

  @Test
  void aTableThatMayBeAnythingHasALargestSize() {
    assertTrue(SentTable.MOST * 4L / 3 + 400_000 < 8L << 20, "with what else a form has");
  }

  @Test
  void itSpeaksSpanish() {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(desk.at("/import")).header("Cookie", "language=es");
    Document page = Jsoup.parse(desk.send(request).body());
    assertEquals("Importar", page.selectFirst("h1").text());
    assertTrue(page.text().contains("Un archivo (CSV)"), page.text());
  }
}
