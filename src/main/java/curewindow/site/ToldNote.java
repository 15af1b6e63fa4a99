package curewindow.site;

import java.time.LocalDate;
import java.util.List;

/**
 * What the customer of a job was told by phone since their card.
 *
 * @param day when, by the shop's clock
 * @param hold the hold's id; empty for the visit
 * @param date what they were told: as ISO 8601, of a hold a time with its offset, of the visit a
 *     day
 */
public record ToldNote(LocalDate day, String hold, String date) {

  /**
   * What the customer of a job was told.
   *
   * @param shop the shop folder
   * @param job the job's id
   * @return the notes, the first first; none where their file has to be mended first
   */
  public static List<ToldNote> of(LoadedShop shop, String job) {
    return shop.ledgers().calls().map(calls -> calls.of(job)).orElse(List.of());
  }
}
