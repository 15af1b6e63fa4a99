package curewindow.handout;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.client.j2se.BufferedImageLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
    return new PDFRenderer(pdf).renderImageWithDPI(page, DPI, ImageType.GRAY);
  }

  /** What a phone reads. */
  String scanned(int page) throws Exception {
    var source = new BufferedImageLuminanceSource(picture(page));
    var bitmap = new BinaryBitmap(new HybridBinarizer(source));
    try {
      return new QRCodeReader().decode(bitmap, Map.of(DecodeHintType.TRY_HARDER, true)).getText();
    } catch (NotFoundException e) {
      return "no code found";
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
