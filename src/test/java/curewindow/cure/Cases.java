package curewindow.cure;

import curewindow.climate.MonthNormals;
import curewindow.climate.Place;
import curewindow.climate.WeatherYear;
import curewindow.climate.Weathers;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;

/** Invented cases for the tests of this package. */
final class Cases {

  /** The air at which every driver runs at rate 1. */
  static final Bay REFERENCE_BAY = new Bay(23, 50);

  /** A bay in which nothing happens: nothing dries at 100 %. */
  static final Bay DAMP_BAY = new Bay(23, 100);

  static final ParkingPlan OUTSIDE = new ParkingPlan(Parking.OUTSIDE, Parking.OUTSIDE);
  static final ParkingPlan GARAGE = new ParkingPlan(Parking.GARAGE, Parking.GARAGE);
  static final ParkingPlan HEATED = new ParkingPlan(Parking.HEATED, Parking.HEATED);

  private Cases() {}

  static Place place(String zone) {
    MonthNormals month = new MonthNormals(5, 15, 4, 3);
    return new Place(
        "test",
        "Test",
        45,
        10,
        100,
        ZoneId.of(zone),
        Collections.nCopies(12, month),
        "invented for tests");
  }

  /** A year in which every hour is the same. */
  static WeatherYear steady(double air, double dewPoint, double sun) {
    return year(hour -> air, hour -> dewPoint, hour -> sun);
  }

  static WeatherYear year(IntToDoubleFunction air, IntToDoubleFunction dew, IntToDoubleFunction g) {
    return WeatherYear.of(hours(air), hours(dew), hours(g));
  }

  private static double[] hours(IntToDoubleFunction hourly) {
    double[] values = new double[WeatherYear.HOURS];
    Arrays.setAll(values, hourly);
    return values;
  }

  /** A rough year with seasons, days and noise; the same for the same seed. */
  static WeatherYear lively(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    return year(
        hour ->
            8
                - 14 * Math.cos(2 * Math.PI * hour / WeatherYear.HOURS)
                - 5 * Math.cos(2 * Math.PI * (hour - 3) / 24)
                + 4 * random.nextDouble(),
        hour -> 2 - 10 * Math.cos(2 * Math.PI * hour / WeatherYear.HOURS) + random.nextDouble(),
        hour -> Math.max(0, -800 * Math.cos(2 * Math.PI * hour / 24) * random.nextDouble()));
  }

  static Weathers weathers(ZoneOffset standard, WeatherYear... years) {
    return new Weathers(standard, List.of(years));
  }

  static HoldRule rule(String hold, Map<Driver, Double> need, double floor, double lookBy) {
    return new HoldRule(hold, HoldKind.HOLD, need, floor, lookBy);
  }

  static CureItem item(int item, Exposure exposure, Instant finished, HoldRule... rules) {
    return new CureItem(item, "spot-" + item, exposure, 1, finished, List.of(rules));
  }

  static CureCase job(
      Place place, ParkingPlan parking, Bay bay, Instant pickup, CureItem... items) {
    Instant in =
        Arrays.stream(items).map(CureItem::finished).min(Instant::compareTo).orElse(pickup);
    Stay stay = new Stay(in.isBefore(pickup) ? in : pickup, pickup);
    return new CureCase(List.of(items), List.of(stay), parking, PaintTone.MID, place, bay, 50_000);
  }

  /** An instant by the clocks of a place. */
  static Instant at(Place place, String local) {
    return LocalDateTime.parse(local).atZone(place.zone()).toInstant();
  }

  /** A table from a calendar year on in one weather. */
  static DoseTable table(int firstYear, IntToDoubleFunction rate) {
    return new DoseTable(
        Weeks.january(firstYear), 1, week -> WeekSums.of(Weeks.inYear(week), List.of(rate)));
  }

  /** The start of a calendar year, seconds. */
  static long newYear(int year) {
    return Weeks.start(Weeks.january(year));
  }
}
