package curewindow.site;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.problem.Problems;
import curewindow.told.JobView;
import curewindow.told.Printed;
import curewindow.told.PrintedDate;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The dates that stand on cards, so that none of them ever silently becomes unsafe. A date counts
 * as printed when its card was made to be handed over, which the command {@code card} does. Rows
 * are added where a date is new or differs from the last one, and never changed: the first row of a
 * hold is what was printed first, its last row what was printed last.
 *
 * <p>The file is {@code printed-dates.csv} in the shop folder, with the columns {@code job}, {@code
 * hold}, {@code state} ({@code safe-by}, {@code at-limit}, {@code by-season}, or {@code visit}
 * without a hold), {@code date} and {@code printed}. The visit stands on no card, but the page that
 * the card leads to asks for its day when the card is handed over.
 */
final class PrintedDates {

  /** The file, relative to the shop folder. */
  static final String FILE = "printed-dates.csv";

  static final LedgerCsv CSV =
      new LedgerCsv(
          FILE,
          "printed-dates",
          "the printed dates",
          List.of("job", "hold", "state", "date", "printed"),
          "mend it or bring it back from a backup: customers go by the dates on their cards");
  private static final String SAFE = "safe-by";
  private static final String LIMIT = "at-limit";
  private static final String SEASON = "by-season";

  private static final String VISIT = "visit";

  /** Written by earlier versions where no date was promised. */
  private static final String ASK = "ask-us";

  private final Path shop;
  private final JobRows<Row> rows;
  private boolean changed;

  private PrintedDates(Path shop, JobRows<Row> rows) {
    this.shop = shop;
    this.rows = rows;
  }

  /** The date is a day for a visit, else a time with its offset. */
  private record Row(String job, String hold, String state, String date, String printed) {

    /** Rows with a day alone were written by earlier versions; a call of that day came after. */
    LocalDateTime printedAt() {
      return LedgerCsv.time(printed, LocalTime.MIN);
    }

    boolean says(Row other) {
      return state.equals(other.state)
          && (isVisit() ? date.equals(other.date) : at().equals(other.at()));
    }

    boolean isVisit() {
      return state.equals(VISIT);
    }

    Instant at() {
      return OffsetDateTime.parse(date).toInstant();
    }

    ZoneOffset clock() {
      return OffsetDateTime.parse(date).getOffset();
    }

    LocalDate day() {
      return LocalDate.parse(date);
    }
  }

  /**
   * Reads the printed dates of a shop folder; a folder without them has none.
   *
   * @param shop the shop folder
   * @param problems where it is said what is wrong with the file
   * @return the dates, or empty where the file has problems: it must then not be written
   */
  static Optional<PrintedDates> read(Path shop, Problems problems) {
    JobRows<Row> rows = new JobRows<>(Row::job);
    boolean whole = CSV.read(shop, problems, (fields, fault) -> readRow(fields, rows, fault));
    return whole ? Optional.of(new PrintedDates(shop, rows)) : Optional.empty();
  }

  private static void readRow(List<String> fields, JobRows<Row> rows, LedgerCsv.Fault fault) {
    if (!List.of(SAFE, LIMIT, SEASON, VISIT, ASK).contains(fields.get(2))) {
      String states = String.join(", ", SAFE, LIMIT, SEASON, VISIT);
      fault.say("\"" + fields.get(2) + "\" is none of " + states);
    } else if (!fields.get(2).equals(ASK)) {
      LedgerCsv.dated(fault, () -> row(fields)).ifPresent(rows::add);
    }
  }

  private static Row row(List<String> fields) {
    String date = LedgerCsv.told(fields.get(3), fields.get(2).equals(VISIT));
    Row row = new Row(fields.get(0), fields.get(1), fields.get(2), date, fields.get(4));
    row.printedAt();
    return row;
  }

  /** The jobs whose cards have a date. */
  Set<String> jobs() {
    return rows.jobs();
  }

  /**
   * What the customer of a job was told, by the first card and by those since.
   *
   * @param job the job's id
   * @return one date for each hold, by hold, and the day of the visit
   */
  Printed of(String job) {
    return of(rows.of(job));
  }

  /**
   * What the customer of a job was told at any time: before the first card, and by each card and
   * those before it.
   *
   * @param job the job's id
   * @return what was told, the first first
   */
  List<Printed> everOf(String job) {
    List<Row> all = rows.of(job);
    Stream<Printed> since =
        all.stream()
            .map(Row::printed)
            .distinct()
            .map(p -> all.subList(0, lastOf(all, p) + 1))
            .map(PrintedDates::of);
    return Stream.concat(Stream.of(Printed.NOTHING), since).toList();
  }

  private static int lastOf(List<Row> rows, String printed) {
    return rows.stream().map(Row::printed).toList().lastIndexOf(printed);
  }

  private static Printed of(List<Row> rows) {
    Map<String, Row> first = new TreeMap<>();
    Map<String, Row> strictest = new TreeMap<>();
    Optional<LocalDate> visit = Optional.empty();
    for (Row row : rows) {
      if (row.isVisit()) {
        visit = Optional.of(row.day());
      } else {
        first.putIfAbsent(row.hold(), row);
        strictest.merge(row.hold(), row, PrintedDates::earlier);
      }
    }
    List<PrintedDate> dates =
        strictest.values().stream().map(r -> date(first.get(r.hold()), r)).toList();
    return new Printed(dates, visit);
  }

  /**
   * What the cards say of a hold that were handed over after a call.
   *
   * @param job the job's id
   * @param hold the hold's id
   * @param call when the customer was called, by the shop's clock
   * @return the date, or empty where there was no such card
   */
  Optional<PrintedDate> since(String job, String hold, LocalDateTime call) {
    List<Row> cards = rowsSince(job, hold, call);
    return cards.stream().reduce(PrintedDates::earlier).map(r -> date(cards.get(0), r));
  }

  /** The day of the visit that was asked for last with a card handed over after a call. */
  Optional<LocalDate> visitSince(String job, LocalDateTime call) {
    return rowsSince(job, "", call).stream().reduce((a, b) -> b).map(Row::day);
  }

  private List<Row> rowsSince(String job, String hold, LocalDateTime call) {
    return rows.of(job).stream()
        .filter(r -> r.hold().equals(hold) && r.printedAt().isAfter(call))
        .toList();
  }

  private static PrintedDate date(Row first, Row strictest) {
    return new PrintedDate(first.hold(), first.at(), strictest.at())
        .by(new PrintedDate.Clocks(first.clock(), strictest.clock()));
  }

  private static Row earlier(Row one, Row other) {
    return other.at().isBefore(one.at()) ? other : one;
  }

  /**
   * Adds which holds a card tells, and the day of the visit that is asked for with it, kept once
   * {@link #save} was called.
   *
   * @param view the job
   * @param dates the releases on its card; what is normal for a while is not kept, as nobody is
   *     called where it moves
   * @param now the time written beside new rows, by the shop's clock
   * @param called whether the customer of the job was told something else by phone since, by the
   *     hold's id: then a card that says the same as the last one is new to them
   */
  void add(JobView view, List<Release> dates, LocalDateTime now, Predicate<String> called) {
    String job = view.job().id();
    String printed = now.toString();
    List<Release> holds = dates.stream().filter(r -> r.kind() == HoldKind.HOLD).toList();
    for (Release release : holds) {
      String date = release.end().at().atZone(view.timeline().zone()).toOffsetDateTime().toString();
      add(new Row(job, release.hold(), state(release.end()), date, printed), called);
    }
    view.visit().ifPresent(v -> add(new Row(job, "", VISIT, v.day().toString(), printed), called));
  }

  private void add(Row row, Predicate<String> called) {
    Optional<Row> last =
        rows.of(row.job()).stream().filter(r -> r.hold().equals(row.hold())).reduce((a, b) -> b);
    if (last.filter(row::says).isEmpty() || called.test(row.hold())) {
      rows.add(row);
      changed = true;
    }
  }

  /** What the shop has seen to be over is safe. */
  private static String state(Release.End end) {
    return end instanceof Release.Seen ? SAFE : end.id();
  }

  /**
   * Writes the file if a row was added since it was read.
   *
   * @throws IOException where the shop folder cannot be written
   */
  void save() throws IOException {
    if (!changed) {
      return;
    }
    CSV.write(
        shop,
        rows.all().stream()
            .map(r -> List.of(r.job(), r.hold(), r.state(), r.date(), r.printed()))
            .toList());
    changed = false;
  }
}
