package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.Handout;
import curewindow.shop.PaperChoice;
import curewindow.shop.SheetPaper;
import curewindow.shop.ShopFiles;
import curewindow.told.JobView;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** No text of a handout is printed over another: the outlines of its letters are compared. */
final class TextOverlapTest {

  private static final List<String> LANGUAGES = List.of("en", "es", "ar");

  private final Problems problems = new Problems();

  private byte[] bytes(Handout kind, JobView... views) {
    return HandoutPress.read(new ShopFiles(Path.of("no-such-shop")), kind, problems)
        .flatMap(press -> press.print(List.of(views), PaperChoice.on(SheetPaper.NONE), problems))
        .orElseThrow(() -> new AssertionError(problems.all().toString()));
  }

  @ParameterizedTest
  @EnumSource(Handout.class)
  void theUsualTextsStandApart(Handout kind) throws Exception {
    stand(bytes(kind, inAll(l -> SampleJobs.tinted().shippedWords().language(l))));
  }

  @ParameterizedTest
  @EnumSource(Handout.class)
  void theLongestTextsStandApart(Handout kind) throws Exception {
    stand(bytes(kind, inAll(SampleJobs::longest)));
  }

  /** The greeting and the car end above the stamp, which begins 24.4 mm below the sheet's head. */
  @ParameterizedTest
  @CsvSource({
    "CARE_A5, en, 15, 10",
    "CARE_A5, es, 15, 10",
    "CARE_A5, ar, 53, 10",
    "CARE_LETTER, en, 10.85, 12",
    "CARE_LETTER, ar, 48.85, 12"
  })
  void aLongGreetingEndsAboveTheStamp(Handout kind, String language, double left, double top)
      throws Exception {
    List<String> names =
        List.of(
            "Maximiliane-Alexandrina Annabella-Theodora Wolfeschlegelstei",
            "Konstantina Philippa Wilhelmina Ottoline",
            "عبد الرحمن محمد عبد العزيز عبد الله الحسيني المنصوري");
    for (String name : names) {
      SampleJobs job =
          SampleJobs.tinted()
              .shippedWords()
              .language(language)
              .firstName(name)
              .car("dark blue four-door sedan with the long roof box and the dented bumper");
      byte[] bytes = bytes(kind, job.view());
      stand(bytes);
      try (PrintedCard pdf = new PrintedCard(bytes)) {
        double high = pdf.pdf().getPage(0).getMediaBox().getHeight();
        for (PrintedInk ink : PrintedInk.of(pdf, 0)) {
          double from = PrintedCard.millimetres(ink.box().getMinX()) - left;
          double ends = PrintedCard.millimetres(high - ink.box().getMinY()) - top;
          double begins = PrintedCard.millimetres(high - ink.box().getMaxY()) - top;
          boolean inHead = from >= 0 && from < 80 && begins < 22;
          assertTrue(!inHead || ends < 23.6, () -> name + ": " + ink.text());
        }
      }
    }
  }

  private static JobView[] inAll(Function<String, SampleJobs> job) {
    return LANGUAGES.stream().map(job).map(SampleJobs::view).toArray(JobView[]::new);
  }

  private void stand(byte[] bytes) throws Exception {
    assertEquals(List.of(), problems.all());
    try (PrintedCard pdf = new PrintedCard(bytes)) {
      for (int page = 0; page < pdf.pdf().getNumberOfPages(); page++) {
        List<PrintedInk> ink = PrintedInk.of(pdf, page);
        assertTrue(ink.size() > 20, "few letters on page " + page);
        assertEquals(List.of(), disturbed(ink));
      }
    }
  }

  private static List<String> disturbed(List<PrintedInk> ink) {
    List<String> found = new ArrayList<>();
    for (int i = 0; i < ink.size(); i++) {
      for (int j = i + 1; j < ink.size(); j++) {
        if (ink.get(i).disturbs(ink.get(j))) {
          found.add(ink.get(i).text() + " on " + ink.get(j).text());
        }
      }
    }
    return found;
  }

  /** That the comparison sees what it is for: a letter set on another, and one set apart. */
  @Test
  void tightLinesAreSeen() throws Exception {
    JobView view = SampleJobs.tinted().shippedWords().view();
    try (PrintedCard pdf = new PrintedCard(bytes(Handout.WALLET, view))) {
      List<PrintedInk> ink = PrintedInk.of(pdf, 0);
      PrintedInk letter = ink.get(0);
      PrintedInk below = letter.moved(0, -1);
      PrintedInk beside = letter.moved(1, 0);
      assertTrue(letter.disturbs(below));
      assertTrue(letter.disturbs(beside));
      assertFalse(letter.disturbs(letter.moved(0, -30)));
      assertFalse(letter.disturbs(letter.moved(30, 0)));
    }
  }

  /** Words that come with the program are never cut: a window's name says which one it is. */
  @ParameterizedTest
  @EnumSource(Handout.class)
  void theUsualTextsAreWhole(Handout kind) throws Exception {
    whole(bytes(kind, inAll(l -> SampleJobs.tinted().shippedWords().language(l))));
  }

  private static void whole(byte[] bytes) throws Exception {
    try (PrintedCard pdf = new PrintedCard(bytes)) {
      for (int page = 0; page < pdf.pdf().getNumberOfPages(); page++) {
        String text = pdf.text(page);
        assertFalse(text.contains("…"), text);
      }
    }
  }

  /** A phone number is printed whole: alone where the words before it leave too little room. */
  @ParameterizedTest
  @EnumSource(Handout.class)
  void thePhoneNumberIsWhole(Handout kind) throws Exception {
    byte[] bytes = bytes(kind, SampleJobs.longest("en").view());
    try (PrintedCard pdf = new PrintedCard(bytes)) {
      String text = pdf.text(0) + pdf.text(pdf.pdf().getNumberOfPages() - 1);
      assertTrue(text.contains("+49 (0)7531 555-0142 ext 4711"), text);
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = Handout.class,
      names = {"WALLET", "WINDOW_UP"})
  void aPhoneNumberThatDoesNotFitIsTold(Handout kind) {
    JobView view =
        SampleJobs.tinted()
            .shippedWords()
            .phone("call the front desk at 503 555 0142 or the workshop at 503 555 0143")
            .view();
    var press = HandoutPress.read(new ShopFiles(Path.of("no-such-shop")), kind, problems);
    assertTrue(
        press
            .orElseThrow()
            .print(List.of(view), PaperChoice.on(SheetPaper.NONE), problems)
            .isEmpty());
    assertEquals(1, problems.all().size(), problems.all().toString());
    Problem told = problems.all().get(0);
    assertEquals("too-long-to-print", told.code());
    assertEquals("phone", told.path());
  }
}
