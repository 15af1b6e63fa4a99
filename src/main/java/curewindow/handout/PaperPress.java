package curewindow.handout;

import com.openhtmltopdf.bidi.support.ICUBidiSplitter;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRRuntimeException;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.ShopLogo;
import curewindow.shop.ShopLook;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
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

  private final PaperTemplate template;
  private final Optional<ShopLogo> logo;
  private final Problems problems;

  /**
   * A press.
   *
   * @param template the template, whose files are named in problems
   * @param house the shop's logo, which the template may place
   * @param problems where mistakes of the style sheets are told
   */
  PaperPress(PaperTemplate template, ShopLook house, Problems problems) {
    this.template = template;
    this.logo = house.logo();
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

  /**
   * The codes on the pages.
   *
   * @param all the codes, which the template places by their numbers
   * @param order the number of the code on each handout; none where the pages are no handouts
   */
  record Codes(List<QrCode> all, List<Integer> order) {

    static final Codes NONE = new Codes(List.of(), List.of());

    /** Copies the lists. */
    Codes {
      all = List.copyOf(all);
      order = List.copyOf(order);
    }
  }

  /** What is done to the pages once they are set. */
  interface Finish {

    /** Nothing. */
    Finish NONE = (pdf, sides) -> Optional.of(false);

    /**
     * Changes the pages.
     *
     * @param pdf the pages
     * @param sides how many pages each handout has, 1 or 2
     * @return true where every second page is a back, for printers that turn paper; empty where it
     *     cannot be done, which was told
     */
    Optional<Boolean> on(PDDocument pdf, int sides) throws IOException;
  }

  /**
   * The PDF, or empty where the style sheet leaves no room to print on, or too little for a code.
   */
  Optional<byte[]> print(Document filled, Codes codes, Label label, Finish finish) {
    // Takes out empty texts, on which the reordering of letters from right to left fails.
    filled.normalize();
    CodeDrawer drawer = new CodeDrawer(codes.all());
    Optional<LogoDrawer> logos = logo.map(LogoDrawer::new);
    try (PDDocument pdf = new PDDocument();
        PdfBoxRenderer renderer = builder(filled, drawers(drawer, logos), pdf).buildPdfRenderer()) {
      renderer.createPDFKeepOpen();
      int sides = pdf.getNumberOfPages() == 2 * codes.order().size() ? 2 : 1;
      if (!scans(drawer) || !areInOrder(pdf, sides, codes, drawer)) {
        return Optional.empty();
      }
      logos.ifPresent(this::tellCoarse);
      // Before the pages are finished, which may claim a standard that asks for it.
      label(pdf, label);
      Optional<Boolean> isTurned = finish.on(pdf, sides);
      if (isTurned.isEmpty()) {
        return Optional.empty();
      }
      if (isTurned.get()) {
        pdf.getDocumentCatalog()
            .getViewerPreferences()
            .setDuplex(PDViewerPreferences.DUPLEX.DuplexFlipLongEdge);
      }
      pdf.setDocumentId((long) filled.getDocumentElement().getTextContent().hashCode());
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      pdf.save(bytes, InkPress.packing(pdf));
      return Optional.of(bytes.toByteArray());
    } catch (Unprintable e) {
      String logoFile = logo.map(ShopLogo::file).orElse(template.file());
      problems.add(PaperProblems.unprintable(e.isInLogo() ? logoFile : template.file(), e));
      return Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (XRRuntimeException | IllegalArgumentException e) {
      problems.add(
          Problem.error(
              "template-mistake",
              Where.file(template.styleFile()),
              "the page cannot be laid out: " + e.getMessage(),
              "take back the last change of the style sheet or its template"));
      return Optional.empty();
    }
  }

  /** Whether each handout has its own sides, one after the other; false where that was told. */
  private boolean areInOrder(PDDocument pdf, int sides, Codes codes, CodeDrawer drawer) {
    int handouts = codes.order().size();
    boolean more = handouts > 1 && pdf.getNumberOfPages() > sides * handouts;
    boolean apart =
        drawer.pages().entrySet().stream()
            .anyMatch(
                drawn ->
                    sides == 2 && !codes.order().get(drawn.getKey() / 2).equals(drawn.getValue()));
    if (more || apart) {
      problems.add(PaperProblems.sidesApart(template.file(), pdf.getNumberOfPages(), handouts));
    }
    return !more && !apart;
  }

  /** Tells of codes that are too small or not there; false where they are too small. */
  private boolean scans(CodeDrawer drawer) {
    if (!drawer.hasDrawnAll()) {
      problems.add(PaperProblems.noCode(template.file()));
    }
    drawer
        .tooSmall()
        .ifPresent(mm -> problems.add(PaperProblems.codeTooSmall(template.styleFile(), mm)));
    return drawer.tooSmall().isEmpty();
  }

  private void tellCoarse(LogoDrawer drawer) {
    drawer
        .tooCoarse()
        .ifPresent(dots -> problems.add(PaperProblems.coarse(logo.orElseThrow(), dots)));
  }

  private static Drawers drawers(CodeDrawer codes, Optional<LogoDrawer> logos) {
    List<FSObjectDrawerFactory> all = new ArrayList<>(List.of(codes));
    logos.ifPresent(all::add);
    return new Drawers(all);
  }

  private PdfRendererBuilder builder(Document filled, Drawers drawer, PDDocument pdf) {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.usePDDocument(pdf);
    builder.withW3cDocument(filled, null);
    builder.useObjectDrawerFactory(drawer);
    StyleMistakes.tell(builder, template, problems);
    if (hasRightToLeft(filled)) {
      builder.useUnicodeBidiSplitter(new ICUBidiSplitter.ICUBidiSplitterFactory());
      builder.useUnicodeBidiReorderer(new ArabicJoining());
    }
    for (ExternalResourceControlPriority when : ExternalResourceControlPriority.values()) {
      builder.useExternalResourceAccessControl((address, type) -> false, when);
    }
    for (PaperFont font : PaperFont.values()) {
      builder.useFont(
          new EmbeddedFont(font, pdf), font.family(), font.weight(), FontStyle.NORMAL, true);
    }
    return builder;
  }

  /** Only such text needs the tables of scripts, which take long to load. */
  private static boolean hasRightToLeft(Document filled) {
    return PaperFont.isRightToLeft(filled.getDocumentElement().getTextContent());
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
    shown.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
    pdf.getDocumentCatalog().setViewerPreferences(shown);
  }
}
