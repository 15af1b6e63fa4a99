package curewindow.cure;

import curewindow.climate.ObservedHours;
import curewindow.climate.WeatherYear;
import curewindow.climate.Weathers;
import java.lang.ref.SoftReference;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntToDoubleFunction;

/**
 * The tables of one place, built when first asked for, then kept and shared between threads.
 *
 * <p>Sums belong to a year of the calendar only where daylight saving matters, that is where the
 * car stands at different places by day and by night; years whose clocks change on the same days
 * share them, but for those in which weather was measured.
 */
final class Site {

  private final ZoneId zone;
  private final Weathers weathers;
  private final ObservedYears byYear;
  private final Map<Integer, DayHours> days = new ConcurrentHashMap<>();
  private final AtomicReference<SoftReference<Hours>> last =
      new AtomicReference<>(new SoftReference<>(null));
  private final Map<SumKey, YearSums> sums = new ConcurrentHashMap<>();
  private final Map<DoseKey, DoseTable> doses = new ConcurrentHashMap<>();
  private final Map<MeanKey, MeanTable> means = new ConcurrentHashMap<>();
  private final Map<JobTables.Key, JobTables> jobs = new ConcurrentHashMap<>();

  private record SumKey(
      Surface surface, DayHours days, int kind, Driver driver, double bondEnergy) {}

  private record HoursKey(Surface surface, DayHours days, int kind) {}

  private record Hours(HoursKey key, List<SurfaceHours> hours) {}

  private record DoseKey(Years years, Surface surface, Driver driver, double bondEnergy) {}

  private record MeanKey(Years years, Surface surface, int member) {}

  /**
   * The calendar years that tables span.
   *
   * @param first the first year
   * @param count how many
   */
  record Years(int first, int count) {}

  Site(ZoneId zone, Weathers weathers, ObservedHours observed) {
    this.zone = zone;
    this.weathers = weathers;
    this.byYear = new ObservedYears(weathers, observed);
  }

  /** The zone that clocks follow. */
  ZoneId zone() {
    return zone;
  }

  /** The offset of local standard time. */
  ZoneOffset standardOffset() {
    return weathers.standardOffset();
  }

  /** How many equally likely weathers there are. */
  int members() {
    return weathers.years().size();
  }

  /** The number, from 1, of the end that nine of ten weathers keep. */
  int ninth() {
    return weathers.ninth();
  }

  /** The tables of all jobs that are alike in what the tables depend on. */
  JobTables tables(JobTables.Key key) {
    JobTables known = jobs.get(key);
    return known != null ? known : jobs.computeIfAbsent(key, k -> new JobTables(this, k));
  }

  /**
   * The doses of a driver on a surface.
   *
   * @param years the calendar years to span
   * @param surface the surface, in its shared form
   * @param driver the driver
   * @param bondEnergy activation energy of bond and crosslink, J/mol
   * @return the table of all weathers
   */
  DoseTable doses(Years years, Surface surface, Driver driver, double bondEnergy) {
    double energy = driver == Driver.DRY_OUT ? 0 : bondEnergy;
    return doses.computeIfAbsent(new DoseKey(years, surface, driver, energy), this::join);
  }

  /**
   * Temperatures and dew points on a surface.
   *
   * @param years the calendar years to span
   * @param surface the surface, in its shared form
   * @param member the weather, from 0
   */
  MeanTable means(Years years, Surface surface, int member) {
    return means.computeIfAbsent(new MeanKey(years, surface, member), this::mean);
  }

  private DoseTable join(DoseKey key) {
    List<YearSums> joined = new ArrayList<>();
    for (int i = 0; i < key.years().count(); i++) {
      int year = key.years().first() + i;
      DayHours dayHours = dayHours(key.surface(), year);
      int kind = byYear.kind(year);
      joined.add(
          sums.computeIfAbsent(
              new SumKey(key.surface(), dayHours, kind, key.driver(), key.bondEnergy()),
              this::sum));
    }
    return new DoseTable(key.years().first(), joined);
  }

  private YearSums sum(SumKey key) {
    List<IntToDoubleFunction> rates = new ArrayList<>();
    for (SurfaceHours hours : hours(new HoursKey(key.surface(), key.days(), key.kind()))) {
      rates.add(hour -> hours.rate(hour, key.driver(), key.bondEnergy()));
    }
    return YearSums.of(rates);
  }

  /**
   * The hours of all weathers; those asked for last are kept while there is room, as they take
   * much.
   */
  private List<SurfaceHours> hours(HoursKey key) {
    Hours known = last.get().get();
    if (known != null && known.key().equals(key)) {
      return known.hours();
    }
    List<SurfaceHours> hours = new ArrayList<>();
    for (int m = 0; m < members(); m++) {
      hours.add(SurfaceHours.of(byYear.of(key.kind(), m), key.surface(), key.days()));
    }
    last.set(new SoftReference<>(new Hours(key, hours)));
    return hours;
  }

  private MeanTable mean(MeanKey key) {
    List<SurfaceHours> hours = new ArrayList<>();
    for (int i = 0; i < key.years().count(); i++) {
      int year = key.years().first() + i;
      DayHours dayHours = dayHours(key.surface(), year);
      WeatherYear weather = byYear.of(byYear.kind(year), key.member());
      hours.add(SurfaceHours.of(weather, key.surface(), dayHours));
    }
    return MeanTable.of(key.years().first(), hours);
  }

  /** The weather of a member in a calendar year, with what was measured in it. */
  WeatherYear weather(int year, int member) {
    return byYear.of(byYear.kind(year), member);
  }

  /** Which hours of a calendar year belong to the day. */
  DayHours dayHours(Surface surface, int year) {
    if (surface.parking().day() == surface.parking().night()) {
      return DayHours.NO_MATTER;
    }
    return days.computeIfAbsent(year, y -> DayHours.of(zone, standardOffset(), y));
  }
}
