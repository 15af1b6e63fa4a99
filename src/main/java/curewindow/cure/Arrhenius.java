package curewindow.cure;

/**
 * How much faster a process runs at one temperature than at another. The same mathematics as the
 * equivalent age of ASTM C1074.
 */
final class Arrhenius {

  /** The molar gas constant, J/(mol K); CODATA 2018, exact. */
  static final double GAS_CONSTANT = 8.31446261815324;

  /** 0 degrees Celsius in kelvin. */
  static final double ZERO_CELSIUS = 273.15;

  private Arrhenius() {}

  /**
   * The rate relative to a reference temperature.
   *
   * @param temperatureConstant activation energy over the gas constant, kelvin
   * @param celsius the temperature, degrees Celsius
   * @param reference the temperature at which the factor is 1, degrees Celsius
   * @return above 0
   */
  static double factor(double temperatureConstant, double celsius, double reference) {
    return StrictMath.exp(
        temperatureConstant * (1 / (reference + ZERO_CELSIUS) - 1 / (celsius + ZERO_CELSIUS)));
  }
}
