package curewindow.shop;

import curewindow.problem.Faults;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;

/** Reads all jobs of a shop folder, from their files and from jobs.csv. */
final class JobsReader {

  private static final String FOLDER = "jobs";

  /** Of how many jobs a problem names the ids. */
  private static final int SHOWN = 5;

  private final ShopFiles files;
  private final Problems problems;
  private final Known known;
  private final List<JobReader.Read> reads = new ArrayList<>();
  private final TreeSet<String> broken = new TreeSet<>();
  private final Map<Where, TreeSet<String>> inDoubt = new LinkedHashMap<>();

  JobsReader(ShopFiles files, Problems problems, Known known) {
    this.files = files;
    this.problems = problems;
    this.known = known;
  }

  /**
   * The good jobs by id, and the names of the others.
   *
   * @param inDoubt those of the others that an error of the catalogue leaves out, by its place
   */
  record Read(List<Job> good, List<String> broken, Map<Where, TreeSet<String>> inDoubt) {}

  Read read() {
    files.list(FOLDER, ".yaml").forEach(this::file);
    files.list(FOLDER, ".yml").forEach(this::otherEnding);
    if (files.has(CsvJobs.FILE)) {
      csv();
    }
    List<Job> good = new ArrayList<>();
    for (List<JobReader.Read> same : byId().values()) {
      boolean single = same.size() == 1;
      for (JobReader.Read read : same) {
        read.job()
            .filter(j -> single)
            .map(job -> job.asOf(known.now()).withoutReplaced())
            .ifPresentOrElse(good::add, () -> leftOut(read));
        if (!single) {
          duplicate(read, same);
        }
      }
    }
    good.sort(Comparator.comparing(Job::id));
    inDoubt.forEach(this::tellDoubt);
    return new Read(good, List.copyOf(broken), inDoubt);
  }

  private void leftOut(JobReader.Read read) {
    String name = read.id().orElse(read.where().file());
    broken.add(name);
    // Told once, however many errors of the catalogue concern it.
    read.causes().stream()
        .findFirst()
        .ifPresent(cause -> inDoubt.computeIfAbsent(cause, c -> new TreeSet<>()).add(name));
  }

  private void tellDoubt(Where cause, TreeSet<String> jobs) {
    int count = jobs.size();
    List<String> shown = jobs.stream().limit(count > SHOWN + 1 ? SHOWN : count).toList();
    String more = shown.size() < count ? " and " + (count - shown.size()) + " more" : "";
    problems.add(
        Problem.error(
            "unsure-jobs",
            cause,
            "the error here leaves out "
                + (count == 1 ? "1 job, whose" : count + " jobs, whose")
                + " dates would not be sure: "
                + String.join(", ", shown)
                + more,
            "mend it first"));
  }

  private void file(String file) {
    String name = Source.shown(file);
    Faults.guard(Where.file(name), problems, () -> job(file, new Source(name, problems)))
        .flatMap(Function.identity())
        .ifPresentOrElse(reads::add, () -> broken.add(name));
  }

  private Optional<JobReader.Read> job(String file, Source source) {
    return files
        .text(file, problems)
        .flatMap(t -> YamlTree.read(t, source))
        .map(n -> new JobReader(known, source).read(n))
        .map(read -> source.errors() == 0 ? read : read.without());
  }

  private void otherEnding(String file) {
    problems.add(
        Problem.error(
            "wrong-ending",
            Where.file(Source.shown(file)),
            "the file ends in .yml and is not read",
            "rename it so that it ends in .yaml"));
    broken.add(Source.shown(file));
  }

  private void csv() {
    Source source = new Source(CsvJobs.FILE, problems);
    Optional<String> text = files.text(CsvJobs.FILE, problems);
    JobReader reader = new JobReader(known, source);
    List<CsvJobs.Read> jobs = text.map(t -> new CsvJobs(source).read(t)).orElse(List.of());
    for (CsvJobs.Read job : jobs) {
      if (job.whole()) {
        Faults.guard(job.node().where(), problems, () -> reader.read(job.node()))
            .map(read -> job.agrees() ? read : read.without())
            .ifPresentOrElse(reads::add, () -> broken.add(Source.shown(job.id())));
      } else {
        broken.add(Source.shown(job.id()));
      }
    }
    if (jobs.isEmpty() && (text.isEmpty() || source.errors() > 0)) {
      broken.add(CsvJobs.FILE);
    }
  }

  private Map<String, List<JobReader.Read>> byId() {
    Map<String, List<JobReader.Read>> byId = new LinkedHashMap<>();
    for (JobReader.Read read : reads) {
      if (read.id().isEmpty()) {
        leftOut(read);
      } else {
        String key = read.id().get().toLowerCase(Locale.ROOT);
        byId.computeIfAbsent(key, k -> new ArrayList<>()).add(read);
      }
    }
    return byId;
  }

  private void duplicate(JobReader.Read read, List<JobReader.Read> same) {
    JobReader.Read other = same.get(0) == read ? same.get(1) : same.get(0);
    Where at = other.where();
    problems.add(
        Problem.error(
            "duplicate-id",
            read.where(),
            "the job "
                + read.id().orElseThrow()
                + " stands at "
                + at.file()
                + ":"
                + at.line()
                + ":"
                + at.column()
                + " too",
            "give one of them another id, or delete one; both are left out until then"));
  }
}
