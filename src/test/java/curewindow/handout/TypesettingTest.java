package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.HoldKind;
import curewindow.problem.Problems;
import curewindow.shop.Handout;
import curewindow.shop.PaperChoice;
import curewindow.shop.SheetPaper;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopLook;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;

/** What a typesetter would mark on a proof. */
final class TypesettingTest {

  private static PrintedCard print(Handout kind, SampleJobs job) throws Exception {
    Problems problems = new Problems();
    byte[] bytes =
        HandoutPress.read(new ShopFiles(Path.of("no-such-shop")), kind, problems)
            .orElseThrow()
            .print(List.of(job.view()), PaperChoice.on(SheetPaper.NONE), problems)
            .orElseThrow(() -> new AssertionError(problems.all()));
    assertEquals(List.of(), problems.all());
    return new PrintedCard(bytes);
  }

  private static SampleJobs usual(String language) {
    return SampleJobs.tinted().shippedWords().language(language);
  }

  /** Names of shop and car with 60 letters are set on two lines rather than cut. */
  @ParameterizedTest
  @EnumSource(Handout.class)
  void theLongestTextsAreWhole(Handout kind) throws Exception {
    for (String language : List.of("en", "es", "ar")) {
      try (PrintedCard card = print(kind, SampleJobs.longest(language))) {
        for (int page = 0; page < card.pdf().getNumberOfPages(); page++) {
          assertFalse(card.text(page).contains("…"), card.text(page));
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(value = Handout.class, mode = Mode.EXCLUDE, names = "WINDOW_UP")
  void aDateThatStandsAloneIsSetLarger(Handout kind) throws Exception {
    for (String language : List.of("en", "es", "ar")) {
      SampleJobs one =
          SampleJobs.bare()
              .shippedWords()
              .language(language)
              .hold("windows-up", HoldKind.HOLD, "2026-12-03T12:00");
      assertTrue(largest(kind, one) > 1.15 * largest(kind, usual(language)), kind + language);
    }
  }

  private static double largest(Handout kind, SampleJobs job) throws Exception {
    try (PrintedCard card = print(kind, job)) {
      return card.letters(0).stream().mapToDouble(PrintedCard::points).max().orElseThrow();
    }
  }

  /** Roboto has the digits and Latin letters of all papers, in Arabic too. */
  @ParameterizedTest
  @EnumSource(Handout.class)
  void digitsLookTheSameOnAWholePaper(Handout kind) throws Exception {
    try (PrintedCard card = print(kind, usual("ar"))) {
      List<TextPosition> digits =
          card.letters(0).stream().filter(l -> l.getUnicode().matches("[0-9A-Za-z]")).toList();
      assertTrue(digits.size() > 10, digits::toString);
      for (TextPosition digit : digits) {
        String font = digit.getFont().getName();
        assertTrue(font.contains("Roboto"), digit + " in " + font);
      }
    }
  }

  /** 12 pt where all else is usual, and not under 10 pt. */
  @ParameterizedTest
  @CsvSource({"en, Emergency, 12", "es, Emergencia, 11.5"})
  void theWarningOfTheStickerIsLarge(String language, String word, double usual) throws Exception {
    assertTrue(sizeOf(word, usual(language)) >= usual);
    assertTrue(sizeOf(word, SampleJobs.longest(language)) >= 10);
  }

  private static double sizeOf(String word, SampleJobs job) throws Exception {
    try (PrintedCard card = print(Handout.WINDOW_UP, job)) {
      List<TextPosition> letters = card.letters(0);
      String all = String.join("", letters.stream().map(TextPosition::getUnicode).toList());
      return PrintedCard.points(letters.get(all.indexOf(word)));
    }
  }

  @ParameterizedTest
  @CsvSource({"en, Emergency?", "es, ¿Emergencia?"})
  void theSmallLabelWarnsToo(String language, String word) throws Exception {
    for (SampleJobs job : List.of(usual(language), SampleJobs.longest(language))) {
      try (PrintedCard card = print(Handout.LABEL_SMALL, job)) {
        assertTrue(card.text(0).contains(word), card.text(0));
      }
    }
  }

  /**
   * The opening is 26 mm wide round a point 35 and 19 mm from the tag's corner, which is 10 mm from
   * the sheet's: its ring lies within, and the slit above it is not drawn on the tag.
   */
  @Test
  void noLineOfTheDieStaysOnTheTag() throws Exception {
    try (PrintedCard card = print(Handout.HANG_TAG, usual("en"))) {
      BufferedImage picture = card.picture(0);
      for (double angle = 0; angle < 360; angle += 0.5) {
        for (double away = 13; away < 14; away += 0.1) {
          assertEquals(255, light(picture, 45 + away * cos(angle), 29 + away * cos(angle - 90)));
        }
        assertTrue(light(picture, 45 + 12.55 * cos(angle), 29 + 12.55 * cos(angle - 90)) < 200);
      }
      for (double down = 10; down < 16; down += 0.1) {
        assertEquals(255, light(picture, 45, down));
      }
    }
  }

  private static double cos(double degrees) {
    return Math.cos(Math.toRadians(degrees));
  }

  private static int light(BufferedImage picture, double x, double y) {
    return picture.getRaster().getSample(PrintedCard.pixel(x), PrintedCard.pixel(y), 0);
  }

  /** The band of color is 3 mm wide on what is cut, and runs over the cut. */
  @ParameterizedTest
  @CsvSource({"WALLET, 10, 1", "WALLET_INCH, 10, 1", "HANG_TAG, 135, -1"})
  void theBandIsThreeMillimetresWide(Handout kind, double cut, int inward) throws Exception {
    try (PrintedCard card = print(kind, usual("en"))) {
      BufferedImage picture = card.picture(0);
      for (double at = -2.9; at < 2.9; at += 0.1) {
        assertTrue(light(picture, 30, cut + inward * at) < 200, kind + " " + at);
      }
      assertEquals(255, light(picture, 30, cut + inward * 3.2));
    }
  }

  /** The largest text gives way first, and the greeting goes where all are as small as may be. */
  @Test
  void aFullRoomDoesWithoutWhatCanBeSpared() throws Exception {
    SampleJobs longest = SampleJobs.longest("en");
    try (PrintedCard card = print(Handout.WALLET, longest)) {
      assertFalse(card.text(0).contains("This is for your car"), card.text(0));
    }
    try (PrintedCard card = print(Handout.WALLET, longest.car("blue van"))) {
      assertTrue(card.text(0).contains("This is for your car"), card.text(0));
    }
  }

  @Test
  void aRoomThatIsNoneIsTold() {
    Problems problems = new Problems();
    PaperTemplate template =
        PaperTemplate.of(
            "own",
            "<html><body><div data-room='14'><p data-box='9mm 1 9pt text'>a</p></div></body></html>",
            "");
    new TextBoxes(template.file(), 7.5, problems)
        .fit(template.fill(Map.of(), ShopLook.NONE, "", problems).orElseThrow());
    assertEquals(1, problems.all().size());
    assertEquals(
        "template-mistake own.html",
        problems.all().get(0).code() + " " + problems.all().get(0).file());
  }
}
