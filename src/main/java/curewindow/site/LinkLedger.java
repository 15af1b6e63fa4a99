package curewindow.site;

import curewindow.problem.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * The link ledger: the file that fixes the secret address of each job's page for good. An address
 * is never changed, dropped or given again, because its code may be printed on a card in somebody's
 * wallet; one that was taken from its job is nobody's.
 *
 * <p>The file is {@code link-ledger.csv} in the shop folder, with the columns {@code job} (empty
 * where the address is nobody's any more), {@code token} and {@code since}.
 */
public final class LinkLedger {

  /** The file, relative to the shop folder. */
  public static final String FILE = "link-ledger.csv";

  private static final LedgerCsv CSV = csv(FILE);

  private final Path shop;
  private final Map<String, Entry> entries = new TreeMap<>();

  /** Nobody's, in the order in which they stand in the file. */
  private final List<Entry> closed = new ArrayList<>();

  private final Set<String> taken = new HashSet<>();
  private boolean changed;
  private boolean forgets;

  LinkLedger(Path shop) {
    this.shop = shop;
  }

  private static LedgerCsv csv(String file) {
    return new LedgerCsv(
        file,
        "link-ledger",
        "the link ledger",
        List.of("job", "token", "since"),
        "run restore --out with the folder of the last press, or mend it or bring it back from a"
            + " backup: printed cards point to these addresses");
  }

  private record Entry(String token, LocalDate since) {}

  /**
   * Reads the ledger of a shop folder; a folder without one has an empty ledger.
   *
   * @param shop the shop folder
   * @param problems where it is said what is wrong with the ledger
   * @return the ledger, or empty where it has problems: it must then not be written
   */
  public static Optional<LinkLedger> read(Path shop, Problems problems) {
    if (isLost(shop)) {
      CSV.tell("the link ledger is gone, although pages were made before", problems);
      return Optional.empty();
    }
    return read(shop, FILE, problems);
  }

  /** The same of another file of the shop folder, such as a copy. */
  static Optional<LinkLedger> read(Path shop, String file, Problems problems) {
    LinkLedger ledger = new LinkLedger(shop);
    return csv(file).read(shop, problems, ledger::readRow) ? Optional.of(ledger) : Optional.empty();
  }

  /** A ledger that was there once is never begun anew in silence. */
  private static boolean isLost(Path shop) {
    return !CSV.isThere(shop)
        && (Files.isDirectory(shop.resolve(LedgerCopies.FOLDER))
            || Stream.of(PrintedDates.FILE, CalendarDates.FILE, HandedOver.FILE)
                .anyMatch(other -> Files.isRegularFile(shop.resolve(other))));
  }

  private void readRow(List<String> fields, LedgerCsv.Fault fault) {
    String job = fields.get(0);
    String token = fields.get(1);
    if (!Tokens.isToken(token)) {
      fault.say("\"" + token + "\" is not a token that Curewindow made");
    } else if (taken.contains(token)) {
      fault.say("the token stands twice, so two jobs would share a page");
    } else if (entries.containsKey(job)) {
      fault.say("the job \"" + job + "\" stands twice");
    } else {
      since(fields.get(2), fault).ifPresent(day -> add(job, new Entry(token, day)));
    }
  }

  private void add(String job, Entry entry) {
    taken.add(entry.token());
    if (job.isEmpty()) {
      closed.add(entry);
    } else {
      entries.put(job, entry);
    }
  }

  private static Optional<LocalDate> since(String text, LedgerCsv.Fault fault) {
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (java.time.DateTimeException e) {
      fault.say("\"" + text + "\" is not a date like 2026-11-25");
      return Optional.empty();
    }
  }

  /**
   * The token of a job; a job that has none gets one, which is kept once {@link #save} was called.
   *
   * @param job the job's id
   * @param tokens makes tokens
   * @param today the date written beside a new token
   * @return the token
   */
  String tokenOf(String job, Supplier<String> tokens, LocalDate today) {
    Entry known = entries.get(job);
    if (known != null) {
      return known.token();
    }
    String token = tokens.get();
    while (!taken.add(token)) {
      token = tokens.get();
    }
    entries.put(job, new Entry(token, today));
    changed = true;
    return token;
  }

  /**
   * Takes a job's address from it for good; what stands there from the next press on tells nothing
   * of anybody.
   *
   * @param job the job's id
   * @return whether it had one
   */
  boolean close(String job) {
    Entry entry = entries.remove(job);
    if (entry == null) {
      return false;
    }
    closed.add(entry);
    changed = true;
    forgets = true;
    return true;
  }

  /**
   * Gives a job's address to the same job under another id. An address that this had is nobody's
   * any more.
   *
   * @param old the id until now
   * @param now the id from now on
   */
  void rename(String old, String now) {
    Entry entry = entries.get(old);
    if (entry != null) {
      close(now);
      entries.remove(old);
      entries.put(now, entry);
      changed = true;
      forgets = true;
    }
  }

  /**
   * Adds what another ledger knows and this one does not: its addresses, unless their job or their
   * token stands here already.
   *
   * @return how many were added
   */
  int add(LinkLedger other) {
    int before = taken.size();
    other.closed.stream().filter(e -> !taken.contains(e.token())).forEach(e -> add("", e));
    other.entries.forEach(
        (job, e) -> {
          if (!taken.contains(e.token()) && !entries.containsKey(job)) {
            add(job, e);
          }
        });
    changed |= taken.size() > before;
    return taken.size() - before;
  }

  /** Gives a job an address that was found elsewhere, unless it has one or this is taken. */
  boolean add(String job, String token, LocalDate since) {
    boolean isNew =
        !job.isEmpty()
            && Tokens.isToken(token)
            && !taken.contains(token)
            && !entries.containsKey(job);
    if (isNew) {
      add(job, new Entry(token, since));
      changed = true;
    }
    return isNew;
  }

  /** All tokens that were ever given. */
  Set<String> tokens() {
    return Collections.unmodifiableSet(taken);
  }

  /** The tokens that are nobody's any more. */
  List<String> closed() {
    return closed.stream().map(Entry::token).toList();
  }

  /** The jobs that have an address. */
  Set<String> jobs() {
    return Collections.unmodifiableSet(entries.keySet());
  }

  /** Whether no job has an address. */
  boolean isEmpty() {
    return entries.isEmpty();
  }

  /**
   * The token a job already has.
   *
   * @param job the job's id
   * @return the token, or empty where the ledger has none
   */
  Optional<String> known(String job) {
    return Optional.ofNullable(entries.get(job)).map(Entry::token);
  }

  /** The day on which a job got its address. */
  Optional<LocalDate> since(String job) {
    return Optional.ofNullable(entries.get(job)).map(Entry::since);
  }

  /**
   * Writes the ledger, and a copy of it, if something changed since it was read.
   *
   * @param today the day of the copy
   * @throws IOException where the shop folder cannot be written
   */
  void save(LocalDate today) throws IOException {
    if (!changed) {
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    entries.forEach((job, entry) -> rows.add(row(job, entry)));
    closed.forEach(entry -> rows.add(row("", entry)));
    CSV.write(shop, rows);
    String copy = LedgerCopies.file(today);
    csv(copy).write(shop, rows);
    LedgerCopies.thin(shop, copy, forgets);
    changed = false;
  }

  private static List<String> row(String job, Entry entry) {
    return List.of(job, entry.token(), entry.since().toString());
  }
}
