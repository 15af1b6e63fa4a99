package curewindow.shop;

import curewindow.cure.Stay;
import curewindow.problem.Problem;
import curewindow.shop.Node.Leaf;
import curewindow.shop.PastVisit.Result;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads one row of visits.csv. */
final class VisitRowReader {

  static final List<String> REQUIRED = List.of("job", "day", "result");
  static final List<String> COLUMNS =
      List.of("job", "day", "what", "result", "finished", "pickup", "note");

  private static final Names RESULTS = Names.of("result", Result.ids());

  private final Source source;
  private final Catalogue catalogue;
  private final ZoneId zone;
  private final Instant now;
  private final LocalDate today;
  private final Optional<Shop> shop;

  VisitRowReader(Source source, Known known) {
    this.source = source;
    this.catalogue = known.catalogue();
    // Without a zone the shop is of no use, which is told elsewhere.
    this.zone = known.zone().orElse(ZoneOffset.UTC);
    this.now = known.now();
    this.today = LocalDate.ofInstant(now, zone);
    this.shop = known.shop().shop();
  }

  /**
   * A good row.
   *
   * @param visit what came of the visit
   * @param refit what was fitted anew, if anything was
   */
  record Read(PastVisit visit, Optional<Refit> refit) {}

  /**
   * A row, or empty after telling what is wrong with it.
   *
   * @param line a whole row
   * @param job the job; empty, after telling why, where it is not known
   */
  Optional<Read> read(CsvTable.Line line, Optional<Job> job) {
    int before = source.errors();
    Optional<LocalDate> day = cell(line, "day").flatMap(this::day);
    Optional<Result> result =
        cell(line, "result").flatMap(c -> RESULTS.check(c, source)).map(Result::of);
    boolean anew = result.filter(r -> r == Result.REFITTED).isPresent();
    List<String> what =
        job.map(j -> what(line, anew ? workOf(j) : servicesAndHolds(j))).orElse(List.of());
    Optional<Stay> stay = result.isEmpty() ? Optional.empty() : stay(line, day, anew);
    String note =
        Optional.ofNullable(line.cells().get("note"))
            .flatMap(c -> Values.note(c, 300, source))
            .orElse("");
    if (job.isEmpty() || source.errors() > before) {
      return Optional.empty();
    }
    Optional<Refit> refit = stay.map(s -> refit(what, s));
    boolean good =
        refit.map(r -> isOf(job.get(), r, line)).orElseGet(() -> wasFitted(line, job.get(), day));
    return good
        ? Optional.of(new Read(new PastVisit(day.get(), what, result.get(), note), refit))
        : Optional.empty();
  }

  /**
   * Whether a row whose job cannot be told may make dates of a job later: it may say that something
   * was fitted anew after the car had left. Whatever else a visit brings can only end a hold
   * sooner.
   */
  boolean mayDelay(CsvTable.Line line, Job job) {
    if (!line.whole()) {
      return mayDelay(job);
    }
    String result = text(line, "result");
    if (RESULTS.known().contains(result) && Result.of(result) != Result.REFITTED) {
      return false;
    }
    Instant finished =
        Times.read(text(line, "finished"), Optional.of(zone)) instanceof TypedTime.Moment moment
            ? moment.at()
            : now;
    List<String> what = words(text(line, "what")).toList();
    boolean all = !what.stream().allMatch(this::isWork);
    return job.leftBy(finished)
        && refit(all ? List.of() : what, new Stay(finished, finished)).concerns(job);
  }

  /** Whether rows that cannot be read at all may make dates of a job later. */
  boolean mayDelay(Job job) {
    return job.leftBy(now);
  }

  private static String text(CsvTable.Line line, String column) {
    return Optional.ofNullable(line.cells().get(column)).map(c -> c.text().strip()).orElse("");
  }

  private boolean isWork(String word) {
    return catalogue.services().containsKey(word) || catalogue.spots().containsKey(word);
  }

  private Refit refit(List<String> what, Stay stay) {
    Predicate<String> isService = catalogue.services()::containsKey;
    return new Refit(
        what.stream().filter(isService).toList(),
        what.stream().filter(isService.negate()).toList(),
        stay);
  }

  /**
   * From the new finish until the car left; empty, maybe after telling why, where there is none.
   */
  private Optional<Stay> stay(CsvTable.Line line, Optional<LocalDate> day, boolean anew) {
    if (!anew) {
      for (String column : List.of("finished", "pickup")) {
        Optional.ofNullable(line.cells().get(column)).ifPresent(this::notRefitted);
      }
      return Optional.empty();
    }
    if (!line.cells().containsKey("what")) {
      source.missing(line.where(), "what", "name the service or the spots that were fitted anew");
    }
    Optional<Instant> finished =
        cell(line, "finished")
            .flatMap(c -> Times.moment(c, Optional.of(zone), source).filter(t -> onDay(t, day, c)));
    Optional<Instant> left =
        Optional.ofNullable(line.cells().get("pickup"))
            .flatMap(c -> Times.moment(c, Optional.of(zone), source));
    if (finished.isPresent() && left.isPresent() && left.get().isBefore(finished.get())) {
      source.error(
          "finished-after-pickup",
          line.cells().get("finished").where(),
          "the work is finished after the pickup",
          "check finished and pickup");
      return Optional.empty();
    }
    return finished.flatMap(at -> left.or(() -> closing(at, line)).map(l -> new Stay(at, l)));
  }

  private void notRefitted(Leaf cell) {
    source.error(
        "not-refitted",
        cell.where(),
        Values.lastKey(cell) + " is given, but nothing was fitted anew",
        "leave it empty, or write refitted as the result");
  }

  private boolean onDay(Instant finished, Optional<LocalDate> visit, Leaf cell) {
    LocalDate day = day(finished);
    if (visit.isEmpty() || !day.isBefore(visit.get()) && !day.isAfter(today)) {
      return true;
    }
    source.error(
        "finished-not-then",
        cell.where(),
        "finished is before the day of the visit or still to come: " + day,
        "check day and finished");
    return false;
  }

  /**
   * When the shop closes on the day of a finish, or the finish where that is later or no hours are
   * stated. On a day on which it is closed nobody can know.
   */
  private Optional<Instant> closing(Instant finished, CsvTable.Line line) {
    LocalDate day = day(finished);
    if (shop.filter(s -> !s.opening().isEmpty() && !new OpenDays(s).isOpen(day)).isPresent()) {
      source.error(
          Problem.missing(
              line.where(),
              "pickup",
              "pickup is missing, and the shop was closed on " + day,
              "fill in pickup, or check finished"));
      return Optional.empty();
    }
    return Optional.of(
        shop.flatMap(s -> new OpenDays(s).closing(day))
            .map(time -> day.atTime(time).atZone(zone).toInstant())
            .filter(at -> at.isAfter(finished))
            .orElse(finished));
  }

  private boolean isOf(Job job, Refit refit, CsvTable.Line line) {
    Leaf finished = line.cells().get("finished");
    if (!refit.concerns(job)) {
      source.error(
          "nothing-to-refit",
          line.cells().get("what").where(),
          "nothing of that was fitted on the car before",
          "check what, and the time of finished");
      return false;
    }
    if (!job.leftBy(refit.stay().in())) {
      source.error(
          "not-left",
          finished.where(),
          "the car had not left the shop by then",
          "check finished; what was done again before the first pickup goes into the job itself");
      return false;
    }
    HardlyMeant.night(refit.stay().in(), zone, finished.where(), source);
    Leaf pickup = line.cells().getOrDefault("pickup", finished);
    PickupSlips.late(refit.stay().in(), refit.stay().pickup(), zone, pickup.where(), source);
    return true;
  }

  /** A cell that must not be empty. */
  Optional<Leaf> cell(CsvTable.Line line, String column) {
    Optional<Leaf> cell = Optional.ofNullable(line.cells().get(column));
    if (cell.isEmpty()) {
      source.missing(line.where(), column, "fill in " + column);
    }
    return cell;
  }

  private Optional<LocalDate> day(Leaf cell) {
    Optional<LocalDate> day = Times.day(cell, source);
    if (day.isPresent() && day.get().isAfter(today)) {
      source.error(
          "not-yet",
          cell.where(),
          "day has not come yet: " + day.get(),
          "check the day; a visit gets its row once the shop has seen the car");
      return Optional.empty();
    }
    return day;
  }

  /** What is seen on the day on which it is fitted is no visit. */
  private boolean wasFitted(CsvTable.Line line, Job job, Optional<LocalDate> visit) {
    LocalDate day = visit.orElseThrow();
    if (job.items().stream().anyMatch(i -> day(i.finished()).isBefore(day))) {
      return true;
    }
    source.error(
        "nothing-to-see",
        line.where(),
        "nothing of the job " + job.id() + " was finished before " + day,
        "check the job and the day");
    return false;
  }

  private LocalDate day(Instant at) {
    return LocalDate.ofInstant(at, zone);
  }

  private List<String> what(CsvTable.Line line, Names there) {
    Leaf cell = line.cells().get("what");
    if (cell == null) {
      return List.of();
    }
    Set<String> what = new LinkedHashSet<>();
    words(cell.text())
        .forEach(
            w -> there.check(new Leaf(cell.where(), cell.type(), w), source).ifPresent(what::add));
    return List.copyOf(what);
  }

  private static Stream<String> words(String text) {
    return Stream.of(text.strip().split("\\s+"));
  }

  /** What may have been looked at: the services of a job, and the holds they bring. */
  private Names servicesAndHolds(Job job) {
    Set<String> all = services(job);
    Set<String> services = Set.copyOf(all);
    catalogue.rules().stream()
        .filter(r -> services.contains(r.service()))
        .forEach(r -> all.add(r.rule().hold()));
    return Names.of("service or hold of the job", all);
  }

  /** What may have been fitted anew. */
  private static Names workOf(Job job) {
    Set<String> all = services(job);
    job.items().forEach(item -> all.addAll(item.spots()));
    return Names.of("service or spot of the job", all);
  }

  private static Set<String> services(Job job) {
    return job.items().stream()
        .map(FittedItem::service)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }
}
