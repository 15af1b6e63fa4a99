package curewindow.desk;

import curewindow.climate.Place;
import curewindow.shop.Catalogue;
import curewindow.shop.Shop;
import curewindow.site.FilmEffect;
import curewindow.site.LoadedShop;
import curewindow.words.Words;
import java.time.Instant;
import java.time.Month;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** What a film does to the dates of usual work of this month, as it stands beside its form. */
final class EffectBeside {

  /**
   * The dates.
   *
   * @param about for which work and weather they are
   * @param rows the holds, what matters most first
   */
  record Effect(String about, List<Row> rows) {}

  /**
   * A hold.
   *
   * @param label what it is
   * @param days how long it lasts
   * @param was how long it lasted before, where that is something else
   */
  record Row(String label, String days, Optional<String> was) {}

  private EffectBeside() {}

  /** The effect; empty where the catalogue as it would be does not have the film. */
  static Optional<Effect> of(
      LoadedShop shop, Catalogue then, String film, Instant now, Words words) {
    if (!then.films().containsKey(film)) {
      return Optional.empty();
    }
    Shop own = shop.shop().orElseThrow();
    Place place = shop.read().places().get(own.place());
    Month month = now.atZone(own.zone()).getMonth();
    String about =
        words.text(
            "desk.films.about",
            Map.of(
                "place", words.place(place.name(), place.zone()),
                "month", words.month(now, own.zone())));
    boolean known = shop.read().catalogue().films().containsKey(film);
    List<Row> rows =
        FilmEffect.of(shop, then, film, month).stream().map(r -> row(r, known, words)).toList();
    return Optional.of(new Effect(about, rows));
  }

  private static Row row(FilmEffect.Row row, boolean known, Words words) {
    boolean other = known && !row.days().equals(row.before());
    return new Row(
        words.text("hold." + row.hold() + ".label"),
        days(row.days(), words),
        other
            ? Optional.of(words.text("desk.films.was", Map.of("days", days(row.before(), words))))
            : Optional.empty());
  }

  private static String days(OptionalInt days, Words words) {
    return days.isEmpty()
        ? words.text("desk.films.no-hold")
        : words.text("desk.films.days", Map.of("n", days.getAsInt()));
  }
}
