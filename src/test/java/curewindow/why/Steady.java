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
import curewindow.shop.CureCases;
import curewindow.shop.FittedItem;
import curewindow.shop.Job;
import curewindow.shop.PastVisit;
import curewindow.shop.PastVisit.Result;
import curewindow.site.LoadedShop;
import curewindow.told.BeforePickup;
import curewindow.told.JobView;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
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
import java.util.function.UnaryOperator;

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

  private static final Stay STAY = new Stay(FINISHED, FINISHED.plusSeconds(6 * 3600));

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
  static ExplanationInputs inputs(Trial trial) {
    return inputs(trial, tint());
  }

  /** A coating on the hood in the same bay, maybe under a lamp. */
  static ExplanationInputs coated(Optional<Lamp> lamp) {
    FittedItem tint = tint();
    return inputs(
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

  /** The tint, seen fine a week later, and a night in the bay two weeks later. */
  static ExplanationInputs cameBack() {
    Instant in = FINISHED.plus(Duration.ofDays(14));
    Stay again = new Stay(in, in.plus(Duration.ofHours(18)));
    PastVisit seen =
        new PastVisit(
            LocalDate.of(2026, 9, 9), List.of("windows-up", "haze"), Result.FINE, "came by");
    return inputs(Trial.NONE, like -> job(like, tint(), List.of(STAY, again), List.of(seen)));
  }

  private static ExplanationInputs inputs(Trial trial, FittedItem item) {
    return inputs(trial, like -> job(like, item, List.of(STAY), List.of()));
  }

  private static ExplanationInputs inputs(Trial trial, UnaryOperator<Job> as) {
    LoadedShop shop = LoadedShop.load(Path.of("content/demo"), Clock.systemUTC());
    JobView of = shop.view(shop.job("Q-3101").orElseThrow(), "0");
    Job job = trial.on(as.apply(of.job()));
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
    return new ExplanationInputs(
        view,
        curing,
        hold -> model.explanation(curing, hold),
        BeforePickup.of(curing, view.catalogue()),
        trial);
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

  private static Job job(Job like, FittedItem item, List<Stay> stays, List<PastVisit> seen) {
    return new Job(
        "S-1",
        "Ada",
        "en",
        like.car(),
        PLACE.id(),
        new ParkingPlan(Parking.GARAGE, Parking.GARAGE),
        stays,
        List.of(item),
        List.of(),
        seen,
        like.where());
  }
}
