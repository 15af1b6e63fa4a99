package curewindow.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problems;
import curewindow.shop.ShopFiles;
import curewindow.shop.YamlTexts;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Connection.KeyVal;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.FormElement;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is typed wrong on the Spanish desk is told in Spanish, in words of the desk's own. */
class SpanishDeskTest {

  private static final String TEXTS = "content/words/es/desk.yaml";

  /** What says only where something is wrong; no form may come to that. */
  private static final String UNSAID = "desk.problem-unsaid";

  /** What people type into a field that wants something else. */
  private static final List<String> BAD =
      List.of(
          "",
          "abc",
          "-5",
          "0.5",
          "99999999",
          "25:99",
          "31/02/2026",
          "1999-01-01",
          "1999-01-01T10:00",
          "2026-02-31T10:00",
          "2026-11-25T10:00+18:00",
          "a@b",
          "Ab\u0007c",
          "\u201Cmal\u201D: &#",
          "x".repeat(1500));

  /** The same for screens that try much of what they are told. */
  private static final List<String> FEW = List.of("", "abc", "99999999", "x".repeat(1500));

  @TempDir Path folder;
  private DeskClient desk;
  private final List<Pattern> texts = new ArrayList<>();

  @BeforeEach
  void open() throws IOException {
    desk = DeskClient.open(folder);
    Map<String, String> all =
        YamlTexts.read(new ShopFiles(Path.of("no-such-shop")), TEXTS, new Problems()).orElseThrow();
    all.forEach((key, text) -> pattern(key, text));
  }

  /**
   * A text with anything where it has a value; one that is hardly more than a value tells nothing.
   */
  private void pattern(String key, String text) {
    if (key.equals(UNSAID) || key.startsWith("desk.problem-line")) {
      return;
    }
    String[] parts = text.replaceAll("\\{(?:[^{}]|\\{[^{}]*})*}", "\u0000").split("\u0000", -1);
    if (String.join("", parts).replaceAll("[^\\p{L}]", "").length() < 6) {
      return;
    }
    String pattern = String.join(".*", Stream.of(parts).map(Pattern::quote).toList());
    texts.add(Pattern.compile("(?:[^:]{1,60}: )?" + pattern));
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private HttpResponse<String> spanish(HttpRequest.Builder request) {
    return desk.send(request.header("Cookie", "language=es"));
  }

  private Document get(String path) {
    return Jsoup.parse(spanish(HttpRequest.newBuilder(desk.at(path))).body());
  }

  private Document post(String path, List<String> fields) {
    HttpResponse<String> answer = spanish(DeskClient.sent(desk.at(path), DeskClient.form(fields)));
    assertTrue(List.of(200, 303, 409, 422).contains(answer.statusCode()), answer.body());
    return Jsoup.parse(answer.body());
  }

  /** All fields of a form that are typed or chosen, each with another value; all else stays. */
  private static List<String> form(Document page, UnaryOperator<String> other) {
    List<String> fields = new ArrayList<>();
    FormElement form = (FormElement) page.selectFirst("main form");
    for (KeyVal field : form.formData()) {
      boolean hidden =
          form.select("[type=hidden],button").stream()
              .anyMatch(e -> e.attr("name").equals(field.key()));
      fields.addAll(List.of(field.key(), hidden ? field.value() : other.apply(field.value())));
    }
    fields.addAll(List.of("do", "save"));
    return fields;
  }

  private static List<String> said(Document page) {
    return page
        .select(
            "main .wrong, main .warn:not([hidden]) > *, main .warn:not([hidden]), td > p, main details li")
        .stream()
        .filter(e -> e.parents().stream().noneMatch(p -> p.id().equals("beside")))
        .filter(e -> !e.hasClass("warn") || e.children().isEmpty())
        .map(e -> e.selectFirst("> b") != null ? e.selectFirst("> b").text() : e.text())
        .filter(text -> !text.isBlank())
        .toList();
  }

  private List<String> assertSpanish(Document page) {
    List<String> said = said(page);
    for (String text : said) {
      assertTrue(texts.stream().anyMatch(p -> p.matcher(text).matches()), text);
      assertFalse(text.contains("{"), text);
    }
    return said;
  }

  /** What is said of a screen whose fields all have something wrong in them. */
  private TreeSet<String> spoilt(String path, List<String> values, String... cases) {
    TreeSet<String> said = new TreeSet<>();
    for (String bad : values) {
      said.addAll(assertSpanish(post(path, form(get(path), value -> bad))));
    }
    for (int i = 0; i < cases.length; i += 2) {
      List<String> fields = form(get(path), value -> value);
      int at = fields.indexOf(cases[i]);
      assertTrue(at >= 0, cases[i]);
      fields.set(at + 1, cases[i + 1]);
      said.addAll(assertSpanish(post(path, fields)));
    }
    return said;
  }

  @Test
  void aFilmThatCannotBeIsToldInSpanish() {
    TreeSet<String> said = spoilt("/film/harbor-35", FEW, "vlt", "150", "thickness", "fine");
    assertTrue(said.contains("Tiene que estar entre 0 y 100."), said::toString);
    assertTrue(said.contains("Tiene que ser un número de 1 a 1000."), said::toString);
    assertTrue(said.contains("Falta este dato."), said::toString);
  }

  /** A film that is taken for other work leaves jobs without a film. */
  @Test
  void aFilmThatBreaksJobsIsToldInSpanishWithTheirFiles() {
    List<String> fields = form(get("/film/harbor-35"), v -> v.equals("tint") ? "wrap" : v);
    List<String> said = assertSpanish(post("/film/harbor-35", fields));
    assertTrue(
        said.stream().anyMatch(t -> t.matches("jobs.*, línea \\d+: Esta película es .*")),
        said::toString);
  }

  @Test
  void aRuleThatCannotBeIsToldInSpanish() {
    Document page = get("/rules/tint");
    String floor = page.selectFirst("input[name$=.floor]").attr("name");
    TreeSet<String> said = spoilt("/rules/tint", FEW, floor, "19999");
    assertTrue(said.stream().anyMatch(t -> t.startsWith("El máximo de días")), said::toString);
    assertTrue(said.contains("Tiene que ser un número de 0 a 20000."), said::toString);
  }

  @Test
  void aShopThatCannotBeIsToldInSpanish() {
    TreeSet<String> said =
        spoilt(
            "/shop", BAD, "phone", "12", "email", "nadie", "address", "casa", "closed", "manana");
    assertTrue(said.stream().anyMatch(t -> t.startsWith("No es un número de tel")), said::toString);
    assertTrue(said.stream().anyMatch(t -> t.startsWith("No es un correo")), said::toString);
    assertTrue(said.stream().anyMatch(t -> t.startsWith("No es un día.")), said::toString);
  }

  @Test
  void aCarThatCannotBeIsToldInSpanish() {
    TreeSet<String> said = spoilt("/new", BAD);
    assertTrue(said.contains("No es un día con su hora."), said::toString);
    TreeSet<String> change =
        spoilt("/job/Q-3101/change", List.of(), "car.year", "1999.5", "car.year", "1700");
    assertTrue(change.contains("Tiene que ser un número entero de 1886 a 2100."), change::toString);
  }

  private Document read(String table, String map) {
    return post("/import", List.of("rows", table, "map", map, "do", "read"));
  }

  private static List<String> button(Document page, String button) {
    List<String> fields = form(page, value -> value);
    fields.set(fields.size() - 1, button);
    return fields;
  }

  @Test
  void whatIsWrongWithATableIsToldInSpanish() {
    assertSpanish(post("/import", List.of("do", "read")));
    assertSpanish(read("just a line", ""));
    assertSpanish(read("\"a;b\n1;2\n", ""));
    assertSpanish(read("a;b\n1;2\n", ""));
    Document lacking = post("/import", button(read("a;b\n1;2\n", ""), "keep"));
    assertTrue(assertSpanish(lacking).get(0).startsWith("Nada dice: "));
    String unsure = ImportedTable.TEXT.replace("24/11/2026", "04/11/2026");
    Document days =
        post("/import", button(post("/import", button(read(unsure, ""), "names")), "keep"));
    assertTrue(
        assertSpanish(days).stream().anyMatch(t -> t.startsWith("Los días de “Pick-up”")),
        days.text());
  }

  /** One table with all that can be wrong with a row. */
  @Test
  void whatIsWrongWithARowIsToldInSpanish() throws IOException {
    Document rows = post("/import", button(read(ImportedTable.TEXT, ""), "keep"));
    assertEquals("Qué pasaría con las filas", rows.selectFirst("h1").text());
    assertSpanish(rows);
    String head = ImportedTable.TEXT.lines().findFirst().orElseThrow() + "\n";
    String good = ImportedTable.TEXT.lines().skip(1).findFirst().orElseThrow();
    UnaryOperator<String> to = id -> good.replace("Q-3140", id);
    List<String> bad =
        List.of(
            to.apply("Q-1").replace("Harbor 35", "Nube 35"),
            to.apply("Q-2").replace("Harbor 35", ""),
            to.apply("Q-3").replace(";250", ";250;x;y"),
            to.apply("").replace("Mara", "Ines"),
            to.apply("Q 5"),
            to.apply("Q-6").replace("Jörg", "Jö\uFFFDrg"),
            to.apply("Q-7"),
            to.apply("Q-7").replace("Jörg", "Otra"),
            to.apply("q-8"),
            to.apply("Q-8"),
            to.apply("Q-3101"),
            to.apply("Q-9").replace("14:30", "14:30 o 15:00"),
            to.apply("Q-10").replace("H-1", "H".repeat(10_001)),
            to.apply("Q-11").replace("sedan", ""),
            to.apply("Q-12").replace("17:00", "9:00"),
            to.apply("Q-13").replace("H-1", "\"H\"1"));
    Document told = read(head + String.join("\n", bad) + "\n", "pasted");
    List<String> said = assertSpanish(told);
    assertTrue(said.size() > 14, said::toString);
    assertTrue(said.stream().anyMatch(t -> t.startsWith("Product: Aquí no se conoce “Nube 35”")));
    HttpResponse<String> rest =
        spanish(DeskClient.sent(desk.at("/import"), DeskClient.form(button(told, "rest"))));
    assertTrue(rest.body().contains("Aquí no se conoce"), rest.body());
    assertFalse(rest.body().contains("no film is called"), rest.body());
  }

  @Test
  void whatIsWrongWithAMapIsToldInSpanish() throws IOException {
    post("/import", button(read(ImportedTable.TEXT, ""), "keep"));
    Path map = desk.shop.resolve("imports/pasted.yaml");
    String good = Files.readString(map);
    Map<String, String> forms = new TreeMap<>();
    forms.put("hour.pickup", "25:99");
    forms.put("fixed.car", "x".repeat(300));
    forms.put("fixed.job", "Q-1");
    forms.put("fixed.batch", "a\u0007b");
    for (Map.Entry<String, String> bad : forms.entrySet()) {
      List<String> fields = button(read(ImportedTable.TEXT, ""), "keep");
      fields.addAll(0, List.of(bad.getKey(), bad.getValue()));
      List<String> said = assertSpanish(post("/import", fields));
      assertFalse(said.isEmpty(), bad.getKey());
    }
    Files.writeString(map, good.replace("\"Roll\"", "\"Rolle\""));
    assertTrue(
        assertSpanish(read(ImportedTable.TEXT, "pasted")).get(0).contains("no tiene una columna"));
  }

  /** A folder in which somebody else is at work for long. */
  @Test
  void whatCannotBeWrittenIsToldInSpanish() throws IOException {
    Document rows = post("/import", button(read(ImportedTable.TEXT, ""), "keep"));
    Path jobs = desk.shop.resolve("jobs");
    try {
      assertTrue(jobs.toFile().setWritable(false));
      if (!Files.isWritable(jobs)) {
        assertTrue(
            assertSpanish(post("/import", button(rows, "take")))
                .get(0)
                .startsWith("No se pudo guardar."));
      }
    } finally {
      assertTrue(jobs.toFile().setWritable(true));
    }
  }
}
