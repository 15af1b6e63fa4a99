package curewindow.shop;

import java.util.Optional;
import java.util.function.Predicate;

/**
 * A color by what the eye tells apart: Oklab in polar form (B. Ottosson, "A perceptual color space
 * for image processing", 2020; CSS Color Module Level 4).
 *
 * @param lightness 0 black to 1 white
 * @param chroma 0 gray to about 0.32, the most that sRGB has
 * @param hue radians
 */
record Oklch(double lightness, double chroma, double hue) {

  private static final int LIGHTNESSES = 500;
  private static final int CHROMAS = 100;

  /** So far may light be outside of sRGB and still round to what is inside. */
  private static final double ROUNDING = 1e-4;

  static Oklch of(Rgb color) {
    double red = Rgb.linear(color.red());
    double green = Rgb.linear(color.green());
    double blue = Rgb.linear(color.blue());
    double l = Math.cbrt(0.4122214708 * red + 0.5363325363 * green + 0.0514459929 * blue);
    double m = Math.cbrt(0.2119034982 * red + 0.6806995451 * green + 0.1073969566 * blue);
    double s = Math.cbrt(0.0883024619 * red + 0.2817188376 * green + 0.6299787005 * blue);
    double a = 1.9779984951 * l - 2.4285922050 * m + 0.4505937099 * s;
    double b = 0.0259040371 * l + 0.7827717662 * m - 0.8086757660 * s;
    double lightness = 0.2104542553 * l + 0.7936177850 * m - 0.0040720468 * s;
    return new Oklch(lightness, Math.hypot(a, b), Math.atan2(b, a));
  }

  /** The color on a screen; empty where none can show it. */
  Optional<Rgb> rgb() {
    double a = chroma * Math.cos(hue);
    double b = chroma * Math.sin(hue);
    double l = cube(lightness + 0.3963377774 * a + 0.2158037573 * b);
    double m = cube(lightness - 0.1055613458 * a - 0.0638541728 * b);
    double s = cube(lightness - 0.0894841775 * a - 1.2914855480 * b);
    double red = 4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s;
    double green = -1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s;
    double blue = -0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s;
    return isLight(red) && isLight(green) && isLight(blue)
        ? Optional.of(new Rgb(value(red), value(green), value(blue)))
        : Optional.empty();
  }

  private static double cube(double x) {
    return x * x * x;
  }

  private static boolean isLight(double light) {
    return light >= -ROUNDING && light <= 1 + ROUNDING;
  }

  /** Light as a value of 0 to 255. */
  private static int value(double light) {
    double v = light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
    return (int) Math.round(255 * Math.min(1, Math.max(0, v)));
  }

  /** How different two colors of the same hue look; about 0.02 is the least that is seen. */
  private double distance(Oklch other) {
    return Math.hypot(lightness - other.lightness, chroma - other.chroma);
  }

  /**
   * The color of the same hue that looks most like this one and is fit, sought in steps of 0.002 of
   * lightness and a hundredth of this color's chroma.
   *
   * @param fit tells of a color whether it will do
   * @return the color, or empty where none of the hue will do
   */
  Optional<Rgb> nearest(Predicate<Rgb> fit) {
    Optional<Rgb> best = Optional.empty();
    double least = Double.MAX_VALUE;
    for (int step = 0; step <= LIGHTNESSES; step++) {
      for (int part = CHROMAS; part >= 0; part--) {
        Oklch tried = new Oklch((double) step / LIGHTNESSES, chroma * part / CHROMAS, hue);
        double distance = distance(tried);
        Optional<Rgb> color = distance < least ? tried.rgb().filter(fit) : Optional.empty();
        if (color.isPresent()) {
          best = color;
          least = distance;
        }
      }
    }
    return best;
  }
}
