package curewindow.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A job as somebody types it, before it is known whether it is right: everything is text as it was
 * typed, empty where nothing was. {@link JobText} writes it as a job file, which the one reader of
 * jobs then checks.
 *
 * @param id the shop's own number
 * @param firstName whom to greet
 * @param language language of page and card
 * @param car the car
 * @param place id of the place where the car stands
 * @param parkingDay where it stands by day
 * @param parkingNight where it stands by night
 * @param pickup when the car leaves, by the shop's clock, such as 2026-11-24T17:00; empty where the
 *     file lists stays
 * @param items what was fitted
 */
public record JobDraft(
    String id,
    String firstName,
    String language,
    CarDraft car,
    String place,
    String parkingDay,
    String parkingNight,
    String pickup,
    List<ItemDraft> items) {

  /** Takes spaces off the ends. */
  public JobDraft {
    id = id.strip();
    firstName = firstName.strip();
    language = language.strip();
    Objects.requireNonNull(car, "car");
    place = place.strip();
    parkingDay = parkingDay.strip();
    parkingNight = parkingNight.strip();
    pickup = pickup.strip();
    items = List.copyOf(items);
  }

  /**
   * The car.
   *
   * @param year model year
   * @param body id of the body type
   * @param paint id of the paint tone
   * @param finish paint finish
   * @param text words by which its owner knows it
   * @param lacks what it lacks, such as a defroster
   */
  public record CarDraft(
      String year, String body, String paint, String finish, String text, List<String> lacks) {

    /** Takes spaces off the ends. */
    public CarDraft {
      year = year.strip();
      body = body.strip();
      paint = paint.strip();
      finish = finish.strip();
      text = text.strip();
      lacks = List.copyOf(lacks);
    }

    private Map<String, Object> tree() {
      Map<String, Object> tree = new LinkedHashMap<>();
      put(tree, "year", year);
      put(tree, "body", body);
      put(tree, "paint", paint);
      put(tree, "finish", finish);
      put(tree, "text", text);
      put(tree, "lacks", lacks);
      return tree;
    }
  }

  /**
   * A film or coating on some spots.
   *
   * @param service id of the service
   * @param film id of the film or coating
   * @param spots ids of the spots
   * @param finished when it was finished, by the shop's clock
   * @param vlt visible light transmission of film and glass, percent
   * @param glassVlt that of the bare glass, percent
   * @param batch the batch on the roll or bottle
   * @param warrantyYears years of warranty
   * @param lampSurface temperature under a curing lamp, degrees Celsius
   * @param lampMinutes how long the lamp was on
   */
  public record ItemDraft(
      String service,
      String film,
      List<String> spots,
      String finished,
      String vlt,
      String glassVlt,
      String batch,
      String warrantyYears,
      String lampSurface,
      String lampMinutes) {

    /** Takes spaces off the ends. */
    public ItemDraft {
      service = service.strip();
      film = film.strip();
      spots = List.copyOf(spots);
      finished = finished.strip();
      vlt = vlt.strip();
      glassVlt = glassVlt.strip();
      batch = batch.strip();
      warrantyYears = warrantyYears.strip();
      lampSurface = lampSurface.strip();
      lampMinutes = lampMinutes.strip();
    }

    private Map<String, Object> tree() {
      Map<String, Object> tree = new LinkedHashMap<>();
      put(tree, "service", service);
      put(tree, "film", film);
      put(tree, "spots", spots);
      put(tree, "finished", finished);
      put(tree, "vlt", vlt);
      put(tree, "glass-vlt", glassVlt);
      put(tree, "batch", batch);
      put(tree, "warranty-years", warrantyYears);
      Map<String, Object> lamp = new LinkedHashMap<>();
      put(lamp, "surface", lampSurface);
      put(lamp, "minutes", lampMinutes);
      put(tree, "lamp", lamp);
      return tree;
    }
  }

  /** The keys and values of the job's file, in the order in which people write them. */
  Map<String, Object> tree() {
    Map<String, Object> tree = new LinkedHashMap<>();
    put(tree, "id", id);
    put(tree, "first-name", firstName);
    put(tree, "language", language);
    put(tree, "car", car.tree());
    put(tree, "place", place);
    Map<String, Object> parking = new LinkedHashMap<>();
    put(parking, "day", parkingDay);
    put(parking, "night", parkingNight);
    put(tree, "parking", parking);
    put(tree, "pickup", pickup);
    List<Object> fitted = new ArrayList<>();
    items.forEach(item -> fitted.add(item.tree()));
    put(tree, "items", fitted);
    return tree;
  }

  private static void put(Map<String, Object> tree, String key, Object value) {
    boolean nothing =
        value instanceof String text
            ? text.isEmpty()
            : value instanceof List<?> list ? list.isEmpty() : ((Map<?, ?>) value).isEmpty();
    if (!nothing) {
      tree.put(key, value);
    }
  }
}
