package curewindow.intake;

import curewindow.shop.Catalogue;
import curewindow.shop.Film;
import curewindow.shop.ImportMap;
import java.util.Set;
import java.util.TreeSet;

/** The service of a row that names none: that of its film. */
final class FilmServices {

  private final Catalogue catalogue;

  FilmServices(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /**
   * The services of all films that may be meant.
   *
   * @param ours our name of the film
   * @param theirs what the table calls it; empty where a map tells which of ours that is
   */
  Set<String> of(String ours, String theirs) {
    Set<String> services = new TreeSet<>();
    for (Film film : catalogue.films().values()) {
      boolean isMeant = film.id().equals(ours);
      boolean isCalledSo =
          !theirs.isEmpty() && ImportMap.key(film.name()).equals(ImportMap.key(theirs));
      if (isMeant || isCalledSo) {
        services.add(film.service());
      }
    }
    return services;
  }
}
