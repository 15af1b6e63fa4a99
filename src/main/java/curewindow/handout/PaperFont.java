package curewindow.handout;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.HeaderTable;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The fonts that papers are set in: Roboto and its condensed cut; Markazi Text for Arabic; DejaVu
 * for names in scripts that neither has. A template names the first four.
 */
enum PaperFont {
  TEXT("text", "Card Text", 400, "/fonts/ttf/Roboto/Roboto-Regular.ttf"),
  BOLD("bold", "Card Text", 700, "/fonts/ttf/Roboto/Roboto-Bold.ttf"),
  NARROW("narrow", "Card Narrow", 400, "/fonts/ttf/Roboto/RobotoCondensed-Regular.ttf"),
  NARROW_BOLD("narrow-bold", "Card Narrow", 700, "/fonts/ttf/Roboto/RobotoCondensed-Bold.ttf"),
  ARABIC("arabic", "Card Arabic", 400, "/fonts/ttf/Markazi/MarkaziText-Regular.ttf"),
  ARABIC_BOLD("arabic-bold", "Card Arabic", 700, "/fonts/ttf/Markazi/MarkaziText-Bold.ttf"),
  OTHER("other", "Card Other", 400, "/net/sf/jasperreports/fonts/dejavu/DejaVuSansCondensed.ttf"),
  OTHER_BOLD(
      "other-bold",
      "Card Other",
      700,
      "/net/sf/jasperreports/fonts/dejavu/DejaVuSansCondensed-Bold.ttf");

  /** Markazi's letters are small on their body: so much larger they look as large as Roboto's. */
  private static final double ARABIC_LARGER = 1.2;

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
      try (InputStream in = PaperFont.class.getResourceAsStream(file)) {
        if (in == null) {
          throw new IllegalStateException("the font " + file + " is missing from the program");
        }
        outlines = new TTFParser().parse(RandomAccessReadBuffer.createBufferFromStream(in));
        // Texts are fitted letter by letter: joined pairs would be of another width, and slow.
        outlines.setEnableGsub(false);
        if (family.equals(ARABIC.family)) {
          HeaderTable header = outlines.getHeader();
          header.setUnitsPerEm((int) Math.round(header.getUnitsPerEm() / ARABIC_LARGER));
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return outlines;
  }

  static Optional<PaperFont> of(String id) {
    return Arrays.stream(values()).filter(f -> f.id.equals(id)).findFirst();
  }

  /**
   * The width of a text in millimetres at a size in points; joined letters are joined first, and
   * what this font lacks is as wide as in the font that has it.
   */
  double width(String text, double points) {
    String drawn = isRightToLeft(text) ? Shaper.joined(text) : text;
    double ems =
        drawn
            .codePoints()
            .filter(c -> Character.getType(c) != Character.FORMAT)
            .mapToDouble(c -> having(c).measures().ems(c))
            .sum();
    return ems * points * 25.4 / 72;
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

  private static boolean isDrawn(int character) {
    return !Character.isWhitespace(character) && Character.getType(character) != Character.FORMAT;
  }

  /** The characters of a text that the font lacks, each once. */
  String lacking(String text) {
    return text.codePoints()
        .filter(c -> isDrawn(c) && !has(c))
        .distinct()
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  /**
   * The families that a text is set in, this one first. So Latin letters and digits look the same
   * on a whole paper, whatever script stands beside them.
   */
  List<String> families(String text) {
    String drawn = isRightToLeft(text) ? Shaper.joined(text) : text;
    Stream<PaperFont> needed = drawn.codePoints().filter(PaperFont::isDrawn).mapToObj(this::having);
    return Stream.concat(Stream.of(this), needed.sorted()).map(f -> f.family).distinct().toList();
  }

  /** This font, or the first of the same weight that has a character, or else the last one. */
  private PaperFont having(int character) {
    if (has(character)) {
      return this;
    }
    boolean bold = weight > 400;
    PaperFont arabic = bold ? ARABIC_BOLD : ARABIC;
    return arabic.has(character) ? arabic : bold ? OTHER_BOLD : OTHER;
  }

  /** The characters of a text that no font has, each once. */
  static String lackingInAll(String text) {
    String left = text;
    for (PaperFont font : values()) {
      left = font.lacking(left);
    }
    return left;
  }

  private synchronized Measures measures() {
    if (measures == null) {
      measures = Measures.of(outlines());
    }
    return measures;
  }

  /** Loaded only where there is something to join. */
  private static final class Shaper {

    private static final ArabicJoining SHAPER = new ArabicJoining();

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

    double ems(int character) {
      return advances[glyphs.getGlyphId(character)] / perEm;
    }
  }
}
