package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.HoldKind;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Severity;
import curewindow.shop.Handout;
import curewindow.shop.PaperChoice;
import curewindow.shop.SheetPaper;
import curewindow.shop.ShopFiles;
import curewindow.told.JobView;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Cards are read back from the PDF by PDFBox, their codes by ZXing from the picture at 300 dpi. */
final class CardPressTest {

  @TempDir Path shop;

  private final Problems problems = new Problems();
  private final HandoutPress press =
      HandoutPress.read(new ShopFiles(SampleJobs.FOLDER), Handout.WALLET, problems).orElseThrow();

  private byte[] bytes(JobView... views) {
    byte[] pdf =
        press.print(List.of(views), PaperChoice.on(SheetPaper.NONE), problems).orElseThrow();
    assertEquals(List.of(), problems.all());
    return pdf;
  }

  private PrintedCard print(SampleJobs job) throws Exception {
    return new PrintedCard(bytes(job.view()));
  }

  private static SampleJobs longest() {
    return SampleJobs.tinted()
        .longTexts()
        .firstName("Maria-Guadalupe Alexandrina Wilhelmina Konstantinopolitanska");
  }

  @Test
  void theCodeSaysExactlyTheAddress() throws Exception {
    byte[] pdf =
        bytes(
            SampleJobs.tinted().view(),
            SampleJobs.tinted().token("0123ABCDEFGHJKMNPQRS").language("es").view(),
            longest().view());
    Files.createDirectories(Path.of("target/handout"));
    Files.write(Path.of("target/handout/cards.pdf"), pdf);
    try (PrintedCard card = new PrintedCard(pdf)) {
      assertEquals(3, card.pdf().getNumberOfPages());
      assertEquals("HTTPS://CARE.EXAMPLE/C/7K3MPQ9W2XHTR4VBD6NC/", card.scanned(0));
      assertEquals("HTTPS://CARE.EXAMPLE/C/0123ABCDEFGHJKMNPQRS/", card.scanned(1));
      assertEquals(
          "HTTPS://AFTERCARE.WOLFESCHLEGELSTEINHAUSEN-AND-DAUGHTERS.EXAMPLE"
              + "/customers/C/7K3MPQ9W2XHTR4VBD6NC/",
          card.scanned(2));
    }
  }

  @Test
  void theSheetIsOfTheRightSize() throws Exception {
    try (PrintedCard card = print(SampleJobs.tinted())) {
      PDPage page = card.pdf().getPage(0);
      box(0, 0, 105, 75, page.getMediaBox());
      box(10, 10, 85, 55, page.getTrimBox());
      box(7, 7, 91, 61, page.getBleedBox());
    }
  }

  private static void box(double left, double bottom, double width, double height, PDRectangle is) {
    assertEquals(left, PrintedCard.millimetres(is.getLowerLeftX()), 0.1);
    assertEquals(bottom, PrintedCard.millimetres(is.getLowerLeftY()), 0.1);
    assertEquals(width, PrintedCard.millimetres(is.getWidth()), 0.1);
    assertEquals(height, PrintedCard.millimetres(is.getHeight()), 0.1);
  }

  @Test
  void colourRunsToTheBleedAndMarksStayOutsideIt() throws Exception {
    try (PrintedCard card = print(SampleJobs.tinted())) {
      BufferedImage picture = card.picture(0);
      assertTrue(grey(picture, 7.3, 7.3) < 200, "the bleed is coloured");
      assertTrue(grey(picture, 97.7, 7.3) < 200, "the bleed is coloured");
      assertEquals(255, grey(picture, 6.6, 6.6), "nothing beyond the bleed");
      assertTrue(darkest(picture, 9.8, 3, 10.2, 3) < 200, "a crop mark above the left cut");
      assertTrue(darkest(picture, 102, 64.8, 102, 65.2) < 200, "a crop mark right of the low cut");
      assertEquals(255, darkest(picture, 9.8, 6.4, 10.2, 6.8), "marks keep off the bleed");
    }
  }

  private static int grey(BufferedImage picture, double x, double y) {
    return picture.getRaster().getSample(PrintedCard.pixel(x), PrintedCard.pixel(y), 0);
  }

  private static int darkest(BufferedImage picture, double x1, double y1, double x2, double y2) {
    int darkest = 255;
    for (int x = PrintedCard.pixel(x1); x <= PrintedCard.pixel(x2); x++) {
      for (int y = PrintedCard.pixel(y1); y <= PrintedCard.pixel(y2); y++) {
        darkest = Math.min(darkest, picture.getRaster().getSample(x, y, 0));
      }
    }
    return darkest;
  }

  @Test
  void theCodeHasItsSizeAndItsClearBorder() throws Exception {
    JobView view = longest().view();
    QrCode code = HandoutPress.code(view, Handout.WALLET).orElseThrow();
    double side = HandoutPress.codeSide(Handout.WALLET);
    double quiet = QrCode.QUIET_ZONE * code.module(side);
    assertTrue(code.module(side) >= 0.4);
    try (PrintedCard card = new PrintedCard(bytes(view))) {
      BufferedImage picture = card.picture(0);
      // The square stands at 59.2, 3.2 mm on the card, which stands at 10, 10 mm on the sheet.
      double left = 69.2;
      double top = 13.2;
      double right = left + side;
      double bottom = top + side;
      double near = 0.15;
      assertEquals(255, darkest(picture, left, top, right, top + quiet - near));
      assertEquals(255, darkest(picture, left, bottom - quiet + near, right, bottom));
      assertEquals(255, darkest(picture, left, top, left + quiet - near, bottom));
      assertEquals(255, darkest(picture, right - quiet + near, top, right, bottom));
      assertTrue(grey(picture, left + quiet + near, top + quiet + near) < 50, "finder, corner");
      assertTrue(grey(picture, right - quiet - near, top + quiet + near) < 50, "finder, corner");
      assertTrue(grey(picture, left + quiet + near, bottom - quiet - near) < 50, "finder, corner");
    }
  }

  /**
   * The code's square stands 59.2 mm from the side that is read first, on a sheet with 10 mm more.
   */
  @ParameterizedTest
  @CsvSource({"en, 69.2", "ar, 11.8"})
  void theSecretPartStandsUnderTheCode(String language, double left) throws Exception {
    try (PrintedCard card = print(SampleJobs.tinted().shippedWords().language(language))) {
      List<TextPosition> secret = card.letters(0).stream().filter(CardPressTest::isSecret).toList();
      String text = secret.stream().map(TextPosition::getUnicode).collect(Collectors.joining());
      assertEquals("7K3M PQ9W 2XHT R4VB D6NC", text.strip());
      double side = HandoutPress.codeSide(Handout.WALLET);
      double from = secret.stream().mapToDouble(TextPosition::getX).min().orElseThrow();
      double to = secret.stream().mapToDouble(l -> l.getX() + l.getWidth()).max().orElseThrow();
      assertTrue(PrintedCard.millimetres(from) < left + 4, "from " + from);
      assertTrue(PrintedCard.millimetres(to) > left + side - 4, "to " + to);
      double top = secret.stream().mapToDouble(TextPosition::getY).min().orElseThrow();
      assertTrue(PrintedCard.millimetres(top) > 13 + side, "top " + top);
    }
  }

  /** On the last line only the secret part has this size. */
  private static boolean isSecret(TextPosition letter) {
    return PrintedCard.millimetres(letter.getYDirAdj()) > 10 + 55 - 6
        && Math.abs(PrintedCard.points(letter) - 8.5) < 0.05;
  }

  @Test
  void theTwoMostUrgentDatesStandOnTheCard() throws Exception {
    try (PrintedCard card = print(SampleJobs.tinted())) {
      String text = card.text(0).replace('\u00A0', ' ');
      for (String part :
          List.of(
              "Halyard Street Film & Glass",
              "Maribel, this is for your car",
              "Dark blue four-door",
              "Windows stay up",
              "until",
              "THU",
              "DEC 3",
              "2 PM",
              "Rear defroster off",
              "DEC 19",
              "10 AM",
              "In danger, open windows.",
              "Can't see? Defroster on.",
              "care.example/C/",
              "(503) 555-0142")) {
        assertTrue(text.contains(part), () -> part + " is not in: " + text);
      }
      assertFalse(text.contains("DEC 28"), text);
      assertTrue(text.replace(" ", "").contains("7K3MPQ9W2XHTR4VBD6NC"), text);
    }
  }

  @Test
  void aSpanishCardWithoutAName() throws Exception {
    try (PrintedCard card = print(SampleJobs.tinted().language("es").firstName(" "))) {
      String text = card.text(0).replace('\u00A0', ' ');
      for (String part :
          List.of(
              "Esto es para su auto", "Ventanas cerradas", "hasta el", "JUE", "3 DIC", "2 p.m.")) {
        assertTrue(text.contains(part), () -> part + " is not in: " + text);
      }
      assertEquals("es", card.pdf().getDocumentCatalog().getLanguage());
      assertEquals(
          "Tarjeta de cuidados, Halyard Street Film & Glass",
          card.pdf().getDocumentInformation().getTitle());
    }
  }

  @Test
  void aDateAtTheLimitIsPrintedAsADate() throws Exception {
    try (PrintedCard card =
        print(SampleJobs.bare().atLimit("windows-up", HoldKind.HOLD, "2026-12-14T08:00"))) {
      String text = card.text(0);
      assertTrue(text.contains("until") && text.contains("DEC 14"), text);
      assertTrue(text.contains("Questions?"), text);
    }
  }

  /** Nothing leaves the card, nothing is smaller than 7.5 pt, nothing lies over something else. */
  @Test
  void theLongestNamesFit() throws Exception {
    try (PrintedCard card = print(longest())) {
      List<TextPosition> letters = card.letters(0);
      for (TextPosition letter : letters) {
        double left = PrintedCard.millimetres(letter.getXDirAdj());
        double right = left + PrintedCard.millimetres(letter.getWidthDirAdj());
        double base = PrintedCard.millimetres(letter.getYDirAdj());
        String seen = letter.getUnicode() + " at " + left + ", " + base;
        double points = PrintedCard.points(letter);
        assertTrue(points >= 7.45, () -> seen + " " + points);
        if (letter.getDir() == 0) {
          assertTrue(left >= 10 + 3 && right <= 10 + 85 - 3, seen);
          assertTrue(base >= 10 + 3 && base <= 10 + 55 - 2, seen);
        }
      }
      assertFalse(card.text(0).contains("…"), card.text(0));
    }
  }

  /** Only a name far longer than 60 letters is cut, and then between words, and it is told. */
  @Test
  void anAbsurdNameIsCutAtAWord() throws Exception {
    String shop =
        "Halyard Street Window Film and Glass and Wraps and Coatings and Wheels and Seats";
    JobView view = longest().shopName(shop + " and Sons").view();
    byte[] pdf =
        press.print(List.of(view), PaperChoice.on(SheetPaper.NONE), problems).orElseThrow();
    try (PrintedCard card = new PrintedCard(pdf)) {
      String before = card.text(0).substring(0, card.text(0).indexOf('…'));
      assertTrue(before.length() >= 60, card.text(0));
      assertTrue((shop + " ").startsWith(before + " "), card.text(0));
    }
    assertEquals(1, problems.all().size(), () -> problems.all().toString());
    Problem told = problems.all().get(0);
    assertEquals(
        "cut-to-print NOTICE shop.yaml", told.code() + " " + told.severity() + " " + told.file());
  }

  /** Holds of the catalogue that comes with the program, in the widest month and hour. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "es", "ar"})
  void shippedWordsAreNeverCut(String language) throws Exception {
    List<String> holds =
        List.of(
                "windows-up keep-dry wipers rain seats demist defroster hand-wash pressure-wash"
                    .split(" "),
                "machine-wash inside-glass wet-clean topper full-cure haze water-pockets"
                    .split(" "))
            .stream()
            .flatMap(java.util.Arrays::stream)
            .toList();
    List<JobView> views = new ArrayList<>();
    for (String hold : holds) {
      SampleJobs job = SampleJobs.bare().shippedWords().language(language);
      views.add(job.hold(hold, HoldKind.HOLD, "2026-11-30T10:00").view());
      views.add(
          SampleJobs.bare()
              .shippedWords()
              .language(language)
              .atLimit(hold, HoldKind.HOLD, "2026-09-30T10:00")
              .view());
    }
    try (PrintedCard card = new PrintedCard(bytes(views.toArray(JobView[]::new)))) {
      for (int page = 0; page < views.size(); page++) {
        String text = card.text(page);
        assertFalse(text.contains("…") || text.contains("[hold."), text);
      }
    }
  }

  @Test
  void everyFontIsInTheFileAndOnlyItsUsedSigns() throws Exception {
    byte[] pdf = bytes(SampleJobs.tinted().view());
    assertTrue(pdf.length < 100_000, "bytes: " + pdf.length);
    try (PrintedCard card = new PrintedCard(pdf)) {
      List<String> names = new ArrayList<>();
      for (COSName name : card.pdf().getPage(0).getResources().getFontNames()) {
        PDFont font = card.pdf().getPage(0).getResources().getFont(name);
        assertTrue(font.isEmbedded(), font.getName());
        assertTrue(font.getName().matches("[A-Z]{6}\\+Roboto.*"), font.getName());
        names.add(font.getName());
      }
      assertTrue(names.size() >= 3, names::toString);
    }
  }

  @Test
  void theSameJobsGiveTheSameBytes() throws Exception {
    byte[] first = bytes(SampleJobs.tinted().view(), longest().view());
    Thread.sleep(1100); // A clock of whole seconds would show.
    HandoutPress again =
        HandoutPress.read(new ShopFiles(SampleJobs.FOLDER), Handout.WALLET, problems).orElseThrow();
    byte[] second =
        again
            .print(
                List.of(SampleJobs.tinted().view(), longest().view()),
                PaperChoice.on(SheetPaper.NONE),
                problems)
            .orElseThrow();
    assertArrayEquals(first, second);
    byte[] other = bytes(SampleJobs.tinted().firstName("Marisol").view(), longest().view());
    assertFalse(java.util.Arrays.equals(first, other));
  }

  @Test
  void anAddressTooLongForACodeIsToldAndTheOthersArePrinted() throws Exception {
    JobView tooLong =
        SampleJobs.tinted().site("https://care.example/" + "long/".repeat(40) + "C/").view();
    Optional<byte[]> pdf =
        press.print(
            List.of(tooLong, SampleJobs.tinted().view()),
            PaperChoice.on(SheetPaper.NONE),
            problems);
    try (PrintedCard card = new PrintedCard(pdf.orElseThrow())) {
      assertEquals(1, card.pdf().getNumberOfPages());
      assertEquals("HTTPS://CARE.EXAMPLE/C/7K3MPQ9W2XHTR4VBD6NC/", card.scanned(0));
    }
    Problem p = problems.all().get(0);
    assertEquals("code-too-fine shop.yaml address", p.code() + " " + p.file() + " " + p.path());
    assertTrue(p.message().contains("H-1042"), p::oneLine);
    assertEquals(
        Optional.empty(), press.print(List.of(tooLong), PaperChoice.on(SheetPaper.NONE), problems));
    assertEquals(
        Optional.empty(), press.print(List.of(), PaperChoice.on(SheetPaper.NONE), problems));
  }

  @Test
  void nobodyIsGreetedWithHalfAName() throws Exception {
    for (String name : List.of("\u6F22\u5B57", "Li \u6F22")) {
      Optional<byte[]> pdf =
          press.print(
              List.of(SampleJobs.tinted().firstName(name).view()),
              PaperChoice.on(SheetPaper.NONE),
              problems);
      try (PrintedCard card = new PrintedCard(pdf.orElseThrow())) {
        String text = card.text(0);
        assertTrue(text.contains("This is for your car"), text);
        assertFalse(text.contains(", this is") || text.contains("Li"), text);
      }
    }
  }

  @Test
  void aSignThatTheFontLacksIsToldAndLeftOut() throws Exception {
    Optional<byte[]> pdf =
        press.print(
            List.of(SampleJobs.tinted().car("Blue \u6F22 van").view()),
            PaperChoice.on(SheetPaper.NONE),
            problems);
    try (PrintedCard card = new PrintedCard(pdf.orElseThrow())) {
      assertTrue(card.text(0).contains("Blue van"), card.text(0));
    }
    Problem p = problems.all().get(0);
    assertEquals("missing-glyph jobs/H-1042.yaml", p.code() + " " + p.file());
    assertEquals(Severity.NOTICE, p.severity());
    assertTrue(p.message().contains("U+6F22"), p::oneLine);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script> & \"'",
        "${7*7} [[${card.code}]] __${1}__",
        "]]> --> {when} %s \\"
      })
  void hostileTextStaysText(String hostile) throws Exception {
    try (PrintedCard card = print(SampleJobs.tinted().car(hostile).firstName(hostile))) {
      assertTrue(card.text(0).contains(hostile), card.text(0));
    }
  }

  private Problems edited(String name, String text) throws Exception {
    Path file = shop.resolve("site-templates").resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
    Problems found = new Problems();
    Optional<byte[]> pdf =
        HandoutPress.read(new ShopFiles(shop), Handout.WALLET, found)
            .flatMap(
                p ->
                    p.print(
                        List.of(SampleJobs.tinted().view()),
                        PaperChoice.on(SheetPaper.NONE),
                        found));
    assertEquals(found.hasErrors(), pdf.isEmpty());
    return found;
  }

  @Test
  void aShopMayUseItsOwnTemplate() throws Exception {
    Problems found =
        edited(
            "card.html",
            "<html xmlns:th='http://www.thymeleaf.org'><body><div th:each='card : ${cards}'>"
                + "<p th:text='${card.dates[0].day}'/><object class='code' type='application/x-code'"
                + " th:attr='data-code=${card.code}'/></div></body></html>");
    assertEquals(List.of(), found.all());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "<object type='application/x-code' data-code='7'/>"})
  void aTemplateWithoutACodeIsTold(String object) throws Exception {
    Problems found = edited("card.html", "<html><body>" + object + "<p>x</p></body></html>");
    assertEquals(1, found.all().size(), () -> found.all().toString());
    Problem p = found.all().get(0);
    assertEquals(
        "no-code NOTICE site-templates/card.html", p.code() + " " + p.severity() + " " + p.file());
  }

  /** Of 24 mm, the code of 33 modules and its border had 0.59 mm a module; of 12 mm it has half. */
  @Test
  void aStyleSheetThatMakesTheCodeTooSmallIsRefused() throws Exception {
    String css = Files.readString(Path.of("site-templates/card.css"));
    String size = "width: 24mm; height: 24mm;";
    assertTrue(css.contains(size), css);
    Problems found = edited("card.css", css.replace(size, "width: 12mm; height: 12mm;"));
    assertEquals(1, found.all().size(), () -> found.all().toString());
    Problem p = found.all().get(0);
    assertEquals("code-too-fine site-templates/card.css", p.code() + " " + p.file());
    assertTrue(p.message().contains("modules of 0.29 mm"), p::oneLine);
  }

  @Test
  void aMisspeltValueNamesThoseThatAreThere() throws Exception {
    Problems found =
        edited(
            "card.html",
            "<html xmlns:th='http://www.thymeleaf.org'>\n<p th:each='card : ${cards}'>"
                + "<b th:each='date : ${card.dates}'\nth:text='${date.hours}'/></p></html>");
    assertEquals(1, found.all().size(), () -> found.all().toString());
    Problem p = found.all().get(0);
    assertEquals("template-mistake site-templates/card.html", p.code() + " " + p.file());
    assertTrue(p.message().contains("\"hours\"") && p.message().contains("weekday"), p::oneLine);
  }

  @ParameterizedTest
  @CsvSource({
    "'<html>\n<body>\n<p>\n</body></html>', 4",
    "'<html>\n<p th:text=\"${cards.size(}\"/></html>', 2",
    "'<html>\n<p th:text=\"${cards[0].no.such}\"/></html>', 2",
    "'<html><p data-box=\"50mm 1 9pt blod\">x</p></html>', 0",
    "'<html><p data-box=\"50mm 1 5pt bold\">x</p></html>', 0",
    "'<html><p data-box=\"wide\">x</p></html>', 0",
  })
  void aMistakeInATemplateIsOneProblem(String template, int line) throws Exception {
    Problems found = edited("card.html", template.replace("<html", "<html xmlns:th='x'"));
    assertEquals(1, found.all().size(), () -> found.all().toString());
    Problem p = found.all().get(0);
    assertEquals("template-mistake", p.code());
    assertEquals("site-templates/card.html:" + line, p.file() + ":" + p.line());
  }

  @Test
  void aMistakeInAStyleSheetIsANoticeWithItsLine() throws Exception {
    Problems found =
        edited(
            "card.css",
            ".day {\n  colour: red;\n}\n.hour { width: 3bananas }\n"
                + ".code { width: 24mm; height: 24mm }\n");
    assertEquals(2, found.all().size(), () -> found.all().toString());
    Problem colour = found.all().get(0);
    assertEquals("style-mistake NOTICE", colour.code() + " " + colour.severity());
    assertEquals("site-templates/card.css:2", colour.file() + ":" + colour.line());
    assertTrue(colour.message().contains("colour"), colour::oneLine);
    assertEquals(4, found.all().get(1).line());
  }

  @Test
  void aSheetWithoutRoomIsAProblem() throws Exception {
    Problems found = edited("card.css", "@page { margin: 60mm }");
    assertEquals("template-mistake", found.all().get(0).code());
    assertEquals("site-templates/card.css", found.all().get(0).file());
  }

  @Test
  void aTemplateFetchesNothing() throws Exception {
    Path secret = Files.writeString(shop.resolve("secret.css"), "p { display: none }");
    Problems found =
        edited(
            "card.html",
            "<!DOCTYPE html [<!ENTITY x SYSTEM \"" + secret.toUri() + "\">]><html>&x;</html>");
    assertEquals("template-mistake", found.all().get(0).code());
  }
}
