package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import curewindow.Npm;
import curewindow.page.Browser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The rules of axe-core (npm {@code axe-core}), which checks pages by the Web Content Accessibility
 * Guidelines, on every kind of page in a real browser, with everything opened that can be opened.
 */
class AccessibilityTest {

  private static final Instant WAITING = Instant.parse("2026-11-26T20:00:00Z");

  /** A size of 24 pixels for what is touched is asked for by WCAG 2.2, 2.5.8. */
  private static final String EVERYTHING = "{rules:{'target-size':{enabled:true}}}";

  /** What colors can spoil; the other rules do not depend on them. */
  private static final String COLORS = "{runOnly:['cat.color']}";

  private static final String RUN =
      "return axe.run(document,%s).then(r=>r.violations.flatMap(v=>"
          + "v.nodes.map(n=>v.id+' '+n.target+' '+n.html.slice(0,120))))";

  private static Browser browser;
  private static String axe;

  @BeforeAll
  static void open() throws IOException {
    axe = Files.readString(Npm.file("axe-core/axe.min.js"));
    browser = Browser.open();
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "ar"})
  void nothingIsAgainstTheRules(String language) throws IOException {
    List<String> found = new ArrayList<>();
    Map<String, Path> kinds = new TreeMap<>(PressedDemo.get().kinds(language));
    browser.clock(WAITING).prefers("prefers-color-scheme", "light");
    for (Map.Entry<String, Path> kind : kinds.entrySet()) {
      browser.screen(390, 844, true).go(kind.getValue());
      browser.run("document.querySelectorAll('details').forEach(d=>d.open=true)");
      browser.run(axe);
      for (int width : List.of(390, 1280)) {
        browser.screen(width, 844, width < 800);
        for (String colors : List.of("light", "dark")) {
          browser.prefers("prefers-color-scheme", colors);
          for (String violation : against(colors.equals("light") ? EVERYTHING : COLORS)) {
            found.add(kind.getKey() + " " + colors + " " + width + ": " + violation);
          }
        }
        browser.prefers("forced-colors", "active");
        against(COLORS).forEach(v -> found.add(kind.getKey() + " forced " + width + ": " + v));
      }
    }
    assertEquals(List.of(), found, () -> String.join("\n", found));
  }

  /**
   * Where the phone sets its own few colors, the bars have them, too (CSS Color Adjustment 1, 3).
   */
  @Test
  void barsAreSeenInForcedColors() throws IOException {
    browser.clock(WAITING).prefers("forced-colors", "active");
    browser.screen(390, 844, true).go(PressedDemo.get().kinds("en").get("job"));
    assertEquals(
        List.of("CanvasText", "GrayText", "Highlight"),
        browser.run(
            "var e=document.body.appendChild(document.createElement('p')),"
                + "is=(s,c)=>{e.style.color=c;return getComputedStyle(document.querySelector(s)).fill"
                + "===getComputedStyle(e).color?c:s};return [is('.bar .sure','CanvasText'),"
                + "is('.bar .may','GrayText'),is('.bar .at','Highlight')]"));
    browser.prefers("prefers-color-scheme", "light");
  }

  @Test
  void aMistakeIsSeen(@TempDir Path temp) throws IOException {
    String page =
        "<!DOCTYPE html><html lang=en><title>x</title><main><h1>x</h1>"
            + "<p style='color:#999;background:#fff'>pale</p></main></html>";
    browser.prefers("prefers-color-scheme", "light");
    browser.go(Files.writeString(temp.resolve("index.html"), page)).run(axe);
    String wrong = "color-contrast p <p style=\"color:#999;background:#fff\">pale</p>";
    assertEquals(List.of(wrong), against(EVERYTHING));
    assertEquals(List.of(wrong), against(COLORS));
  }

  private static List<String> against(String rules) {
    List<?> found = (List<?>) browser.run(String.format(RUN, rules));
    return found.stream().map(Object::toString).toList();
  }
}
