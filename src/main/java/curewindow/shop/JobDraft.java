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

    /**
     * The same car that lacks other things.
     *
     * @param others what it lacks
     * @return the car
     */
    public CarDraft lacking(List<String> others) {
      return new CarDraft(year, body, paint, finish, text, others);
    }

    private Map<String, Object> tree() {
      Map<String, Object> tree = new LinkedHashMap<>();
      Typed.put(tree, "year", year);
      Typed.put(tree, "body", body);
      Typed.put(tree, "paint", paint);
      Typed.put(tree, "finish", finish);
      Typed.put(tree, "text", text);
      Typed.put(tree, "lacks", lacks);
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

    /**
     * The same work on other spots.
     *
     * @param others ids of the spots
     * @return the item
     */
    public ItemDraft on(List<String> others) {
      return new ItemDraft(
          service,
          film,
          others,
          finished,
          vlt,
          glassVlt,
          batch,
          warrantyYears,
          lampSurface,
          lampMinutes);
    }

    /**
     * The same item finished at another time.
     *
     * @param time as files have it
     * @return the item
     */
    public ItemDraft finishedAt(String time) {
      return new ItemDraft(
          service,
          film,
          spots,
          time,
          vlt,
          glassVlt,
          batch,
          warrantyYears,
          lampSurface,
          lampMinutes);
    }

    private Map<String, Object> tree() {
      Map<String, Object> tree = new LinkedHashMap<>();
      Typed.put(tree, "service", service);
      Typed.put(tree, "film", film);
      Typed.put(tree, "spots", spots);
      Typed.put(tree, "finished", finished);
      Typed.put(tree, "vlt", vlt);
      Typed.put(tree, "glass-vlt", glassVlt);
      Typed.put(tree, "batch", batch);
      Typed.put(tree, "warranty-years", warrantyYears);
      Map<String, Object> lamp = new LinkedHashMap<>();
      Typed.put(lamp, "surface", lampSurface);
      Typed.put(lamp, "minutes", lampMinutes);
      Typed.put(tree, "lamp", lamp);
      return tree;
    }
  }

  /**
   * The same job with another number.
   *
   * @param other the number
   * @return the job
   */
  public JobDraft withId(String other) {
    return new JobDraft(
        other, firstName, language, car, place, parkingDay, parkingNight, pickup, items);
  }

  /**
   * The same job on another car.
   *
   * @param other the car
   * @return the job
   */
  public JobDraft withCar(CarDraft other) {
    return new JobDraft(
        id, firstName, language, other, place, parkingDay, parkingNight, pickup, items);
  }

  /**
   * The same job picked up at another time.
   *
   * @param time as files have it
   * @return the job
   */
  public JobDraft withPickup(String time) {
    return new JobDraft(id, firstName, language, car, place, parkingDay, parkingNight, time, items);
  }

  /**
   * The same job with other work.
   *
   * @param others what was fitted
   * @return the job
   */
  public JobDraft withItems(List<ItemDraft> others) {
    return new JobDraft(
        id, firstName, language, car, place, parkingDay, parkingNight, pickup, others);
  }

  /** The keys and values of the job's file, in the order in which people write them. */
  Map<String, Object> tree() {
    Map<String, Object> tree = new LinkedHashMap<>();
    Typed.put(tree, "id", id);
    Typed.put(tree, "first-name", firstName);
    Typed.put(tree, "language", language);
    Typed.put(tree, "car", car.tree());
    Typed.put(tree, "place", place);
    Map<String, Object> parking = new LinkedHashMap<>();
    Typed.put(parking, "day", parkingDay);
    Typed.put(parking, "night", parkingNight);
    Typed.put(tree, "parking", parking);
    Typed.put(tree, "pickup", pickup);
    List<Object> fitted = new ArrayList<>();
    items.forEach(item -> fitted.add(item.tree()));
    Typed.put(tree, "items", fitted);
    return tree;
  }
}
