package curewindow.page;

import curewindow.climate.Place;
import curewindow.cure.Timeline;
import curewindow.shop.Catalogue;
import curewindow.shop.Job;
import curewindow.shop.Shop;
import curewindow.words.Words;
import java.net.URI;
import java.util.Objects;

/**
 * All that pages, cards and calendars need to know of one job.
 *
 * @param job the job
 * @param shop the shop
 * @param catalogue the catalogue
 * @param place the place where the car stands
 * @param timeline the computed dates
 * @param words the words of the job's language
 * @param address the public address of the job's page, ending in a slash
 * @param token the secret part of the address
 */
public record JobView(
    Job job,
    Shop shop,
    Catalogue catalogue,
    Place place,
    Timeline timeline,
    Words words,
    URI address,
    String token) {

  /** Refuses missing parts. */
  public JobView {
    Objects.requireNonNull(job, "job");
    Objects.requireNonNull(shop, "shop");
    Objects.requireNonNull(catalogue, "catalogue");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(timeline, "timeline");
    Objects.requireNonNull(words, "words");
    Objects.requireNonNull(address, "address");
    Objects.requireNonNull(token, "token");
  }
}
