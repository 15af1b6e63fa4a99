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
final class PlaceTables {

  private final ZoneId zone;
  private final Weathers weathers;
  private final ObservedYears byYear;
  private final Map<Integer, DayHours> days = new ConcurrentHashMap<>();
  private final AtomicReference<SoftReference<Hours>> last =
      new AtomicReference<>(new SoftReference<>(null));
  private final Map<SumKey, WeekSums> sums = new ConcurrentHashMap<>();
  private final Map<DoseKey, DoseTable> doses = new ConcurrentHashMap<>();
  private final Map<WeekKey, MeanTable.Week> weeks = new ConcurrentHashMap<>();
  private final Map<MeanKey, MeanTable> means = new ConcurrentHashMap<>();
  private final Map<JobTables.Key, JobTables> jobs = new ConcurrentHashMap<>();

  private record SumKey(HoursKey hours, int week, Driver driver, double bondEnergy) {}

  private record HoursKey(Surface surface, DayHours days, int kind) {}

  private record Hours(HoursKey key, Map<Integer, List<SurfaceHours>> byWeek) {}

  private record DoseKey(int firstWeek, Surface surface, Driver driver, double bondEnergy) {}

  private record WeekKey(HoursKey hours, int week, int member) {}

  private record MeanKey(int firstWeek, Surface surface, int member) {}

  PlaceTables(ZoneId zone, Weathers weathers, ObservedHours observed) {
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
  int safeRank() {
    return weathers.safeRank();
  }

  /** The tables of all jobs that are alike in what the tables depend on. */
  JobTables tables(JobTables.Key key) {
    JobTables known = jobs.get(key);
    return known != null ? known : jobs.computeIfAbsent(key, k -> new JobTables(this, k));
  }

  /**
   * The doses of a driver on a surface.
   *
   * @param firstWeek the number of the week in which sums begin
   * @param surface the surface, in its shared form
   * @param driver the driver
   * @param bondEnergy activation energy of bond and crosslink, J/mol
   * @return the table of all weathers
   */
  DoseTable doses(int firstWeek, Surface surface, Driver driver, double bondEnergy) {
    double energy = driver == Driver.DRY_OUT ? 0 : bondEnergy;
    return doses.computeIfAbsent(new DoseKey(firstWeek, surface, driver, energy), this::join);
  }

  /**
   * Temperatures and dew points on a surface.
   *
   * @param firstWeek the number of the week in which sums begin
   * @param surface the surface, in its shared form
   * @param member the weather, from 0
   */
  MeanTable means(int firstWeek, Surface surface, int member) {
    return means.computeIfAbsent(new MeanKey(firstWeek, surface, member), this::mean);
  }

  private DoseTable join(DoseKey key) {
    return new DoseTable(
        key.firstWeek(),
        members(),
        week ->
            sums.computeIfAbsent(
                new SumKey(
                    hoursKey(key.surface(), week),
                    Weeks.inYear(week),
                    key.driver(),
                    key.bondEnergy()),
                this::sum));
  }

  private HoursKey hoursKey(Surface surface, int week) {
    int year = Weeks.year(week);
    return new HoursKey(surface, dayHours(surface, year), byYear.kind(year));
  }

  private WeekSums sum(SumKey key) {
    List<IntToDoubleFunction> rates = new ArrayList<>();
    for (SurfaceHours hours : hours(key.hours(), key.week())) {
      rates.add(hour -> hours.rate(hour, key.driver(), key.bondEnergy()));
    }
    return WeekSums.of(key.week(), rates);
  }

  /**
   * The hours of a week in all weathers; those of the surface asked for last are kept while there
   * is room, as each driver needs them.
   */
  private List<SurfaceHours> hours(HoursKey key, int week) {
    Hours known = last.get().get();
    if (known == null || !known.key().equals(key)) {
      known = new Hours(key, new ConcurrentHashMap<>());
      last.set(new SoftReference<>(known));
    }
    return known.byWeek().computeIfAbsent(week, m -> hoursOf(key, m));
  }

  private List<SurfaceHours> hoursOf(HoursKey key, int week) {
    List<SurfaceHours> hours = new ArrayList<>();
    for (int m = 0; m < members(); m++) {
      hours.add(hoursOf(key, week, m));
    }
    return hours;
  }

  private SurfaceHours hoursOf(HoursKey key, int week, int member) {
    return SurfaceHours.ofWeek(week, byYear.of(key.kind(), member), key.surface(), key.days());
  }

  private MeanTable mean(MeanKey key) {
    return MeanTable.of(
        key.firstWeek(),
        week ->
            weeks.computeIfAbsent(
                new WeekKey(hoursKey(key.surface(), week), Weeks.inYear(week), key.member()),
                k -> MeanTable.Week.of(k.week(), hoursOf(k.hours(), k.week(), k.member()))));
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
