package curewindow.cure;

import curewindow.climate.Psychrometrics;

/**
 * Reference hours that a driver gains per real hour: 1 at 23 degrees Celsius and 50 % relative
 * humidity, the standard atmosphere 23/50 of ISO 291.
 */
final class Rates {

  /** The reference temperature, degrees Celsius; ISO 291. */
  static final double REFERENCE = 23;

  /** The reference relative humidity, percent; ISO 291. */
  static final double REFERENCE_HUMIDITY = 50;

  /** Activation energy of water moving through a film, J/mol; common practice, no source. */
  static final double DRY_OUT_ENERGY = 5_000;

  private static final double DRY_OUT_CONSTANT = DRY_OUT_ENERGY / Arrhenius.GAS_CONSTANT;
  private static final double REFERENCE_DRIVE =
      REFERENCE_HUMIDITY / 100 * Psychrometrics.saturationPressureOverWater(REFERENCE);

  /** Humidity from which more of it slows crosslinking down again, percent. */
  private static final double DAMP = 70;

  private Rates() {}

  /**
   * The rate of a driver.
   *
   * @param driver the driver
   * @param film film temperature, degrees Celsius
   * @param air temperature of the air at the surface, degrees Celsius
   * @param dewPoint dew point of that air, degrees Celsius
   * @param bondEnergy activation energy of bond and crosslink, J/mol
   * @return reference hours per hour, 0 or more
   */
  static double of(Driver driver, double film, double air, double dewPoint, double bondEnergy) {
    return in(driver, film, air, Psychrometrics.vapourPressure(dewPoint), bondEnergy);
  }

  /**
   * The rate of a driver in air whose vapour pressure is known.
   *
   * @param driver the driver
   * @param film film temperature, degrees Celsius
   * @param air temperature of the air at the surface, degrees Celsius
   * @param vapour vapour pressure of that air, Pa
   * @param bondEnergy activation energy of bond and crosslink, J/mol
   * @return reference hours per hour, 0 or more
   */
  static double in(Driver driver, double film, double air, double vapour, double bondEnergy) {
    return switch (driver) {
      case DRY_OUT -> dryOut(film, vapour);
      case BOND -> bond(film, bondEnergy);
      case CROSSLINK ->
          crosslink(
              film, 100 * vapour / Psychrometrics.saturationPressureOverWater(air), bondEnergy);
    };
  }

  /**
   * The rate of a driver in the shop's bay, where surfaces are as warm as the air.
   *
   * @param driver the driver
   * @param bay the air in the bay
   * @param bondEnergy activation energy of bond and crosslink, J/mol
   * @return reference hours per hour, 0 or more
   */
  static double inBay(Driver driver, Bay bay, double bondEnergy) {
    double t = bay.temperature();
    return switch (driver) {
      case DRY_OUT ->
          dryOut(t, bay.relativeHumidity() / 100 * Psychrometrics.saturationPressureOverWater(t));
      case BOND -> bond(t, bondEnergy);
      case CROSSLINK -> crosslink(t, bay.relativeHumidity(), bondEnergy);
    };
  }

  /**
   * The rate of a driver under a lamp in the shop's bay. Mounting water is not counted: a lamp
   * warms the film for minutes, and the water is not out by then.
   *
   * @param driver the driver
   * @param surface temperature of the film under the lamp, degrees Celsius
   * @param bay the air in the bay
   * @param bondEnergy activation energy of bond and crosslink, J/mol
   * @return reference hours per hour; 0 for dry-out
   */
  static double underLamp(Driver driver, double surface, Bay bay, double bondEnergy) {
    return switch (driver) {
      case DRY_OUT -> 0;
      case BOND -> bond(surface, bondEnergy);
      case CROSSLINK -> crosslink(surface, bay.relativeHumidity(), bondEnergy);
    };
  }

  /**
   * Water leaving through the film: driven by the vapour pressure under the film, which is wet,
   * over that of the air.
   *
   * @param film film temperature, degrees Celsius
   * @param vapourPressure vapour pressure of the air, Pa
   * @return reference hours per hour; 0 where the air is as damp as the water under the film
   */
  static double dryOut(double film, double vapourPressure) {
    double drive = Psychrometrics.saturationPressure(film) - vapourPressure;
    return Math.max(0, drive)
        / REFERENCE_DRIVE
        * Arrhenius.factor(DRY_OUT_CONSTANT, film, REFERENCE);
  }

  /**
   * The adhesive building its bond.
   *
   * @param film film temperature, degrees Celsius
   * @param bondEnergy activation energy, J/mol
   * @return reference hours per hour, above 0
   */
  static double bond(double film, double bondEnergy) {
    return Arrhenius.factor(bondEnergy / Arrhenius.GAS_CONSTANT, film, REFERENCE);
  }

  /**
   * A coating linking up with the help of the air's moisture.
   *
   * @param film coating temperature, degrees Celsius
   * @param humidity relative humidity of the air at the surface, percent
   * @param bondEnergy activation energy, J/mol
   * @return reference hours per hour, 0 or more
   */
  static double crosslink(double film, double humidity, double bondEnergy) {
    return bond(film, bondEnergy) * moistureFactor(humidity);
  }

  /**
   * How moisture changes the crosslink rate: more of it helps up to 70 %, then hinders. Sources
   * conflict on high humidity; common practice, no source.
   *
   * @param humidity relative humidity, percent
   * @return 1 at 50 %
   */
  static double moistureFactor(double humidity) {
    double helped = Math.sqrt(Math.min(humidity, DAMP) / REFERENCE_HUMIDITY);
    return helped * Math.max(0.3, 1 - Math.max(0, humidity - DAMP) / 60);
  }
}
