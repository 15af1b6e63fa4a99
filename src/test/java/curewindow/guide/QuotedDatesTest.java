package curewindow.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a guide says until a date of the job is marked with the time at which it is over. */
class QuotedDatesTest {

  /** When each hold is over, and fully set; by time alone {@code defroster} never is. */
  private static final Map<String, Instant> OVER =
      Map.of("windows-up", at(100), "hand-wash", at(200), "haze", at(300));

  private static final Map<String, Instant> SET =
      Map.of("windows-up", at(150), "hand-wash", at(250), "haze", at(300));

  private static Instant at(long second) {
    return Instant.ofEpochSecond(second);
  }

  private static String html(String guide) {
    GuideFacts facts =
        new GuideFacts() {
          @Override
          public boolean has(String kind, String name) {
            return true;
          }

          @Override
          public Optional<String> value(String name) {
            return Optional.of(name.substring(name.lastIndexOf('.') + 1));
          }

          @Override
          public Optional<Instant> over(String hold) {
            return Optional.ofNullable(OVER.get(hold));
          }

          @Override
          public Optional<Instant> set(String hold) {
            return Optional.ofNullable(SET.get(hold));
          }
        };
    return Samples.guide(guide).html(facts);
  }

  @Test
  void aParagraphAndAnItemEndWithTheDateThatTheyQuote() {
    assertEquals(
        "<p data-to=\"100\">Up until until.</p>\n<p>Always.</p>\n",
        html("Up until (= hold.windows-up.until =).\n\nAlways.\n"));
    assertEquals(
        "<ul>\n<li data-to=\"150\">Bare until full.</li>\n<li>Always.</li>\n</ul>\n",
        html("- Bare until (= hold.windows-up.full =).\n- Always.\n"));
  }

  @Test
  void ofTwoDatesTheLaterCounts() {
    assertEquals(
        "<p data-to=\"200\">until, then until</p>\n",
        html("(= hold.hand-wash.until =), then (= hold.windows-up.until =)\n"));
  }

  @Test
  void itStaysWhereTimeAloneDoesNotEndItAndWhereNoDateIsQuoted() {
    assertEquals(
        "<p>until and until</p>\n<p>day, likely</p>\n",
        html(
            "(= hold.defroster.until =) and (= hold.windows-up.until =)\n\n"
                + "(= hold.windows-up.day =), (= hold.windows-up.likely =)\n"));
  }

  @Test
  void anItemThatBeginsWithADateEndsAsAWhole() {
    assertEquals(
        "<ul>\n<li data-to=\"200\"><p>until</p><p>until</p><p>Lock them.</p></li>\n</ul>\n",
        html("- (= hold.windows-up.until =)\n\n  (= hold.hand-wash.until =)\n\n  Lock them.\n"));
    assertEquals(
        "<ul>\n<li><p>Lock them.</p><p data-to=\"100\">until</p></li>\n</ul>\n",
        html("- Lock them.\n\n  (= hold.windows-up.until =)\n"));
  }

  @Test
  void aRowEndsAsAWholeAndATableWithAllItsRows() {
    assertEquals(
        "<table data-to=\"100\">\n<thead>\n<tr>\n<th scope=\"col\">What</th>\n"
            + "<th scope=\"col\">Until</th>\n</tr>\n</thead>\n"
            + "<tbody data-to=\"100\">\n<tr data-to=\"100\">\n<td>Windows</td>\n<td>until</td>\n"
            + "</tr>\n</tbody>\n</table>\n",
        html("| What | Until |\n|---|---|\n| Windows | (= hold.windows-up.until =) |\n"));
  }

  @Test
  void aHeadingEndsWithTheLastOfWhatIsUnderIt() {
    assertEquals(
        "<h2 data-to=\"200\">Now</h2>\n<h3 data-to=\"100\">Glass</h3>\n<ul>\n"
            + "<li data-to=\"100\">until</li>\n</ul>\n"
            + "<h3 data-to=\"200\">Paint</h3>\n<p data-to=\"200\">until</p>\n"
            + "<h2>Later</h2>\n<p data-to=\"100\">until</p>\n<p>Always.</p>\n",
        html(
            "## Now\n\n### Glass\n\n- (= hold.windows-up.until =)\n\n### Paint\n\n"
                + "(= hold.hand-wash.until =)\n\n"
                + "## Later\n\n(= hold.windows-up.until =)\n\nAlways.\n"));
  }

  @Test
  void aHeadingOverAClauseEndsWithItUnlessSomethingFollows() {
    assertEquals(
        "<h2 data-to=\"100\">Now</h2>\n<p data-to=\"100\">Wait.</p>\n",
        html("## Now\n\n(? before windows-up ?)\n\nWait.\n\n(? end ?)\n"));
    assertEquals(
        "<h2>Now</h2>\n<p data-to=\"100\">Wait.</p>\n<p data-from=\"100\" hidden>Go.</p>\n",
        html("## Now\n\n(? before windows-up ?)\n\nWait.\n\n(? else ?)\n\nGo.\n\n(? end ?)\n"));
  }

  @Test
  void inAClauseItsOwnDatesAreItsOwnBusinessAndOthersEndSooner() {
    assertEquals(
        "<p data-to=\"250\">until</p>\n<p data-to=\"100\">until</p>\n<p data-to=\"250\">until</p>\n",
        html(
            "(? setting hand-wash ?)\n\n(= hold.hand-wash.until =)\n\n"
                + "(= hold.windows-up.until =)\n\n(= hold.haze.until =)\n\n(? end ?)\n"));
    assertEquals(
        "<p data-to=\"300\" data-from=\"100\" hidden>until</p>\n",
        html("(? before windows-up ?)\n\n(? else ?)\n\n(= hold.haze.until =)\n\n(? end ?)\n"));
  }

  @Test
  void ofClausesInEachOtherTheNarrowestCounts() {
    assertEquals(
        "<p data-to=\"100\">Both.</p>\n",
        html("(? before haze ?)\n\n(? before windows-up ?)\n\nBoth.\n\n(? end ?)\n\n(? end ?)\n"));
  }

  @Test
  void whatAQuestionAnswersLaterLeavesTheDateOut() {
    String guide = "(? question up ?)\n\n### Up?\n\nUp until (= hold.haze.until =).\n\nGently.\n\n";
    Guide read = Samples.guide(guide + "(? end ?)\n");
    GuideFacts facts =
        new GuideFacts() {
          @Override
          public boolean has(String kind, String name) {
            return true;
          }

          @Override
          public Optional<String> value(String name) {
            return Optional.of("Friday");
          }

          @Override
          public Optional<Instant> over(String hold) {
            return Optional.of(at(300));
          }
        };
    GuideQuestion question = read.questions(facts).get(0);
    assertEquals("Up until Friday. Gently.", question.answer(at(299)));
    assertEquals("Gently.", question.answer(at(300)));
  }
}
