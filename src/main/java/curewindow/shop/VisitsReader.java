package curewindow.shop;

import curewindow.problem.Nearest;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * Reads visits.csv: which cars the shop saw again, and what came of it, a row a visit. Without a
 * row a page could call free what was fitted anew, so a row with a problem leaves out its job; one
 * whose job cannot be told, or rows that cannot be read, leave out all whose dates may hang on
 * them.
 */
final class VisitsReader {

  static final String FILE = "visits.csv";

  /** Where one of these is lost, so are the ids of its jobs. */
  private static final Set<String> MANY = Set.of(CsvJobs.FILE, JobsReader.FOLDER);

  private final Source source;
  private final VisitRowReader reader;
  private final Map<String, Job> jobs = new TreeMap<>();
  private final Names names;
  private final Map<String, List<PastVisit>> visits = new TreeMap<>();
  private final Map<String, List<Refit>> refits = new TreeMap<>();

  /** The rows with a problem, by the job's id. */
  private final Map<String, List<BrokenJob.Part>> wrong = new TreeMap<>();

  private final Map<Where, TreeSet<String>> inDoubt = new LinkedHashMap<>();

  private VisitsReader(Source source, Known known, JobsReader.Read read) {
    this.source = source;
    this.reader = new VisitRowReader(source, known);
    read.good().forEach(job -> jobs.put(job.id(), job));
    this.names = new Names(Names.JOB, jobs.keySet(), broken(read));
  }

  private static Broken broken(JobsReader.Read read) {
    Broken broken = new Broken("its file");
    for (BrokenJob job : read.broken()) {
      broken.add(BrokenJob.likelyId(job.name()));
      if (MANY.contains(job.name())) {
        broken.addAll(Where.file(job.name()));
      }
    }
    read.inDoubt().forEach((cause, ids) -> ids.forEach(id -> broken.add(id, cause)));
    return broken;
  }

  /**
   * The jobs, with what is known of them since.
   *
   * @param files the files of the shop folder
   * @param known what a file may refer to
   * @param jobs the jobs as they were fitted
   * @param problems where problems go
   */
  static JobsReader.Read read(
      ShopFiles files, Known known, JobsReader.Read jobs, Problems problems) {
    if (!files.has(FILE)) {
      return jobs;
    }
    VisitsReader reader = new VisitsReader(new Source(FILE, problems), known, jobs);
    files.text(FILE, problems).ifPresentOrElse(reader::rows, () -> reader.lost(Where.file(FILE)));
    UnsureJobs.tell(reader.inDoubt, problems);
    return reader.seen(jobs);
  }

  private void rows(String text) {
    Optional<CsvTable.Rows> rows =
        CsvTable.read(text, VisitRowReader.REQUIRED, VisitRowReader.COLUMNS, source);
    rows.ifPresentOrElse(r -> r.lines().forEach(this::row), () -> lost(source.firstAfter(0)));
    rows.flatMap(CsvTable.Rows::cut).ifPresent(this::lost);
  }

  private void row(CsvTable.Line line) {
    int before = source.errors();
    Optional<String> id = Optional.ofNullable(line.cells().get("job")).map(c -> c.text().strip());
    Optional<Job> job = id.map(jobs::get);
    if (line.whole()) {
      if (job.isEmpty()) {
        reader.cell(line, "job").ifPresent(c -> names.check(c, source));
      }
      reader.read(line, job).ifPresent(read -> add(job.orElseThrow(), read));
    }
    boolean isGood = line.whole() && source.errors() == before;
    if (!isGood && job.isPresent()) {
      BrokenJob.Part part = new BrokenJob.Part(FILE, line.where().line(), line.last());
      wrong.computeIfAbsent(id.get(), i -> new ArrayList<>()).add(part);
    } else if (!isGood && id.filter(names.broken()::has).isEmpty()) {
      Where cause = line.whole() ? source.firstAfter(before) : line.where();
      Predicate<Job> meant = line.whole() ? meant(id) : j -> true;
      doubt(cause, meant.and(j -> reader.mayDelay(line, j)));
    }
  }

  /** Which jobs an unknown id may be a slip of; where there is none, any. */
  private Predicate<Job> meant(Optional<String> id) {
    Optional<List<String>> near = id.map(typed -> Nearest.allClose(typed, jobs.keySet()));
    return job -> near.isEmpty() || near.get().contains(job.id());
  }

  private void add(Job job, VisitRowReader.Read read) {
    visits.computeIfAbsent(job.id(), id -> new ArrayList<>()).add(read.visit());
    read.refit().ifPresent(r -> refits.computeIfAbsent(job.id(), id -> new ArrayList<>()).add(r));
  }

  private void lost(Where cause) {
    doubt(cause, reader::mayDelay);
  }

  /** Each job is told at the first error that concerns it. */
  private void doubt(Where cause, Predicate<Job> mayBe) {
    jobs.values().stream()
        .filter(mayBe)
        .map(Job::id)
        .filter(id -> inDoubt.values().stream().noneMatch(told -> told.contains(id)))
        .forEach(id -> inDoubt.computeIfAbsent(cause, c -> new TreeSet<>()).add(id));
  }

  private JobsReader.Read seen(JobsReader.Read read) {
    inDoubt.values().forEach(ids -> ids.forEach(id -> wrong.putIfAbsent(id, List.of())));
    List<BrokenJob> broken = new ArrayList<>(read.broken());
    wrong.forEach((id, parts) -> broken.add(new BrokenJob(id, parts)));
    broken.sort(Comparator.comparing(BrokenJob::name));
    return new JobsReader.Read(
        read.good().stream().filter(j -> !wrong.containsKey(j.id())).map(this::seen).toList(),
        broken,
        read.inDoubt());
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
}
