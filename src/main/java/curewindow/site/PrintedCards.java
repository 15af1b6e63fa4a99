package curewindow.site;

import curewindow.cure.Release;
import curewindow.handout.HandoutPress;
import curewindow.page.JobView;
import curewindow.shop.Handout;
import java.io.IOException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;

/** Notes what stands on cards and other handouts at the moment they are made. */
final class PrintedCards {

  private PrintedCards() {}

  /**
   * Notes the dates of some handouts; they are on disk when this returns.
   *
   * @param shop the shop folder
   * @param views the jobs whose handouts are made
   * @param kind which handout
   * @param clock gives the day written beside new dates
   * @throws IOException where the dates cannot be written
   */
  static void note(LoadedShop shop, List<JobView> views, Handout kind, Clock clock)
      throws IOException {
    LocalDate today = LocalDate.now(clock.withZone(shop.shop().orElseThrow().zone()));
    try (ShopLock lock = ShopLock.on(shop.files().root())) {
      PrintedDates printed = Ledgers.printed(lock);
      for (JobView view : views) {
        List<Release> dates = HandoutPress.dates(view, kind);
        if (!dates.isEmpty()) {
          printed.add(view, dates, today);
        }
      }
      printed.save();
    }
  }
}
