package curewindow.cure;

import curewindow.climate.ObservedHours;
import curewindow.climate.WeatherYear;
import curewindow.climate.Weathers;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The weathers of a place by calendar year: the usual ones, with measured hours put in where there
 * are any. A stretch of measured weather is the same in all members.
 */
final class ObservedYears {

  /** Stands for all calendar years in which nothing was measured. */
  static final int USUAL = 0;

  private final Weathers usual;
  private final ObservedHours observed;
  private final Set<Integer> measured;
  private final Map<Integer, List<WeatherYear>> years = new ConcurrentHashMap<>();

  ObservedYears(Weathers usual, ObservedHours observed) {
    this.usual = usual;
    this.observed = observed;
    this.measured = observed.years(usual.standardOffset());
    this.years.put(USUAL, usual.years());
  }

  /** The calendar year if something was measured in it, else {@link #USUAL}. */
  int kind(int calendarYear) {
    return measured.contains(calendarYear) ? calendarYear : USUAL;
  }

  /**
   * The weather of a member.
   *
   * @param kind what {@link #kind} gives for the calendar year
   * @param member the weather, from 0
   */
  WeatherYear of(int kind, int member) {
    return years.computeIfAbsent(kind, this::withMeasured).get(member);
  }

  private List<WeatherYear> withMeasured(int calendarYear) {
    return usual.years().stream()
        .map(year -> observed.in(year, calendarYear, usual.standardOffset()))
        .toList();
  }
}
