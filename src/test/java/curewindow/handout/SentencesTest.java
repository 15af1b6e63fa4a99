package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.ShopLook;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

/** Cautions lose whole sentences, the last ones first, and never a part of one. */
final class SentencesTest {

  private final Problems problems = new Problems();

  @Test
  void aQuestionStaysWithItsAnswer() {
    assertEquals(
        List.of("Going home? Sit on a towel. A child does not.", "Going home? Sit on a towel."),
        Sentences.shorter("Going home? Sit on a towel. A child does not. Stay 0.9 m away."));
    assertEquals(List.of(), Sentences.shorter("Windows stay up until"));
    assertEquals(List.of(), Sentences.shorter(""));
  }

  private String printed(String box, String text) {
    PaperTemplate template =
        PaperTemplate.of(
            "own",
            "<html><body><p lang='en' data-whole='words' data-box='%s'>%s</p></body></html>"
                .formatted(box, text),
            "");
    Document document =
        template.fill(Map.of(), ShopLook.NONE, "", problems).orElseThrow(AssertionError::new);
    new TextBoxes(template.file(), 7.5, problems).fit(document);
    return document.getElementsByTagName("p").item(0).getTextContent();
  }

  @Test
  void theLastSentenceGoesFirst() {
    assertEquals("Sit on a towel.", printed("25mm 1 9pt text", "Sit on a towel. Not a child."));
    assertEquals(List.of(), problems.all());
  }

  @Test
  void aFirstSentenceThatDoesNotFitIsTold() {
    printed("25mm 1 9pt text", "Sit on a towel that is dry and clean.");
    Problem told = problems.all().get(0);
    assertEquals("too-long-to-print content/words/en", told.code() + " " + told.file());
    assertTrue(told.message().contains("own.html"), told::message);
  }
}
