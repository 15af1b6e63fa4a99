package curewindow.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class QuestionsTest {

  private static final String GUIDE =
      """
      ## Glass & more

      (? question haze normal haze ?)

      ### Why is it *hazy*?

      Water.

      (? before haze ?)

      - Until (= hold.haze.until =).

      (? else ?)

      Show us.

      (? photo ?)

      Against the sky.

      (? end ?)

      (? end ?)

      (? end ?)

      (? service tint ?)

      (? question dark later ?)

      ### Too dark?

      (? before defroster ?)

      Never said.

      (? end ?)

      Look twice.

      (? end ?)

      (? end ?)
      """;

  private static GuideFacts facts(String lines, Optional<Instant> over) {
    GuideFacts plain = Samples.facts(lines);
    return new GuideFacts() {
      @Override
      public boolean has(String kind, String name) {
        return plain.has(kind, name);
      }

      @Override
      public Optional<String> value(String name) {
        return plain.value(name);
      }

      @Override
      public Optional<Instant> over(String hold) {
        return over;
      }
    };
  }

  private static final String HAZE = "hold haze\nservice tint\nhold.haze.until = Friday\n";

  @Test
  void aQuestionHasItsAnswerItsPhotoAndItsHolds() {
    Optional<Instant> over = Optional.of(Instant.ofEpochSecond(60));
    List<GuideQuestion> questions = Samples.guide(GUIDE).questions(facts(HAZE, over));
    assertEquals(
        new GuideQuestion(
            "haze",
            false,
            "Glass & more",
            "Why is it hazy?",
            "<p>Water.</p>\n<ul data-to=\"60\">\n<li>Until Friday.</li>\n</ul>\n"
                + "<p data-from=\"60\" hidden>Show us.</p>\n",
            "Against the sky.",
            Optional.of(new GuideQuestion.Standing(true, "haze")),
            List.of("haze")),
        questions.get(0));
    assertEquals("dark", questions.get(1).id());
    assertEquals(true, questions.get(1).later());
    assertEquals("<p>Look twice.</p>\n", questions.get(1).html());
    assertEquals(List.of(), questions.get(1).holds());
  }

  @Test
  void whatNoTimeEndsStaysAsItIsBefore() {
    GuideQuestion haze = Samples.guide(GUIDE).questions(facts(HAZE, Optional.empty())).get(0);
    assertEquals("<p>Water.</p>\n<ul>\n<li>Until Friday.</li>\n</ul>\n", haze.html());
  }

  @Test
  void withoutTheHoldNeitherPartIsShown() {
    GuideQuestion haze = Samples.guide(GUIDE).questions(facts("", Optional.empty())).get(0);
    assertEquals("<p>Water.</p>\n", haze.html());
    assertEquals(Optional.empty(), haze.standing());
    assertEquals(1, Samples.guide(GUIDE).questions(facts("", Optional.empty())).size());
  }

  @Test
  void onAPublicPageQuestionsAreHeadingsWithAnAddress() {
    assertEquals(
        "<h2>Glass &amp; more</h2>\n<h3 id=\"q-haze\">Why is it <em>hazy</em>?</h3>\n<p>Water.</p>\n"
            + "<ul>\n<li>Until Friday.</li>\n</ul>\n<h3 id=\"q-dark\">Too dark?</h3>\n"
            + "<p>Look twice.</p>\n",
        Samples.guide(GUIDE).html(Samples.facts(HAZE)));
    assertEquals(Set.of("dark", "haze"), Samples.guide(GUIDE).questionIds());
  }
}
