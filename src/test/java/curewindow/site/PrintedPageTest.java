package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.Release;
import curewindow.page.Browser;
import curewindow.told.JobView;
import curewindow.told.Safety;
import curewindow.told.When;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A customer's page as a browser prints it, on A4 and Letter. */
class PrintedPageTest {

  /** Sizes in inches: ISO 216, ANSI/ASME Y14.1. */
  private static final List<double[]> PAPERS =
      List.of(new double[] {8.27, 11.69}, new double[] {8.5, 11});

  private static final Map<String, String> JOBS =
      Map.of("en", "Q-3101", "es", "Q-3114", "ar", "Q-3117");

  /** What leads to another page, or can only be chosen on a screen, has no place on paper. */
  private static final List<String> NOT_ON_PAPER =
      List.of("page.care.title", "page.normal.title", "parked.title", "page.calendar.all");

  @TempDir Path temp;

  @Test
  void oneSheetHoldsItWithEveryDateAndWithoutHeadingsOfNothing() throws IOException {
    LoadedShop shop = PressedDemo.get().shop();
    try (Browser browser = Browser.open()) {
      for (String language : List.of("en", "es", "ar")) {
        JobView view = shop.view(shop.job(JOBS.get(language)).orElseThrow(), Tokens.SAMPLE);
        browser.clock(view.timeline().pickup());
        browser.go(PressedDemo.get().job(view.job().id()).resolve("index.html"));
        for (double[] paper : PAPERS) {
          Path file = temp.resolve("page.pdf");
          browser.print(file, paper[0], paper[1]);
          try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            assertEquals(1, pdf.getNumberOfPages(), language + " " + paper[1]);
            if (!view.words().rightToLeft()) {
              texts(plain(new PDFTextStripper().getText(pdf)), view);
            }
          }
        }
      }
    }
  }

  private static void texts(String paper, JobView view) {
    for (String key : NOT_ON_PAPER) {
      assertFalse(paper.contains(plain(view.words().text(key))), key);
    }
    When when = new When(view);
    for (Release release : view.timeline().releases()) {
      String label = view.words().text("hold." + release.hold() + ".short");
      assertTrue(paper.contains(plain(label)), label + ": " + paper);
      assertTrue(paper.contains(plain(when.shortDay(release))), label + ": " + paper);
      Safety.of(release, view).ifPresent(s -> assertTrue(paper.contains(plain(s)), s));
    }
  }

  private static String plain(String text) {
    return text.replaceAll("[\\s\u00A0\u202F]+", " ");
  }
}
