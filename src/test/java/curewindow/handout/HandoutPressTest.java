package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.Result;
import com.google.zxing.ResultPoint;
import com.google.zxing.client.j2se.BufferedImageLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.Handout;
import curewindow.shop.InkChoice;
import curewindow.shop.PaperChoice;
import curewindow.shop.SheetPaper;
import curewindow.shop.ShopFiles;
import curewindow.told.JobView;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every handout, read back from its PDF. */
final class HandoutPressTest {

  private final Problems problems = new Problems();

  private byte[] bytes(Handout kind, SheetPaper paper, List<JobView> views) {
    byte[] pdf =
        HandoutPress.read(new ShopFiles(Path.of("no-such-shop")), kind, problems)
            .flatMap(press -> press.print(views, PaperChoice.on(paper), problems))
            .orElseThrow(() -> new AssertionError(problems.all().toString()));
    assertEquals(List.of(), problems.all());
    return pdf;
  }

  private static JobView plain() {
    return SampleJobs.tinted().shippedWords().view();
  }

  /** Sizes of ISO 216 (A5) and of the inch formats, by 25.4 mm. */
  @ParameterizedTest
  @CsvSource({
    "wallet, 85, 55, 105, 75, 1",
    "wallet-inch, 88.9, 50.8, 108.9, 70.8, 1",
    "hang-tag, 70, 125, 90, 145, 2",
    "window-up, 64, 42, 87, 65, 2",
    "care-a5, 148, 210, 148, 210, 1",
    "care-letter, 139.7, 215.9, 139.7, 215.9, 1",
    "label-62, 62, 100, 62, 100, 1",
    "label-4x6, 101.6, 152.4, 101.6, 152.4, 1",
    "label-small, 57.15, 31.75, 57.15, 31.75, 1",
  })
  void sizesAreRight(String id, double w, double h, double sheetW, double sheetH, int pages)
      throws Exception {
    Handout kind = Handout.of(id).orElseThrow();
    try (PrintedCard pdf = new PrintedCard(bytes(kind, SheetPaper.NONE, List.of(plain())))) {
      assertEquals(pages, pdf.pdf().getNumberOfPages());
      for (PDPage page : pdf.pdf().getPages()) {
        size(w, h, page.getTrimBox());
        size(sheetW, sheetH, page.getMediaBox());
      }
    }
  }

  private static void size(double width, double height, PDRectangle is) {
    assertEquals(width, PrintedCard.millimetres(is.getWidth()), 0.1);
    assertEquals(height, PrintedCard.millimetres(is.getHeight()), 0.1);
  }

  /** More than the small numbers, of which Java has each only once. */
  @Test
  void anyNumberOfTagsHaveTheirBacks() throws Exception {
    List<JobView> many = Collections.nCopies(130, plain());
    try (PrintedCard pdf = new PrintedCard(bytes(Handout.HANG_TAG, SheetPaper.NONE, many))) {
      assertEquals(260, pdf.pdf().getNumberOfPages());
    }
  }

  /** Nothing leaves the cut handout and nothing is smaller than it may be. */
  @ParameterizedTest
  @EnumSource(Handout.class)
  void theLongestTextsFit(Handout kind) throws Exception {
    PaperFormat format = PaperFormat.of(kind);
    for (String language : List.of("en", "es", "ar")) {
      byte[] bytes = bytes(kind, SheetPaper.NONE, List.of(SampleJobs.longest(language).view()));
      try (PrintedCard pdf = new PrintedCard(bytes)) {
        for (int page = 0; page < pdf.pdf().getNumberOfPages(); page++) {
          for (TextPosition letter : pdf.letters(page)) {
            fits(letter, format);
          }
        }
      }
    }
  }

  /** No text, spaces, a sign that no font has, vowel signs alone, and marks that are not seen. */
  @ParameterizedTest
  @ValueSource(strings = {"", "\u00A0", "\u4E2D", "\u064E\u0670", "\u200B", "\u200F"})
  void aCarWithoutPrintableWordsIsNoTrouble(String car) {
    for (Handout kind : Handout.values()) {
      HandoutPress press =
          HandoutPress.read(new ShopFiles(Path.of("no-such-shop")), kind, problems).orElseThrow();
      for (String language : List.of("en", "ar")) {
        List<JobView> views = List.of(SampleJobs.longest(language).firstName("").car(car).view());
        assertTrue(
            press.print(views, PaperChoice.on(SheetPaper.NONE), problems).isPresent(),
            kind + language + problems.all());
      }
    }
    assertFalse(problems.hasErrors());
  }

  private static void fits(TextPosition letter, PaperFormat format) {
    double left = PrintedCard.millimetres(letter.getXDirAdj());
    double right = left + PrintedCard.millimetres(letter.getWidthDirAdj());
    double base = PrintedCard.millimetres(letter.getYDirAdj());
    String seen = format + " " + letter.getUnicode() + " at " + left + ", " + base;
    double points = PrintedCard.points(letter);
    assertTrue(points >= format.smallest() - 0.05, () -> seen + " " + points);
    if (letter.getDir() == 0) {
      double m = format.margin();
      assertTrue(left >= m + 2 && right <= m + format.cut().width() - 2, seen);
      double carrier = format.edge().carrier();
      double low = m + format.cut().height() + (carrier > 0 ? m : 0);
      assertTrue(base >= m + 2 && base <= low - 1.5, seen);
    }
  }

  /** The clear border of 4 modules (ISO/IEC 18004) is found round the code that ZXing finds. */
  @ParameterizedTest
  @EnumSource(Handout.class)
  void theQuietZoneIsClear(Handout kind) throws Exception {
    JobView view = plain();
    QrCode code = HandoutPress.code(view, kind).orElseThrow();
    int page = kind == Handout.HANG_TAG ? 1 : 0;
    try (PrintedCard pdf = new PrintedCard(bytes(kind, SheetPaper.NONE, List.of(view)))) {
      BufferedImage picture = pdf.picture(page);
      var bitmap = new BinaryBitmap(new HybridBinarizer(new BufferedImageLuminanceSource(picture)));
      Result read = new QRCodeReader().decode(bitmap, Map.of(DecodeHintType.TRY_HARDER, true));
      assertEquals(code.text(), read.getText());
      double pixels = code.module(HandoutPress.codeSide(kind)) * PrintedCard.DPI / 25.4;
      ResultPoint upperLeft = read.getResultPoints()[1];
      clearRound(picture, upperLeft, pixels, code.modules());
    }
  }

  private static void clearRound(BufferedImage picture, ResultPoint mark, double px, int modules) {
    // The middle of the upper left finder pattern is 3.5 modules from the symbol's edges.
    double left = mark.getX() - 3.5 * px;
    double top = mark.getY() - 3.5 * px;
    double side = modules * px;
    double quiet = QrCode.QUIET_ZONE * px - 2;
    for (int x = (int) (left - quiet); x <= left + side + quiet; x++) {
      for (int y = (int) (top - quiet); y <= top + side + quiet; y++) {
        boolean in = x > left - 2 && x < left + side + 2 && y > top - 2 && y < top + side + 2;
        int seen = in ? 255 : picture.getRaster().getSample(x, y, 0);
        assertTrue(seen > 250, "drawn in the quiet zone at " + x + ", " + y);
      }
    }
  }

  @Test
  void theStickersLettersAreReadFromTheSeat() throws Exception {
    byte[] bytes = bytes(Handout.WINDOW_UP, SheetPaper.NONE, List.of(plain()));
    try (PrintedCard pdf = new PrintedCard(bytes)) {
      List<TextPosition> large =
          pdf.letters(0).stream().filter(l -> PrintedCard.points(l) >= 19.9).toList();
      String text = String.join("", large.stream().map(TextPosition::getUnicode).toList());
      for (String part : List.of("Window", "until", "DEC", "THU", "PM")) {
        assertTrue(text.contains(part), text);
      }
      assertFalse(pdf.text(0).contains("…"), pdf.text(0));
    }
  }

  @Test
  void aJobWithoutWaitingWindowsGetsNoSticker() {
    JobView view = SampleJobs.bare().hold("hand-wash", HoldKind.HOLD, "2026-12-03T14:00").view();
    assertFalse(HandoutPress.isFor(view, Handout.WINDOW_UP));
    assertTrue(HandoutPress.isFor(view, Handout.WALLET));
    assertTrue(
        HandoutPress.read(new ShopFiles(Path.of("no-such-shop")), Handout.WINDOW_UP, problems)
            .orElseThrow()
            .handouts(List.of(view), PaperChoice.on(SheetPaper.NONE), problems)
            .isEmpty());
  }

  @Test
  void everyDateOnAHandoutIsKnownToItsKeeper() {
    assertEquals(List.of("windows-up"), holds(Handout.WINDOW_UP));
    assertEquals(List.of("windows-up", "defroster"), holds(Handout.WALLET));
    List<String> all = List.of("windows-up", "defroster", "hand-wash", "haze");
    assertTrue(holds(Handout.HANG_TAG).containsAll(all));
    assertTrue(holds(Handout.CARE_A5).containsAll(all));
  }

  private List<String> holds(Handout kind) {
    return HandoutPress.read(new ShopFiles(Path.of("no-such-shop")), kind, problems)
        .flatMap(
            press -> press.handouts(List.of(plain()), PaperChoice.on(SheetPaper.NONE), problems))
        .orElseThrow()
        .made()
        .get(0)
        .dates()
        .stream()
        .map(Release::hold)
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "wallet, A4, 3, 3",
    "wallet, LETTER, 2, 4",
    "wallet-inch, LETTER, 2, 4",
    "hang-tag, A4, 2, 2",
    "hang-tag, LETTER, 2, 2",
    "window-up, A4, 4, 3",
    "window-up, LETTER, 3, 3",
    "care-a5, A4, 2, 1",
    "care-letter, LETTER, 2, 1",
    "care-letter, A4, 1, 1",
  })
  void sheetsHoldWhatTheManualSays(String id, SheetPaper paper, int columns, int rows) {
    PaperFormat format = PaperFormat.of(Handout.of(id).orElseThrow());
    SheetPlan plan =
        SheetPlan.of(format, format == PaperFormat.of(Handout.HANG_TAG) ? 2 : 1, paper);
    assertEquals(columns + "x" + rows, plan.columns() + "x" + plan.rows());
    for (int place = 0; place < plan.places(); place++) {
      SheetPlan.Corner front = plan.front(place);
      SheetPlan.Corner back = plan.back(place);
      assertTrue(front.x() >= -0.01 && front.y() >= -0.01);
      // Turned on the upright edge, the back of a place lies behind its front.
      assertEquals(plan.sheet().width() - front.x() - plan.item().width(), back.x(), 1e-9);
      assertEquals(front.y(), back.y(), 1e-9);
    }
  }

  @Test
  void aSheetOfTagsHasEveryBackBehindItsFront() throws Exception {
    List<JobView> views =
        List.of(
            SampleJobs.tinted().token("0123ABCDEFGHJKMNPQRS").shippedWords().view(),
            SampleJobs.tinted().shippedWords().view());
    byte[] bytes = bytes(Handout.HANG_TAG, SheetPaper.A4, views);
    try (PrintedCard pdf = new PrintedCard(bytes)) {
      assertEquals(2, pdf.pdf().getNumberOfPages());
      size(210, 297, pdf.pdf().getPage(1).getMediaBox());
      double[] at = {0, 0};
      for (TextPosition letter : pdf.letters(1)) {
        double x = PrintedCard.millimetres(letter.getXDirAdj());
        at[x < 105 ? 0 : 1] += letter.getUnicode().equals("J") ? 1 : 0;
      }
      assertEquals(0, at[0], "the second job's token has no J");
      assertTrue(at[1] > 0, "the first job's back stands right, as its front stands left");
      assertEquals(
          "DuplexFlipLongEdge", pdf.pdf().getDocumentCatalog().getViewerPreferences().getDuplex());
    }
  }

  /** For the installer: where the sticker goes, and where it must not. */
  @ParameterizedTest
  @CsvSource({"en, Left front window, airbag", "es, Ventana delantera izquierda, bolsa de aire"})
  void theCarrierSaysWhereTheStickerGoes(String language, String window, String never)
      throws Exception {
    String text = carrier(language);
    assertTrue(text.contains(window) && text.contains(never), text);
    assertTrue(text.contains(window + " · H-1042"), "two cars may share a sheet: " + text);
  }

  @Test
  void anArabicCarrierSaysItToo() throws Exception {
    String text = carrier("ar");
    assertTrue(text.contains("كهروستاتيكي") && text.contains("الرؤية"), text);
  }

  private String carrier(String language) throws Exception {
    JobView view = SampleJobs.tinted().shippedWords().language(language).view();
    byte[] bytes = bytes(Handout.WINDOW_UP, SheetPaper.NONE, List.of(view));
    try (PrintedCard pdf = new PrintedCard(bytes)) {
      assertEquals(2, pdf.pdf().getNumberOfPages());
      return pdf.text(0);
    }
  }

  /** Of a sheet of nine, three are gone: six cards fill it, and the seventh is on the next. */
  @Test
  void aPartlyUsedSheetGoesOnAtItsFirstFreePlace() throws Exception {
    PaperFormat format = PaperFormat.of(Handout.WALLET);
    SheetPlan plan = SheetPlan.of(format, 1, SheetPaper.A4);
    PaperChoice fourth = new PaperChoice(SheetPaper.A4, 4, InkChoice.USUAL);
    byte[] bytes =
        HandoutPress.read(new ShopFiles(Path.of("no-such-shop")), Handout.WALLET, problems)
            .orElseThrow()
            .print(Collections.nCopies(7, plain()), fourth, problems)
            .orElseThrow();
    try (PrintedCard pdf = new PrintedCard(bytes)) {
      assertEquals(2, pdf.pdf().getNumberOfPages());
      assertEquals(Set.of(3, 4, 5, 6, 7, 8), places(pdf, 0, plan));
      assertEquals(Set.of(0), places(pdf, 1, plan));
    }
  }

  /** The places of a sheet on which there are letters. */
  private static Set<Integer> places(PrintedCard pdf, int page, SheetPlan plan) throws Exception {
    Set<Integer> found = new TreeSet<>();
    for (TextPosition letter : pdf.letters(page)) {
      double x = PrintedCard.millimetres(letter.getXDirAdj());
      double y = plan.sheet().height() - PrintedCard.millimetres(letter.getYDirAdj());
      for (int place = 0; place < plan.places(); place++) {
        SheetPlan.Corner corner = plan.front(place);
        if (letter.getDir() == 0
            && x >= corner.x()
            && x < corner.x() + plan.item().width()
            && y >= corner.y()
            && y < corner.y() + plan.item().height()) {
          found.add(place);
        }
      }
    }
    return found;
  }

  /** As docs/handouts.md tells: a second sheet in the template is the reverse side. */
  @Test
  void aShopMayHaveItsOwnReverseSide(@TempDir Path shop) throws Exception {
    Path file = Files.createDirectories(shop.resolve("site-templates")).resolve("card.html");
    String own =
        Files.readString(Path.of("site-templates/card.html"))
            .replace("<div class=\"sheet\" th:each", "<div th:each")
            .replaceFirst("(<div th:each=\"card : [^>]*>)", "$1<div class=\"sheet\">")
            .replace(
                "  </body>",
                "<div class=\"sheet\"><div class=\"card\"><p style=\"margin: 5mm\">Thank you</p></div></div></div></body>");
    Files.writeString(file, own);
    byte[] bytes =
        HandoutPress.read(new ShopFiles(shop), Handout.WALLET, problems)
            .orElseThrow()
            .print(Collections.nCopies(3, plain()), PaperChoice.on(SheetPaper.A4), problems)
            .orElseThrow(() -> new AssertionError(problems.all()));
    try (PrintedCard pdf = new PrintedCard(bytes)) {
      assertEquals(2, pdf.pdf().getNumberOfPages());
      assertTrue(pdf.text(0).contains("Windows") && !pdf.text(0).contains("Thank"), pdf.text(0));
      assertEquals("Thankyou".repeat(3), pdf.text(1).replace(" ", ""));
      assertEquals(
          "DuplexFlipLongEdge", pdf.pdf().getDocumentCatalog().getViewerPreferences().getDuplex());
    }
  }

  /** All fronts and then all backs would be paired wrongly, and so would a third page. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "<div class=\"sheet\" th:each=\"c : ${cards}\"><div class=\"card\"><p>Thanks</p></div></div>",
        "<div class=\"sheet\"><div class=\"card\"><p>Thanks</p></div></div>"
      })
  void sidesThatDoNotComeInPairsAreRefused(String back, @TempDir Path shop) throws Exception {
    Path file = Files.createDirectories(shop.resolve("site-templates")).resolve("card.html");
    String own = Files.readString(Path.of("site-templates/card.html"));
    Files.writeString(file, own.replace("  </body>", back + "</body>"));
    var pdf =
        HandoutPress.read(new ShopFiles(shop), Handout.WALLET, problems)
            .orElseThrow()
            .print(Collections.nCopies(3, plain()), PaperChoice.on(SheetPaper.A4), problems);
    assertTrue(pdf.isEmpty());
    assertEquals(1, problems.all().size(), problems.all().toString());
    Problem told = problems.all().get(0);
    assertEquals("template-mistake site-templates/card.html", told.code() + " " + told.file());
    assertTrue(told.fix().contains("th:each"), told.fix());
  }

  @ParameterizedTest
  @EnumSource(Handout.class)
  void sheetsAreTheSameBytesAgain(Handout kind) throws Exception {
    List<JobView> views = Collections.nCopies(3, plain());
    assertArrayEquals(bytes(kind, SheetPaper.LETTER, views), bytes(kind, SheetPaper.LETTER, views));
  }

  /** Arabic letters join: four in one word are measured otherwise than four alone. */
  @Test
  void arabicIsMeasuredJoined() {
    assertTrue(PaperFont.isRightToLeft("\u0628\u0628"));
    double joined = PaperFont.ARABIC.width("\u0628\u0628\u0628\u0628", 10);
    double alone = 4 * PaperFont.ARABIC.width("\u0628", 10);
    assertTrue(Math.abs(joined - alone) > 0.5, "joined " + joined + ", alone " + alone);
  }
}
