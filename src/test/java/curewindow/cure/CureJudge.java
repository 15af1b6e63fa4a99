package curewindow.cure;

import curewindow.climate.Climates;
import curewindow.climate.Place;
import curewindow.climate.Weathers;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * Judges the promises on real hourly years. Truth is when the model's equations say that a need is
 * met on the file's own hours; the promise is made from what a shop may know of the site. Starts
 * every three days of a year, work finished at 14:00 and the car parked at once, so that no bay
 * helps.
 */
final class CureJudge {

  static final Path FILES = Path.of("../shared/climate/epw");

  static final List<StartingHolds> HOLDS =
      List.of(
          StartingHolds.WINDOWS_UP,
          StartingHolds.HAZE,
          StartingHolds.FILM_WASH,
          StartingHolds.FILM_POCKETS,
          StartingHolds.COATING_WASH);

  /** Where the car stands: what the model treats most differently, and a change twice a day. */
  static final List<ParkingPlan> PLANS =
      List.of(
          new ParkingPlan(Parking.OUTSIDE, Parking.OUTSIDE),
          new ParkingPlan(Parking.GARAGE, Parking.GARAGE),
          new ParkingPlan(Parking.OUTSIDE, Parking.GARAGE));

  /** Of the northern half of the globe, where the sites lie. */
  private static final List<String> SEASONS = List.of("winter", "spring", "summer", "autumn");

  /** The days of the year on which starts are made. */
  private static final int DAYS = 360;

  /**
   * How the promises at a site did.
   *
   * @param site the site's name
   * @param hold the hold
   * @param truths hours to the true end, start by start
   * @param promises hours to the published end
   * @param likelies hours to the likely end
   */
  record Verdict(
      String site, StartingHolds hold, double[] truths, double[] promises, double[] likelies) {

    /** Share of starts whose promise held. */
    double kept() {
      return share(1);
    }

    /** Share of starts that end by the likely end; half of them should. */
    double early() {
      int held = 0;
      for (int i = 0; i < truths.length; i++) {
        held += truths[i] <= likelies[i] + 1e-9 ? 1 : 0;
      }
      return held / (double) truths.length;
    }

    /** Share of starts whose true end is at most so many times the promised wait. */
    double share(double times) {
      int held = 0;
      for (int i = 0; i < truths.length; i++) {
        held += truths[i] <= promises[i] * times + 1e-9 ? 1 : 0;
      }
      return held / (double) truths.length;
    }

    /** Median of the promised over the true wait. */
    double ratio(double fixed) {
      double[] ratios = new double[truths.length];
      for (int i = 0; i < ratios.length; i++) {
        ratios[i] = (fixed > 0 ? fixed : promises[i]) / truths[i];
      }
      Arrays.sort(ratios);
      return (ratios[(ratios.length - 1) / 2] + ratios[ratios.length / 2]) / 2;
    }
  }

  private CureJudge() {}

  /** The real years of the files whose names match, by name. */
  static List<TrueYear> realYears(String names) throws IOException {
    List<Path> zips;
    try (Stream<Path> files = Files.list(FILES)) {
      zips = files.filter(f -> f.getFileName().toString().matches(names)).sorted().toList();
    }
    List<TrueYear> years = new ArrayList<>();
    for (Path zip : zips) {
      years.add(EpwYear.read(zip));
    }
    return years;
  }

  /**
   * Judges all holds at some sites, as far as something is known of them.
   *
   * @param years the sites' true weather
   * @param known what promises are made from
   * @param parking where the car stands, day and night
   * @param every days from start to start
   */
  static List<Verdict> judge(List<TrueYear> years, Known known, ParkingPlan parking, int every) {
    List<Verdict> verdicts = new ArrayList<>();
    for (TrueYear year : years) {
      Optional<Place> place = known.of(year.place());
      if (place.isEmpty()) {
        continue;
      }
      Weathers promise = Climates.weathers(place.get());
      Weathers truth = new Weathers(promise.standardOffset(), List.of(year.hours()));
      for (StartingHolds hold : HOLDS) {
        verdicts.add(verdict(year.place(), new Asked(hold, parking, every), promise, truth));
      }
    }
    return verdicts;
  }

  private record Asked(StartingHolds hold, ParkingPlan parking, int every) {}

  private static Verdict verdict(Place place, Asked asked, Weathers promise, Weathers truth) {
    Curing promises = Curing.with(p -> promise);
    Curing truths = Curing.with(p -> truth);
    int starts = DAYS / asked.every();
    double[] trueHours = new double[starts];
    double[] promisedHours = new double[starts];
    double[] likelyHours = new double[starts];
    for (int i = 0; i < starts; i++) {
      Instant start =
          Cases.at(place, "2026-01-02T14:00").plus(Duration.ofDays((long) asked.every() * i));
      CureCase job = job(place, asked.hold(), asked.parking(), start);
      Release release = promises.timeline(job).releases().get(0);
      trueHours[i] = hours(start, truths.timeline(job).releases().get(0).likely());
      promisedHours[i] = hours(start, release.end().at());
      likelyHours[i] = hours(start, release.likely());
    }
    return new Verdict(place.name(), asked.hold(), trueHours, promisedHours, likelyHours);
  }

  /** Limits are opened up, as the model is to be judged and not they. */
  private static CureCase job(Place place, StartingHolds hold, ParkingPlan parking, Instant start) {
    HoldRule rule = hold.rule();
    HoldRule open = new HoldRule(rule.hold(), rule.kind(), rule.need(), rule.floorHours(), 12_000);
    return Cases.job(
        place, parking, Cases.REFERENCE_BAY, start, Cases.item(0, hold.exposure(), start, open));
  }

  private static double hours(Instant from, Instant to) {
    return Duration.between(from, to).toSeconds() / 3600.0;
  }

  /** The mean over the sites and holds. */
  static double mean(List<Verdict> verdicts, ToDoubleFunction<Verdict> of) {
    return verdicts.stream().mapToDouble(of).average().orElseThrow();
  }

  /** The fixed wait that is kept as often as the promises, over all sites. */
  static double fixed(List<Verdict> ofOneHold) {
    double kept = mean(ofOneHold, Verdict::kept);
    double[] truths =
        ofOneHold.stream().flatMapToDouble(v -> Arrays.stream(v.truths())).sorted().toArray();
    return truths[(int) Math.min(truths.length - 1, Math.ceil(kept * truths.length))];
  }

  /** Prints verdicts: per site and hold, per hold with the fixed wait beside it, and the mean. */
  static void print(Known known, ParkingPlan parking, List<Verdict> verdicts) {
    System.out.printf(
        "%nFrom %s; parked %s by day, %s by night%n",
        known.words(), parking.day().id(), parking.night().id());
    for (Verdict v : verdicts) {
      System.out.printf(
          Locale.ROOT,
          "  %-30s %-34s kept %5.1f %%  wait %.2f  within 1.25: %5.1f %%  early %5.1f %%%n",
          v.site(),
          v.hold().words(),
          100 * v.kept(),
          v.ratio(0),
          100 * v.share(1.25),
          100 * v.early());
    }
    HOLDS.forEach(hold -> printMean(hold, verdicts));
    printAtTheLimit(verdicts);
    System.out.printf(
        Locale.ROOT,
        "  mean of all: kept %.1f %%, least %.1f %%, wait %.3f, within 1.25: %.1f %%%n",
        100 * mean(verdicts, Verdict::kept),
        100 * verdicts.stream().mapToDouble(Verdict::kept).min().orElseThrow(),
        mean(verdicts, v -> v.ratio(0)),
        100 * mean(verdicts, v -> v.share(1.25)));
  }

  private static void printMean(StartingHolds hold, List<Verdict> verdicts) {
    List<Verdict> of = verdicts.stream().filter(v -> v.hold() == hold).toList();
    double fixed = fixed(of);
    System.out.printf(
        Locale.ROOT,
        "  mean %-58s kept %5.1f %%  early %5.1f  wait %.2f  fixed %.1f d: wait %.2f%n",
        hold.words(),
        100 * mean(of, Verdict::kept),
        100 * mean(of, Verdict::early),
        mean(of, v -> v.ratio(0)),
        fixed / 24,
        mean(of, v -> v.ratio(fixed)));
  }

  /** The judge opens the limits up; so beside it, how many of the promises they would cut off. */
  private static void printAtTheLimit(List<Verdict> verdicts) {
    double[] beyond = new double[SEASONS.size()];
    double[] all = new double[SEASONS.size()];
    for (Verdict v : verdicts) {
      double limit = v.hold().rule().limitHours();
      for (int i = 0; i < v.promises().length; i++) {
        // The first start is on January 2, so a start's month is 12 times its share of the year.
        int season = (12 * i / v.promises().length + 1) / 3 % SEASONS.size();
        beyond[season] += v.promises()[i] > limit ? 1 : 0;
        all[season]++;
      }
    }
    System.out.print("  ends at the limit:");
    for (int i = 0; i < all.length; i++) {
      System.out.printf(Locale.ROOT, " %s %.1f %%", SEASONS.get(i), 100 * beyond[i] / all[i]);
    }
    System.out.println();
  }
}
