package curewindow.shop;

import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * How much water a film most likely lets through, of which only the material and the thickness are
 * known. Water goes through a film of twice the thickness half as fast.
 */
public final class UsualPermeance {

  /**
   * Water permeance times thickness by material: g/m2 per day at 38 degrees Celsius and 90 percent,
   * times micrometres. PET: 12 micrometres pass 43 (ASTM E96, a film maker's figure). PVC: 50
   * micrometres pass 22.6 (PMC4554610, table 1). TPU: 200 micrometres pass 60, from memory. As in
   * docs/formats.md.
   */
  private static final Map<String, Double> TIMES_THICKNESS =
      Map.of("pet", 43.0 * 12, "pvc", 22.6 * 50, "tpu", 60.0 * 200);

  /** A metal layer lets about half of it through; our estimate, no source. */
  private static final double WITH_METAL = 0.5;

  private UsualPermeance() {}

  /**
   * The permeance that a film usually has.
   *
   * @param material such as PET; capitals do not count
   * @param thickness micrometres, above 0
   * @param metallised whether it has a metal layer
   * @return g/m2 per day at 38 degrees Celsius and 90 percent, to a tenth; empty where the material
   *     is not known
   */
  public static OptionalDouble of(String material, double thickness, boolean metallised) {
    Double times = TIMES_THICKNESS.get(material.strip().toLowerCase(Locale.ROOT));
    if (times == null || !(thickness > 0)) {
      return OptionalDouble.empty();
    }
    double through = times / thickness * (metallised ? WITH_METAL : 1);
    return OptionalDouble.of(Math.max(0.1, Math.rint(through * 10) / 10));
  }
}
