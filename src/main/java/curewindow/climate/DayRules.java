package curewindow.climate;

/**
 * How days vary about a month's normals, as linear rules over what the normals tell. Fitted to the
 * hourly typical years (TMY3, NREL 2008) of ten places of the USA, from desert to tropics, and
 * rounded; docs/climate.md gives the fits and what becomes of them when a place is left out.
 *
 * <p>The rules know a month by its <em>depression</em> (mean temperature less dew point, K: how dry
 * the air is), its <em>coldness</em> (how far below the year's mean temperature it lies, as a share
 * of the year's range, about -0.5 to 0.5), its clearness and the spread of its temperature.
 *
 * @param dewShare by how much the dew point follows the temperature: constant, per K of depression,
 *     per unit of coldness
 * @param moisture spread of what of the dew point does not follow, K: constant, per K of
 *     depression, per K of temperature spread
 * @param brightness spread of the clearness: constant, per unit of clearness, per K of temperature
 *     spread
 * @param brightInWarmth correlation of clearness with temperature: constant, per unit of coldness
 *     in humid air (less in dry air, by exp(-depression / 8 K))
 * @param moistInBrightness correlation of clearness with what of the dew point does not follow
 * @param rangeInBrightness share of the daily range that one unit of clearness adds to it:
 *     constant, per degree Celsius of the month, up to 12
 */
record DayRules(
    double[] dewShare,
    double[] moisture,
    double[] brightness,
    double[] brightInWarmth,
    double moistInBrightness,
    double[] rangeInBrightness) {

  /** The rules in use. */
  static final DayRules STANDARD =
      new DayRules(
          new double[] {1.2, -0.065, 0.65},
          new double[] {0, 0.15, 0.4},
          new double[] {0.25, -0.2, 0.028},
          new double[] {0.13, -1.4},
          -0.55,
          new double[] {0.58, 0.029});
}
