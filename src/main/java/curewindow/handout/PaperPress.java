package curewindow.handout;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRRuntimeException;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.w3c.dom.Document;

/** Turns filled templates into PDF: embedded fonts, no outside resources, the same bytes again. */
final class PaperPress {

  private final String styleFile;
  private final Problems problems;

  /**
   * A press.
   *
   * @param styleFile the style sheet's file, for problems
   * @param problems where mistakes of the style sheet are told
   */
  PaperPress(String styleFile, Problems problems) {
    this.styleFile = styleFile;
    this.problems = problems;
  }

  /**
   * What stands in a PDF beside its pages.
   *
   * @param title shown in the window's title
   * @param language a BCP 47 tag
   * @param made the instant given as the time of making
   */
  record Label(String title, String language, Instant made) {}

  /** The PDF, or empty where the style sheet leaves no room to print on. */
  Optional<byte[]> print(Document filled, List<QrCode> codes, CardFormat format, Label label) {
    PdfRendererBuilder builder = builder(filled, codes);
    try (PdfBoxRenderer renderer = builder.buildPdfRenderer();
        PDDocument pdf = renderer.createPDFKeepOpen()) {
      CutMarks.add(pdf, format);
      label(pdf, label);
      pdf.setDocumentId((long) filled.getDocumentElement().getTextContent().hashCode());
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      pdf.save(bytes);
      return Optional.of(bytes.toByteArray());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (XRRuntimeException | IllegalArgumentException e) {
      problems.add(
          Problem.error(
              "template-mistake",
              Where.file(styleFile),
              "the page cannot be laid out: " + e.getMessage(),
              "take back the last change of the style sheet or its template"));
      return Optional.empty();
    }
  }

  private PdfRendererBuilder builder(Document filled, List<QrCode> codes) {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.withW3cDocument(filled, null);
    builder.useObjectDrawerFactory(new CodeDrawer(codes));
    StyleMistakes.tell(builder, styleFile, problems);
    for (ExternalResourceControlPriority when : ExternalResourceControlPriority.values()) {
      builder.useExternalResourceAccessControl((address, type) -> false, when);
    }
    for (PaperFont font : PaperFont.values()) {
      builder.useFont(font::open, font.family(), font.weight(), FontStyle.NORMAL, true);
    }
    return builder;
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
    PDViewerPreferences shown = new PDViewerPreferences(new COSDictionary());
    shown.setDisplayDocTitle(true);
    pdf.getDocumentCatalog().setViewerPreferences(shown);
  }
}
