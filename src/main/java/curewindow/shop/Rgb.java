package curewindow.shop;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A color of a screen, sRGB (IEC 61966-2-1) in 8 bits.
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 */
record Rgb(int red, int green, int blue) {

  private static final Pattern HEX = Pattern.compile("#([0-9a-fA-F]{6}|[0-9a-fA-F]{3})");

  /** Refuses what is out of range. */
  Rgb {
    if (((red | green | blue) & ~0xFF) != 0) {
      throw new IllegalArgumentException(red + ", " + green + ", " + blue + " is no sRGB color");
    }
  }

  /** The color of {@code #0b5d57} or, in short, {@code #fc0}; empty where the text is neither. */
  static Optional<Rgb> of(String text) {
    Matcher form = HEX.matcher(text);
    if (!form.matches()) {
      return Optional.empty();
    }
    String digits = form.group(1);
    String six = digits.length() == 6 ? digits : digits.replaceAll(".", "$0$0");
    int all = Integer.parseInt(six, 16);
    return Optional.of(new Rgb(all >> 16, all >> 8 & 0xFF, all & 0xFF));
  }

  /** As CSS writes it, {@code #0b5d57}. */
  String hex() {
    return String.format(Locale.ROOT, "#%02x%02x%02x", red, green, blue);
  }

  /** A value of 0 to 255 as light, 0 to 1. */
  static double linear(int value) {
    double v = value / 255.0;
    return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
  }

  /** Relative luminance, 0 to 1, as WCAG 2.2 defines it. */
  double luminance() {
    return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
  }

  /** Contrast ratio, 1 to 21, as WCAG 2.2 defines it. */
  double contrast(Rgb other) {
    double one = luminance() + 0.05;
    double two = other.luminance() + 0.05;
    return Math.max(one, two) / Math.min(one, two);
  }
}
