package curewindow.climate;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Measured weather of one place, hour by hour, with or without gaps. Immutable.
 *
 * <p>What was measured on February 29 is not used: that day has the weather of the 28th, as in all
 * weather years.
 */
public final class ObservedHours {

  private final SortedMap<Instant, ObservedHour> hours = new TreeMap<>();

  /**
   * The hours of a place.
   *
   * @param hours the hours in any order; of two with the same start the last counts
   */
  public ObservedHours(List<ObservedHour> hours) {
    hours.forEach(h -> this.hours.put(h.start(), h));
  }

  /**
   * How many hours were measured.
   *
   * @return the count, 0 or more
   */
  public int count() {
    return hours.size();
  }

  /**
   * Whether anything was measured within a stretch of time.
   *
   * @param from its start
   * @param to its end, not before the start
   * @return true where an hour begins within it
   */
  public boolean within(Instant from, Instant to) {
    return !hours.subMap(from, to).isEmpty();
  }

  /**
   * The calendar years in which something was measured.
   *
   * @param standard the offset of local standard time
   * @return the years
   */
  public Set<Integer> years(ZoneOffset standard) {
    Set<Integer> years = new TreeSet<>();
    hours.keySet().forEach(start -> years.add(start.atOffset(standard).getYear()));
    return years;
  }

  /**
   * A weather year in which measured hours of one calendar year stand in place of its own. Where no
   * irradiance was measured, that of the weather year stays.
   *
   * @param usual the weather year
   * @param calendarYear the calendar year
   * @param standard the offset of local standard time, all year round
   * @return the changed weather year
   */
  public WeatherYear in(WeatherYear usual, int calendarYear, ZoneOffset standard) {
    double[] temperature = new double[WeatherYear.HOURS];
    double[] dewPoint = new double[WeatherYear.HOURS];
    double[] irradiance = new double[WeatherYear.HOURS];
    for (int hour = 0; hour < WeatherYear.HOURS; hour++) {
      temperature[hour] = usual.temperature(hour);
      dewPoint[hour] = usual.dewPoint(hour);
      irradiance[hour] = usual.irradiance(hour);
    }
    for (ObservedHour measured : hours.values()) {
      var start = measured.start().atOffset(standard);
      boolean leapDay = start.getMonthValue() == 2 && start.getDayOfMonth() == 29;
      if (start.getYear() == calendarYear && !leapDay) {
        int hour = YearHours.of(measured.start(), standard);
        temperature[hour] = measured.temperature();
        dewPoint[hour] = measured.dewPoint();
        irradiance[hour] = measured.irradiance().orElse(irradiance[hour]);
      }
    }
    return WeatherYear.of(temperature, dewPoint, irradiance);
  }
}
