package curewindow.shop;

import curewindow.climate.Place;
import curewindow.cure.CureCase;
import curewindow.cure.CureItem;
import curewindow.cure.Driver;
import curewindow.cure.Exposure;
import curewindow.cure.HoldRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Turns a job into what its dates depend on. */
public final class CureCases {

  /** A film that lets less water through than this share of the reference counts as this. */
  static final double LEAST_PERMEANCE = 0.25;

  /** A film that lets more water through than this times the reference counts as this. */
  static final double MOST_PERMEANCE = 4;

  private CureCases() {}

  /**
   * What the dates of a job depend on.
   *
   * @param job a job that was read without problems
   * @param shop the shop
   * @param catalogue the catalogue that the job was read with
   * @param place the place where the car stands
   * @return the case: one item for each fitted spot, with the holds that apply there
   * @throws IllegalArgumentException where the job names something that the catalogue lacks
   */
  public static CureCase of(Job job, Shop shop, Catalogue catalogue, Place place) {
    List<CureItem> items = new ArrayList<>();
    for (int i = 0; i < job.items().size(); i++) {
      FittedItem item = job.items().get(i);
      Service service = known(catalogue.services().get(item.service()), item.service());
      Film film = known(catalogue.films().get(item.film()), item.film());
      for (String id : item.spots()) {
        Spot spot = known(catalogue.spots().get(id), id);
        items.add(
            new CureItem(
                i,
                id,
                exposure(service, spot),
                permeance(service, film),
                item.finished(),
                lamp(item, shop),
                rules(catalogue, service, spot, job.car())));
      }
    }
    return new CureCase(
        items, job.stays(), job.parking(), job.car().paint(), place, shop.bay(), shop.bondEnergy());
  }

  private static <T> T known(T value, String id) {
    if (value == null) {
      throw new IllegalArgumentException("the catalogue has no " + id);
    }
    return value;
  }

  private static Exposure exposure(Service service, Spot spot) {
    if (spot.facts().contains(SpotFact.CABIN)) {
      return Exposure.CABIN;
    }
    if (service.inside() && spot.facts().contains(SpotFact.GLASS)) {
      return Exposure.BEHIND_GLASS;
    }
    return spot.up() ? Exposure.OUTSIDE_UP : Exposure.OUTSIDE_SIDE;
  }

  private static double permeance(Service service, Film film) {
    if (!service.film()) {
      return 1;
    }
    double relative = film.permeance() / service.referencePermeance();
    return Math.min(MOST_PERMEANCE, Math.max(LEAST_PERMEANCE, relative));
  }

  private static Map<Driver, Double> lamp(FittedItem item, Shop shop) {
    return item.lamp().map(l -> l.dose(shop.bay(), shop.bondEnergy())).orElse(Map.of());
  }

  private static List<HoldRule> rules(Catalogue catalogue, Service service, Spot spot, Car car) {
    return catalogue.rules().stream()
        .filter(r -> r.isFor(service, spot, car))
        .map(RuleFor::rule)
        .toList();
  }
}
