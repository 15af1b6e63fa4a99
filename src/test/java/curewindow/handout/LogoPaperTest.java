package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.Handout;
import curewindow.shop.Looks;
import curewindow.shop.PaperChoice;
import curewindow.shop.SheetPaper;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopLook;
import curewindow.told.JobView;
import java.awt.Color;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A shop's logo and color on paper, looked at as dots of 300 to the inch. */
class LogoPaperTest {

  private static final Color TEAL = new Color(0x0B5D57);

  /** All of its box, three times as wide as high. */
  private static final String FULL =
      "<svg xmlns='http://www.w3.org/2000/svg' viewBox='10 10 90 30'>"
          + "<rect x='10' y='10' width='90' height='30' fill='#0b5d57'/></svg>";

  private static final String PAGE =
      """
      <html xmlns="http://www.w3.org/1999/xhtml" xmlns:th="http://www.thymeleaf.org"><body>
      <div class="page" th:each="card : ${cards}">
      <object class="logo" type="application/x-logo" data-at="AT"></object>
      <p class="framed accent"></p>
      <p class="filled accent-fill"></p>
      <p class="name" th:unless="${card.logo}" th:text="${card.shop}">Shop</p>
      <object class="code" type="application/x-code" th:attr="data-code=${card.code}"></object>
      </div>
      </body></html>
      """;
  private static final String STYLE =
      """
      body { margin: 0; font-family: 'Card Sans'; }
      .page { position: relative; width: 105mm; height: 75mm; page-break-after: always; }
      .page:last-child { page-break-after: auto; }
      .logo, .framed, .filled, .name, .code { position: absolute; margin: 0; }
      .logo { left: 20mm; top: 15mm; width: 40.3mm; height: 10.2mm; }
      .framed { left: 20mm; top: 40mm; width: 10mm; height: 10mm; border: 2mm solid; }
      .filled { left: 40mm; top: 40mm; width: 10mm; height: 10mm; }
      .name { left: 20mm; top: 15mm; }
      .code { left: 70mm; top: 30mm; width: 24mm; height: 24mm; }
      """;

  @TempDir Path shop;
  @TempDir Path looks;

  private final Problems problems = new Problems();

  private byte[] print(ShopLook look, String at, int cards) throws IOException {
    Path folder = Files.createDirectories(shop.resolve("site-templates"));
    Files.writeString(folder.resolve("card.html"), PAGE.replace("AT", at));
    Files.writeString(folder.resolve("card.css"), STYLE);
    HandoutPress press =
        HandoutPress.read(new ShopFiles(shop), Handout.WALLET, problems).orElseThrow();
    JobView view = SampleJobs.tinted().look(look).view();
    return press
        .print(Collections.nCopies(cards, view), PaperChoice.on(SheetPaper.NONE), problems)
        .orElseThrow(() -> new AssertionError(problems.all()));
  }

  private static BufferedImage dots(byte[] pdf) throws IOException {
    try (PrintedCard card = new PrintedCard(pdf)) {
      return new PDFRenderer(card.pdf()).renderImageWithDPI(0, PrintedCard.DPI, ImageType.RGB);
    }
  }

  /** The smallest box round all that is not white within a part of the paper, in millimetres. */
  private static double[] ink(BufferedImage dots, double left, double top, double w, double h) {
    Rectangle found = new Rectangle(-1, -1);
    for (int x = PrintedCard.pixel(left); x < PrintedCard.pixel(left + w); x++) {
      for (int y = PrintedCard.pixel(top); y < PrintedCard.pixel(top + h); y++) {
        if ((dots.getRGB(x, y) & 0xFF0000) < 0xF00000) {
          found.add(new Rectangle(x, y, 1, 1));
        }
      }
    }
    double dot = 25.4 / PrintedCard.DPI;
    return new double[] {
      found.x * dot, found.y * dot, found.width * dot, found.height * dot,
    };
  }

  private static Color at(BufferedImage dots, double x, double y) {
    return new Color(dots.getRGB(PrintedCard.pixel(x), PrintedCard.pixel(y)));
  }

  /** The box is 40.3 by 10.2 mm, so a logo of 3 to 1 is 30.6 by 10.2. */
  @ParameterizedTest
  @CsvSource({"left,20", "right,29.7", "'',24.85"})
  void itFillsItsBoxWithItsSidesInTheirRatio(String at, double left) throws IOException {
    BufferedImage dots = dots(print(Looks.svg(looks, FULL), at, 1));
    assertEquals(List.of(), problems.all());
    assertArrayEquals(new double[] {left, 15, 30.6, 10.2}, ink(dots, 11, 11, 60, 20), 0.17);
    assertEquals(TEAL, at(dots, left + 15, 20));
  }

  @Test
  void shapesStayShapesAndAreKeptOnce() throws IOException {
    byte[] pdf = print(Looks.svg(looks, FULL), "", 20);
    Set<COSBase> forms = new HashSet<>();
    try (PrintedCard card = new PrintedCard(pdf)) {
      assertEquals(20, card.pdf().getNumberOfPages());
      for (PDPage page : card.pdf().getPages()) {
        PDResources all = page.getResources();
        for (COSName name : all.getXObjectNames()) {
          PDFormXObject form = (PDFormXObject) all.getXObject(name);
          assertEquals(List.of(), images(form), "no dots");
          forms.add(form.getCOSObject());
        }
      }
    }
    assertEquals(1, forms.size());
    assertArrayEquals(pdf, print(Looks.svg(looks, FULL), "", 20));
  }

  private static List<COSName> images(PDFormXObject form) {
    PDResources inside = form.getResources();
    List<COSName> images = new java.util.ArrayList<>();
    if (inside != null) {
      inside
          .getXObjectNames()
          .forEach(n -> images.addAll(inside.isImageXObject(n) ? List.of(n) : List.of()));
    }
    return images;
  }

  /** A gradient from white to black, half of it clipped away, half seen through. */
  @Test
  void gradientsClipsAndOpacityAreDrawn() throws IOException {
    String svg =
        """
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 90 30"><defs>
        <linearGradient id="g"><stop offset="0" stop-color="#fff"/><stop offset="1" stop-color="#000"/></linearGradient>
        <clipPath id="c"><rect width="90" height="15"/></clipPath></defs>
        <rect width="60" height="30" fill="url(#g)" clip-path="url(#c)"/>
        <g transform="translate(60 0)" opacity=".5"><rect width="30" height="30" fill="#000"/></g>
        </svg>
        """;
    BufferedImage dots = dots(print(Looks.svg(looks, svg), "left", 1));
    assertEquals(List.of(), problems.all());
    int early = at(dots, 22, 16).getRed();
    int late = at(dots, 39, 16).getRed();
    assertTrue(early > 200 && late < 60, early + " to " + late);
    assertEquals(Color.WHITE, at(dots, 38, 23), "clipped away");
    assertEquals(128, at(dots, 45, 20).getRed(), 2);
  }

  private static byte[] png(int width, int height) throws IOException {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    for (int x = 0; x < width / 2; x++) {
      for (int y = 0; y < height; y++) {
        image.setRGB(x, y, TEAL.getRGB());
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "png", out);
    return out.toByteArray();
  }

  /** 30.6 mm are 361.4 dots of 300 an inch. */
  @ParameterizedTest
  @CsvSource({"363,121,", "180,60,149"})
  void dotsAreDrawnAndToldWhereTheyAreCoarse(int width, int height, String told)
      throws IOException {
    BufferedImage dots = dots(print(Looks.logo(looks, "logo.png", png(width, height)), "left", 1));
    assertEquals(TEAL, at(dots, 27, 20));
    assertEquals(Color.WHITE, at(dots, 43, 20), "see-through");
    List<String> lines = problems.all().stream().map(Problem::oneLine).toList();
    assertEquals(
        told == null
            ? List.of()
            : List.of(
                "logo.png  the logo has "
                    + told
                    + " dots an inch on paper, and looks coarse below 300  save it as SVG, or as PNG"
                    + " with 363 dots of width or more"),
        lines);
  }

  @Test
  void whereThereIsNoneTheNameStandsAndTheColorIsOurs() throws Exception {
    byte[] pdf = print(ShopLook.NONE, "left", 1);
    try (PrintedCard card = new PrintedCard(pdf)) {
      assertEquals("Halyard Street Film & Glass", card.text(0));
    }
    assertEquals(new Color(0xB4451F), at(dots(pdf), 45, 45));
  }

  @ParameterizedTest
  @ValueSource(strings = {"#0b5d57", "#5b2a86", "#333333"})
  void theColorIsTheShops(String hex) throws Exception {
    BufferedImage dots = dots(print(Looks.color(looks, hex), "left", 1));
    assertEquals(Color.decode(hex), at(dots, 21, 45), "a frame");
    assertEquals(Color.WHITE, at(dots, 27, 45), "inside of the frame");
    assertEquals(Color.decode(hex), at(dots, 45, 45), "a ground");
    assertEquals(List.of(), problems.all());
  }

  /** Lines of style sheets are counted as if there were no rules before them. */
  @Test
  void mistakesOfAStyleSheetKeepTheirLines() throws Exception {
    Path folder = Files.createDirectories(shop.resolve("site-templates"));
    Files.writeString(folder.resolve("card.html"), PAGE);
    Files.writeString(folder.resolve("card.css"), STYLE + ".page { colr: red; }\n");
    HandoutPress.read(new ShopFiles(shop), Handout.WALLET, problems)
        .orElseThrow()
        .print(
            List.of(SampleJobs.tinted().look(Looks.color(looks, "#0b5d57")).view()),
            PaperChoice.on(SheetPaper.NONE),
            problems);
    long line = STYLE.lines().count() + 1;
    assertEquals(
        List.of("site-templates/card.css"), problems.all().stream().map(Problem::file).toList());
    assertEquals(line, problems.all().get(0).line());
  }

  /** The card that comes with the program, with the longest texts. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "es", "ar"})
  void onACardItStandsAtTheEndOfTheName(String language) throws Exception {
    HandoutPress press =
        HandoutPress.read(new ShopFiles(Path.of("no-such-shop")), Handout.WALLET, problems)
            .orElseThrow();
    JobView view = SampleJobs.longest(language).look(Looks.svg(looks, FULL)).view();
    byte[] pdf =
        press.print(List.of(view), PaperChoice.on(SheetPaper.NONE), problems).orElseThrow();
    Files.createDirectories(Path.of("target/handout"));
    Files.write(Path.of("target/handout/card-logo-" + language + ".pdf"), pdf);
    BufferedImage dots = dots(pdf);
    // Its box of 12 by 4.4 mm is 44.6 mm from the side of a card that stands at 10, 10 mm.
    double left = language.equals("ar") ? 10 + 85 - 44.6 - 12 : 10 + 44.6;
    assertEquals(TEAL, at(dots, left + 6, 16.7));
    try (PrintedCard card = new PrintedCard(pdf)) {
      java.awt.geom.Rectangle2D logo =
          new java.awt.geom.Rectangle2D.Double(
              left * 72 / 25.4, (75 - 14.7 - 4) * 72 / 25.4, 12 * 72 / 25.4, 4 * 72 / 25.4);
      List<String> on =
          PrintedInk.of(card, 0).stream()
              .filter(letter -> letter.box().intersects(logo))
              .map(PrintedInk::text)
              .toList();
      assertEquals(List.of(), on);
      assertFalse(card.text(0).contains("…"), card.text(0));
    }
  }
}
