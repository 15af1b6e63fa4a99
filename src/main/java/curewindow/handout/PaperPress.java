package curewindow.handout;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.w3c.dom.Document;

/** Turns filled templates into PDF: embedded fonts, no outside resources, the same bytes again. */
final class PaperPress {

  static {
    XRLog.setLoggingEnabled(false);
  }

  private PaperPress() {}

  /**
   * What stands in a PDF beside its pages.
   *
   * @param title shown in the window's title
   * @param language a BCP 47 tag
   * @param made the instant given as the time of making
   */
  record Label(String title, String language, Instant made) {}

  static byte[] print(Document filled, List<QrCode> codes, CardFormat format, Label label) {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.withW3cDocument(filled, null);
    builder.useObjectDrawerFactory(new CodeDrawer(codes));
    for (ExternalResourceControlPriority when : ExternalResourceControlPriority.values()) {
      builder.useExternalResourceAccessControl((address, type) -> false, when);
    }
    for (PaperFont font : PaperFont.values()) {
      builder.useFont(font::open, font.family(), font.weight(), FontStyle.NORMAL, true);
    }
    try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
      PDDocument pdf = renderer.createPDFKeepOpen();
      CutMarks.add(pdf, format);
      label(pdf, label);
      pdf.setDocumentId((long) filled.getDocumentElement().getTextContent().hashCode());
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      pdf.save(bytes);
      pdf.close();
      return bytes.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void label(PDDocument pdf, Label label) {
    Calendar made = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
    made.setTimeInMillis(label.made().toEpochMilli());
    PDDocumentInformation information = new PDDocumentInformation();
    information.setTitle(label.title());
    information.setProducer("Curewindow");
    information.setCreationDate(made);
    information.setModificationDate(made);
    pdf.setDocumentInformation(information);
    pdf.getDocumentCatalog().setLanguage(label.language());
    PDViewerPreferences shown = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
    shown.setDisplayDocTitle(true);
    pdf.getDocumentCatalog().setViewerPreferences(shown);
  }
}
