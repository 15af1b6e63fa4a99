package curewindow.climate;

/**
 * Air temperature over the day between its lowest and its highest value, by the fractions of the
 * daily range of the ASHRAE Handbook of Fundamentals, chapter Climatic Design Information (from
 * memory), in apparent solar time, bent a little towards the warm side.
 *
 * <p>Why bent: the fractions are of design days and have their mean 0.536 of the range below the
 * highest value. The mean of all days lies about midway between the extremes: 0.505 in the typical
 * years of 891 stations (TMY3). Unbent, days would be some 0.3 K too cold. A fraction f is lowered
 * by b f (1 - f), b about 0.25, which leaves the extremes and their hours alone.
 *
 * <p>From the lowest point at 5 h to the highest at 14 h 30 the day's own extremes count; through
 * the evening and night the curve leads from the day's highest to the next day's lowest value, so
 * that there is no step at midnight and every day keeps its extremes.
 */
final class DailyCycle {

  private static final double COLDEST = 5;
  private static final double WARMEST = 14.5;
  private static final double[] BELOW_MAX = {
    .82, .88, .92, .95, .98, 1, .98, .91, .74, .55, .38, .23, .13, .05, 0, 0, .06, .14, .24, .39,
    .50, .59, .68, .75, .82
  };

  /** What the mean of f (1 - f) over the day is, and where the mean of f lies. */
  private static final double BENT_BY_ONE = 0.124;

  private static final double UNBENT_MEAN = 0.536;
  private static final double MOST_BEND = 0.8;

  private DailyCycle() {}

  /**
   * How far a month's mean temperature lies below the middle of its extremes, K: a rule fitted to
   * the 10,692 months of 891 typical years (TMY3). Warm damp afternoons are short; in hard frost it
   * is not the sun that makes the range.
   *
   * @param middle mean of the month's daily extremes, degrees Celsius
   * @param sun mean daily irradiation, kWh/m2
   */
  static double belowMiddle(double middle, double sun) {
    return 0.165 + 0.0186 * middle - 0.0846 * sun;
  }

  /**
   * The bend that gives a month the mean which {@link #belowMiddle} tells.
   *
   * @param month the month's normals
   */
  static double bend(MonthNormals month) {
    double range = Math.max(1, month.dailyMax() - month.dailyMin());
    double middle = (month.dailyMax() + month.dailyMin()) / 2;
    double share = 0.5 + belowMiddle(middle, month.sun()) / range;
    return Math.max(-MOST_BEND, Math.min(MOST_BEND, (UNBENT_MEAN - share) / BENT_BY_ONE));
  }

  /**
   * Share of the daily range by which the air is below the day's highest temperature.
   *
   * @param solarHour apparent solar time, 0 to below 24
   * @param bend how much the course is bent towards the warm side
   */
  static double belowMax(double solarHour, double bend) {
    int before = (int) solarHour;
    double share = solarHour - before;
    double fraction = BELOW_MAX[before] + share * (BELOW_MAX[before + 1] - BELOW_MAX[before]);
    return fraction - bend * fraction * (1 - fraction);
  }

  /**
   * A moment of the year: between which day's highest and which day's lowest temperature it lies,
   * and how far. The same for all years of a place.
   *
   * @param lowDay the day whose lowest temperature is nearest
   * @param highDay the day whose highest temperature is nearest
   * @param below share of the range by which it is below the highest temperature
   */
  record Moment(int lowDay, int highDay, double below) {

    /**
     * A moment of apparent solar time.
     *
     * @param bends 365 bends
     * @param solarTime hours since the year's beginning in apparent solar time; the year goes round
     */
    static Moment of(double[] bends, double solarTime) {
      int day = (int) Math.floor(solarTime / 24);
      double hour = Math.max(0, Math.min(Math.nextDown(24.0), solarTime - 24.0 * day));
      int low = Math.floorMod(hour < WARMEST ? day : day + 1, bends.length);
      int high = Math.floorMod(hour < COLDEST ? day - 1 : day, bends.length);
      return new Moment(low, high, belowMax(hour, bends[high]));
    }

    /**
     * Air temperature at the moment.
     *
     * @param dailyMin 365 daily lowest temperatures
     * @param dailyMax 365 daily highest temperatures
     * @return degrees Celsius
     */
    double temperature(double[] dailyMin, double[] dailyMax) {
      double high = dailyMax[highDay];
      return high - below * (high - dailyMin[lowDay]);
    }
  }
}
