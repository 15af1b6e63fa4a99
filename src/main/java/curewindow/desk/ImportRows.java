package curewindow.desk;

import curewindow.intake.IntakePlan;
import curewindow.intake.RowPlan;
import curewindow.intake.RowPlan.State;
import curewindow.shop.Car;
import curewindow.shop.Film;
import curewindow.shop.FittedItem;
import curewindow.shop.Job;
import curewindow.site.LoadedShop;
import curewindow.told.Listing;
import curewindow.words.Words;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What becomes of each row of a table, as the desk says it. */
final class ImportRows {

  /** More than anybody reads; what has a problem comes first. */
  static final int SHOWN = 200;

  /**
   * A row.
   *
   * @param state the name of what becomes of it
   * @param told the same for people
   * @param problems what is wrong with it, and what to do
   * @param read what was read from it, so that a column in the wrong place is seen; empty where it
   *     has a problem
   */
  record Row(
      int line,
      String job,
      String state,
      String told,
      List<String> problems,
      Optional<Read> read) {}

  /** What was read from a row, in words. */
  record Read(String car, String fitted, String finished, String pickup) {}

  /**
   * All rows.
   *
   * @param counts how many rows something becomes of, for people
   * @param more how many rows are not shown; empty where all are
   * @param jobs how many jobs are good
   * @param left how many rows have a problem
   */
  record Rows(List<String> counts, List<Row> rows, Optional<String> more, int jobs, long left) {}

  private final IntakePlan plan;
  private final boolean done;
  private final ImportTold told;
  private final Map<String, Film> films;
  private final ZoneId zone;
  private final Words words;

  private ImportRows(IntakePlan plan, boolean done, ImportTold told, LoadedShop shop, Words words) {
    this.plan = plan;
    this.done = done;
    this.told = told;
    this.films = shop.read().catalogue().films();
    this.zone = shop.shop().orElseThrow().zone();
    this.words = words;
  }

  /**
   * The rows of a plan.
   *
   * @param done whether it was carried out
   */
  static Rows of(IntakePlan plan, boolean done, ImportTold told, LoadedShop shop, Words words) {
    return new ImportRows(plan, done, told, shop, words).rows();
  }

  private Rows rows() {
    List<RowPlan> sorted =
        plan.rows().stream().sorted(Comparator.comparingInt(ImportRows::rank)).toList();
    int more = Math.max(0, sorted.size() - SHOWN);
    return new Rows(
        List.of(
            words.text(
                done ? "desk.import.count.done" : "desk.import.count.good",
                Map.of("n", plan.count(State.GOOD), "jobs", plan.jobs().size())),
            words.text("desk.import.count.there", Map.of("n", plan.count(State.THERE))),
            words.text("desk.import.count.left", Map.of("n", plan.count(State.LEFT)))),
        sorted.stream().limit(SHOWN).map(this::row).toList(),
        more == 0
            ? Optional.empty()
            : Optional.of(words.text("desk.import.more", Map.of("n", more))),
        plan.jobs().size(),
        plan.count(State.LEFT));
  }

  /** What needs a person first. */
  private static int rank(RowPlan row) {
    return switch (row.state()) {
      case LEFT -> 0;
      case GOOD -> row.problems().isEmpty() ? 2 : 1;
      case THERE -> 3;
    };
  }

  private Row row(RowPlan row) {
    String state = row.state().name().toLowerCase(Locale.ROOT);
    String key = done && row.state() == State.GOOD ? "imported" : state;
    return new Row(
        row.line(),
        row.job(),
        state,
        words.text("desk.import.state." + key),
        row.problems().stream().map(told::text).toList(),
        row.read().map(this::read));
  }

  private Read read(RowPlan.Read read) {
    Job job = read.job();
    FittedItem item = read.item();
    Car car = job.car();
    return new Read(
        joined(
            job.firstName(),
            car.text(),
            words.text("car.body." + car.body().id()),
            words.text("desk.paint." + car.paint().id())),
        joined(
            words.text("service." + item.service()),
            films.get(item.film()).name(),
            Listing.of(item.spots().stream().map(s -> words.text("spot." + s)).toList(), words),
            item.batch().orElse("")),
        time(item.finished()),
        time(job.pickup()));
  }

  private static String joined(String... parts) {
    return Stream.of(parts).filter(p -> !p.isBlank()).collect(Collectors.joining(" · "));
  }

  /** With its year, as day, month and year may have been taken for each other. */
  private String time(Instant at) {
    return words.date(at.atZone(zone).toLocalDate()) + ", " + words.time(at, zone);
  }
}
