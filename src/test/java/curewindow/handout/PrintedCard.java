package curewindow.handout;

import com.google.zxing.Result;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Looks at a PDF of cards as a printer and a phone would. */
final class PrintedCard implements AutoCloseable {

  static final int DPI = 300;

  private final PDDocument pdf;

  PrintedCard(byte[] bytes) throws IOException {
    pdf = Loader.loadPDF(bytes);
  }

  PDDocument pdf() {
    return pdf;
  }

  BufferedImage picture(int page) throws IOException {
    return picture(page, DPI);
  }

  private BufferedImage picture(int page, int dpi) throws IOException {
    return new PDFRenderer(pdf).renderImageWithDPI(page, dpi, ImageType.GRAY);
  }

  /** What a phone reads, from near or from twice as far. */
  String scanned(int page) throws IOException {
    Optional<Result> near = CodeReaders.zxing(picture(page));
    return near.or(() -> CodeReaders.zxing(far(page))).map(Result::getText).orElse("no code found");
  }

  private BufferedImage far(int page) {
    try {
      return picture(page, DPI / 2);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All text, its white space made single spaces. */
  String text(int page) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setStartPage(page + 1);
    stripper.setEndPage(page + 1);
    return stripper.getText(pdf).replaceAll("\\s+", " ").strip();
  }

  /** Every letter of a page, where it stands. */
  List<TextPosition> letters(int page) throws IOException {
    List<TextPosition> letters = new ArrayList<>();
    PDFTextStripper stripper =
        new PDFTextStripper() {
          @Override
          protected void processTextPosition(TextPosition text) {
            letters.add(text);
          }
        };
    stripper.setStartPage(page + 1);
    stripper.setEndPage(page + 1);
    stripper.getText(pdf);
    return letters;
  }

  /**
   * The size at which a letter is printed; lengths in the file are rounded to a 60th of a point.
   */
  static double points(TextPosition letter) {
    return letter.getTextMatrix().getScalingFactorX();
  }

  static double millimetres(double points) {
    return points * 25.4 / 72;
  }

  static int pixel(double millimetres) {
    return (int) Math.round(millimetres * DPI / 25.4);
  }

  @Override
  public void close() throws IOException {
    pdf.close();
  }
}
