package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** Whatever is merged, each case can be read out of it again, to the letter. */
class MergedHtmlTest {

  private static String text(String html) {
    return Jsoup.parse(html).text();
  }

  /** What is seen of merged HTML in a case. */
  private static String in(String merged, int number) {
    Document page = Jsoup.parse(merged);
    for (Element marked : page.select("[data-p]")) {
      if (!List.of(marked.attr("data-p").split(" ")).contains(String.valueOf(number))) {
        marked.remove();
      }
    }
    return page.text();
  }

  private static String check(List<String> cases) {
    String merged = MergedHtml.of(cases);
    for (int i = 0; i < cases.size(); i++) {
      assertEquals(text(cases.get(i)), in(merged, i), merged);
    }
    Document still = Jsoup.parse(merged);
    still.select("[hidden]").remove();
    assertEquals(text(cases.get(0)), still.text(), "the first is shown");
    return merged;
  }

  @Test
  void whatIsAlikeStandsOnce() {
    String html = "<p>Keep it dry.\n<ul>\n<li>No soap.\n</ul>";
    assertEquals(html, MergedHtml.of(List.of(html, html, html)));
    assertEquals(html, MergedHtml.of(List.of(html)));
  }

  /** Each line is looked into once, not once for every other line: it was most of a press. */
  @Test
  void longTextsAreMergedSoon() {
    String html =
        IntStream.range(0, 4000)
            .mapToObj(i -> "<p data-from=\"%d\">Line %d of a long text.</p>".formatted(i, i))
            .collect(Collectors.joining("\n"));
    assertTimeoutPreemptively(
        Duration.ofSeconds(5), () -> assertEquals(html, MergedHtml.of(List.of(html, html))));
  }

  @Test
  void onlyTheWordsThatDifferAreMarked() {
    String merged =
        check(
            List.of(
                "<p>Leave the windows up until Fri, Dec 4, 2 PM. Then roll them down.</p>",
                "<p>Leave the windows up until Sat, Dec 5, 2 PM. Then roll them down.</p>",
                "<p>Leave the windows up until Fri, Dec 4, 2 PM. Then roll them down.</p>"));
    assertEquals(
        "<p>Leave the windows up until <span data-p=\"0 2\">Fri, Dec 4,</span>"
            + "<span data-p=\"1\" hidden>Sat, Dec 5,</span> 2 PM. Then roll them down.</p>",
        merged);
  }

  @Test
  void aLineThatOnlySomeHaveIsMarkedAsAWhole() {
    String merged =
        check(
            List.of(
                "<ul>\n<li>One.</li>\n<li>Three until Monday.</li>\n</ul>",
                "<ul>\n<li>One.</li>\n<li>Two.</li>\n<li>Three until Tuesday.</li>\n</ul>",
                "<ul>\n<li>Three until Monday.</li>\n<li>Four.</li>\n</ul>"));
    assertTrue(merged.contains("<li data-p=\"1\" hidden>Two.</li>"), merged);
    assertTrue(merged.contains("<li data-p=\"0 1\">One.</li>"), merged);
    assertTrue(merged.contains("<li data-p=\"2\" hidden>Four.</li>"), merged);
  }

  @Test
  void instantsStandInOneListByCase() {
    assertEquals(
        "<p data-to=\"10,20\">Wait.</p><p data-from=\"10,20\" hidden>Go.</p>",
        MergedHtml.of(
            List.of(
                "<p data-to=\"10\">Wait.</p><p data-from=\"10\" hidden>Go.</p>",
                "<p data-to=\"20\">Wait.</p><p data-from=\"20\" hidden>Go.</p>")));
  }

  @Test
  void otherMarkupInALineStandsForEachCase() {
    check(
        List.of(
            "<p>Call <b>us</b> now.</p>\n<p>End.</p>",
            "<p>Call us.</p>\n<p>End.</p>",
            "<p>Call <b>us</b> today.</p>\n<p>End.</p>"));
  }

  @Test
  void anEmptyCaseHasNothing() {
    check(List.of("<p>Only here.</p>", ""));
    check(List.of("", "<p>Only there.</p>"));
  }
}
