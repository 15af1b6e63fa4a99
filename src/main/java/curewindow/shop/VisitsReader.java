package curewindow.shop;

import curewindow.cure.Stay;
import curewindow.problem.Problems;
import curewindow.shop.Node.Leaf;
import curewindow.shop.PastVisit.Result;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Reads visits.csv: which cars the shop saw again, and what came of it, a row a visit. A row with a
 * problem is left out and told; all others count.
 */
final class VisitsReader {

  static final String FILE = "visits.csv";

  private static final List<String> REQUIRED = List.of("job", "day", "result");
  private static final List<String> COLUMNS =
      List.of("job", "day", "what", "result", "finished", "pickup", "note");
  private static final Names RESULTS = Names.of("result", Result.ids());

  private final Source source;
  private final Catalogue catalogue;
  private final Map<String, Job> jobs = new TreeMap<>();
  private final Names names;
  private final ZoneId zone;
  private final LocalDate today;
  private final Optional<Shop> shop;
  private final Map<String, List<PastVisit>> visits = new TreeMap<>();
  private final Map<String, List<Refit>> refits = new TreeMap<>();

  private VisitsReader(Source source, Known known, JobsReader.Read read) {
    this.source = source;
    this.catalogue = known.catalogue();
    read.good().forEach(job -> jobs.put(job.id(), job));
    Broken broken = new Broken("its file");
    read.broken().forEach(job -> broken.add(job.name()));
    read.inDoubt().forEach((cause, ids) -> ids.forEach(id -> broken.add(id, cause)));
    this.names = new Names("job", jobs.keySet(), broken);
    // Without a zone the shop is of no use, which is told elsewhere.
    this.zone = known.zone().orElse(ZoneOffset.UTC);
    this.today = LocalDate.ofInstant(known.now(), zone);
    this.shop = known.shop().shop();
  }

  /** All columns that the file may have. */
  static List<String> columns() {
    return COLUMNS;
  }

  /**
   * The good jobs, with what is known of them since.
   *
   * @param files the files of the shop folder
   * @param known what a file may refer to
   * @param jobs the jobs as they were fitted
   * @param problems where problems go
   */
  static List<Job> read(ShopFiles files, Known known, JobsReader.Read jobs, Problems problems) {
    if (!files.has(FILE)) {
      return jobs.good();
    }
    VisitsReader reader = new VisitsReader(new Source(FILE, problems), known, jobs);
    files.text(FILE, problems).ifPresent(reader::rows);
    return jobs.good().stream().map(reader::seen).toList();
  }

  private Job seen(Job job) {
    Job now = job;
    List<Refit> anew = new ArrayList<>(refits.getOrDefault(job.id(), List.of()));
    anew.sort(Comparator.comparing(refit -> refit.stay().in()));
    for (Refit refit : anew) {
      now = refit.on(now);
    }
    return now.seenAgain(visits.getOrDefault(job.id(), List.of()));
  }

  private void rows(String text) {
    CsvTable.read(text, REQUIRED, COLUMNS, source)
        .ifPresent(lines -> lines.stream().filter(CsvTable.Line::whole).forEach(this::row));
  }

  private void row(CsvTable.Line line) {
    int before = source.errors();
    Optional<Job> job = cell(line, "job").flatMap(c -> names.check(c, source)).map(jobs::get);
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
    if (source.errors() == before
        && (anew ? isRefit(line, job.get(), what, stay.get()) : wasFitted(line, job.get(), day))) {
      visits
          .computeIfAbsent(job.get().id(), id -> new ArrayList<>())
          .add(new PastVisit(day.get(), what, result.get(), note));
    }
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
      source.error(
          "missing-key",
          line.where(),
          "what is missing",
          "name the service or the spots that were fitted anew");
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
          "missing-key",
          line.where(),
          "pickup is missing, and the shop was closed on " + day,
          "fill in pickup, or check finished");
      return Optional.empty();
    }
    return Optional.of(
        shop.flatMap(s -> new OpenDays(s).closing(day))
            .map(time -> day.atTime(time).atZone(zone).toInstant())
            .filter(at -> at.isAfter(finished))
            .orElse(finished));
  }

  private boolean isRefit(CsvTable.Line line, Job job, List<String> what, Stay stay) {
    Refit refit =
        new Refit(
            what.stream().filter(catalogue.services()::containsKey).toList(),
            what.stream().filter(w -> !catalogue.services().containsKey(w)).toList(),
            stay);
    if (!refit.concerns(job)) {
      source.error(
          "nothing-to-refit",
          line.cells().get("what").where(),
          "nothing of that was fitted on the car before",
          "check what, and the time of finished");
      return false;
    }
    HardlyMeant.night(stay.in(), zone, line.cells().get("finished").where(), source);
    Leaf pickup = line.cells().getOrDefault("pickup", line.cells().get("finished"));
    HardlyMeant.late(stay.in(), stay.pickup(), zone, pickup.where(), source);
    refits.computeIfAbsent(job.id(), id -> new ArrayList<>()).add(refit);
    return true;
  }

  /** A cell that must not be empty. */
  private Optional<Leaf> cell(CsvTable.Line line, String column) {
    Optional<Leaf> cell = Optional.ofNullable(line.cells().get(column));
    if (cell.isEmpty()) {
      source.error("missing-key", line.where(), column + " is missing", "fill in " + column);
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
    for (String word : cell.text().strip().split("\\s+")) {
      there.check(new Leaf(cell.where(), cell.type(), word), source).ifPresent(what::add);
    }
    return List.copyOf(what);
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
