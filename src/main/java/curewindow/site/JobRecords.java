package curewindow.site;

import curewindow.problem.Nearest;
import curewindow.shop.BrokenJob;
import curewindow.shop.Job;
import curewindow.shop.JobRows;
import curewindow.shop.Shop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;

/**
 * What is kept of jobs beside their files, changed on the shop's word: an address is taken from its
 * job, a job goes on under another id, a person is forgotten. The output folder follows with the
 * next press.
 */
public final class JobRecords {

  private static final String NEXT = "Next: press, and publish.";

  /** What the shop itself writes with rows of jobs. */
  private static final List<String> TABLES = List.of("jobs.csv", "visits.csv");

  /** The files with rows of jobs, beside the link ledger. */
  private static final List<LedgerCsv> OF_JOBS =
      List.of(PrintedDates.CSV, CallsMade.CSV, Callbacks.CSV, CalendarDates.CSV, HandedOver.CSV);

  private final LoadedShop loaded;
  private final Shop shop;
  private final LocalDate today;

  /**
   * Prepares a change.
   *
   * @param loaded a shop folder whose shop.yaml and ledgers are right
   * @param clock tells which day it is
   */
  public JobRecords(LoadedShop loaded, Clock clock) {
    this.loaded = loaded;
    this.shop = loaded.shop().orElseThrow();
    this.today = LocalDate.now(clock.withZone(shop.zone()));
  }

  /**
   * Takes its address from a job for good. A job that is there gets another one; what its customer
   * was promised stays, unless the job is another's by now.
   *
   * @param job the job's id
   * @param tokens makes the secret part of the new address
   * @return what became of it
   * @throws IOException where a ledger cannot be written
   */
  public Outcome withdraw(String job, Supplier<String> tokens) throws IOException {
    boolean isThere = loaded.job(job).isPresent() || broken(job).isPresent();
    if (!isThere && !isKnown(job)) {
      return unknown(job);
    }
    boolean isSame = loaded.job(job).filter(j -> ReusedIds.of(loaded, j).isEmpty()).isPresent();
    List<String> lines = new ArrayList<>();
    try (FolderLock lock = FolderLock.on(root())) {
      LinkLedger links = Ledgers.links(lock);
      if (!isSame && broken(job).isEmpty()) {
        drop(Set.of(job));
      }
      if (links.close(job)) {
        lines.add("The old page of " + job + " comes down; its address will say how to reach you.");
      }
      if (isThere) {
        links.tokenOf(job, tokens, today);
        lines.add(job + " has a new address.");
      }
      links.save(today);
    }
    lines.add(isThere ? NEXT + " Then print a new card." : NEXT);
    return new Outcome(true, lines);
  }

  /**
   * Gives the address of a job, and all that is kept of it, to the same job under another id.
   *
   * @param old the id on the card
   * @param now the id in the shop folder
   * @return what became of it
   * @throws IOException where a ledger cannot be written
   */
  public Outcome rename(String old, String now) throws IOException {
    if (loaded.job(old).isPresent() || broken(old).isPresent()) {
      return Outcome.refused(
          "There is still a job " + old + "; give it its new id in its file first");
    }
    if (loaded.job(now).isEmpty()) {
      return broken(now).isPresent()
          ? Outcome.refused("Job " + now + " has to be mended first: check tells how")
          : unknown(now);
    }
    if (!isKnown(old)) {
      return unknown(old);
    }
    if (loaded.knownToken(old).isPresent() && loaded.ledgers().withCard().contains(now)) {
      return Outcome.refused(
          "A card of "
              + now
              + " was handed over too, and a job has one address; to take down the"
              + " page of "
              + old
              + ", run withdraw "
              + old);
    }
    try (FolderLock lock = FolderLock.on(root())) {
      LinkLedger links = Ledgers.links(lock);
      links.rename(old, now);
      links.save(today);
      for (LedgerCsv file : OF_JOBS) {
        file.move(root(), old, now, file.equals(Callbacks.CSV));
      }
    }
    return Outcome.done(now + " now has the address and the card of " + old + ".", NEXT);
  }

  /**
   * Deletes all that is kept of a person: the job, and what the ledgers say of it.
   *
   * @param job the job's id
   * @return what became of it, and what is left to do by hand
   * @throws IOException where a file cannot be written
   */
  public Outcome forget(String job) throws IOException {
    Optional<String> broken = broken(job);
    if (broken.isPresent()) {
      return Outcome.refused(
          "Job "
              + job
              + " cannot be read; mend it, or delete it by hand, and run forget "
              + job
              + " again");
    }
    if (loaded.job(job).isEmpty() && !isKnown(job)) {
      return unknown(job);
    }
    String file = loaded.job(job).map(j -> j.where().file()).orElse("");
    List<String> deleted = new ArrayList<>();
    try (FolderLock lock = FolderLock.on(root())) {
      takeOut(job, file, deleted);
      for (LedgerCsv kept : OF_JOBS) {
        tell(kept.drop(root(), Set.of(job)), kept.file(), deleted);
      }
      LinkLedger links = Ledgers.links(lock);
      if (links.close(job)) {
        deleted.add("the name at its address in " + LinkLedger.FILE);
      }
      links.save(today);
    }
    return forgotten(job, deleted, TABLES.contains(file));
  }

  private static Outcome forgotten(String job, List<String> deleted, boolean fromTable) {
    List<String> lines = new ArrayList<>();
    lines.add("Deleted of " + job + ": " + String.join(", ", deleted) + ".");
    lines.add(NEXT + " Until then the page is still up, and the office papers still name the job.");
    lines.add(
        "Left for you to delete: backups, PDF files of cards, messages"
            + (fromTable ? ", and the job in the program that writes jobs.csv." : "."));
    return new Outcome(true, lines);
  }

  /** Deletes the job's own file, and its rows in tables, which are all read before. */
  private void takeOut(String job, String file, List<String> deleted) throws IOException {
    Map<String, JobRows.Left> left = new TreeMap<>();
    for (String table : TABLES) {
      if (Files.isRegularFile(root().resolve(table))) {
        left.put(
            table,
            JobRows.without(Files.readAllBytes(root().resolve(table)), job)
                .orElseThrow(
                    () ->
                        new IOException(
                            table + " cannot be read: check tells where; mend it and try again")));
      }
    }
    if (!file.isEmpty() && !TABLES.contains(file)) {
      Files.delete(root().resolve(file));
      deleted.add(file);
    }
    for (Map.Entry<String, JobRows.Left> table : left.entrySet()) {
      int rows = table.getValue().rows();
      if (rows > 0) {
        AtomicFiles.replace(root().resolve(table.getKey()), table.getValue().bytes());
        tell(rows, table.getKey(), deleted);
      }
    }
  }

  private static void tell(int rows, String file, List<String> deleted) {
    if (rows > 0) {
      deleted.add(rows + (rows == 1 ? " row of " : " rows of ") + file);
    }
  }

  /**
   * Takes down the pages that the shop keeps no longer; the jobs stay.
   *
   * @param letGo whether that is done; else it is only told which they are
   * @return what became of it
   * @throws IOException where a ledger cannot be written
   */
  public Outcome expire(boolean letGo) throws IOException {
    if (shop.keepPages().isEmpty()) {
      return Outcome.refused(
          "shop.yaml does not say how long to keep pages; add a line such as: keep-pages: 2 years");
    }
    Set<String> past = new TreeSet<>();
    List<String> lines = new ArrayList<>();
    for (String id : loaded.ledgers().links().orElseThrow().jobs()) {
      pastSince(id)
          .ifPresent(
              day -> {
                past.add(id);
                lines.add(id + "  " + day);
              });
    }
    if (past.isEmpty()) {
      return Outcome.done("No page is older than keep-pages in shop.yaml says.");
    }
    if (letGo) {
      close(past);
    }
    String pages = past.size() == 1 ? "1 page" : past.size() + " pages";
    lines.add(
        letGo
            ? pages + " will come down; the addresses will say how to reach you. " + NEXT
            : "To take down " + pages + ": expire --let-go");
    return new Outcome(true, lines);
  }

  private void close(Set<String> jobs) throws IOException {
    try (FolderLock lock = FolderLock.on(root())) {
      LinkLedger links = Ledgers.links(lock);
      drop(jobs);
      jobs.forEach(links::close);
      links.save(today);
    }
  }

  /** Since when a page is of no use, where that is too long. */
  private Optional<String> pastSince(String id) {
    Expiry expiry = new Expiry(shop, today);
    Optional<Job> job = loaded.job(id);
    if (job.isPresent()) {
      return job.filter(expiry::isPast).map(j -> "last here " + expiry.lastHere(j));
    }
    boolean mayBeThere = !loaded.brokenJobs().isEmpty();
    return mayBeThere
        ? Optional.empty()
        : loaded
            .ledgers()
            .links()
            .flatMap(links -> links.since(id))
            .filter(expiry::isPast)
            .map(day -> "job gone, address given " + day);
  }

  private void drop(Set<String> jobs) throws IOException {
    for (LedgerCsv file : OF_JOBS) {
      file.drop(root(), jobs);
    }
  }

  private Path root() {
    return loaded.files().root();
  }

  private Optional<String> broken(String job) {
    return loaded.brokenJobs().stream()
        .filter(name -> BrokenJob.likelyId(name).equals(job))
        .findFirst();
  }

  /** Whether anything is kept of a job beside its file. */
  private boolean isKnown(String job) {
    return loaded.knownToken(job).isPresent()
        || loaded.ledgers().withCard().contains(job)
        || !CallNotes.of(loaded).of(job).isEmpty();
  }

  private Outcome unknown(String job) {
    Set<String> known = new TreeSet<>(loaded.ledgers().withCard());
    known.addAll(loaded.ledgers().links().orElseThrow().jobs());
    loaded.jobs().forEach(j -> known.add(j.id()));
    return Outcome.refused("There is no job " + job + Nearest.hint(job, known));
  }
}
