package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

final class TextBoxTest {

  @Test
  void aShortTextKeepsItsSize() {
    assertEquals(
        new TextBox.Fitted(List.of("Blue van"), 9, true),
        new TextBox(50, 1, 9, TextBox.SMALLEST, PaperFont.TEXT).fit("Blue  van\n"));
  }

  @Test
  void alittleTooLongShrinksBeforeItWraps() {
    TextBox box =
        new TextBox(
            PaperFont.TEXT.width("Windows stay up", 8), 2, 8.5, TextBox.SMALLEST, PaperFont.TEXT);
    assertEquals(
        new TextBox.Fitted(List.of("Windows stay up"), 8, true), box.fit("Windows stay up"));
  }

  @Test
  void longTextWraps() {
    TextBox box =
        new TextBox(
            PaperFont.TEXT.width("Windows stay", 9), 2, 9, TextBox.SMALLEST, PaperFont.TEXT);
    assertEquals(
        new TextBox.Fitted(List.of("Windows stay", "up"), 9, true), box.fit("Windows stay up"));
  }

  @Test
  void tooLongTextIsCutAtAWord() {
    TextBox box = new TextBox(20, 1, 9, TextBox.SMALLEST, PaperFont.BOLD);
    TextBox.Fitted fitted = box.fit("Pearl white four-door with a grey roof and black wheels");
    assertEquals(6.5, fitted.points());
    assertEquals(List.of("Pearl white…"), fitted.lines());
  }

  @Test
  void aWordTooLongForItsLineIsCutInside() {
    TextBox.Fitted fitted =
        new TextBox(20, 2, 9, TextBox.SMALLEST, PaperFont.TEXT)
            .fit("Donaudampfschifffahrtsgesellschaft blau");
    assertEquals(1, fitted.lines().size());
    assertTrue(fitted.lines().get(0).matches("Donaudampf.*…"), fitted::toString);
  }

  @Test
  void widthsAreThoseOfTheFont() {
    // DejaVu Sans Mono: every letter is 1233 of 2048 units wide (from the font's own tables).
    assertEquals(10 * 1233 / 2048.0 * 72 / 72 * 25.4, PaperFont.MONO.width("7K3MPQ9W2X", 72), 0.01);
  }

  @Test
  void letteringThatOnlyThePlainFontHas() {
    assertEquals(PaperFont.SERIF, PaperFont.SERIF.covering("Año"));
    assertEquals(PaperFont.TEXT, PaperFont.SERIF.covering("שלום"));
    assertEquals(PaperFont.BOLD, PaperFont.SERIF_BOLD.covering("مرحبا"));
    assertEquals("漢", PaperFont.TEXT.lacking("a 漢 漢"));
  }

  @Test
  void whateverTheTextItStaysInItsBox() {
    Random random = new Random(20261203);
    for (int tries = 0; tries < 500; tries++) {
      String text =
          random
              .ints(random.nextInt(120), ' ', 'ž')
              .map(c -> random.nextInt(6) == 0 ? ' ' : c)
              .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
              .toString();
      TextBox.Fitted fitted = new TextBox(22.6, 2, 8, TextBox.SMALLEST, PaperFont.TEXT).fit(text);
      assertTrue(fitted.lines().size() <= 2);
      assertTrue(fitted.points() >= 6.5 && fitted.points() <= 8);
      for (String line : fitted.lines()) {
        assertTrue(PaperFont.TEXT.width(line, fitted.points()) <= 22.6, line);
      }
    }
  }
}
