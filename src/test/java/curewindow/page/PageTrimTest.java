package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problems;
import curewindow.shop.ShopLook;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.DataNode;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;
import org.jsoup.select.NodeVisitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A page means the same before and after it is made slim, to a parser that is not ours. */
class PageTrimTest {

  private static final Pages WHOLE =
      Pages.read(Demo.FILES, ShopLook.NONE, Demo.GUIDES, new Problems(), UnaryOperator.identity());

  @ParameterizedTest
  @ValueSource(strings = {"en", "es", "ar"})
  void customersPagesMeanTheSame(String language) {
    for (Demo demo :
        List.of(Demo.tint(), Demo.coatedFilm(), Demo.atLimit(), Demo.nothingToHold())) {
      demo.language = language;
      same(Demo.page(WHOLE, new Problems(), demo.view()).orElseThrow());
    }
  }

  @Test
  void pagesForAnyoneMeanTheSame() {
    List<String> languages = List.of("en", "es", "ar");
    Problems problems = new Problems();
    List<String> pages =
        new ArrayList<>(
            WHOLE
                .open(
                    Demo.shop("Film=\"1\" > <p>Coat</p><p>=/"),
                    Optional.empty(),
                    languages.stream().map(Demo.WORDS::of).toList(),
                    problems)
                .values());
    assertEquals(List.of(), problems.all());
    pages.removeIf(text -> !text.startsWith("<!DOCTYPE html>"));
    assertTrue(pages.size() > 20, pages.size() + " pages");
    pages.forEach(PageTrimTest::same);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a=\"b\" c=\"d\"",
        "x > y < z",
        "<p>a</p><p>b</p> <li>c</li> <pre>  d",
        "=\"quoted\" 'single' `tick`",
        "</td></tr></table> /> a=b/",
        "ends in a slash/",
        "ends in =",
        "=",
        "/",
        "&quot;&lt;&amp;amp;",
        "\u00A0 no-break \u2028 line",
        "<style>a</style> <script>b</script>"
      })
  void whatPeopleWriteMeansTheSame(String text) {
    Demo demo = Demo.tint();
    demo.firstName = text;
    demo.car = text;
    demo.placeName = text;
    demo.shop = Demo.shop(text);
    same(Demo.page(WHOLE, new Problems(), demo.view()).orElseThrow());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<ul>\n<li>a\n<ul><li>b</li>\n</ul></li>\n<li>c</li></ul>",
        "<p>a</p>\nloose",
        "<p>a</p>\n<table><tr><td>b</td></tr></table>",
        "<table><tbody><tr><th>a</th><td><p>b</p></td></tr></tbody><tbody><tr><td>c</td></tr></tbody></table>",
        "<dl><div><dt>a</dt><dd>b</dd></div></dl>",
        "<a href=\"x\"><p>a</p></a><p>b</p>",
        "<a href=\"x/\">a</a><br/><svg><path d=\"M0\"/><g id=\"a/\"/></svg>",
        "<p title='<b c=\"d\">'>x</p>",
        "<!-- <p class=\"a\">x</p> --><p class=\"a\">y</p>",
        "<input value=\"\" title=\"a`b\" name=\"c\">"
      })
  void awkwardMarkupMeansTheSame(String html) {
    same("<!DOCTYPE html><html><body>" + html + "</body></html>");
  }

  private static void same(String html) {
    String slim = PageTrim.html(html);
    assertTrue(slim.length() <= html.length() + 2);
    assertEquals(meaning(html), meaning(slim));
  }

  /** Elements, attributes and text; white space only where it parts words. */
  private static String meaning(String html) {
    StringBuilder told = new StringBuilder();
    Jsoup.parse(html)
        .traverse(
            new NodeVisitor() {
              @Override
              public void head(Node node, int depth) {
                if (node instanceof TextNode text) {
                  told.append(text.getWholeText().replace("<", "&lt;"));
                } else if (node instanceof DataNode data) {
                  told.append(data.getWholeData());
                } else if (node instanceof Element element) {
                  told.append(element.isBlock() ? "\n<" : "<").append(element.tagName());
                  told.append(attributes(element)).append(element.isBlock() ? ">\n" : ">");
                }
              }

              @Override
              public void tail(Node node, int depth) {
                if (node instanceof Element element) {
                  told.append(element.isBlock() ? "\n</" : "</").append(element.tagName());
                  told.append(element.isBlock() ? ">\n" : ">");
                }
              }
            });
    return told.toString()
        .replaceAll("[ \\t\\r\\n]*\\n[ \\t\\r\\n]*(?=<)|(?<=>)\\n[ \\t\\r\\n]*", "\n")
        .replaceAll("[ \\t\\r\\n]+(?=\\n)|(?<=\\n)[ \\t\\r\\n]+", "")
        .replaceAll("[ \\t]+", " ");
  }

  private static String attributes(Element element) {
    return element.attributes().asList().stream()
        .sorted((a, b) -> a.getKey().compareTo(b.getKey()))
        .map(PageTrimTest::attribute)
        .collect(Collectors.joining());
  }

  /** A boolean attribute is true whatever its value (HTML standard, 2.3.2). */
  private static String attribute(Attribute attribute) {
    if (attribute.getKey().equals("hidden")) {
      return " hidden";
    }
    return " " + attribute.getKey() + "='" + attribute.getValue().replace("\n", "⏎") + "'";
  }

  /** A shop's own style once ended its element, and what came after it was part of the page. */
  @Test
  void aStyleOrScriptCannotEndItsElement() {
    String told = "a::before { content: \"</STYLE><b>\" }";
    assertEquals("a::before { content: \"<\\/STYLE><b>\" }", PageTrim.style(told));
    assertEquals("<\\/style>", PageTrim.style("<//* note */style>"));
    assertEquals("a = '<\\/script>';", PageTrim.script("a = '</script>';"));
  }
}
