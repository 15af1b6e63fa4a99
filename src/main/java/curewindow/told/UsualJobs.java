package curewindow.told;

import curewindow.climate.Place;
import curewindow.cure.Curing;
import curewindow.cure.PaintTone;
import curewindow.cure.Parking;
import curewindow.cure.ParkingPlan;
import curewindow.cure.Release;
import curewindow.cure.Stay;
import curewindow.cure.Timeline;
import curewindow.problem.Where;
import curewindow.shop.BodyType;
import curewindow.shop.Car;
import curewindow.shop.Catalogue;
import curewindow.shop.CureCases;
import curewindow.shop.Film;
import curewindow.shop.FittedItem;
import curewindow.shop.Job;
import curewindow.shop.Service;
import curewindow.shop.Shop;
import java.time.Duration;
import java.time.Instant;
import java.time.Month;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;

/**
 * The work that somebody is most likely to come for: a service by itself, with the first of its
 * films in the catalogue, on every spot that it is done on, on a car of medium paint that leaves at
 * two in the afternoon in the middle of a month as soon as the work is finished.
 */
final class UsualJobs {

  private static final double MINUTES_IN_DAY = Duration.ofDays(1).toMinutes();

  private static final Car CAR =
      new Car(OptionalInt.empty(), BodyType.SEDAN, PaintTone.MID, Optional.empty(), "", Set.of());

  private final Shop shop;
  private final Catalogue catalogue;
  private final Place place;
  private final Curing curing;

  UsualJobs(Shop shop, Catalogue catalogue, Place place, Curing curing) {
    this.shop = shop;
    this.catalogue = catalogue;
    this.place = place;
    this.curing = curing;
  }

  /** How long the holds of a service last; none where the catalogue has no film for it. */
  Map<String, YearHere.InMonth> in(Month month, Service service) {
    return catalogue.films().values().stream()
        .filter(film -> film.service().equals(service.id()))
        .findFirst()
        .map(film -> in(month, service, film))
        .orElse(Map.of());
  }

  /** How long the holds last after work with one film. */
  Map<String, YearHere.InMonth> in(Month month, Service service, Film film) {
    Instant finished = YearHere.start(place, month);
    Timeline outside = dates(service, film, finished, Parking.OUTSIDE);
    Timeline garage = dates(service, film, finished, Parking.GARAGE);
    Map<String, YearHere.InMonth> months = new TreeMap<>();
    for (Release release : outside.releases()) {
      garage
          .of(release.hold())
          .map(other -> new YearHere.InMonth(days(release, finished), days(other, finished)))
          .ifPresent(both -> months.put(release.hold(), both));
    }
    return months;
  }

  private Timeline dates(Service service, Film film, Instant finished, Parking parking) {
    FittedItem item =
        new FittedItem(
            service.id(),
            film.id(),
            service.spots(),
            finished,
            OptionalDouble.empty(),
            Optional.empty(),
            OptionalInt.empty());
    Job job =
        new Job(
            "usual",
            "",
            shop.language(),
            CAR,
            place.id(),
            new ParkingPlan(parking, parking),
            List.of(new Stay(finished, finished)),
            List.of(item),
            List.of(),
            List.of(),
            Where.file("shop.yaml"));
    Timeline computed = curing.timeline(CureCases.of(job, shop, catalogue, place));
    return HoldOrder.of(computed, catalogue.holds());
  }

  private static YearHere.Days days(Release release, Instant finished) {
    int safe = days(finished, release.end().at());
    int likely = Math.min(safe, days(finished, release.likely()));
    return new YearHere.Days(likely, safe, Math.max(safe, days(finished, release.setAt())));
  }

  private static int days(Instant from, Instant to) {
    return (int) Math.max(1, Math.ceil(Duration.between(from, to).toMinutes() / MINUTES_IN_DAY));
  }
}
