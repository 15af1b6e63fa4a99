package curewindow.site;

import curewindow.problem.Problems;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the program keeps in a shop folder; each is empty where its file has to be mended first.
 *
 * @param links the secret addresses
 * @param printed what cards say
 * @param calendars what calendars say
 * @param calls what was told by phone
 */
record Ledgers(
    Optional<LinkLedger> links,
    Optional<PrintedDates> printed,
    Optional<CalendarDates> calendars,
    Optional<CallsMade> calls) {

  static Ledgers read(Path shop, Problems problems) {
    return new Ledgers(
        LinkLedger.read(shop, problems),
        PrintedDates.read(shop, problems),
        CalendarDates.read(shop, problems),
        CallsMade.read(shop, problems));
  }

  boolean areBroken() {
    return Stream.of(links, printed, calendars, calls).anyMatch(Optional::isEmpty);
  }

  /** The link ledger as it stands on disk while the shop folder is locked. */
  static LinkLedger links(FolderLock lock) throws IOException {
    return whole(LinkLedger.read(lock.folder(), new Problems()), LinkLedger.FILE);
  }

  /** The printed dates as they stand on disk while the shop folder is locked. */
  static PrintedDates printed(FolderLock lock) throws IOException {
    return whole(PrintedDates.read(lock.folder(), new Problems()), PrintedDates.FILE);
  }

  /** The memory of calendar dates as it stands on disk while the shop folder is locked. */
  static CalendarDates calendars(FolderLock lock) throws IOException {
    return whole(CalendarDates.read(lock.folder(), new Problems()), CalendarDates.FILE);
  }

  /** The calls as they stand on disk while the shop folder is locked. */
  static CallsMade calls(FolderLock lock) throws IOException {
    return whole(CallsMade.read(lock.folder(), new Problems()), CallsMade.FILE);
  }

  private static <T> T whole(Optional<T> ledger, String file) throws IOException {
    return ledger.orElseThrow(() -> new IOException(file + " was broken while it was in use"));
  }
}
