package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

final class TextBoxTest {

  @Test
  void aShortTextKeepsItsSize() {
    assertEquals(
        new TextBox.Fitted(List.of("Blue van"), 9, true),
        new TextBox(50, 1, 9, 7.5, PaperFont.TEXT).fit("Blue  van\n"));
  }

  @Test
  void alittleTooLongShrinksBeforeItWraps() {
    TextBox box =
        new TextBox(PaperFont.TEXT.width("Windows stay up", 8), 2, 8.5, 7.5, PaperFont.TEXT);
    assertEquals(
        new TextBox.Fitted(List.of("Windows stay up"), 8, true), box.fit("Windows stay up"));
  }

  @Test
  void longTextWraps() {
    TextBox box = new TextBox(PaperFont.TEXT.width("Windows stay", 9), 2, 9, 7.5, PaperFont.TEXT);
    assertEquals(
        new TextBox.Fitted(List.of("Windows", "stay up"), 9, true), box.fit("Windows stay up"));
  }

  @Test
  void tooLongTextIsCutAtAWord() {
    TextBox box = new TextBox(20, 1, 9, 7.5, PaperFont.BOLD);
    TextBox.Fitted fitted = box.fit("Pearl white four-door with a grey roof and black wheels");
    assertEquals(7.5, fitted.points());
    assertEquals(List.of("Pearl white…"), fitted.lines());
  }

  @Test
  void aWordTooLongForItsLineIsCutInside() {
    TextBox.Fitted fitted =
        new TextBox(20, 2, 9, 7.5, PaperFont.TEXT).fit("Donaudampfschifffahrtsgesellschaft blau");
    assertEquals(1, fitted.lines().size());
    assertTrue(fitted.lines().get(0).matches("Donaudampf.*…"), fitted::toString);
  }

  /** A name of one word has room on two lines though it has no place to break. */
  @Test
  void aWordLongerThanALineIsBroken() {
    TextBox.Fitted fitted =
        new TextBox(30, 2, 9, 7.5, PaperFont.TEXT).fit("Donaudampfschifffahrtsgesellschaft");
    assertTrue(fitted.whole(), fitted::toString);
    assertEquals("Donaudampfschifffahrtsgesellschaft", String.join("", fitted.lines()));
  }

  /** No last line of one short word: it is at least half as long as the longest. */
  @Test
  void linesAreBalanced() {
    String text = "Lift off with a wet, soft cloth the same day.";
    double width = PaperFont.TEXT.width("Lift off with a wet, soft cloth the same", 9);
    TextBox box = new TextBox(width, 2, 9, 9, PaperFont.TEXT);
    assertEquals(
        List.of("Lift off with a wet, soft cloth", "the same day."), box.fit(text).lines());
  }

  /** The labels of two stamps: neither gets smaller than the other to save itself a line. */
  @Test
  void textsOfOneSizeAreSetInIt() {
    TextBox box = new TextBox(25, 4, 13, 9, PaperFont.NARROW_BOLD);
    List<String> labels =
        List.of("Ventanas cerradas hasta el", "Sin desempañador trasero hasta el");
    double shared =
        labels.stream().mapToDouble(label -> box.fit(label).points()).min().orElseThrow();
    assertTrue(labels.stream().anyMatch(l -> box.upTo(shared).fit(l).points() < shared));
    for (String label : labels) {
      TextBox.Fitted fitted = box.upTo(shared).inItsSize(label);
      assertEquals(shared, fitted.points(), label);
      assertTrue(fitted.whole() && fitted.lines().size() <= 4, fitted::toString);
    }
  }

  /** Arabic words beside digits are measured each in the font that has them. */
  @Test
  void digitsAreAsWideAsInAnyOtherText() {
    double digits = PaperFont.NARROW_BOLD.width("2026", 10);
    assertEquals(
        digits + PaperFont.ARABIC_BOLD.width("م", 10),
        PaperFont.NARROW_BOLD.width("2026م", 10),
        0.001);
  }

  @Test
  void widthsAreThoseOfTheFont() {
    // Roboto Condensed Regular: every digit is 1011 of 2048 units wide (from the font's own
    // tables).
    assertEquals(10 * 1011 / 2048.0 * 25.4, PaperFont.NARROW.width("0123456789", 72), 0.01);
    assertEquals(0, PaperFont.NARROW.width("\u200E\u200B", 72), "marks that are not seen");
  }

  @Test
  void everyScriptHasAFontThatSetsIt() {
    assertEquals(List.of("Card Narrow"), PaperFont.NARROW.families("Año Ξένια Ольга"));
    assertEquals(
        List.of("Card Narrow", "Card Arabic"), PaperFont.NARROW_BOLD.families("مرحبا 25 Halyard"));
    assertEquals(List.of("Card Text", "Card Other"), PaperFont.TEXT.families("שלום"));
    assertEquals("漢", PaperFont.TEXT.lacking("a 漢 漢"));
    assertEquals("漢", PaperFont.lackingInAll("a 漢 שלום مرحبا"));
  }

  /** All forms that joining brings forth are in the font (Unicode, Arabic Presentation Forms-B). */
  @Test
  void allJoinedLettersAreInTheArabicFonts() {
    String letters = "ءآأؤإئابةتثجحخدذرزسشصضطظعغفقكلمنهوىي";
    for (int letter : letters.codePoints().toArray()) {
      String one = Character.toString(letter);
      for (String word : List.of(one, one + "ب", "ب" + one, "ب" + one + "ب", "ل" + one)) {
        for (PaperFont font : List.of(PaperFont.TEXT, PaperFont.BOLD)) {
          assertEquals(List.of("Card Text", "Card Arabic"), font.families(word), word);
        }
      }
    }
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
      TextBox.Fitted fitted = new TextBox(22.6, 2, 8, 7.5, PaperFont.TEXT).fit(text);
      assertTrue(fitted.lines().size() <= 2);
      assertTrue(fitted.points() >= 7.5 && fitted.points() <= 8);
      for (String line : fitted.lines()) {
        assertTrue(PaperFont.TEXT.width(line, fitted.points()) <= 22.6, line);
      }
    }
  }

  /** Nobody can take the end of a line for a part of the address, or a hyphen for the line's. */
  @Test
  void anAddressIsBrokenOnlyWhereItIsLongerThanALine() {
    String site =
        PrintedAddress.of(URI.create("https://care.film-and-tint.example/C/7K3M")).brokenSite();
    assertEquals(
        List.of("Scan, or type:", "care.film-and-tint.example/C/"),
        new TextBox(36, 2, 8, 8, PaperFont.NARROW).fit("Scan, or type: " + site).lines());
    assertEquals(
        List.of("care.film-and", "-tint", ".example/C/"),
        new TextBox(18, 3, 8, 8, PaperFont.NARROW).fit(site).lines());
  }
}
