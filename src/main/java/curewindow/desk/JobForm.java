package curewindow.desk;

import curewindow.shop.Catalogue;
import curewindow.shop.Film;
import curewindow.shop.JobDraft;
import curewindow.shop.JobDraft.CarDraft;
import curewindow.shop.JobDraft.ItemDraft;
import curewindow.shop.TypedNumber;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A job as a form has it: each field is named by the place of its value in a job file. */
final class JobForm {

  /** More is no car's work in one form. */
  static final int MOST_ITEMS = 20;

  /** Under this key a form carries spots along that were chosen for another film. */
  static final String KEPT = "spots-kept";

  private static final String DROP = "drop:";

  private JobForm() {}

  /** The name of a value of a fitted item, the first being 1. */
  static String name(int number, String key) {
    return "items[" + number + "]." + key;
  }

  /** Which item a button takes off, the first being 1; 0 for any other button. */
  static int dropped(String wanted) {
    return wanted.matches(DROP + "[1-9][0-9]?")
        ? Integer.parseInt(wanted.substring(DROP.length()))
        : 0;
  }

  /** What was typed. A film tells its service, so nobody has to choose both. */
  static JobDraft draft(Request.Values form, Catalogue catalogue) {
    return new JobDraft(
        form.one("id"),
        form.one("first-name"),
        form.one("language"),
        new CarDraft(
            form.one("car.year"),
            form.one("car.body"),
            form.one("car.paint"),
            form.one("car.finish"),
            form.one("car.text"),
            form.list("car.lacks")),
        form.one("place"),
        form.one("parking.day"),
        form.one("parking.night"),
        form.one("pickup"),
        items(form, catalogue));
  }

  private static List<ItemDraft> items(Request.Values form, Catalogue catalogue) {
    List<ItemDraft> items = new ArrayList<>();
    IntStream.rangeClosed(1, MOST_ITEMS)
        .filter(n -> form.has(name(n, "film")))
        .forEach(n -> items.add(item(form, n, catalogue)));
    return items;
  }

  private static ItemDraft item(Request.Values form, int n, Catalogue catalogue) {
    String film = form.one(name(n, "film"));
    Film known = catalogue.films().get(film);
    return new ItemDraft(
        known == null ? "" : known.service(),
        film,
        spots(form, n, catalogue),
        form.one(name(n, "finished")),
        TypedNumber.plain(form.one(name(n, "vlt"))),
        TypedNumber.plain(form.one(name(n, "glass-vlt"))),
        form.one(name(n, "batch")),
        TypedNumber.plain(form.one(name(n, "warranty-years"))),
        Degrees.of(form).celsius(form.one(name(n, "lamp.surface"))),
        TypedNumber.plain(form.one(name(n, "lamp.minutes"))));
  }

  /** The spots that were chosen for an item, for the film that it has or for one before. */
  static Stream<String> chosen(Request.Values form, int number) {
    return Stream.of("spots", KEPT)
        .flatMap(key -> form.list(name(number, key)).stream())
        .distinct();
  }

  /** The chosen spots that an item's film can lie on; others may have been for another film. */
  static List<String> spots(Request.Values form, int n, Catalogue catalogue) {
    Film film = catalogue.films().get(form.one(name(n, "film")));
    List<String> chosen = chosen(form, n).toList();
    return film == null
        ? List.of()
        : catalogue.services().get(film.service()).spots().stream()
            .filter(chosen::contains)
            .toList();
  }

  /**
   * A job whose lists have the order of another one, where they are the same but for that: a form
   * has an order of its own.
   */
  static JobDraft ordered(JobDraft draft, JobDraft like) {
    List<ItemDraft> items = new ArrayList<>();
    for (int i = 0; i < draft.items().size(); i++) {
      ItemDraft item = draft.items().get(i);
      boolean isThere = i < like.items().size();
      items.add(isThere ? item.on(ordered(item.spots(), like.items().get(i).spots())) : item);
    }
    CarDraft car = draft.car();
    return draft.withCar(car.lacking(ordered(car.lacks(), like.car().lacks()))).withItems(items);
  }

  private static List<String> ordered(List<String> some, List<String> like) {
    return Set.copyOf(some).equals(Set.copyOf(like)) ? like : some;
  }

  /** An item of which only the time is known. */
  static ItemDraft empty(String finished) {
    return new ItemDraft("", "", List.of(), finished, "", "", "", "", "", "");
  }

  /** The same work done now, of a batch and with a measurement that nobody noted yet. */
  static ItemDraft anew(ItemDraft item, String finished) {
    return new ItemDraft(
        item.service(),
        item.film(),
        item.spots(),
        finished,
        "",
        "",
        "",
        item.warrantyYears(),
        "",
        "");
  }
}
