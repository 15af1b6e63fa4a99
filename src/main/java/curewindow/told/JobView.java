package curewindow.told;

import curewindow.climate.Place;
import curewindow.cure.Timeline;
import curewindow.shop.Catalogue;
import curewindow.shop.Job;
import curewindow.shop.Shop;
import curewindow.words.Words;
import java.net.URI;
import java.util.Objects;
import java.util.Optional;

/**
 * All that pages, cards and calendars need to know of one job.
 *
 * @param job the job
 * @param shop the shop
 * @param catalogue the catalogue
 * @param place the place where the car stands
 * @param timeline the dates as they are told, in agreement with each other
 * @param visit the day on which the shop would like to see the car
 * @param words the words of the job's language; dates that are far from the pickup get their year
 * @param address the public address of the job's page, ending in a slash
 * @param token the secret part of the address
 * @param printed what the customer was told by cards
 * @param parkings the cases of parking that the customer can choose from; none where only the noted
 *     one is looked at
 */
public record JobView(
    Job job,
    Shop shop,
    Catalogue catalogue,
    Place place,
    Timeline timeline,
    Optional<Visit> visit,
    Words words,
    URI address,
    String token,
    Printed printed,
    Parkings parkings) {

  /** Refuses missing parts. */
  public JobView {
    Objects.requireNonNull(job, "job");
    Objects.requireNonNull(shop, "shop");
    Objects.requireNonNull(catalogue, "catalogue");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(timeline, "timeline");
    Objects.requireNonNull(visit, "visit");
    Objects.requireNonNull(words, "words");
    Objects.requireNonNull(address, "address");
    Objects.requireNonNull(token, "token");
    Objects.requireNonNull(parkings, "parkings");
    Objects.requireNonNull(printed, "printed");
    words = words.around(timeline.pickup());
  }

  /**
   * A job of which no card was made yet. Its dates are brought into agreement with each other.
   *
   * @param job the job
   * @param shop the shop
   * @param catalogue the catalogue
   * @param place the place where the car stands
   * @param timeline the dates as computed
   * @param visit the day on which the shop would like to see the car
   * @param words the words of the job's language
   * @param address the public address of the job's page, ending in a slash
   * @param token the secret part of the address
   */
  public JobView(
      Job job,
      Shop shop,
      Catalogue catalogue,
      Place place,
      Timeline timeline,
      Optional<Visit> visit,
      Words words,
      URI address,
      String token) {
    this(
        job,
        shop,
        catalogue,
        place,
        told(job, shop, catalogue, place, timeline),
        visit,
        words,
        address,
        token,
        Printed.NOTHING,
        Parkings.NONE);
  }

  private static Timeline told(
      Job job, Shop shop, Catalogue catalogue, Place place, Timeline computed) {
    Timeline seen = Seen.over(job, shop, catalogue, place, computed);
    return HoldOrder.of(seen, catalogue.holds());
  }

  /**
   * Other dates of this job as they are told: with what was seen, and in agreement with each other.
   *
   * @param computed the dates as computed
   * @return the dates
   */
  public Timeline told(Timeline computed) {
    return told(job, shop, catalogue, place, computed);
  }

  /**
   * What the car is called.
   *
   * @return the words by which its owner knows it; where none are given, its body, such as sedan
   */
  public String car() {
    String text = job.car().text();
    return text.isBlank() ? words.text("car.body." + job.car().body().id()) : text;
  }

  /**
   * The same job with what its customer was told by cards.
   *
   * @param told what they say
   * @return the view
   */
  public JobView withPrinted(Printed told) {
    return new JobView(
        job, shop, catalogue, place, timeline, visit, words, address, token, told, parkings);
  }

  /**
   * The same job with other dates.
   *
   * @param dates the dates as they are told
   * @return the view
   */
  public JobView withTimeline(Timeline dates) {
    return new JobView(
        job, shop, catalogue, place, dates, visit, words, address, token, printed, parkings);
  }

  /**
   * The same job told in another language, such as that of the shop for its own papers.
   *
   * @param others the words of that language
   * @return the view
   */
  public JobView in(Words others) {
    return new JobView(
        job, shop, catalogue, place, timeline, visit, others, address, token, printed, parkings);
  }

  /**
   * The same job with a choice of parkings, as its page shows it in one of the cases: with the
   * parking and the dates of that case.
   *
   * @param cases the cases and which of them is shown
   * @return the view
   */
  public JobView parked(Parkings cases) {
    Parkings.Case shown = cases.shown();
    return new JobView(
        job.parkedAs(shown.plans().get(0)),
        shop,
        catalogue,
        place,
        shown.timeline(),
        cases.index() == 0
            ? visit
            : visit.flatMap(
                v -> Visit.of(job, catalogue.visits(), shown.timeline(), shop, v.byPhoto())),
        words,
        address,
        token,
        printed,
        cases);
  }
}
