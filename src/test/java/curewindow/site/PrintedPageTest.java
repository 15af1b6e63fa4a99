package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.page.Browser;
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

  /** The headings of what leads to another page, and of the cautions with their last word. */
  private static final Map<String, List<String>> TEXTS =
      Map.of(
          "en", List.of("How to care for it", "Cautions", "no razor blades on film"),
          "es", List.of("Cómo cuidarlo", "Precauciones", "ni cuchillas sobre la película"));

  @TempDir Path temp;

  @Test
  void twoSheetsHoldItWithoutHeadingsOfNothingAndWithTheCautionsTogether() throws IOException {
    try (Browser browser = Browser.open()) {
      for (String language : List.of("en", "es", "ar")) {
        browser.go(PressedDemo.get().kinds(language).get("job"));
        for (double[] paper : PAPERS) {
          Path file = temp.resolve("page.pdf");
          browser.print(file, paper[0], paper[1]);
          try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            assertEquals(2, pdf.getNumberOfPages(), language + " " + paper[1]);
            if (TEXTS.containsKey(language)) {
              texts(pdf, TEXTS.get(language));
            }
          }
        }
      }
    }
  }

  private static void texts(PDDocument pdf, List<String> texts) throws IOException {
    assertFalse(page(pdf, 1).contains(texts.get(0)) || page(pdf, 2).contains(texts.get(0)));
    boolean first = page(pdf, 1).contains(texts.get(1));
    String with = page(pdf, first ? 1 : 2);
    assertTrue(with.contains(texts.get(1)) && with.contains(texts.get(2)), with);
  }

  private static String page(PDDocument pdf, int number) throws IOException {
    PDFTextStripper reader = new PDFTextStripper();
    reader.setStartPage(number);
    reader.setEndPage(number);
    return reader.getText(pdf).replaceAll("\\s+", " ");
  }
}
