package curewindow.shop;

import curewindow.problem.Problems;
import curewindow.shop.Node.Leaf;
import curewindow.shop.PastVisit.Result;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
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
  private static final List<String> COLUMNS = List.of("job", "day", "what", "result", "note");
  private static final Names RESULTS = Names.of("result", Result.ids());

  private final Source source;
  private final Catalogue catalogue;
  private final Map<String, Job> jobs = new TreeMap<>();
  private final Names names;
  private final ZoneId zone;
  private final LocalDate today;
  private final Map<String, List<PastVisit>> visits = new TreeMap<>();

  private VisitsReader(Source source, Known known, JobsReader.Read read, Instant now) {
    this.source = source;
    this.catalogue = known.catalogue();
    read.good().forEach(job -> jobs.put(job.id(), job));
    Broken broken = new Broken("its file");
    read.broken().forEach(broken::add);
    this.names = new Names("job", jobs.keySet(), broken);
    // Without a zone the shop is of no use, which is told elsewhere.
    this.zone = known.zone().orElse(ZoneOffset.UTC);
    this.today = LocalDate.ofInstant(now, zone);
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
   * @param now no visit is later than this
   * @param problems where problems go
   */
  static List<Job> read(
      ShopFiles files, Known known, JobsReader.Read jobs, Instant now, Problems problems) {
    if (!files.has(FILE)) {
      return jobs.good();
    }
    VisitsReader reader = new VisitsReader(new Source(FILE, problems), known, jobs, now);
    files.text(FILE, problems).ifPresent(reader::rows);
    return jobs.good().stream().map(reader::seen).toList();
  }

  private Job seen(Job job) {
    List<PastVisit> seen = visits.get(job.id());
    return seen == null ? job : job.seenAgain(seen);
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
    List<String> what = job.map(j -> what(line, j)).orElse(List.of());
    String note =
        Optional.ofNullable(line.cells().get("note"))
            .flatMap(c -> Values.note(c, 300, source))
            .orElse("");
    if (source.errors() == before && wasFitted(line, job.get(), day.get())) {
      visits
          .computeIfAbsent(job.get().id(), id -> new ArrayList<>())
          .add(new PastVisit(day.get(), what, result.get(), note));
    }
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
  private boolean wasFitted(CsvTable.Line line, Job job, LocalDate day) {
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

  private List<String> what(CsvTable.Line line, Job job) {
    Leaf cell = line.cells().get("what");
    if (cell == null) {
      return List.of();
    }
    Names there = Names.of("service or hold of the job", servicesAndHolds(job));
    Set<String> what = new LinkedHashSet<>();
    for (String word : cell.text().strip().split("\\s+")) {
      there.check(new Leaf(cell.where(), cell.type(), word), source).ifPresent(what::add);
    }
    return List.copyOf(what);
  }

  /** What may have been looked at: the services of a job, and the holds they bring. */
  private Set<String> servicesAndHolds(Job job) {
    Set<String> all =
        job.items().stream()
            .map(FittedItem::service)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    Set<String> services = Set.copyOf(all);
    catalogue.rules().stream()
        .filter(r -> services.contains(r.service()))
        .forEach(r -> all.add(r.rule().hold()));
    return all;
  }
}
