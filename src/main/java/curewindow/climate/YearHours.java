package curewindow.climate;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;

/** Maps instants to the hours of a {@link WeatherYear}. February 29 has the weather of the 28th. */
public final class YearHours {

  private static final int[] DAYS_BEFORE_MONTH = {
    0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334
  };

  private YearHours() {}

  /**
   * The hour of the year that an instant falls in.
   *
   * @param at the instant
   * @param standard the offset of local standard time, all year round
   * @return 0 to 8759
   */
  public static int of(Instant at, ZoneOffset standard) {
    LocalDateTime t = LocalDateTime.ofInstant(at, standard);
    int day = t.getMonthValue() == 2 && t.getDayOfMonth() == 29 ? 28 : t.getDayOfMonth();
    return 24 * (DAYS_BEFORE_MONTH[t.getMonthValue() - 1] + day - 1) + t.getHour();
  }
}
