package curewindow.handout;

import com.openhtmltopdf.bidi.support.ICUBidiReorderer;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Optional;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The fonts that handouts are set in, all of the open DejaVu family. */
enum PaperFont {
  TEXT("text", "Card Sans", 400, "DejaVuSansCondensed.ttf"),
  BOLD("bold", "Card Sans", 700, "DejaVuSansCondensed-Bold.ttf"),
  SERIF("serif", "Card Serif", 400, "DejaVuSerifCondensed.ttf"),
  SERIF_BOLD("serif-bold", "Card Serif", 700, "DejaVuSerifCondensed-Bold.ttf"),
  MONO("mono", "Card Mono", 400, "DejaVuSansMono.ttf");

  private static final String FOLDER = "/net/sf/jasperreports/fonts/dejavu/";

  private final String id;
  private final String family;
  private final int weight;
  private final String file;
  private TrueTypeFont outlines;
  private Measures measures;

  PaperFont(String id, String family, int weight, String file) {
    this.id = id;
    this.family = family;
    this.weight = weight;
    this.file = file;
  }

  /** The name used in templates. */
  String id() {
    return id;
  }

  String family() {
    return family;
  }

  int weight() {
    return weight;
  }

  /** The font itself, read once; it is never changed and never closed, as it is all in memory. */
  synchronized TrueTypeFont outlines() {
    if (outlines == null) {
      try (InputStream in = PaperFont.class.getResourceAsStream(FOLDER + file)) {
        if (in == null) {
          throw new IllegalStateException("the font " + file + " is missing from the program");
        }
        outlines = new TTFParser().parse(RandomAccessReadBuffer.createBufferFromStream(in));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return outlines;
  }

  static Optional<PaperFont> of(String id) {
    return Arrays.stream(values()).filter(f -> f.id.equals(id)).findFirst();
  }

  /** The width of a text in millimetres at a size in points; joined letters are joined first. */
  double width(String text, double points) {
    String drawn = isRightToLeft(text) ? Shaper.joined(text) : text;
    return measures().ems(drawn) * points * 25.4 / 72;
  }

  /** Whether a text has letters that are written from right to left. */
  static boolean isRightToLeft(String text) {
    return text.codePoints().anyMatch(PaperFont::isRightToLeft);
  }

  private static boolean isRightToLeft(int character) {
    byte direction = Character.getDirectionality(character);
    return direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
        || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
  }

  /** Whether the font has a character. */
  boolean has(int character) {
    return measures().glyphs.getGlyphId(character) != 0;
  }

  /** The characters of a text that the font lacks, each once. */
  String lacking(String text) {
    return text.codePoints()
        .filter(c -> !Character.isWhitespace(c) && c != TextBox.MAY_BREAK.charAt(0) && !has(c))
        .distinct()
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  /** This font, or the plain one of the same weight where only that has all of a text. */
  PaperFont covering(String text) {
    PaperFont plain = weight > 400 ? BOLD : TEXT;
    return lacking(text).isEmpty() ? this : plain;
  }

  private synchronized Measures measures() {
    if (measures == null) {
      measures = Measures.of(outlines());
    }
    return measures;
  }

  /** Loaded only where there is something to join. */
  private static final class Shaper {

    private static final ICUBidiReorderer SHAPER = new ICUBidiReorderer();

    static synchronized String joined(String text) {
      return SHAPER.shapeText(text);
    }
  }

  private record Measures(CmapLookup glyphs, int[] advances, double perEm) {

    static Measures of(TrueTypeFont ttf) {
      try {
        int[] advances = new int[ttf.getNumberOfGlyphs()];
        for (int glyph = 0; glyph < advances.length; glyph++) {
          advances[glyph] = ttf.getAdvanceWidth(glyph);
        }
        return new Measures(ttf.getUnicodeCmapLookup(), advances, ttf.getUnitsPerEm());
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    double ems(String text) {
      return text.codePoints().mapToLong(c -> advances[glyphs.getGlyphId(c)]).sum() / perEm;
    }
  }
}
