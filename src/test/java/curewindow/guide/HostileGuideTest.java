package curewindow.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problems;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Markdown written to do harm. The payloads are of the kinds published by OWASP (Cross-Site
 * Scripting Filter Evasion Cheat Sheet), rewritten; the expectations follow the HTML standard.
 */
class HostileGuideTest {

  private static final Set<String> TAGS =
      Set.of(
          "h1",
          "h2",
          "h3",
          "h4",
          "h5",
          "h6",
          "p",
          "ul",
          "ol",
          "li",
          "blockquote",
          "pre",
          "table",
          "thead",
          "tbody",
          "tr",
          "th",
          "td",
          "hr",
          "a",
          "abbr",
          "br",
          "code",
          "em",
          "strong",
          "sub",
          "sup");
  private static final Set<String> ATTRIBUTES =
      Set.of("href", "title", "rel", "start", "align", "scope");

  private static void assertHarmless(String html) {
    Document page = Jsoup.parseBodyFragment(html);
    assertEquals(0, page.head().childNodeSize(), html);
    for (Element element : page.body().getAllElements()) {
      assertTrue(element == page.body() || TAGS.contains(element.normalName()), html);
      for (Attribute attribute : element.attributes()) {
        assertTrue(ATTRIBUTES.contains(attribute.getKey()), html);
      }
      String href = element.attr("href").toLowerCase(Locale.ROOT);
      assertTrue(href.isEmpty() || href.matches("(?s)(https?:|mailto:|tel:|#).*"), html);
    }
  }

  /** The HTML before any check of addresses, which would leave the guide out altogether. */
  private static String uncheckedHtml(String text) {
    GuideMarkdown markdown = new GuideMarkdown(true);
    return SafeHtml.cleanGuide(markdown.render(markdown.parse(text))).html();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "<ScRiPt\n>alert(1)</ScRiPt>",
        "<<script>alert(1)//<</script>",
        "<scr<script>ipt>alert(1)</scr</script>ipt>",
        "<img src=x onerror=alert(1)>",
        "<img src='x' / onerror = 'alert(1)'>",
        "<IMG \"\"\"><SCRIPT>alert(1)</SCRIPT>\">",
        "<svg onload=alert(1)>",
        "<svg><script href=data:,alert(1) /></svg>",
        "<svg><style><img src=x onerror=alert(1)></style></svg>",
        "<math><mtext><table><mglyph><style><!--</style><img title=\"--&gt;&lt;img src=1"
            + " onerror=alert(1)&gt;\">",
        "<noscript><p title=\"</noscript><img src=x onerror=alert(1)>\"></noscript>",
        "<iframe src=\"javascript:alert(1)\"></iframe>",
        "<iframe srcdoc=\"&lt;script&gt;alert(1)&lt;/script&gt;\"></iframe>",
        "<object data=\"data:text/html;base64,PHNjcmlwdD4=\"></object>",
        "<embed src=\"x.swf\">",
        "<link rel=stylesheet href=//example.org/x.css>",
        "<style>@import '//example.org/x.css';</style>",
        "<style>p{background:url(\"javascript:alert(1)\")}</style>",
        "<meta http-equiv=refresh content=\"0;url=javascript:alert(1)\">",
        "<base href=\"javascript:alert(1)//\">",
        "<form action=\"javascript:alert(1)\"><input type=submit></form>",
        "<button formaction=javascript:alert(1)>x</button>",
        "<a href=\"javascript:alert(1)\">x</a>",
        "<a href=\"jav&#x09;ascript:alert(1)\">x</a>",
        "<a href=\"jav\nascript:alert(1)\">x</a>",
        "<a href=\" &#14; javascript:alert(1)\">x</a>",
        "<a href=\"&#106;&#97;&#118;&#97;script:alert(1)\">x</a>",
        "<a href=\"JaVaScRiPt:alert(1)\">x</a>",
        "<a href=\"vbscript:x\">x</a>",
        "<a href=\"data:text/html,<script>alert(1)</script>\">x</a>",
        "<a href=\"//example.org\">x</a>",
        "<a href=\"#x\" onclick=\"alert(1)\" style=\"x\" target=_blank>x</a>",
        "<p onmouseover=alert(1) style=\"width:expression(alert(1))\">x</p>",
        "<table background=\"javascript:alert(1)\"><td background=x>x</table>",
        "<body onload=alert(1)>",
        "<details open ontoggle=alert(1)>x</details>",
        "<video><source onerror=alert(1)></video>",
        "<xss id=x tabindex=1 onfocus=alert(1)></xss>",
        "<template><script>alert(1)</script></template>",
        "<textarea><script>alert(1)</script></textarea>",
        "<plaintext><script>alert(1)</script>",
        "<!--[if gte IE 4]><script>alert(1)</script><![endif]-->",
        "<!--><script>alert(1)</script>-->",
        "<?xml version=\"1.0\"?><script>alert(1)</script>",
        "<![CDATA[<script>alert(1)</script>]]>",
        "[x](javascript:alert(1))",
        "[x](JAVASCRIPT&colon;alert(1))",
        "[x](javascript&#58;alert(1))",
        "[x](java\tscript:alert(1))",
        "[x](<java script:alert(1)>)",
        "[x](data:text/html;base64,PHNjcmlwdD4=)",
        "[x](https://example.org \"\\\" onclick=alert(1) x=\\\"\")",
        "[x](https://example.org/\"onclick=alert(1))",
        "<javascript:alert(1)>",
        "<https://example.org/\"onmouseover=\"alert(1)>",
        "[x]\n\n[x]: javascript:alert(1)",
        "![x](https://example.org/x.png\"onerror=\"alert(1))",
        "![<script>alert(1)</script>](x)",
        "`<script>alert(1)</script>`",
        "```<script>\n<script>alert(1)</script>\n```",
        "```x\" onmouseover=\"alert(1)\ny\n```",
        "| <script>alert(1)</script> |\n|---|\n| <img src=x onerror=alert(1)> |",
        "&lt;script&gt;alert(1)&lt;/script&gt;",
        "<p title=`x` title='<script>'>x</p>",
        "<p/onclick=alert(1)>x",
        "<p\u0000 onclick=alert(1)>x",
        "<a\u000chref=\"javascript:alert(1)\">x</a>",
        "\u003c\u0000script>alert(1)</script>",
      })
  void neverGetsThrough(String payload) {
    Problems problems = new Problems();
    for (UnaryOperator<String> place : places()) {
      String text = place.apply(payload);
      assertHarmless(uncheckedHtml(text));
      Optional<Guide> guide = Samples.read("# T\n\n" + text, problems);
      guide.ifPresent(g -> assertHarmless(g.html(Samples.facts("service tint"))));
    }
  }

  private static Stream<UnaryOperator<String>> placesStream() {
    return Stream.of(
        text -> text,
        text -> "Text " + text + " text",
        text -> "- a\n- " + text.replace("\n", "\n  "),
        text -> "> " + text.replace("\n", "\n> "),
        text -> "(? service tint ?)\n" + text + "\n(? end ?)\n",
        text -> "<p>\n" + text + "\n</p>");
  }

  private static Iterable<UnaryOperator<String>> places() {
    return placesStream().toList();
  }

  /** HTML that is not closed, or closes what is not its own, never moves the edge of a clause. */
  @Test
  void htmlNeverReachesAcrossTheEdgeOfAClause() {
    List<String> fragments =
        List.of(
            "<div>",
            "</div>",
            "<p>",
            "</p>",
            "x <em>y",
            "x </em> y",
            "<table><tr>",
            "</table>",
            "<table>",
            "<td>",
            "<ul><li>",
            "</li>",
            "- a <a href='#b'>c",
            "d</a>",
            "> <blockquote>",
            "x <table> y",
            "</curewindow-clause>",
            "x </curewindow-branch> y",
            "<body>",
            "</body>",
            "<select><option>",
            "<math>",
            "<template>",
            "<form>",
            "x <h1> y",
            "<frameset>",
            "| a <b> |\n|---|\n| <i> |",
            "1. <ol>",
            "<pre>a</pre></pre>",
            "x <code>",
            "<a>");
    Random random = new Random(20260101);
    int used = 0;
    for (int i = 0; i < 500; i++) {
      StringBuilder text = new StringBuilder();
      for (int k = 0; k < 8; k++) {
        text.append("\n\n").append(fragments.get(random.nextInt(fragments.size())));
        text.append(k == 2 ? "\n\n(? service tint ?)\n\nINSIDE" : "");
        text.append(k == 5 ? "\n\nINSIDE\n\n(? end ?)\n\nOUTSIDE" : "");
      }
      Optional<Guide> guide = Samples.read("# T" + text, new Problems());
      used += guide.isPresent() ? 1 : 0;
      guide.ifPresent(g -> assertEdges(g, text.toString()));
    }
    assertEquals(500, used, "all of these guides can be used");
  }

  private static void assertEdges(Guide guide, String text) {
    String shown = Jsoup.parseBodyFragment(guide.html(Samples.facts("service tint"))).text();
    String hidden = Jsoup.parseBodyFragment(guide.html(Samples.facts(""))).text();
    assertEquals(3, shown.split("INSIDE", -1).length, text);
    assertEquals(2, shown.split("OUTSIDE", -1).length, text);
    assertEquals(1, hidden.split("INSIDE", -1).length, text);
    assertEquals(2, hidden.split("OUTSIDE", -1).length, text);
  }

  @Test
  void aTitleIsPlainText() {
    Problems problems = new Problems();
    Guide guide =
        Samples.read("# A *b* <script>x</script> &amp; `c`\n\nText\n", problems).orElseThrow();
    assertEquals("A b x & c", guide.title());
  }

  /** What a customer or the shop typed is text, wherever a guide puts it. */
  @Test
  void valuesStayText() {
    String hostile = "\"><script>alert(1)</script>'*x*[y](javascript:z) (= shop.name =) &amp;";
    GuideFacts facts = Samples.facts("shop.name = " + hostile);
    for (String body :
        Set.of("(= shop.name =)", "## (= shop.name =)", "*(= shop.name =)*", "- (= shop.name =)")) {
      String html = Samples.guide(body + "\n\nEnd.").html(facts);
      assertHarmless(html);
      assertTrue(Jsoup.parseBodyFragment(html).text().contains(hostile), html);
    }
  }

  /** Deep or long texts must end soon, with a guide or an error, and never with a full stack. */
  @TestFactory
  Stream<DynamicTest> endsSoon() {
    List<DynamicTest> tests = new ArrayList<>();
    for (int n : new int[] {300, 1000, 10_000}) {
      for (String text : deepOrLong(n)) {
        String name = n + " " + text.substring(0, Math.min(30, text.length()));
        tests.add(DynamicTest.dynamicTest(name.replace('\n', ' '), () -> endsSoon(text)));
      }
    }
    return tests.stream();
  }

  private static void endsSoon(String text) {
    assertTimeout(Duration.ofSeconds(15), () -> readAndShow(text));
  }

  private static List<String> deepOrLong(int n) {
    StringBuilder stairs = new StringBuilder();
    for (int i = 0; i < Math.min(n, 600); i++) {
      stairs.append("  ".repeat(i)).append("- a\n");
    }
    return List.of(
        ">".repeat(n) + " a",
        "> ".repeat(n) + "a",
        "- ".repeat(n) + "a",
        "- ".repeat(n),
        "1. ".repeat(n) + "a",
        stairs.toString(),
        "(? service tint ?)\n\n".repeat(n) + "a\n" + "\n(? end ?)\n".repeat(n),
        "(? service tint ?)\na\n(? end ?)\n\n".repeat(Math.min(n, 5000)),
        "(? service tint ?)\n\n".repeat(n),
        "(? else ?)\n\n".repeat(n),
        "(? " + "not ".repeat(n) + "service tint ?)\na\n(? end ?)\n",
        "(? " + "service tint and ".repeat(n) + "service tint ?)\na\n(? end ?)\n",
        "(= ".repeat(n),
        "(= shop.name =) ".repeat(n),
        "(=".repeat(n) + "=)".repeat(n),
        "*a ".repeat(n) + "a*".repeat(n),
        "**a *a ".repeat(n),
        "a" + "*".repeat(n) + "a" + "*".repeat(n),
        "_a ".repeat(n),
        "[".repeat(n) + "a" + "]".repeat(n),
        "[a](".repeat(n),
        "[a](#".repeat(n) + ")".repeat(n),
        "![".repeat(n) + "a" + "](#)".repeat(n),
        "[a](# \"" + "b".repeat(n) + "\")",
        "[a](<#" + "b".repeat(n) + ">)",
        "[a]\n\n[a]: # '" + "b".repeat(n) + "'",
        "[" + "a".repeat(n) + "]: #\n\n[" + "a".repeat(n) + "]",
        "`".repeat(n) + "a",
        "`a ``b ```c ".repeat(n / 2),
        "<".repeat(n),
        "<a href='".repeat(n),
        "<em " + "a=b ".repeat(n) + ">c</em>",
        "x <em title='" + "b".repeat(n) + "'>c</em>",
        "<!--".repeat(n),
        "x <!-- " + "- ".repeat(n) + " -->",
        "x <?" + "a".repeat(n) + "?>",
        "<em>".repeat(n) + "a" + "</em>".repeat(n),
        "<p>".repeat(n),
        "<p>\n\n".repeat(n),
        "<blockquote>".repeat(n) + "a" + "</blockquote>".repeat(n),
        "&".repeat(n),
        "\\".repeat(n),
        "|".repeat(n) + "\n" + "|-".repeat(n) + "\n" + "|a".repeat(n),
        "a\n".repeat(n) + "===\n",
        "[a]: #b\n".repeat(n),
        "[a]: #b\n\n".repeat(n),
        "word ".repeat(2 * n),
        "a".repeat(20 * n));
  }

  private static void readAndShow(String text) {
    Problems problems = new Problems();
    Optional<Guide> guide = Samples.read("# T\n\n" + text, problems);
    assertEquals(problems.hasErrors(), guide.isEmpty());
    guide.ifPresent(g -> assertNotNull(g.html(Samples.facts("service tint\nshop.name = a"))));
  }

  @Test
  void whatIsTooDeepOrTooLongIsNamed() {
    assertReported("> ".repeat(10_000) + "a", "too-deep", 5);
    assertReported("> ".repeat(101) + "a", "too-deep", 5);
    assertReported("(? service tint ?)\n\n".repeat(10_000), "too-long", 0);
    assertReported("(? service tint ?)\n\n".repeat(200) + "(? end ?)\n".repeat(200), "too-deep", 0);
    assertReported("word word\n".repeat(2_100), "too-long", 2_005);
  }

  /** Each took seconds for every 20,000 characters, as of 163 kB of backticks 45 s. */
  @ParameterizedTest
  @ValueSource(strings = {"` ", "`a`b", "*a* ", "[a]", "<b>a ", "(= 1 m =) ", "&a; "})
  void whatWouldTakeLongIsToldAtOnce(String piece) {
    String stretch = piece.repeat(4_000 / piece.length()) + "\n";
    assertTimeoutPreemptively(
        Duration.ofSeconds(5), () -> assertReported(stretch.repeat(4), "too-long", 0));
  }

  /** What is read would not be what is written. */
  @ParameterizedTest
  @ValueSource(
      strings = {"\u202e", "\u2066", "&#x202E;", "&#8238;", "&#x02069 ", "\u2068\u2069\u2069"})
  void signsThatTurnTheTextAreTold(String sign) {
    assertReported("Wait\na day " + sign + "or two", "turning-sign", 6);
  }

  @Test
  void signsThatOnlyLookAlikeStay() {
    Problems problems = new Problems();
    assertTrue(
        Samples.read(
                "# T\n\n&#x200f; \u200e &#82345; &#x202ef; \u2068a\u2069 &#x2067;\u2068b\u2069&#8297;",
                problems)
            .isPresent());
  }

  private static void assertReported(String text, String code, int line) {
    Problems problems = new Problems();
    Samples.read("# T\n\na\n\n" + text + "\n", problems);
    assertEquals(1, problems.all().size(), problems.all()::toString);
    assertEquals(code, problems.all().get(0).code());
    if (line > 0) {
      assertEquals(line, problems.all().get(0).line());
    }
  }
}
