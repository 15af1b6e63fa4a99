package curewindow.site;

import curewindow.handout.HandoutPress;
import java.io.IOException;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;

/** Notes what stands on cards and other handouts at the moment they are made. */
final class PrintedCards {

  private PrintedCards() {}

  /**
   * Notes the dates of some handouts, and whose they are; they are on disk when this returns.
   *
   * @param shop the shop folder
   * @param cards the handouts that are made
   * @param clock gives the time written beside new dates
   * @throws IOException where the dates cannot be written
   */
  static void note(LoadedShop shop, List<HandoutPress.Made> cards, Clock clock) throws IOException {
    ZoneId zone = shop.shop().orElseThrow().zone();
    LocalDateTime now = LocalDateTime.now(clock.withZone(zone)).truncatedTo(ChronoUnit.SECONDS);
    try (FolderLock lock = FolderLock.on(shop.files().root())) {
      PrintedDates printed = Ledgers.printed(lock);
      CallsMade calls = Ledgers.calls(lock);
      HandedOver handedOver = Ledgers.handedOver(lock);
      for (HandoutPress.Made card : cards) {
        handedOver.note(card.view().job(), zone);
        if (!card.dates().isEmpty()) {
          String job = card.view().job().id();
          printed.add(card.view(), card.dates(), now, hold -> calls.areLast(job, hold, printed));
        }
      }
      printed.save();
      handedOver.save();
    }
  }
}
