package curewindow.handout;

import curewindow.guide.GuideLibrary;
import curewindow.shop.Shop;
import curewindow.told.JobView;
import curewindow.words.Words;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;

/**
 * What the papers of the office are made from.
 *
 * @param shop the shop
 * @param words the words of the shop's own language
 * @param guides the care texts
 * @param views the good jobs, each in the language of its customer
 */
public record OfficeJobs(Shop shop, Words words, GuideLibrary guides, List<JobView> views) {

  /** Copies the list and refuses missing parts. */
  public OfficeJobs {
    Objects.requireNonNull(shop, "shop");
    Objects.requireNonNull(words, "words");
    Objects.requireNonNull(guides, "guides");
    views = List.copyOf(views);
  }

  /**
   * The day of an instant by the shop's clock.
   *
   * @param at the instant
   * @return the day
   */
  public LocalDate day(Instant at) {
    return at.atZone(shop.zone()).toLocalDate();
  }

  /**
   * The first instant of a day by the shop's clock.
   *
   * @param day the day
   * @return the instant
   */
  public Instant start(LocalDate day) {
    return day.atStartOfDay(shop.zone()).toInstant();
  }

  /**
   * The same with other jobs.
   *
   * @param others good jobs of the shop
   * @return what papers are made from
   */
  public OfficeJobs with(List<JobView> others) {
    return new OfficeJobs(shop, words, guides, others);
  }

  /** A day in few letters. */
  String shortDay(LocalDate day) {
    return words.shortDay(start(day), shop.zone());
  }

  /** The language to speak with a customer, where it is not the shop's; else nothing. */
  String speaks(JobView view) {
    return view.words().language().equals(words.language())
        ? ""
        : view.words().text("language.name");
  }
}
