package curewindow.site;

import curewindow.page.Printed;
import curewindow.page.PrintedDate;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What customers were told by phone after their card: from then on that is what they know. Rows are
 * added and never changed.
 *
 * <p>The file is {@code calls.csv} in the shop folder, with the columns {@code job}, {@code day},
 * {@code hold} (empty for the visit) and {@code told}.
 */
final class CallsMade {

  /** The file, relative to the shop folder. */
  static final String FILE = "calls.csv";

  private static final LedgerCsv CSV =
      new LedgerCsv("the list of calls", List.of("job", "day", "hold", "told"));

  private final Path file;
  private final List<Row> rows;

  private CallsMade(Path file, List<Row> rows) {
    this.file = file;
    this.rows = rows;
  }

  /** What was told is a day for the visit, which has no hold, else a time with its offset. */
  private record Row(String job, LocalDate day, String hold, String told) {

    Instant at() {
      return OffsetDateTime.parse(told).toInstant();
    }
  }

  /**
   * Reads the calls of a shop folder; a folder without the file has none.
   *
   * @param shop the shop folder
   * @param problems where it is said what is wrong with the file
   * @return the calls, or empty where the file has problems: it must then not be written
   */
  static Optional<CallsMade> read(Path shop, Problems problems) {
    Path file = shop.resolve(FILE);
    List<Row> rows = new ArrayList<>();
    int before = problems.errorCount();
    if (Files.exists(file)) {
      CSV.read(
          file,
          (fields, line) -> row(fields, line, problems).ifPresent(rows::add),
          (line, message) -> problem(line, message, problems));
    }
    return problems.errorCount() > before
        ? Optional.empty()
        : Optional.of(new CallsMade(file, rows));
  }

  private static Optional<Row> row(List<String> fields, int line, Problems problems) {
    String read = fields.get(1);
    try {
      LocalDate day = LocalDate.parse(read);
      read = fields.get(3);
      boolean visit = fields.get(2).isEmpty();
      String told = (visit ? LocalDate.parse(read) : OffsetDateTime.parse(read)).toString();
      return Optional.of(new Row(fields.get(0), day, fields.get(2), told));
    } catch (DateTimeException e) {
      problem(line, "\"" + read + "\" is not a date that Curewindow wrote", problems);
      return Optional.empty();
    }
  }

  private static void problem(int line, String message, Problems problems) {
    problems.add(
        Problem.error(
            "calls",
            new Where(FILE, line, line == 0 ? 0 : 1, ""),
            message,
            "mend it, or delete the file: then those who were called are asked for again"));
  }

  /**
   * What the customer of a job knows: what was said by phone in place of what a card says that was
   * not handed over since.
   *
   * @param job the job's id
   * @param cards what its cards say
   * @param printed on which day they said so first
   * @return what counts now
   */
  Printed over(String job, Printed cards, PrintedDates printed) {
    List<PrintedDate> dates =
        cards.dates().stream()
            .map(
                d ->
                    last(job, d.hold(), printed)
                        .map(row -> new PrintedDate(d.hold(), row.at(), row.at()))
                        .orElse(d))
            .toList();
    Optional<LocalDate> visit = last(job, "", printed).map(row -> LocalDate.parse(row.told()));
    return new Printed(dates, visit.or(cards::visit));
  }

  private Optional<Row> last(String job, String hold, PrintedDates printed) {
    Optional<LocalDate> card = printed.lastDay(job, hold);
    return rows.stream()
        .filter(r -> r.job().equals(job) && r.hold().equals(hold))
        .reduce((a, b) -> b)
        .filter(r -> card.filter(day -> day.isAfter(r.day())).isEmpty());
  }

  /**
   * Adds what was told, kept once {@link #save} was called.
   *
   * @param job the job's id
   * @param day the day of the call, by the shop's calendar
   * @param hold the hold's id; empty for the visit
   * @param told the date, as ISO 8601 with its offset; of the visit a day
   */
  void add(String job, LocalDate day, String hold, String told) {
    rows.add(new Row(job, day, hold, told));
  }

  /**
   * Writes the file.
   *
   * @throws IOException where the shop folder cannot be written
   */
  void save() throws IOException {
    CSV.write(
        file,
        rows.stream().map(r -> List.of(r.job(), r.day().toString(), r.hold(), r.told())).toList());
  }
}
