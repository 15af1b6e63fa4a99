package curewindow.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jsoup.Connection.KeyVal;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.FormElement;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Another language is the same screen in other words, with all that was typed. */
class LanguageSwitchTest {

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

  /** What the button at the foot sends: the form that it belongs to, with some fields changed. */
  private HttpResponse<String> pressed(Document page, Map<String, String> typed) {
    Element button = page.selectFirst("footer button[name=speak]");
    FormElement form = (FormElement) page.getElementById(button.attr("form"));
    List<String> fields = new ArrayList<>();
    for (KeyVal field : form.formData()) {
      if (!field.key().equals("speak")) {
        String value = typed.getOrDefault(field.key(), field.value());
        fields.addAll(List.of(field.key(), value));
      }
    }
    fields.addAll(List.of("speak", button.val()));
    return desk.post(form.attr("action"), fields.toArray(String[]::new));
  }

  private Document page(String path) {
    return Jsoup.parse(desk.get(path).body());
  }

  private static void assertSpeaksSpanishNow(HttpResponse<String> answer) {
    assertEquals(
        "language=es; Path=/; SameSite=Strict; Max-Age=31536000",
        answer.headers().firstValue("Set-Cookie").orElseThrow());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/",
        "/films",
        "/find?q=Jos%C3%A9+%26+H35-0611",
        "/calls?since=2026-11-01",
        "/job/Q-3101",
        "/job/Q-3101/hand-over"
      })
  void aScreenWithoutAFormIsGoneToAgain(String path) {
    HttpResponse<String> answer = pressed(page(path), Map.of());
    assertEquals(303, answer.statusCode());
    assertEquals(path, answer.headers().firstValue("Location").orElseThrow());
    assertSpeaksSpanishNow(answer);
  }

  /** An answer never leads to another host, whatever a form says. */
  @ParameterizedTest
  @ValueSource(strings = {"//elsewhere.example/", "https://elsewhere.example/", "/\\elsewhere", ""})
  void nobodyIsLedElsewhere(String back) {
    HttpResponse<String> answer = desk.post("/language", "speak", "es", "back", back);
    assertEquals("/", answer.headers().firstValue("Location").orElseThrow());
  }

  private Document again(String path, String field, String typed) {
    HttpResponse<String> answer = pressed(page(path), Map.of(field, typed));
    assertEquals(200, answer.statusCode(), answer.body());
    assertSpeaksSpanishNow(answer);
    Document page = Jsoup.parse(answer.body());
    assertEquals("es", page.selectFirst("html").attr("lang"));
    assertEquals(typed, page.selectFirst("[name=" + field + "]").val());
    return page;
  }

  @Test
  void aHalfFilledFormStaysAsItIs() throws IOException {
    assertEquals("Auto nuevo", again("/new", "first-name", "Ines").selectFirst("h1").text());
    again("/new?as=Q-3101", "id", "Q-3999");
    again("/film?service=tint", "name", "Tern 40");
    again("/film/harbor-35", "thickness", "40");
    again("/shop", "phone", "+1 206 555 0177");
    Document rules = page("/rules/tint");
    again("/rules/tint", rules.selectFirst("main form .row input").attr("name"), "77");
    assertFalse(Files.exists(desk.shop.resolve("jobs/Q-3999.yaml")), "nothing is saved");
    assertFalse(Files.exists(desk.shop.resolve("content/catalogue/films.yaml")));
  }

  /** A change of a car goes on from the version that it began with. */
  @Test
  void aChangeIsSavedAfterTheLanguage() throws IOException {
    Document page = again("/job/Q-3101/change", "first-name", "Vera");
    FormElement form = (FormElement) page.getElementById("job");
    List<String> fields = new ArrayList<>();
    form.formData().forEach(f -> fields.addAll(List.of(f.key(), f.value())));
    fields.addAll(List.of("do", "save"));
    HttpResponse<String> saved = desk.post(form.attr("action"), fields.toArray(String[]::new));
    assertEquals(303, saved.statusCode(), saved.body());
    assertTrue(Files.readString(desk.shop.resolve("jobs/Q-3101.yaml")).contains("Vera"));
  }

  private Document posted(String... fields) {
    return Jsoup.parse(desk.post("/import", fields).body());
  }

  @Test
  void anImportGoesOnWhereItWas() {
    Document start = page("/import");
    Document again = Jsoup.parse(pressed(start, Map.of("rows", ImportedTable.TEXT)).body());
    assertTrue(again.selectFirst("textarea").wholeText().startsWith("Order no"));
    assertEquals("Importar", again.selectFirst("h1").text());
    Document map = posted("rows", ImportedTable.TEXT, "map", "", "do", "read");
    Document mapped =
        Jsoup.parse(pressed(map, Map.of("fixed.service", "tint", "between", "+")).body());
    assertEquals("Cómo se lee la tabla", mapped.selectFirst("h1").text());
    assertEquals("+", mapped.selectFirst("[name=between]").val());
    assertFalse(Files.exists(desk.shop.resolve("imports/pasted.yaml")), "nothing is kept");
    List<String> fields = new ArrayList<>();
    ((FormElement) mapped.getElementById("import-map"))
        .formData()
        .forEach(f -> fields.addAll(List.of(f.key(), f.value())));
    fields.addAll(List.of("do", "keep"));
    Document rows = posted(fields.toArray(String[]::new));
    Document preview = Jsoup.parse(pressed(rows, Map.of()).body());
    assertEquals("Qué pasaría con las filas", preview.selectFirst("h1").text());
    assertEquals(3, preview.select(".rows tbody tr").size());
  }
}
