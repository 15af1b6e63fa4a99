package curewindow.site;

import curewindow.handout.CardPress;
import curewindow.page.JobView;
import java.io.IOException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;

/** Notes what stands on cards at the moment they are made. */
final class PrintedCards {

  private PrintedCards() {}

  /**
   * Notes the dates of some cards; they are on disk when this returns.
   *
   * @param shop the shop folder
   * @param views the jobs whose cards are made
   * @param clock gives the day written beside new dates
   * @throws IOException where the dates cannot be written
   */
  static void note(LoadedShop shop, List<JobView> views, Clock clock) throws IOException {
    LocalDate today = LocalDate.now(clock.withZone(shop.shop().orElseThrow().zone()));
    try (ShopLock lock = ShopLock.on(shop.files().root())) {
      PrintedDates printed = LoadedShop.printed(lock);
      for (JobView view : views) {
        printed.add(view, CardPress.dates(view), today);
      }
      printed.save();
    }
  }
}
