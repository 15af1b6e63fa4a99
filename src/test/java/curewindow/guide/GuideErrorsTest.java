package curewindow.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every error of a guide, with its line and column and the nearest right name. */
class GuideErrorsTest {

  private static List<Problem> problems(String text) {
    Problems problems = new Problems();
    Optional<Guide> guide = Samples.read(text, problems);
    assertEquals(problems.hasErrors(), guide.isEmpty(), "a guide with errors is left out");
    return problems.all();
  }

  private static String brief(Problem problem) {
    return problem.code() + " " + problem.line() + ":" + problem.column();
  }

  /** In the text, a bar stands for a line break; the title is in line 1 and the text in line 3. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '"',
      value = {
        "See (= hold.window-up.until =).; unknown-value 3:5; did you mean \"hold.windows-up.until\"?",
        "Ünï 🚗 (= shop.nam =); unknown-value 3:7; did you mean \"shop.name\"?",
        "(= Shop.Name =); unknown-value 3:1; did you mean \"shop.name\"?",
        "(= <script> =); unknown-value 3:1; use one of: hold.windows-up.until",
        "(= =); unknown-value 3:1; use one of: hold.windows-up.until",
        "- a|- b (= shop.name|=); unclosed-value 4:5; close it with \"=)\"",
        "a (= b; unclosed-value 3:3; close it with \"=)\"",
        "(? servise tint ?)|(? end ?); unknown-kind 3:4; did you mean \"service\"?",
        "(? servise ?)|(? end ?); unknown-kind 3:4; did you mean \"service\"?",
        "(? service tnt ?)|(? end ?); unknown-name 3:12; did you mean \"tint\"?",
        "(? not spot hod ?)|(? end ?); unknown-name 3:13; did you mean \"hood\"?",
        "(? over paint ?)|(? end ?); unknown-name 3:9; use one of: film",
        "(? hold haze or hold windows-down ?)|(? end ?); unknown-name 3:22; \"windows-up\"",
        "(? material PET ?)|(? end ?); unknown-name 3:13; did you mean \"pet\"?",
        "(? ?)|(? end ?); malformed-condition 3:4; write it like (? service tint",
        "(? service ?)|(? end ?); malformed-condition 3:4; write it like",
        "(? service tint and ?)|(? end ?); malformed-condition 3:20; write it like",
        "(? and service tint ?)|(? end ?); malformed-condition 3:4; write it like",
        "(? service tint spot hood ?)|(? end ?); malformed-condition 3:17; write it like",
        "(? not ?)|(? end ?); malformed-condition 3:7; write it like",
        "(? service tint|(? end ?); malformed-clause 3:1; end the line with \"?)\"",
        "Text|  (? service tint ?)|a; unclosed-clause 4:3; put a line \"(? end ?)\"",
        "> (? service tint ?)|> a||(? end ?); unclosed-clause 3:3; same indentation",
        "- a|- b||  (? service tint ?)|  c|- d||(? end ?); unclosed-clause 6:3; same indentation",
        "a|(? end ?); stray-end 4:1; take the line away",
        "(? else ?); stray-else 3:1; take the line away",
        "(? question a ?)|# A|b|(? else ?)|(? end ?); stray-else 6:1; take the line away",
        "(? question A ?)|# A|(? end ?); malformed-condition 3:4; write it like (? question haze ?)",
        "(? question a waits haze ?)|# A|(? end ?); malformed-condition 3:4; (? question haze ?)",
        "(? question a wait hays ?)|# A|(? end ?); unknown-name 3:20; did you mean \"haze\"?",
        "(? before hays ?)|a|(? end ?); unknown-name 3:11; did you mean \"haze\"?",
        "(? setting haze now ?)|a|(? end ?); malformed-condition 3:4; write it like (? before haze ?)",
        "(? question a ?)|b|(? end ?); no-question 3:1; start it with a heading",
        "> (? question a ?)|> # A|> b|> (? end ?); question-inside 3:3; on the page itself",
        "(? photo ?)|a|(? end ?); stray-photo 3:1; move it into one",
        "(? service tint ?)|(? else ?)|(? else ?)|(? end ?); second-else 5:1; take one away",
        "So (? service tint ?) here; clause-in-text 3:4; on a line of its own",
        "So (?service tint?) here; clause-in-text 3:4; on a line of its own",
        "a|        (? service tint ?)|b; clause-in-text 4:9; on a line of its own",
        "![a](b.png); picture 3:1; take the picture away",
        "![a][p]||[p]: b.png; picture 3:1; take the picture away",
        "x <IMG src=b.png>; picture 3:3; take the picture away",
        "<p><img src=b.png></p>; picture 3:1; take the picture away",
        "a [b](javascript:alert(1)); link-address 3:3; starts with https:",
        "[b](washing.md); link-address 3:1; starts with https:",
        "[b]||[b]: file:///etc/passwd; link-address 3:1; starts with https:",
        "<data:text/html,x>; link-address 3:1; starts with https:",
        "[b](tel:(= shop.phone =)); value-in-link 3:9; as text beside the link",
        "[b](<tel:(= shop.phone =)>); value-in-link 3:10; as text beside the link",
        "<p>(= shop.name =)</p>; in-html 3:4; use Markdown here",
        "<div>|(? service tint ?)|</div>; in-html 4:1; use Markdown here",
        "x <a href=\"(= shop.name =)\">y</a>; in-html 3:12; use Markdown here",
      })
  void isReportedWhereItStands(String text, String brief, String fix) {
    List<Problem> found = problems("# Title\n\n" + text.replace('|', '\n'));
    Problem first =
        found.stream()
            .filter(p -> brief(p).equals(brief))
            .findFirst()
            .orElseThrow(() -> new AssertionError("not reported: " + found));
    assertTrue(first.fix().contains(fix), () -> first.fix());
    assertEquals("content/guides/en/tint.md", first.file());
  }

  @Test
  void saysWhereAClauseWasOpened() {
    List<Problem> found = problems("# T\n\n(? service tint ?)\n\n(? spot hood ?)\nx\n(? end ?)\n");
    assertEquals(1, found.size(), found::toString);
    assertEquals("unclosed-clause 3:1", brief(found.get(0)));
    assertTrue(found.get(0).message().contains("\"service tint\" opened here"));
    assertEquals(
        "content/guides/en/tint.md:3:1  the clause \"service tint\" opened here is not closed  put"
            + " a line \"(? end ?)\" after it at the same indentation",
        found.get(0).oneLine());
  }

  @Test
  void reportsAllErrorsOfAGuideTogether() {
    List<Problem> found =
        problems("Text (= a =)\n\n(? x y ?)\n\n(? service z or spot q ?)\n(= b\n(? end ?)\n");
    assertEquals(
        List.of(
            "no-title 0:0",
            "unknown-value 1:6",
            "unclosed-clause 3:1",
            "unknown-kind 3:4",
            "unknown-name 5:12",
            "unknown-name 5:22",
            "unclosed-value 6:1"),
        found.stream().map(GuideErrorsTest::brief).toList());
  }

  @Test
  void linesAreCountedWithEveryLineEnding() {
    for (String end : List.of("\n", "\r\n", "\r")) {
      List<Problem> found = problems("# T" + end + end + "a" + end + "b (= x =)" + end);
      assertEquals(
          List.of("unknown-value 4:3"), found.stream().map(GuideErrorsTest::brief).toList());
    }
  }

  @Test
  void aGuideNeedsATitleOutsideOfClauses() {
    assertEquals("no-title 0:0", brief(problems("").get(0)));
    assertEquals("no-title 0:0", brief(problems("## Small\n\nText\n").get(0)));
    assertEquals("no-title 1:1", brief(problems("#\n\nText\n").get(0)));
    assertEquals(
        "no-title 0:0", brief(problems("(? service tint ?)\n# T\n(? end ?)\nText\n").get(0)));
    assertEquals("value-in-title 1:6", brief(problems("# At (= shop.name =)\n").get(0)));
  }

  @Test
  void htmlThatIsLeftOutIsANotice() {
    List<Problem> found =
        problems(
            "# T\n\n<span>a</span>\n\n<!-- note -->\n\n<p id=\"x\">b</p>\n\n<sub>c</sub> <em>d\n");
    assertEquals(
        List.of("html-removed 3:1", "html-removed 3:8", "html-removed 7:1", "html-removed 9:14"),
        found.stream().map(GuideErrorsTest::brief).toList());
  }
}
