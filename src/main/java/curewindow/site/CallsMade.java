package curewindow.site;

import curewindow.problem.Problems;
import curewindow.told.Printed;
import curewindow.told.PrintedDate;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/**
 * What customers were told by phone after their card: from then on that is what they know. Rows are
 * added and never changed; one that was noted by mistake is taken back on its day.
 *
 * <p>The file is {@code calls.csv} in the shop folder, with the columns {@code job}, {@code day},
 * {@code hold} (empty for the visit) and {@code told}.
 */
final class CallsMade {

  /** The file, relative to the shop folder. */
  static final String FILE = "calls.csv";

  static final LedgerCsv CSV =
      new LedgerCsv(
          FILE,
          "calls",
          "the list of calls",
          List.of("job", "day", "hold", "told"),
          "mend it, or delete the file: then those who were called are asked for again");

  private final Path shop;
  private final JobRows<Row> rows;

  private CallsMade(Path shop, JobRows<Row> rows) {
    this.shop = shop;
    this.rows = rows;
  }

  /** What was told is a day for the visit, which has no hold, else a time with its offset. */
  private record Row(String job, String day, String hold, String told) {

    /** Rows with a day alone were written by earlier versions; they count for the whole day. */
    LocalDateTime calledAt() {
      return LedgerCsv.time(day, LocalTime.MAX);
    }

    PrintedDate date() {
      OffsetDateTime at = OffsetDateTime.parse(told);
      return new PrintedDate(hold, at.toInstant(), at.toInstant())
          .by(new PrintedDate.Clocks(at.getOffset(), at.getOffset()));
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
    JobRows<Row> rows = new JobRows<>(Row::job);
    boolean whole =
        CSV.read(
            shop,
            problems,
            (fields, fault) -> LedgerCsv.dated(fault, () -> row(fields)).ifPresent(rows::add));
    return whole ? Optional.of(new CallsMade(shop, rows)) : Optional.empty();
  }

  private static Row row(List<String> fields) {
    String told = LedgerCsv.told(fields.get(3), fields.get(2).isEmpty());
    Row row = new Row(fields.get(0), fields.get(1), fields.get(2), told);
    row.calledAt();
    return row;
  }

  /**
   * What the customer of a job knows: what was said by phone in place of what cards said before,
   * and what a card says that was handed over since in place of both.
   *
   * @param job the job's id
   * @param cards what its cards say
   * @param printed when they said so
   * @return what counts now
   */
  Printed over(String job, Printed cards, PrintedDates printed) {
    List<PrintedDate> dates =
        cards.dates().stream()
            .map(d -> last(job, d.hold()).map(call -> known(call, printed)).orElse(d))
            .toList();
    Optional<LocalDate> visit =
        last(job, "")
            .map(c -> printed.visitSince(job, c.calledAt()).orElse(LocalDate.parse(c.told())));
    return new Printed(dates, visit.or(cards::visit));
  }

  private static PrintedDate known(Row call, PrintedDates printed) {
    return printed.since(call.job(), call.hold(), call.calledAt()).orElseGet(call::date);
  }

  /**
   * Whether what was said by phone is the last that the customer of a job was told of a hold.
   *
   * @param job the job's id
   * @param hold the hold's id; empty for the visit
   * @param printed when cards said something of it
   * @return true where they were called, and no card says another thing since
   */
  boolean areLast(String job, String hold, PrintedDates printed) {
    return last(job, hold)
        .filter(
            call ->
                hold.isEmpty()
                    ? printed.visitSince(job, call.calledAt()).isEmpty()
                    : printed.since(job, hold, call.calledAt()).isEmpty())
        .isPresent();
  }

  /** What the customer of a job was told, the first first. */
  List<ToldNote> of(String job) {
    return rows.of(job).stream()
        .map(r -> new ToldNote(r.calledAt().toLocalDate(), r.hold(), r.told()))
        .toList();
  }

  private Optional<Row> last(String job, String hold) {
    return rows.of(job).stream().filter(r -> r.hold().equals(hold)).reduce((a, b) -> b);
  }

  /**
   * Adds what was told, kept once {@link #save} was called.
   *
   * @param job the job's id
   * @param at the time of the call, by the shop's clock
   * @param hold the hold's id; empty for the visit
   * @param told the date, as ISO 8601 with its offset; of the visit a day
   */
  void add(String job, LocalDateTime at, String hold, String told) {
    rows.add(new Row(job, at.toString(), hold, told));
  }

  /**
   * Writes the file.
   *
   * @throws IOException where the shop folder cannot be written
   */
  void save() throws IOException {
    CSV.write(
        shop, rows.all().stream().map(r -> List.of(r.job(), r.day(), r.hold(), r.told())).toList());
  }
}
