package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.guide.GuideLibrary;
import curewindow.problem.Problems;
import curewindow.shop.Handout;
import curewindow.shop.PaperChoice;
import curewindow.shop.SheetPaper;
import curewindow.shop.ShopFiles;
import curewindow.told.JobView;
import curewindow.told.OtherClock;
import curewindow.words.WordsLibrary;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Names stay whole and in their own order on papers of languages that run the other way. */
final class OwnOrderTest {

  private static final ShopFiles FILES = new ShopFiles(Path.of("no-such-shop"));
  private static final LocalDate PICKUP = LocalDate.parse("2026-11-30");

  /** A woman's name in Arabic letters, with its first letter. */
  private static final String NADIA = "\u0646\u0627\u062F\u064A\u0629";

  private final Problems problems = new Problems();

  private byte[] office(JobView view) {
    GuideLibrary guides =
        GuideLibrary.read(
            FILES,
            WordsLibrary.open(FILES),
            view.catalogue(),
            List.of("ar", "en", "es"),
            new Problems());
    OfficeJobs jobs = new OfficeJobs(view.shop(), view.words(), guides, List.of(view));
    OfficeDay day = OfficeDay.of(jobs, PICKUP, List.of(), List.of());
    return OfficePaper.read(FILES, problems).orElseThrow().pdf(jobs, day, problems).orElseThrow();
  }

  private byte[] card(JobView view, Handout kind) {
    return HandoutPress.read(FILES, kind, problems)
        .orElseThrow()
        .print(List.of(view), PaperChoice.on(SheetPaper.NONE), problems)
        .orElseThrow();
  }

  private static List<TextPosition> letters(byte[] pdf) throws Exception {
    try (PrintedCard printed = new PrintedCard(pdf)) {
      return printed.letters(0);
    }
  }

  /** Where the first letter of a word stands that is all on one line, in points from the left. */
  private static double left(List<TextPosition> letters, String word) {
    return first(letters, word).getXDirAdj();
  }

  private static TextPosition first(List<TextPosition> letters, String word) {
    String all = letters.stream().map(TextPosition::getUnicode).collect(Collectors.joining());
    int at = all.indexOf(word);
    assertTrue(at >= 0, word + " in " + all);
    int count = 0;
    for (TextPosition letter : letters) {
      if (count >= at) {
        return letter;
      }
      count += letter.getUnicode().length();
    }
    throw new AssertionError(word);
  }

  private static SampleJobs usual() {
    return SampleJobs.tinted().shippedWords();
  }

  /** In a list from right to left the number comes first, so it stands at the right. */
  @Test
  void anArabicOfficeReadsTheNumberBeforeALatinName() throws Exception {
    List<TextPosition> letters =
        letters(office(usual().language("ar").firstName("Maribel").view()));
    assertTrue(left(letters, "H-1042") > left(letters, "Maribel"));
  }

  @Test
  void anEnglishOfficeReadsTheNumberBeforeAnArabicName() throws Exception {
    List<TextPosition> letters = letters(office(usual().firstName(NADIA + "!").view()));
    List<TextPosition> line = lineOf(letters, "H-1042");
    double mark = left(line, "!");
    double number = left(line, "H-1042");
    // The mark ends the name, which begins at its right.
    assertTrue(mark > number, mark + " and " + number);
    assertTrue(
        line.stream()
            .filter(l -> Character.isLetter(l.getUnicode().codePointAt(0)))
            .filter(l -> PaperFont.isRightToLeft(l.getUnicode()))
            .allMatch(l -> l.getXDirAdj() > mark));
  }

  private static List<TextPosition> lineOf(List<TextPosition> letters, String word) {
    TextPosition first = first(letters, word);
    return letters.stream().filter(l -> Math.abs(l.getYDirAdj() - first.getYDirAdj()) < 1).toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"Halyard Street Film Inc.", "Halyard Street Window Film & Coatings Inc."})
  void aLatinShopKeepsItsFullStopOnAnArabicCard(String shop) throws Exception {
    for (Handout kind : List.of(Handout.WALLET, Handout.HANG_TAG, Handout.CARE_A5)) {
      List<TextPosition> letters =
          letters(card(usual().language("ar").shopName(shop).view(), kind));
      List<TextPosition> line = lineOf(letters, "Inc");
      assertTrue(left(line, ".") > left(line, "c"), kind + ": " + line);
    }
  }

  /** Forty letters, more than any line of a wallet card holds beside the rest of the greeting. */
  @ParameterizedTest
  @CsvSource({
    "en, this is for your car, This is for your car",
    "es, esto es para su auto, Esto es para su auto"
  })
  void aLongNameLeavesTheGreetingWhole(String language, String rest, String nameless)
      throws Exception {
    String name = "Maria-Guadalupe Alexandrina Konstantinop";
    assertEquals(40, name.length());
    for (Handout kind : List.of(Handout.WALLET, Handout.WALLET_INCH, Handout.HANG_TAG)) {
      try (PrintedCard card =
          new PrintedCard(card(usual().language(language).firstName(name).view(), kind))) {
        String text = card.text(0);
        assertTrue(
            text.contains(nameless) || text.contains(name + ", " + rest), kind + ": " + text);
        assertFalse(text.contains("\u2026"), kind + ": " + text);
      }
    }
  }

  /** A sign of Chinese, an emoji, an Arabic vowel sign, two marks, and nothing that is seen. */
  @ParameterizedTest
  @ValueSource(strings = {"\u4E2D", "\uD83D\uDE97", "\u064E", "?!", "\u200D"})
  void aNameOfWhichNothingIsPrintedIsNotGreeted(String name) throws Exception {
    try (PrintedCard card = new PrintedCard(card(usual().firstName(name).view(), Handout.WALLET))) {
      assertTrue(card.text(0).contains("This is for your car"), card.text(0));
    }
  }

  /** Names from the Unicode Character Database. */
  @Test
  void theSignsThatNoFontHasAreNamedInOneNote() {
    card(usual().firstName("\u4E2D\u6587").car("\u4E2D van \uD83D\uDE97").view(), Handout.WALLET);
    assertEquals(
        List.of(
            "jobs/H-1042.yaml the fonts of handouts have no sign for"
                + " '\u4E2D' (U+4E2D, CJK UNIFIED IDEOGRAPHS 4E2D),"
                + " '\u6587' (U+6587, CJK UNIFIED IDEOGRAPHS 6587),"
                + " '\uD83D\uDE97' (U+1F697, AUTOMOBILE), which are left out"),
        problems.all().stream().map(p -> p.file() + " " + p.message()).toList());
  }

  @Test
  void ofManySignsTheFirstAreNamed() {
    card(usual().firstName("\u4E2D\u6587\u6587\u5B57\u5B66").view(), Handout.WALLET);
    assertEquals(1, problems.all().size());
    String told = problems.all().get(0).message();
    assertTrue(told.endsWith(" and 1 more, which are left out"), told);
  }

  /** In winter a clock in Denver is an hour ahead of one in Portland (IANA time zones). */
  @Test
  void hoursOfAnotherZoneAreLabelled() {
    JobView here = usual().view();
    JobView car = usual().zone("America/Denver").view();
    JobView there =
        new JobView(
            car.job(),
            here.shop(),
            car.catalogue(),
            car.place(),
            car.timeline(),
            car.visit(),
            car.words(),
            car.address(),
            car.token(),
            car.printed(),
            car.parkings());
    assertEquals("", pickups(here).get(0).clock());
    assertEquals("Hours by the clock in Portland, Oregon.", pickups(there).get(0).clock());
    // The pickup itself stays by the clock of the shop.
    assertEquals("4:30 PM", pickups(there).get(0).time().replace('\u00A0', ' '));
    assertEquals(
        "noon by the clock in Portland, Oregon",
        OtherClock.labelled("noon", car.job().pickup(), there));
    assertEquals("noon", OtherClock.labelled("noon", car.job().pickup(), car));
  }

  private List<OfficeDay.Pickup> pickups(JobView view) {
    OfficeJobs jobs =
        new OfficeJobs(
            view.shop(),
            view.words(),
            GuideLibrary.read(
                FILES, WordsLibrary.open(FILES), view.catalogue(), List.of("en"), new Problems()),
            List.of(view));
    return OfficePickups.of(jobs, PICKUP, PICKUP);
  }
}
