package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.handout.PaintedInks.Inks;
import curewindow.handout.PaintedInks.Painted;
import curewindow.shop.Ink;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.blend.BlendMode;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.util.Matrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What becomes of single things on a page, such as the shop's logo, in each ink. */
final class InkPressTest {

  private static final int ACCENT = 0xb4451f;

  /** Something that is drawn. */
  private interface Drawing {
    void on(PDPageContentStream out, PDDocument pdf) throws IOException;
  }

  private static byte[] inked(Ink ink, Drawing drawing) throws IOException {
    try (PDDocument pdf = new PDDocument()) {
      PDPage page = new PDPage(new PDRectangle(200, 200));
      pdf.addPage(page);
      try (PDPageContentStream out = new PDPageContentStream(pdf, page)) {
        drawing.on(out, pdf);
      }
      new InkPress(InkTest.inks(ink), ACCENT).recolor(pdf);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      pdf.save(bytes);
      return bytes.toByteArray();
    }
  }

  private static List<Inks> inks(Ink ink, Drawing drawing) throws IOException {
    return PaintedInks.of(inked(ink, drawing)).painted().stream().map(Painted::inks).toList();
  }

  private static void square(PDPageContentStream out, int rgb) throws IOException {
    out.setNonStrokingColor(new Color(rgb));
    out.addRect(10, 10, 50, 50);
    out.fill();
  }

  private static Inks of(String space, Double... values) {
    return new Inks(space, Arrays.asList(values));
  }

  /** A half of the accent lies half way to white. */
  @ParameterizedTest
  @CsvSource({
    "ink of the text, 1b2733, 1, 1, true",
    "nearly white, f7f1e8, 0, 0, true",
    "gray, 808080, 0.5, 0.5, true",
    "the accent, b4451f, 1, 1, false",
    "half of it, daa28f, 0.5, 0.5, false",
    "another blue, 2050c0, 0.69, 0.69, true",
  })
  void flatColors(String what, String hex, double black, double spot, boolean isGrayInSpot)
      throws Exception {
    int rgb = Integer.parseInt(hex, 16);
    assertEquals(
        List.of(of("DeviceGray", round(1 - black))),
        inks(Ink.BLACK, (out, pdf) -> square(out, rgb)));
    String name = isGrayInSpot ? "DeviceGray" : "Separation " + InkTest.SPOT.replace(" ", "#20");
    assertEquals(
        List.of(of(name, round(isGrayInSpot ? 1 - spot : spot))),
        inks(Ink.SPOT, (out, pdf) -> square(out, rgb)));
  }

  private static double round(double value) {
    return Math.round(value * 100) / 100.0;
  }

  @Test
  void processColorsOfFlatAreas() throws Exception {
    assertEquals(
        List.of(of("DeviceCMYK", 0.0, 0.0, 0.0, 1.0)),
        inks(Ink.PROCESS, (out, pdf) -> square(out, 0x1b2733)));
    Inks accent = inks(Ink.PROCESS, (out, pdf) -> square(out, ACCENT)).get(0);
    Inks half = inks(Ink.PROCESS, (out, pdf) -> square(out, 0xdaa28f)).get(0);
    for (int i = 0; i < 4; i++) {
      assertEquals(accent.values().get(i) / 2, half.values().get(i), 0.0101, "a tint of it");
    }
    assertTrue(accent.values().get(1) > 0.5 && accent.values().get(2) > 0.5, accent::toString);
  }

  @ParameterizedTest
  @EnumSource(
      value = Ink.class,
      names = {"BLACK", "PROCESS", "SPOT"})
  void aThinLineHasNoDots(Ink ink) throws Exception {
    Drawing drawing =
        (out, pdf) -> {
          out.setStrokingColor(new Color(0xd4d8dc));
          out.setLineWidth(0.3f);
          out.moveTo(0, 0);
          out.lineTo(50, 0);
          out.stroke();
          out.setNonStrokingColor(new Color(0xd4d8dc));
          out.addRect(0, 5, 50, 0.3f);
          out.fill();
        };
    for (Inks line : inks(ink, drawing)) {
      assertTrue(line.isBlackAlone(), line::toString);
      assertEquals(1, line.black());
    }
  }

  /** Type of 30 points in a drawing at a third of its size is small; at full size it is not. */
  @ParameterizedTest
  @EnumSource(
      value = Ink.class,
      names = {"BLACK", "PROCESS", "SPOT"})
  void typeInADrawingIsAsLargeAsItIsDrawn(Ink ink) throws Exception {
    byte[] pdf =
        inked(
            ink,
            (out, document) -> {
              PDFormXObject drawing = text(document);
              for (float size : new float[] {1, 0.33f, 1}) {
                out.saveGraphicsState();
                out.transform(Matrix.getScaleInstance(size, size));
                out.drawForm(drawing);
                out.restoreGraphicsState();
              }
            });
    List<Painted> texts = PaintedInks.of(pdf).painted();
    assertEquals(3, texts.size());
    assertEquals(1, texts.get(1).inks().black(), "small");
    assertEquals(texts.get(0), texts.get(2));
    if (ink != Ink.BLACK) {
      assertTrue(!texts.get(0).inks().isBlackAlone(), "large");
    }
  }

  private static PDFormXObject text(PDDocument pdf) throws IOException {
    PDFormXObject drawing = new PDFormXObject(pdf);
    drawing.setBBox(new PDRectangle(200, 200));
    drawing.setResources(new PDResources());
    PDFont font = PDType0Font.load(pdf, PaperFont.TEXT.outlines(), true);
    drawing.getResources().put(COSName.getPDFName("F"), font);
    try (var content = drawing.getStream().createOutputStream(COSName.FLATE_DECODE)) {
      content.write(
          "0.70588 0.27059 0.12157 rg BT /F 30 Tf <0024> Tj ET"
              .getBytes(java.nio.charset.StandardCharsets.US_ASCII));
    }
    return drawing;
  }

  /** Left the accent, then black, then half of gray, then nothing at all. */
  private static BufferedImage logo() {
    BufferedImage logo = new BufferedImage(40, 10, BufferedImage.TYPE_INT_ARGB);
    int[] colors = {0xff000000 | ACCENT, 0xff000000, 0x80000000, 0};
    for (int x = 0; x < 40; x++) {
      for (int y = 0; y < 10; y++) {
        logo.setRGB(x, y, colors[x / 10]);
      }
    }
    return logo;
  }

  private static byte[] withLogo(Ink ink) throws IOException {
    return inked(
        ink,
        (out, pdf) -> {
          out.setNonStrokingColor(new Color(0x808080));
          out.addRect(0, 0, 200, 200);
          out.fill();
          PDImageXObject logo = LosslessFactory.createFromImage(pdf, logo());
          out.drawImage(logo, 0, 0, 40, 10);
          out.drawImage(logo, 0, 100, 40, 10);
        });
  }

  @ParameterizedTest
  @CsvSource({
    "BLACK, DeviceGray",
    "PROCESS, DeviceCMYK",
    "SPOT, 'DeviceN [Black, Quillhaven#20Rust]'"
  })
  void aPictureHasTheInksOfTheRest(Ink ink, String space) throws Exception {
    PaintedInks inks = PaintedInks.of(withLogo(ink));
    assertEquals(Set.of(), inks.forbidden());
    assertEquals(space, inks.painted().get(1).inks().space());
    List<String> all = List.of(ink == Ink.PROCESS ? "DeviceCMYK" : "DeviceGray", space);
    assertEquals(Set.copyOf(all), inks.spaces());
  }

  /** The dots themselves, in the order of the parts of the color space. */
  @Test
  void theDotsOfAPicture() throws Exception {
    assertEquals("[0, 0, 128]", dots(Ink.BLACK, 1));
    assertEquals("[[0, 255], [255, 0], [128, 0]]", dots(Ink.SPOT, 2));
    assertTrue(dots(Ink.PROCESS, 4).endsWith(", [0, 0, 0, 255], [0, 0, 0, 128]]"));
  }

  private static String dots(Ink ink, int parts) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(withLogo(ink))) {
      PDResources resources = pdf.getPage(0).getResources();
      COSName name = resources.getXObjectNames().iterator().next();
      byte[] bytes;
      try (var in = ((PDImageXObject) resources.getXObject(name)).createInputStream()) {
        bytes = in.readAllBytes();
      }
      List<Object> dots = new ArrayList<>();
      for (int x = 5; x < 30; x += 10) {
        List<Integer> dot = new ArrayList<>();
        for (int part = 0; part < parts; part++) {
          dot.add(bytes[x * parts + part] & 255);
        }
        dots.add(parts == 1 ? dot.get(0) : dot);
      }
      return dots.toString();
    }
  }

  /** What is under a logo shows where nothing of it is, and only there. */
  @ParameterizedTest
  @EnumSource(
      value = Ink.class,
      names = {"BLACK", "SPOT"})
  void theGroundShowsBesideALogo(Ink ink) throws Exception {
    try (PDDocument pdf = Loader.loadPDF(withLogo(ink))) {
      BufferedImage seen = new PDFRenderer(pdf).renderImage(0);
      assertEquals(new Color(seen.getRGB(150, 150)), new Color(seen.getRGB(35, 195)));
      assertTrue(new Color(seen.getRGB(15, 195)).getGreen() < 60, "black");
    }
  }

  @Test
  void whatShinesThroughIsRefused() {
    PDExtendedGraphicsState half = new PDExtendedGraphicsState();
    half.setNonStrokingAlphaConstant(0.5f);
    PDExtendedGraphicsState multiplied = new PDExtendedGraphicsState();
    multiplied.setBlendMode(BlendMode.MULTIPLY);
    for (PDExtendedGraphicsState state : List.of(half, multiplied)) {
      Drawing drawing =
          (out, pdf) -> {
            out.setGraphicsStateParameters(state);
            square(out, ACCENT);
          };
      Unprintable told = assertThrows(Unprintable.class, () -> inked(Ink.SPOT, drawing));
      assertTrue(told.fix().contains("opacity"));
    }
  }

  /** Drawing libraries set these with everything, and a print shop's checker must not see them. */
  @Test
  void whatChangesNothingIsLeftOut() throws Exception {
    PDExtendedGraphicsState plain = new PDExtendedGraphicsState();
    plain.setNonStrokingAlphaConstant(1f);
    plain.setStrokingAlphaConstant(1f);
    plain.setBlendMode(BlendMode.NORMAL);
    PaintedInks inks =
        PaintedInks.of(
            inked(
                Ink.PROCESS,
                (out, pdf) -> {
                  out.setGraphicsStateParameters(plain);
                  square(out, ACCENT);
                }));
    assertEquals(Set.of(), inks.forbidden());
    assertEquals(1, inks.painted().size());
  }
}
