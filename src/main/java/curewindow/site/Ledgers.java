package curewindow.site;

import curewindow.problem.Problems;
import curewindow.shop.Job;
import curewindow.told.Printed;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * What the program keeps in a shop folder; each is empty where its file has to be mended first.
 *
 * @param links the secret addresses
 * @param printed what cards say
 * @param calendars what calendars say
 * @param calls what was told by phone
 * @param callbacks what customers called with
 * @param handedOver whose cards were handed over
 * @param withCard the jobs whose card was handed over
 */
record Ledgers(
    Optional<LinkLedger> links,
    Optional<PrintedDates> printed,
    Optional<CalendarDates> calendars,
    Optional<CallsMade> calls,
    Optional<Callbacks> callbacks,
    Optional<HandedOver> handedOver,
    Set<String> withCard) {

  static Ledgers read(Path shop, Problems problems) {
    Optional<LinkLedger> links = LinkLedger.read(shop, problems);
    Optional<PrintedDates> printed = PrintedDates.read(shop, problems);
    Optional<CalendarDates> calendars = CalendarDates.read(shop, problems);
    Optional<CallsMade> calls = CallsMade.read(shop, problems);
    Optional<Callbacks> callbacks = Callbacks.read(shop, problems);
    Optional<HandedOver> handedOver = HandedOver.read(shop, problems);
    Set<String> withCard = new TreeSet<>();
    handedOver.ifPresent(list -> withCard.addAll(list.jobs()));
    printed.ifPresent(dates -> withCard.addAll(dates.jobs()));
    return new Ledgers(
        links,
        printed,
        calendars,
        calls,
        callbacks,
        handedOver,
        Collections.unmodifiableSet(withCard));
  }

  boolean areBroken() {
    return Stream.of(links, printed, calendars, calls, callbacks, handedOver)
        .anyMatch(Optional::isEmpty);
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
  CalendarDates calendars(FolderLock lock) throws IOException {
    Optional<CalendarDates> read = calendars.filter(CalendarDates::standsAsRead);
    return read.isPresent()
        ? read.get()
        : whole(CalendarDates.read(lock.folder(), new Problems()), CalendarDates.FILE);
  }

  /** The calls as they stand on disk while the shop folder is locked. */
  static CallsMade calls(FolderLock lock) throws IOException {
    return whole(CallsMade.read(lock.folder(), new Problems()), CallsMade.FILE);
  }

  /** What customers called with as it stands on disk while the shop folder is locked. */
  static Callbacks callbacks(FolderLock lock) throws IOException {
    return whole(Callbacks.read(lock.folder(), new Problems()), Callbacks.FILE);
  }

  /** The cards that were handed over as they stand on disk while the shop folder is locked. */
  static HandedOver handedOver(FolderLock lock) throws IOException {
    return whole(HandedOver.read(lock.folder(), new Problems()), HandedOver.FILE);
  }

  /** Some pages without those whose address was taken from their job, or whose id is another. */
  List<PageList.Row> open(List<PageList.Row> pages) {
    Set<String> closed = new TreeSet<>();
    Set<String> given = new TreeSet<>();
    links.ifPresent(l -> l.closed().forEach(token -> closed.add(PagePaths.folder(token))));
    links.ifPresent(l -> l.tokens().forEach(token -> given.add(PagePaths.folder(token))));
    return pages.stream()
        .filter(page -> !closed.contains(page.folder()))
        .filter(page -> knows(page.job()) || !given.contains(page.folder()))
        .toList();
  }

  private boolean knows(String job) {
    return links.flatMap(l -> l.known(job)).isPresent();
  }

  private static <T> T whole(Optional<T> ledger, String file) throws IOException {
    return ledger.orElseThrow(() -> new IOException(file + " was broken while it was in use"));
  }

  /** What the customer of a job was told by cards. */
  Printed printedFor(String job) {
    return printed.map(p -> p.of(job)).orElse(Printed.NOTHING);
  }

  /** Whether a card of a job was handed over that has a date. */
  boolean hasCard(Job job) {
    return !printedFor(job.id()).equals(Printed.NOTHING);
  }
}
