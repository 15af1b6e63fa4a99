package curewindow.handout;

import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** A font as it goes into one PDF, with the letters that are used; made when first needed. */
final class EmbeddedFont extends PDFontSupplier {

  static {
    FontMappers.set(new OwnFontsOnly());
  }

  private final PaperFont font;
  private final PDDocument pdf;
  private PDFont made;

  EmbeddedFont(PaperFont font, PDDocument pdf) {
    super(null);
    this.font = font;
    this.pdf = pdf;
  }

  @Override
  public PDFont supply() {
    if (made == null) {
      try {
        made = PDType0Font.load(pdf, font.outlines(), true);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return made;
  }

  /**
   * Stands in for all fonts that a PDF may name without bringing them. The library asks for its
   * built-in ones with every PDF, though nothing is set in them here; it would look through the
   * fonts of the machine for that, and keep a list of them in the user's home folder.
   */
  private static final class OwnFontsOnly implements FontMapper {

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String name, PDFontDescriptor descriptor) {
      return new FontMapping<>(PaperFont.TEXT.outlines(), false);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String name, PDFontDescriptor descriptor) {
      return new FontMapping<>(PaperFont.TEXT.outlines(), false);
    }

    @Override
    public CIDFontMapping getCIDFont(
        String name, PDFontDescriptor descriptor, PDCIDSystemInfo system) {
      return new CIDFontMapping(null, PaperFont.TEXT.outlines(), false);
    }
  }
}
