package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.HoldKind;
import curewindow.guide.GuideLibrary;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.Handout;
import curewindow.shop.HandoutChoice;
import curewindow.shop.InkChoice;
import curewindow.shop.SheetPaper;
import curewindow.shop.Shop;
import curewindow.shop.ShopFiles;
import curewindow.shop.Units;
import curewindow.told.JobView;
import curewindow.words.WordsLibrary;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The paper of a day: what stands on it, and that all of it can be read. */
final class OfficePaperTest {

  private static final ShopFiles FILES = new ShopFiles(Path.of("no-such-shop"));

  /** The day on which the sample jobs are picked up, at 16:30 in Portland. */
  private static final LocalDate PICKUP = LocalDate.parse("2026-11-30");

  private final Problems problems = new Problems();

  private OfficeJobs jobs(JobView... views) {
    JobView first = SampleJobs.tinted().shippedWords().view();
    GuideLibrary guides =
        GuideLibrary.read(
            FILES,
            WordsLibrary.open(FILES),
            first.catalogue(),
            List.of("ar", "en", "es"),
            new Problems());
    return views.length == 0
        ? new OfficeJobs(first.shop(), first.words(), guides, List.of())
        : new OfficeJobs(views[0].shop(), views[0].words(), guides, List.of(views));
  }

  private static SampleJobs usual() {
    return SampleJobs.tinted().shippedWords();
  }

  private static OfficeDay day(OfficeJobs jobs, LocalDate day) {
    return OfficeDay.of(jobs, day, List.of(), List.of());
  }

  private byte[] pdf(OfficeJobs jobs, OfficeDay day) {
    return OfficePaper.read(FILES, problems).orElseThrow().pdf(jobs, day, problems).orElseThrow();
  }

  private String html(OfficeJobs jobs, OfficeDay day) {
    return OfficePaper.read(FILES, problems).orElseThrow().html(jobs, day, problems).orElseThrow();
  }

  private static String text(byte[] bytes) throws Exception {
    StringBuilder text = new StringBuilder();
    try (PrintedCard pdf = new PrintedCard(bytes)) {
      for (int page = 0; page < pdf.pdf().getNumberOfPages(); page++) {
        text.append(pdf.text(page)).append(' ');
      }
    }
    return plain(text.toString());
  }

  /** With common spaces, as those inside a time do not break. */
  private static String plain(String text) {
    return text.replace('\u00A0', ' ');
  }

  /** No text, a sign that no font has, and a vowel sign, which is not printed. */
  @ParameterizedTest
  @ValueSource(strings = {"", "\u4E2D", "\u064E"})
  void anArabicShopHasItsPaperThoughNothingOfACarCanBePrinted(String car) {
    OfficeJobs jobs = jobs(usual().language("ar").firstName(car).car(car).view());
    assertTrue(pdf(jobs, day(jobs, PICKUP)).length > 0);
    assertFalse(problems.hasErrors());
  }

  @Test
  void aPickupHasItsTimeNameCarWorkParkingHandoutAndDates() throws Exception {
    OfficeJobs jobs = jobs(usual().view());
    OfficeDay.Pickup pickup = day(jobs, PICKUP).pickups().get(0);
    assertEquals("4:30 PM", plain(pickup.time()));
    assertEquals("H-1042 Maribel", pickup.job() + " " + pickup.firstName());
    assertEquals(List.of("Window tint, Harbor 35: front door windows."), pickup.fitted());
    assertEquals("outside", pickup.parking());
    assertEquals("Give: card", pickup.give());
    assertEquals(
        List.of(
            new OfficeDay.Said("No hand wash", "until Wed, Dec 2 · 9 AM"),
            new OfficeDay.Said("Windows stay up", "until Thu, Dec 3 · 2 PM"),
            new OfficeDay.Said("No rear defroster", "until Sat, Dec 19 · 10 AM")),
        pickup.dates().stream().map(d -> new OfficeDay.Said(d.what(), plain(d.when()))).toList());
    String printed = text(pdf(jobs, day(jobs, PICKUP)));
    for (String part : List.of("4:30 PM", "H-1042 Maribel", "until Thu, Dec 3", "Give: card")) {
      assertTrue(printed.contains(part), part + " in " + printed);
    }
    assertFalse(printed.contains("555"), "no phone number");
    assertEquals(List.of(), problems.all());
  }

  /** A car with many holds: three dates are said, windows and wash among them; all may be asked. */
  @Test
  void aJobOfEightHoldsIsToldBriefly() {
    OfficeJobs jobs = jobs(SampleJobs.longest("en").view());
    OfficeDay day = day(jobs, PICKUP);
    assertEquals(
        List.of("No hand wash", "Windows stay up", "No rear defroster"),
        day.pickups().get(0).dates().stream().map(OfficeDay.Said::what).toList());
    OfficeCallers.Caller caller =
        OfficeCallers.of(jobs, LocalDate.parse("2026-12-29"), OfficeCallers.Most.ALL)
            .callers()
            .get(0);
    assertEquals(OfficeCallers.Why.DATE, caller.why());
    OfficeCallers.Asked machine =
        caller.asked().stream()
            .filter(a -> a.question().contains("automatic wash"))
            .findFirst()
            .orElseThrow();
    assertEquals("wait until Wed, Dec 30", machine.stand());
  }

  @Test
  void theOtherDaysHaveNoPickup() {
    OfficeJobs jobs = jobs(usual().view());
    assertEquals(List.of(), day(jobs, PICKUP.minusDays(1)).pickups());
    assertEquals(List.of(), day(jobs, PICKUP.plusDays(1)).pickups());
  }

  @Test
  void visitsAreToldSevenDaysAheadAndThirtyAfter() {
    OfficeJobs jobs = jobs(usual().view());
    assertEquals(List.of(), visits(jobs, "2026-12-20").ahead());
    assertEquals(1, visits(jobs, "2026-12-21").ahead().size());
    assertEquals("Come in so we can check it", visits(jobs, "2026-12-28").ahead().get(0).what());
    OfficeVisits later = visits(jobs, "2027-01-24");
    assertEquals(List.of(), later.ahead());
    assertEquals(1, later.overdue().size());
    assertEquals(new OfficeVisits(List.of(), List.of(), 1), visits(jobs, "2027-01-28"));
  }

  private static OfficeVisits visits(OfficeJobs jobs, String day) {
    return day(jobs, LocalDate.parse(day)).visits();
  }

  private static List<String> holds(List<OfficeVisits.Visit> visits, OfficeJobs jobs) {
    return visits.stream()
        .map(
            v ->
                List.of("machine-wash", "inspection").stream()
                    .filter(h -> jobs.words().text("hold." + h + ".short").equals(v.what()))
                    .findFirst()
                    .orElse(v.what()))
        .toList();
  }

  @Test
  void whoHasADateNearComesFirstThenFreshCarsThenThoseWhoWait() {
    JobView date =
        SampleJobs.bare()
            .shippedWords()
            .hold("windows-up", HoldKind.HOLD, "2026-12-02T14:00")
            .view();
    JobView fresh =
        SampleJobs.bare().shippedWords().hold("haze", HoldKind.SETTLE, "2026-12-28T08:00").view();
    JobView waits = usual().view();
    assertEquals(List.of(OfficeCallers.Why.DATE), why("2026-12-01", date));
    assertEquals(
        List.of(OfficeCallers.Why.DATE, OfficeCallers.Why.DATE, OfficeCallers.Why.FRESH),
        why("2026-12-01", fresh, waits, date));
    assertEquals(List.of(OfficeCallers.Why.WAITING), why("2026-12-10", fresh, waits, date));
    assertEquals(List.of(), why("2026-11-29", fresh, waits, date), "not picked up yet");
    assertEquals(List.of(), why("2027-02-01", fresh, waits, date), "all over");
  }

  private List<OfficeCallers.Why> why(String day, JobView... views) {
    return OfficeCallers.of(jobs(views), LocalDate.parse(day), OfficeCallers.Most.ALL)
        .callers()
        .stream()
        .map(OfficeCallers.Caller::why)
        .toList();
  }

  @Test
  void theAnswerIsThisCarsOwnAndChangesWithTheDay() {
    JobView view =
        SampleJobs.bare()
            .shippedWords()
            .hold("windows-up", HoldKind.HOLD, "2026-12-02T14:00")
            .view();
    OfficeCallers.Asked before = lowered(view, "2026-12-01");
    assertTrue(
        plain(before.answer()).contains("until Wednesday, December 2, 2 PM"), before.answer());
    assertFalse(before.answer().contains("That date has passed"), before.answer());
    OfficeCallers.Asked after = lowered(view, "2026-12-03");
    assertTrue(after.answer().contains("That date has passed"), after.answer());
    assertFalse(after.answer().contains("leave it up"), after.answer());
  }

  private OfficeCallers.Asked lowered(JobView view, String day) {
    return OfficeCallers.of(jobs(view), LocalDate.parse(day), OfficeCallers.Most.ALL)
        .callers()
        .get(0)
        .asked()
        .stream()
        .filter(a -> a.question().contains("rolled a window down"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void whatIsLeftOutIsCounted() throws Exception {
    JobView[] many = new JobView[11];
    java.util.Arrays.fill(many, usual().view());
    OfficeJobs jobs = jobs(many);
    OfficeDay day = day(jobs, PICKUP.plusDays(1));
    assertEquals(8, day.callers().callers().size());
    assertEquals(3, day.callers().more());
    int all =
        OfficeCallers.of(jobs, PICKUP.plusDays(1), OfficeCallers.Most.ALL)
            .callers()
            .get(0)
            .asked()
            .size();
    assertEquals(all - 3, day.callers().callers().get(0).more());
    String printed = text(pdf(jobs, day));
    assertTrue(printed.contains("3 more jobs could call and are left out"), printed);
    String questions = 8 * (all - 3) + " more questions are left out";
    assertTrue(printed.contains(questions), printed);
    assertEquals(printed.indexOf("questions are left"), printed.lastIndexOf("questions are left"));
  }

  @Test
  void aShopWithoutJobsGetsAPaperThatSaysSo() throws Exception {
    OfficeJobs jobs = jobs();
    String printed = text(pdf(jobs, day(jobs, PICKUP)));
    assertTrue(printed.contains("No pickups."), printed);
    assertTrue(printed.contains("No visits due in the next seven days"), printed);
    assertTrue(printed.contains("No calls to make"), printed);
    assertTrue(printed.contains("No one has a date coming up."), printed);
    assertEquals(List.of(), problems.all());
  }

  /** Whoever misses a car on the paper learns why; what has no sign in any font is told already. */
  @ParameterizedTest
  @CsvSource({
    "en, Left off this page until fixed:",
    "es, Fuera de esta hoja hasta que se corrija:",
    "ar, \u062E\u0627\u0631\u062C \u0647\u0630\u0647 \u0627\u0644\u0648\u0631\u0642\u0629"
  })
  void jobsThatAreLeftOutAreNamedInALine(String language, String begin) throws Exception {
    OfficeJobs jobs = jobs(usual().language(language).view());
    assertFalse(html(jobs, day(jobs, PICKUP)).contains(begin));
    OfficeDay day =
        OfficeDay.of(jobs, PICKUP, List.of(), List.of("H-7", "jobs/\u4E2D.yaml", "H-9"));
    String html = html(jobs, day);
    assertTrue(html.contains(begin), html);
    assertTrue(unmarked(html).contains("H-7, jobs/\u4E2D.yaml, H-9"), html);
    String printed = text(pdf(jobs, day));
    for (String job : List.of("H-7", "jobs/.yaml", "H-9")) {
      assertTrue(printed.contains(job), printed);
    }
    assertEquals(List.of(), problems.all());
  }

  /** Without marks of direction and isolates (UAX 9). */
  private static String unmarked(String text) {
    return text.replaceAll("[\u200E\u200F\u2066-\u2069]", "");
  }

  @Test
  void ofManyThatAreLeftOutSixAreNamed() {
    OfficeJobs jobs = jobs();
    String html = html(jobs, OfficeDay.of(jobs, PICKUP, List.of(), names(7)));
    assertTrue(html.contains(": H-1, H-2, H-3, H-4, H-5, H-6 and 1 more. Run check"), html);
  }

  private static List<String> names(int count) {
    return IntStream.rangeClosed(1, count).mapToObj(i -> "H-" + i).toList();
  }

  @Test
  void theSameDayGivesTheSameBytes() {
    OfficeJobs jobs = jobs(usual().view());
    assertArrayEquals(pdf(jobs, day(jobs, PICKUP)), pdf(jobs, day(jobs, PICKUP)));
    assertEquals(html(jobs, day(jobs, PICKUP)), html(jobs, day(jobs, PICKUP)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es", "ar"})
  void theLongestTextsStandApartAndOnThePage(String language) throws Exception {
    OfficeJobs jobs = jobs(SampleJobs.longest(language).view(), usual().view());
    List<OfficeDay.Call> calls =
        List.of(new OfficeDay.Call("H-1042 · Maribel", "X".repeat(90), "Y".repeat(70)));
    for (String day : List.of("2026-11-30", "2026-12-26")) {
      byte[] bytes = pdf(jobs, OfficeDay.of(jobs, LocalDate.parse(day), calls, names(30)));
      assertEquals(List.of(), problems.all());
      try (PrintedCard pdf = new PrintedCard(bytes)) {
        for (int page = 0; page < pdf.pdf().getNumberOfPages(); page++) {
          readable(pdf, page);
          inOurFonts(pdf, page);
        }
      }
    }
  }

  private static void inOurFonts(PrintedCard pdf, int page) throws Exception {
    PDResources all = pdf.pdf().getPage(page).getResources();
    for (COSName name : all.getFontNames()) {
      PDFont font = all.getFont(name);
      assertTrue(font.isEmbedded(), font.getName());
      assertTrue(font.getName().matches("[A-Z]{6}[+](Roboto|Markazi|DejaVu).*"), font.getName());
    }
  }

  private static void readable(PrintedCard pdf, int page) throws Exception {
    List<PrintedInk> ink = PrintedInk.of(pdf, page);
    PDRectangle paper = pdf.pdf().getPage(page).getMediaBox();
    List<String> found = new ArrayList<>();
    for (int i = 0; i < ink.size(); i++) {
      for (int j = i + 1; j < ink.size(); j++) {
        if (ink.get(i).disturbs(ink.get(j))) {
          found.add(ink.get(i).text() + " on " + ink.get(j).text());
        }
      }
      var box = ink.get(i).box();
      if (box.getMinX() < 28 || box.getMaxX() > paper.getWidth() - 28 || box.getMinY() < 14) {
        found.add(ink.get(i).text() + " off the page");
      }
    }
    assertEquals(List.of(), found);
  }

  @Test
  void aSignThatNoFontHasIsToldAndLeftOut() throws Exception {
    OfficeJobs jobs = jobs(usual().firstName("Mari\u4E2D").view());
    String printed = text(pdf(jobs, day(jobs, PICKUP)));
    assertTrue(printed.contains("H-1042 Mari "), printed);
    Problem told = problems.all().get(0);
    assertEquals(1, problems.all().size(), problems.all().toString());
    assertEquals("missing-glyph", told.code());
    assertEquals("jobs/H-1042.yaml", told.file());
  }

  @Test
  void thePaperIsTheShopsSheet() throws Exception {
    Shop shop = usual().view().shop();
    var en = usual().view().words();
    var ar = usual().language("ar").view().words();
    assertEquals(SheetPaper.LETTER, OfficePaper.paper(shop, en));
    assertEquals(SheetPaper.A4, OfficePaper.paper(shop, ar));
    assertEquals(SheetPaper.A4, OfficePaper.paper(with(shop, SheetPaper.A4), en));
    assertEquals(SheetPaper.LETTER, OfficePaper.paper(with(shop, SheetPaper.LETTER), ar));
    OfficeJobs jobs = jobs(usual().view());
    try (PrintedCard pdf = new PrintedCard(pdf(jobs, day(jobs, PICKUP)))) {
      PDRectangle page = pdf.pdf().getPage(0).getMediaBox();
      assertEquals(612, page.getWidth(), 0.5); // 8.5 by 11 inches, ANSI/ASME Y14.1 size A
      assertEquals(792, page.getHeight(), 0.5);
    }
  }

  private static Shop with(Shop shop, SheetPaper sheet) {
    return new Shop(
        shop.name(),
        shop.phone(),
        shop.textNumber(),
        shop.email(),
        shop.street(),
        shop.addressParts(),
        shop.address(),
        shop.zone(),
        shop.language(),
        Optional.empty(),
        Optional.of(Units.US),
        shop.place(),
        shop.bay(),
        shop.bondEnergy(),
        shop.opening(),
        shop.closed(),
        shop.visitWithin(),
        shop.look(),
        new HandoutChoice(Handout.WALLET, Optional.of(sheet), 1, InkChoice.USUAL),
        Optional.empty(),
        Optional.empty());
  }

  @Test
  void namesAreEscapedOnAScreen() {
    OfficeJobs jobs = jobs(usual().firstName("<b>&\"'$1").view());
    String html = html(jobs, day(jobs, PICKUP));
    assertTrue(html.contains("&lt;b&gt;&amp;"), html);
    assertFalse(html.contains("<b>"), html);
    assertEquals(List.of(), problems.all());
  }
}
