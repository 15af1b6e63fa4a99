package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The sheet that is set to get ready; were it broken, nothing would be ready and nobody told. */
class PressStartTest {

  @Test
  void theSheetIsSetAsAnyOtherWithAllThatACardIsSetIn() throws IOException {
    byte[] sheet = PressStart.sheet().orElseThrow();
    try (PDDocument pdf = Loader.loadPDF(sheet)) {
      assertEquals(1, pdf.getNumberOfPages());
      String text = new PDFTextStripper().getText(pdf);
      assertEquals(4, text.split("Wait until 2 PM", -1).length - 1, text);
      int fonts = 0;
      for (var name : pdf.getPage(0).getResources().getFontNames()) {
        fonts += pdf.getPage(0).getResources().getFont(name).isEmbedded() ? 1 : 0;
      }
      assertEquals(4, fonts, "plain and bold, with and without serifs");
    }
  }

  @Test
  void gettingReadyComesToAnEndAndChangesNothing() {
    byte[] before = PressStart.sheet().orElseThrow();
    PressStart.begin().join();
    assertArrayEquals(before, PressStart.sheet().orElseThrow());
  }
}
