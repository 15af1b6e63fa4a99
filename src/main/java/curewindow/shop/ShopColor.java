package curewindow.shop;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * The one color of a shop, in place of the warm accent of its pages and papers. It can be read as
 * text on them, and as white text on it.
 */
public final class ShopColor {

  /** Least contrast of text (WCAG 2.2, success criterion 1.4.3). */
  static final double LEAST = 4.5;

  /**
   * Enhanced contrast of text (the same, 1.4.6): in the dark the program chooses the color, and it
   * is drawn worn like ink.
   */
  static final double AT_NIGHT = 7;

  /** The ground of pages, the darkest that is light; what can be read there can be on white. */
  static final Rgb PAGE = new Rgb(0xF3, 0xF2, 0xEA);

  /** The lightest ground that is dark, that of the day's paper on a screen at night. */
  static final Rgb NIGHT = new Rgb(0x17, 0x20, 0x2A);

  private final Rgb color;

  /** Found when first asked for: the search takes some milliseconds. */
  private String onDark;

  private ShopColor(Rgb color) {
    this.color = color;
  }

  /** A color where it can be read on all light grounds. */
  static Optional<ShopColor> of(Rgb color) {
    return color.contrast(PAGE) >= LEAST ? Optional.of(new ShopColor(color)) : Optional.empty();
  }

  /** The nearest color of the same hue that can be read on all light grounds. */
  static ShopColor nearest(Rgb color) {
    return new ShopColor(nearest(color, PAGE, LEAST));
  }

  /** Black and white are of any hue, so there is one for every ground. */
  private static Rgb nearest(Rgb color, Rgb ground, double least) {
    return Oklch.of(color).nearest(c -> c.contrast(ground) >= least).orElseThrow();
  }

  /** The contrast as text on a page, cut to two digits, so that none under the least looks so. */
  static String measured(Rgb color) {
    return String.format(Locale.ROOT, "%.2f", Math.floor(color.contrast(PAGE) * 100) / 100);
  }

  /**
   * On white paper and on pages by day.
   *
   * @return as CSS writes it, such as {@code #0b5d57}
   */
  public String onLight() {
    return color.hex();
  }

  /**
   * On dark grounds: the nearest one of the same hue that can be read well there.
   *
   * @return as CSS writes it
   */
  public synchronized String onDark() {
    if (onDark == null) {
      onDark = nearest(color, NIGHT, AT_NIGHT).hex();
    }
    return onDark;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ShopColor that && color.equals(that.color);
  }

  @Override
  public int hashCode() {
    return Objects.hash(color);
  }

  @Override
  public String toString() {
    return onLight();
  }
}
