package curewindow.shop;

import java.util.Objects;
import java.util.Optional;

/**
 * How much visible light gets through where an item was fitted, and how that is known.
 *
 * @param percent visible light transmission, percent, 0 to 100
 * @param how how it is known
 */
public record NetLight(double percent, How how) {

  /**
   * Visible light that ordinary clear glass throws back, as a part of one: the usual 8 percent of
   * EN 410, from memory.
   */
  private static final double GLASS_REFLECTANCE = 0.08;

  /** How a figure is known. */
  public enum How {
    /** Measured on the car, glass and film together. */
    MEASURED,
    /** Computed from the glass and the film. */
    COMPUTED,
    /** Of the film alone, as the glass is not known. */
    FILM
  }

  /** Refuses missing parts. */
  public NetLight {
    Objects.requireNonNull(how, "how");
  }

  /**
   * The light that gets through an item: as measured, else computed from glass and film, else of
   * the film alone.
   *
   * @param item the item
   * @param film its film, if the catalogue has it
   * @return the figure, or empty where the film states none and nothing was measured
   */
  public static Optional<NetLight> of(FittedItem item, Optional<Film> film) {
    if (item.vlt().isPresent()) {
      return Optional.of(new NetLight(item.vlt().getAsDouble(), How.MEASURED));
    }
    return film.filter(f -> f.vlt().isPresent()).map(f -> unmeasured(item, f));
  }

  /** What gets through by the film, and by the glass where that is known. */
  static NetLight unmeasured(FittedItem item, Film film) {
    double alone = film.vlt().orElseThrow();
    if (item.glassVlt().isEmpty()) {
      return new NetLight(alone, How.FILM);
    }
    double glass = item.glassVlt().getAsDouble() / 100;
    double back = film.reflectance().isPresent() ? film.reflectance().getAsDouble() / 100 : 0;
    double net = Math.min(layers(glass, alone / 100, GLASS_REFLECTANCE, back), glass);
    return new NetLight(100 * net, How.COMPUTED);
  }

  /**
   * Light through two layers, with what is thrown back and forth between them (EN 410, ISO 9050):
   * t1 t2 / (1 - r1 r2).
   *
   * @param t1 transmittance of the first layer, 0 to 1
   * @param t2 transmittance of the second layer, 0 to 1
   * @param r1 reflectance of the first layer on the side of the second, 0 to 1
   * @param r2 reflectance of the second layer on the side of the first, 0 to below 1; 0 where it is
   *     not known, which leaves the plain product
   * @return transmittance of both, 0 to 1
   */
  public static double layers(double t1, double t2, double r1, double r2) {
    return t1 * t2 / (1 - r1 * r2);
  }
}
