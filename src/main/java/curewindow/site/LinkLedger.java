package curewindow.site;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.regex.Pattern;
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
      new LedgerCsv("the link ledger", List.of("job", "token", "since"));
  private static final Pattern TOKEN =
      Pattern.compile("[" + Tokens.ALPHABET + "]{" + Tokens.LENGTH + "}");

  private final Path file;
  private final Map<String, Entry> entries;
  private boolean changed;

  private LinkLedger(Path file, Map<String, Entry> entries) {
    this.file = file;
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
    Path file = shop.resolve(FILE);
    Map<String, Entry> entries = new TreeMap<>();
    int before = problems.errorCount();
    if (isEmptyOrLost(shop, file)) {
      problem(0, "the link ledger is empty or gone, although pages were made before", problems);
    } else if (Files.exists(file)) {
      CSV.read(
          file,
          (fields, line) -> readRow(fields, line, entries, problems),
          (line, message) -> problem(line, message, problems));
    }
    return problems.errorCount() > before
        ? Optional.empty()
        : Optional.of(new LinkLedger(file, entries));
  }

  /** A ledger that was there once is never begun anew in silence. */
  private static boolean isEmptyOrLost(Path shop, Path file) {
    return Files.exists(file)
        ? file.toFile().length() == 0
        : Stream.of(PrintedDates.FILE, CalendarDates.FILE)
            .anyMatch(other -> Files.exists(shop.resolve(other)));
  }

  private static void readRow(
      List<String> fields, int line, Map<String, Entry> entries, Problems problems) {
    String token = fields.get(1);
    if (!TOKEN.matcher(token).matches()) {
      problem(line, "\"" + token + "\" is not a token that Curewindow made", problems);
    } else if (entries.values().stream().anyMatch(e -> e.token().equals(token))) {
      problem(line, "the token stands twice, so two jobs would share a page", problems);
    } else if (entries.containsKey(fields.get(0))) {
      problem(line, "the job \"" + fields.get(0) + "\" stands twice", problems);
    } else {
      since(fields.get(2), line, problems)
          .ifPresent(d -> entries.put(fields.get(0), new Entry(token, d)));
    }
  }

  private static Optional<LocalDate> since(String text, int line, Problems problems) {
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (java.time.DateTimeException e) {
      problem(line, "\"" + text + "\" is not a date like 2026-11-25", problems);
      return Optional.empty();
    }
  }

  private static void problem(int line, String message, Problems problems) {
    problems.add(
        Problem.error(
            "link-ledger",
            new Where(FILE, line, line == 0 ? 0 : 1, ""),
            message,
            "mend it or bring it back from a backup: printed cards point to these addresses"));
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
    while (isTaken(token)) {
      token = tokens.get();
    }
    entries.put(job, new Entry(token, today));
    changed = true;
    return token;
  }

  private boolean isTaken(String token) {
    return entries.values().stream().anyMatch(e -> e.token().equals(token));
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
        file,
        entries.entrySet().stream()
            .map(e -> List.of(e.getKey(), e.getValue().token(), e.getValue().since().toString()))
            .toList());
    changed = false;
  }
}
