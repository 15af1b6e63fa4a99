package curewindow.handout;

import io.nayuki.qrcodegen.DataTooLongException;
import io.nayuki.qrcodegen.QrCode.Ecc;
import io.nayuki.qrcodegen.QrSegmentAdvanced;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A QR code (ISO/IEC 18004), as light and dark modules. It is always the smallest symbol that holds
 * its text at its level: the text is cut into the cheapest mix of segment modes.
 */
public final class QrCode {

  /** The clear border that a code needs on each side, in modules (ISO/IEC 18004). */
  public static final int QUIET_ZONE = 4;

  /** The smallest module that is printed, in millimetres. */
  public static final double SMALLEST_MODULE = 0.4;

  /** From here on a module, in millimetres, is so wide that more redundancy is worth its room. */
  public static final double ROOMY_MODULE = 0.5;

  /** Below this, wider modules are worth more than redundancy: a coarse camera blurs them. */
  public static final double FINE_MODULE = 0.45;

  private static final Map<CodeLevel, Ecc> LEVELS =
      new EnumMap<>(
          Map.of(
              CodeLevel.L, Ecc.LOW,
              CodeLevel.M, Ecc.MEDIUM,
              CodeLevel.Q, Ecc.QUARTILE,
              CodeLevel.H, Ecc.HIGH));

  private final String text;
  private final int version;
  private final CodeLevel level;
  private final int modules;
  private final List<Segment> segments;
  private final BitSet dark;

  /**
   * A part of the text in one segment mode.
   *
   * @param mode {@code numeric}, {@code alphanumeric} or {@code byte}
   * @param count how many characters it holds; of a byte segment how many bytes
   */
  public record Segment(String mode, int count) {}

  private QrCode(
      String text, CodeLevel level, List<Segment> segments, io.nayuki.qrcodegen.QrCode symbol) {
    this.text = text;
    this.segments = List.copyOf(segments);
    this.version = symbol.version;
    this.level = level;
    this.modules = symbol.size;
    this.dark = new BitSet(modules * modules);
    for (int i = 0; i < modules * modules; i++) {
      dark.set(i, symbol.getModule(i % modules, i / modules));
    }
  }

  /**
   * The smallest code that holds a text at a level.
   *
   * @param text the text
   * @param level the error level, kept even where a higher one would fit for nothing
   * @return the code, or empty where not even version 40 holds the text
   */
  public static Optional<QrCode> of(String text, CodeLevel level) {
    Objects.requireNonNull(text, "text");
    Ecc ecc = LEVELS.get(Objects.requireNonNull(level, "level"));
    try {
      var segments =
          QrSegmentAdvanced.makeSegmentsOptimally(
              text,
              ecc,
              io.nayuki.qrcodegen.QrCode.MIN_VERSION,
              io.nayuki.qrcodegen.QrCode.MAX_VERSION);
      var symbol =
          io.nayuki.qrcodegen.QrCode.encodeSegments(
              segments,
              ecc,
              io.nayuki.qrcodegen.QrCode.MIN_VERSION,
              io.nayuki.qrcodegen.QrCode.MAX_VERSION,
              -1,
              false);
      List<Segment> cut =
          segments.stream()
              .map(s -> new Segment(s.mode.name().toLowerCase(Locale.ROOT), s.numChars))
              .toList();
      return Optional.of(new QrCode(text, level, cut, symbol));
    } catch (DataTooLongException e) {
      return Optional.empty();
    }
  }

  /**
   * The code for a square on paper: at level H where its modules are then at least {@link
   * #ROOMY_MODULE} wide, else at level Q where they are at least {@link #FINE_MODULE} wide, else at
   * level M.
   *
   * @param text the text
   * @param side the side of the square with the quiet zone in it, millimetres
   * @return the code, or empty where its modules would be too small to scan safely
   */
  public static Optional<QrCode> fitting(String text, double side) {
    if (!(side > 0 && side < 2000)) {
      throw new IllegalArgumentException("side " + side + " is not within 0 to 2000 mm");
    }
    return List.of(CodeLevel.H, CodeLevel.Q, CodeLevel.M).stream()
        .flatMap(level -> of(text, level).stream())
        .filter(code -> code.module(side) >= least(code.level()))
        .findFirst();
  }

  private static double least(CodeLevel level) {
    return switch (level) {
      case H -> ROOMY_MODULE;
      case Q -> FINE_MODULE;
      case M, L -> SMALLEST_MODULE;
    };
  }

  /**
   * What the code says.
   *
   * @return the text
   */
  public String text() {
    return text;
  }

  /**
   * How the text is cut into segment modes.
   *
   * @return the segments, in their order
   */
  public List<Segment> segments() {
    return segments;
  }

  /**
   * The version, which tells the size.
   *
   * @return 1 to 40
   */
  public int version() {
    return version;
  }

  /**
   * The error level.
   *
   * @return the level
   */
  public CodeLevel level() {
    return level;
  }

  /**
   * How many modules a side has, without the quiet zone.
   *
   * @return 21 to 177
   */
  public int modules() {
    return modules;
  }

  /**
   * Whether a module is dark.
   *
   * @param x the column from the left, from 0
   * @param y the row from the top, from 0
   * @return true for dark; false also for any place outside the symbol
   */
  public boolean dark(int x, int y) {
    boolean inside = x >= 0 && y >= 0 && x < modules && y < modules;
    return inside && dark.get(y * modules + x);
  }

  /**
   * How large a module is when the code with its quiet zone fills a square.
   *
   * @param side the side of the square, millimetres
   * @return the side of a module, millimetres
   */
  public double module(double side) {
    return side / (modules + 2 * QUIET_ZONE);
  }
}
