package curewindow.site;

import curewindow.problem.Problems;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Each time that a customer called with a question. Rows are added and never changed; one that was
 * noted by mistake is taken back on its day.
 *
 * <p>The file is {@code callbacks.csv} in the shop folder, with the columns {@code job}, {@code
 * at}, {@code question} and {@code outcome}. What the shop told by phone of its own accord is in
 * {@link CallsMade}.
 */
final class Callbacks {

  /** The file, relative to the shop folder. */
  static final String FILE = "callbacks.csv";

  static final LedgerCsv CSV =
      new LedgerCsv(
          FILE,
          "callbacks",
          "the list of customers' calls",
          List.of("job", "at", "question", "outcome"),
          "mend it, or delete the file: then the calls before today count no longer");

  private final Path shop;
  private final JobRows<CallNote> rows;

  private Callbacks(Path shop, JobRows<CallNote> rows) {
    this.shop = shop;
    this.rows = rows;
  }

  /**
   * Reads the calls of a shop folder; a folder without the file has none.
   *
   * @param shop the shop folder
   * @param problems where it is said what is wrong with the file
   * @return the calls, or empty where the file has problems: it must then not be written
   */
  static Optional<Callbacks> read(Path shop, Problems problems) {
    JobRows<CallNote> rows = new JobRows<>(CallNote::job);
    boolean whole =
        CSV.read(shop, problems, (fields, fault) -> row(fields, fault).ifPresent(rows::add));
    return whole ? Optional.of(new Callbacks(shop, rows)) : Optional.empty();
  }

  private static Optional<CallNote> row(List<String> fields, LedgerCsv.Fault fault) {
    Optional<CallOutcome> outcome = CallOutcome.of(fields.get(3));
    if (outcome.isEmpty()) {
      String known =
          Stream.of(CallOutcome.values()).map(CallOutcome::id).collect(Collectors.joining(", "));
      fault.say("\"" + fields.get(3) + "\" is none of " + known);
      return Optional.empty();
    }
    if (fields.get(0).isBlank() || fields.get(2).isBlank()) {
      fault.say("the row lacks its job or its question");
      return Optional.empty();
    }
    return LedgerCsv.dated(
        fault,
        () -> new CallNote(fields.get(0), time(fields.get(1)), fields.get(2), outcome.get()));
  }

  /** A day alone, typed by hand, counts as its noon. */
  private static LocalDateTime time(String text) {
    return LedgerCsv.time(text, LocalTime.NOON);
  }

  /** All calls in the order of the file. */
  List<CallNote> all() {
    return rows.all();
  }

  /** The calls of a job, the first first. */
  List<CallNote> of(String job) {
    return rows.of(job).stream().sorted(Comparator.comparing(CallNote::at)).toList();
  }

  /** The jobs whose customers called. */
  Set<String> jobs() {
    return rows.jobs();
  }

  /**
   * Adds a call, kept once {@link #save} was called.
   *
   * @param note the call
   */
  void add(CallNote note) {
    rows.add(note);
  }

  /**
   * Writes the file.
   *
   * @throws IOException where the shop folder cannot be written
   */
  void save() throws IOException {
    CSV.write(
        shop,
        rows.all().stream()
            .map(n -> List.of(n.job(), n.at().toString(), n.question(), n.outcome().id()))
            .toList());
  }
}
