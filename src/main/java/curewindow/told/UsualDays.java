package curewindow.told;

import curewindow.climate.Place;
import curewindow.cure.Curing;
import curewindow.shop.Catalogue;
import curewindow.shop.Film;
import curewindow.shop.Shop;
import java.time.Month;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How long the holds last after usual work with one film where the car stands outside at the shop's
 * own place, so that films and rules can be compared.
 */
public final class UsualDays {

  private final Catalogue catalogue;
  private final UsualJobs jobs;

  /**
   * The days at a shop.
   *
   * @param shop the shop
   * @param catalogue the films and rules
   * @param place the shop's place
   * @param curing the model, without measured weather
   */
  public UsualDays(Shop shop, Catalogue catalogue, Place place, Curing curing) {
    this.catalogue = catalogue;
    this.jobs = new UsualJobs(shop, catalogue, place, curing);
  }

  /**
   * The days of each hold.
   *
   * @param film a film of the catalogue
   * @param month the month in which the work is finished
   * @return days by the hold's id, what matters most first
   */
  public Map<String, YearHere.Days> of(Film film, Month month) {
    Map<String, YearHere.InMonth> found =
        jobs.in(month, catalogue.services().get(film.service()), film);
    Map<String, YearHere.Days> days = new LinkedHashMap<>();
    catalogue.holds().values().stream()
        .filter(hold -> found.containsKey(hold.id()))
        .sorted(Comparator.comparingInt(hold -> hold.rank()))
        .forEach(hold -> days.put(hold.id(), found.get(hold.id()).outside()));
    return days;
  }
}
