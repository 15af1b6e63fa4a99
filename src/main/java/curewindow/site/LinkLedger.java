package curewindow.site;

import curewindow.problem.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * The link ledger: the file that fixes the secret address of each job's page for good. An entry is
 * never changed or dropped, because its code may be printed on a card in somebody's wallet.
 *
 * <p>The file is {@code link-ledger.csv} in the shop folder, with the columns {@code job}, {@code
 * token} and {@code since}.
 */
public final class LinkLedger {

  /** The file, relative to the shop folder. */
  public static final String FILE = "link-ledger.csv";

  private static final LedgerCsv CSV =
      new LedgerCsv(
          FILE,
          "link-ledger",
          "the link ledger",
          List.of("job", "token", "since"),
          "mend it or bring it back from a backup: printed cards point to these addresses");

  private final Path shop;
  private final Map<String, Entry> entries;
  private final Set<String> taken;
  private boolean changed;

  private LinkLedger(Path shop, Map<String, Entry> entries, Set<String> taken) {
    this.taken = taken;
    this.shop = shop;
    this.entries = entries;
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
    Map<String, Entry> entries = new TreeMap<>();
    Set<String> taken = new HashSet<>();
    if (isLost(shop)) {
      CSV.tell("the link ledger is gone, although pages were made before", problems);
      return Optional.empty();
    }
    boolean whole =
        CSV.read(shop, problems, (fields, fault) -> readRow(fields, entries, taken, fault));
    return whole ? Optional.of(new LinkLedger(shop, entries, taken)) : Optional.empty();
  }

  /** A ledger that was there once is never begun anew in silence. */
  private static boolean isLost(Path shop) {
    return !CSV.isThere(shop)
        && Stream.of(PrintedDates.FILE, CalendarDates.FILE)
            .anyMatch(other -> Files.isRegularFile(shop.resolve(other)));
  }

  private static void readRow(
      List<String> fields, Map<String, Entry> entries, Set<String> taken, LedgerCsv.Fault fault) {
    String token = fields.get(1);
    if (!Tokens.isToken(token)) {
      fault.say("\"" + token + "\" is not a token that Curewindow made");
    } else if (taken.contains(token)) {
      fault.say("the token stands twice, so two jobs would share a page");
    } else if (entries.containsKey(fields.get(0))) {
      fault.say("the job \"" + fields.get(0) + "\" stands twice");
    } else {
      since(fields.get(2), fault)
          .ifPresent(
              day -> {
                entries.put(fields.get(0), new Entry(token, day));
                taken.add(token);
              });
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

  /** All tokens that were ever given. */
  Stream<String> tokens() {
    return entries.values().stream().map(Entry::token);
  }

  /** Whether no job has an address yet. */
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

  /**
   * Writes the ledger if a token was added since it was read.
   *
   * @throws IOException where the shop folder cannot be written
   */
  void save() throws IOException {
    if (!changed) {
      return;
    }
    CSV.write(
        shop,
        entries.entrySet().stream()
            .map(e -> List.of(e.getKey(), e.getValue().token(), e.getValue().since().toString()))
            .toList());
    changed = false;
  }
}
