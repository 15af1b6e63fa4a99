package curewindow.climate;

/**
 * Air temperature over the day between its lowest and its highest value, by the fractions of the
 * daily range of the ASHRAE Handbook of Fundamentals, chapter Climatic Design Information (from
 * memory), in apparent solar time, bent a little towards the warm side.
 *
 * <p>Why bent: the fractions are of design days and have their mean 0.536 of the range below the
 * highest value. The mean of all days lies midway between the extremes: 0.505 in the typical years
 * of 891 stations (TMY3), in every month within 0.49 to 0.52. Unbent, every day would be some 0.3 K
 * too cold. The bend leaves the extremes and their hours alone.
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

  private static final double BEND = 0.25;

  private DailyCycle() {}

  /**
   * Share of the daily range by which the air is below the day's highest temperature.
   *
   * @param solarHour apparent solar time, 0 to below 24
   */
  static double belowMax(double solarHour) {
    int before = (int) solarHour;
    double share = solarHour - before;
    double fraction = BELOW_MAX[before] + share * (BELOW_MAX[before + 1] - BELOW_MAX[before]);
    return fraction - BEND * fraction * (1 - fraction);
  }

  /**
   * Air temperature at a moment of apparent solar time.
   *
   * @param dailyMin 365 daily lowest temperatures
   * @param dailyMax 365 daily highest temperatures
   * @param solarTime hours since the year's beginning in apparent solar time; the year goes round
   * @return degrees Celsius
   */
  static double temperature(double[] dailyMin, double[] dailyMax, double solarTime) {
    int day = (int) Math.floor(solarTime / 24);
    double hour = Math.max(0, Math.min(Math.nextDown(24.0), solarTime - 24.0 * day));
    double low = at(dailyMin, hour < WARMEST ? day : day + 1);
    double high = at(dailyMax, hour < COLDEST ? day - 1 : day);
    return high - belowMax(hour) * (high - low);
  }

  private static double at(double[] days, int day) {
    return days[Math.floorMod(day, days.length)];
  }
}
