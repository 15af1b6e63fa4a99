package curewindow.site;

import curewindow.climate.Place;
import curewindow.shop.Catalogue;
import curewindow.shop.Film;
import curewindow.shop.Shop;
import curewindow.told.UsualDays;
import curewindow.told.YearHere;
import java.time.Month;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** What a change of the catalogue does to the dates of usual work at the shop's own place. */
public final class FilmEffect {

  private FilmEffect() {}

  /**
   * A hold before and after.
   *
   * @param hold its id
   * @param days days after which it is over; empty where the film does not bring it any more
   * @param before those it took before; empty where the film did not bring it
   */
  public record Row(String hold, OptionalInt days, OptionalInt before) {}

  /**
   * The holds of a film.
   *
   * @param shop the shop folder as it stands
   * @param then the catalogue as it would be
   * @param film the film's id
   * @param month the month in which the work is finished
   * @return its holds, what matters most first; none where neither catalogue has the film
   */
  public static List<Row> of(LoadedShop shop, Catalogue then, String film, Month month) {
    Map<String, YearHere.Days> before = days(shop, shop.read().catalogue(), film, month);
    Map<String, YearHere.Days> after = days(shop, then, film, month);
    Set<String> holds = new LinkedHashSet<>(after.keySet());
    holds.addAll(before.keySet());
    List<Row> rows = new ArrayList<>();
    holds.forEach(h -> rows.add(new Row(h, safe(after, h), safe(before, h))));
    return rows;
  }

  private static OptionalInt safe(Map<String, YearHere.Days> days, String hold) {
    return days.containsKey(hold) ? OptionalInt.of(days.get(hold).safe()) : OptionalInt.empty();
  }

  private static Map<String, YearHere.Days> days(
      LoadedShop shop, Catalogue catalogue, String film, Month month) {
    Optional<Film> known = Optional.ofNullable(catalogue.films().get(film));
    Shop own = shop.shop().orElseThrow();
    Place place = shop.read().places().get(own.place());
    return known
        .map(f -> new UsualDays(own, catalogue, place, shop.dates().unmeasured()).of(f, month))
        .orElse(Map.of());
  }
}
