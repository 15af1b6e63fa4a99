package curewindow.why;

import curewindow.climate.MonthNormals;
import curewindow.climate.Place;
import curewindow.climate.WeatherYear;
import curewindow.climate.Weathers;
import curewindow.cure.Bay;
import curewindow.cure.CureCase;
import curewindow.cure.Curing;
import curewindow.cure.Lamp;
import curewindow.cure.Parking;
import curewindow.cure.ParkingPlan;
import curewindow.cure.Stay;
import curewindow.page.JobView;
import curewindow.shop.CureCases;
import curewindow.shop.FittedItem;
import curewindow.shop.Job;
import curewindow.shop.PastVisit;
import curewindow.site.LoadedShop;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** A job in a garage where the air never changes, so that dates can be reckoned by hand. */
final class Steady {

  static final Instant FINISHED = Instant.parse("2026-09-02T12:00:00Z");
  static final Place PLACE =
      new Place(
          "steady",
          "Steadyholm",
          50,
          0,
          10,
          ZoneId.of("UTC"),
          Collections.nCopies(12, new MonthNormals(11, 21, 8, 3)),
          "invented");

  private Steady() {}

  /** Two weathers, in which the garage has 23 C and 13 C. */
  static Weathers weathers() {
    return new Weathers(ZoneOffset.UTC, List.of(year(21), year(11)));
  }

  private static WeatherYear year(double air) {
    return WeatherYear.of(hours(air), hours(8), hours(0));
  }

  private static double[] hours(double value) {
    double[] hours = new double[WeatherYear.HOURS];
    Arrays.fill(hours, value);
    return hours;
  }

  /** Tint on the front doors, six hours in a bay of 23 C and 50 %, then in the garage. */
  static Grounds grounds(Trial trial) {
    return grounds(trial, tint());
  }

  /** A coating on the hood in the same bay, maybe under a lamp. */
  static Grounds coated(Optional<Lamp> lamp) {
    FittedItem tint = tint();
    return grounds(
        Trial.NONE,
        new FittedItem(
            "paint-coating",
            "tidewater-paint",
            List.of("hood"),
            FINISHED,
            tint.vlt(),
            tint.glassVlt(),
            tint.batch(),
            tint.warrantyYears(),
            lamp));
  }

  /** The tint of {@link #grounds}, seen once since. */
  static Grounds visited() {
    PastVisit visit =
        new PastVisit(
            LocalDate.of(2026, 9, 16), List.of("tint"), PastVisit.Result.FINE, "all clear");
    return grounds(Trial.NONE, tint(), List.of(visit));
  }

  private static Grounds grounds(Trial trial, FittedItem item) {
    return grounds(trial, item, List.of());
  }

  private static Grounds grounds(Trial trial, FittedItem item, List<PastVisit> seen) {
    LoadedShop shop = LoadedShop.load(Path.of("content/demo"), Clock.systemUTC());
    JobView of = shop.view(shop.job("Q-3101").orElseThrow(), "0");
    Job job = trial.on(job(of.job(), item, seen));
    CureCase known = CureCases.of(job, of.shop(), of.catalogue(), PLACE);
    CureCase curing =
        new CureCase(
            known.items(),
            known.stays(),
            known.parking(),
            known.paint(),
            PLACE,
            new Bay(23, 50),
            50_000);
    Curing model = Curing.with(place -> weathers());
    JobView view =
        new JobView(
            job,
            of.shop(),
            of.catalogue(),
            PLACE,
            model.timeline(curing),
            Optional.empty(),
            of.words(),
            of.address(),
            of.token());
    return new Grounds(view, curing, hold -> model.account(curing, hold), trial);
  }

  private static FittedItem tint() {
    return new FittedItem(
        "tint",
        "harbor-35",
        List.of("front-door-glass"),
        FINISHED,
        OptionalDouble.empty(),
        Optional.empty(),
        OptionalInt.empty());
  }

  private static Job job(Job like, FittedItem item, List<PastVisit> seen) {
    return new Job(
        "S-1",
        "Ada",
        "en",
        like.car(),
        PLACE.id(),
        new ParkingPlan(Parking.GARAGE, Parking.GARAGE),
        List.of(new Stay(FINISHED, FINISHED.plusSeconds(6 * 3600))),
        List.of(item),
        List.of(),
        seen,
        like.where());
  }
}
