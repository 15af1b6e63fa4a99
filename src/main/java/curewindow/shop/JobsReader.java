package curewindow.shop;

import curewindow.problem.Faults;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads all jobs of a shop folder, from their files and from jobs.csv. */
final class JobsReader {

  static final String FOLDER = "jobs";
  private static final String ENDING = ".yaml";

  /** How a file ends that was hardly meant to be passed over. */
  private static final Pattern OTHER_ENDING =
      Pattern.compile("[.]ya?ml([.]txt)?$", Pattern.CASE_INSENSITIVE);

  private final ShopFiles files;
  private final Problems problems;
  private final Known known;
  private final List<Placed> reads = new ArrayList<>();

  /** Where the jobs stand that are left out, by their names. */
  private final Map<String, List<BrokenJob.Part>> broken = new TreeMap<>();

  private final Map<Where, TreeSet<String>> inDoubt = new LinkedHashMap<>();

  JobsReader(ShopFiles files, Problems problems, Known known) {
    this.files = files;
    this.problems = problems;
    this.known = known;
  }

  /**
   * The good jobs by id, and the others by name.
   *
   * @param inDoubt those of the others that an error of the catalogue leaves out, by its place
   */
  record Read(List<Job> good, List<BrokenJob> broken, Map<Where, TreeSet<String>> inDoubt) {}

  /** A job as far as it could be read, and where it stands. */
  private record Placed(JobReader.Read read, List<BrokenJob.Part> parts) {}

  Read read() {
    if (files.isNoFolder(FOLDER, problems)) {
      leftOut(FOLDER, List.of(BrokenJob.Part.whole(FOLDER)));
    }
    files(files.list(FOLDER, ENDING));
    files.list(FOLDER, "").forEach(this::otherEnding);
    files.folders(FOLDER).forEach(this::folder);
    if (files.has(CsvJobs.FILE)) {
      csv();
    }
    List<Job> good = new ArrayList<>();
    for (List<Placed> same : byId().values()) {
      boolean single = same.size() == 1;
      for (Placed placed : same) {
        placed
            .read()
            .job()
            .filter(j -> single)
            .map(job -> job.asOf(known.now()).withoutReplaced())
            .ifPresentOrElse(good::add, () -> leftOut(placed));
        if (!single) {
          duplicate(placed, same);
        }
      }
    }
    good.sort(Comparator.comparing(Job::id));
    UnsureJobs.tell(inDoubt, problems);
    return new Read(
        good,
        broken.entrySet().stream().map(e -> new BrokenJob(e.getKey(), e.getValue())).toList(),
        inDoubt);
  }

  private void leftOut(Placed placed) {
    JobReader.Read read = placed.read();
    String name = read.id().orElse(read.where().file());
    leftOut(name, placed.parts());
    // Told once, however many errors of the catalogue concern it.
    read.causes().stream()
        .findFirst()
        .ifPresent(cause -> inDoubt.computeIfAbsent(cause, c -> new TreeSet<>()).add(name));
  }

  private void leftOut(String name, List<BrokenJob.Part> parts) {
    broken.computeIfAbsent(name, n -> new ArrayList<>()).addAll(parts);
  }

  private void files(List<String> names) {
    List<Optional<Optional<JobReader.Read>>> each =
        Faults.guardEach(names, name -> Where.file(Source.shown(name)), problems, this::job);
    for (int i = 0; i < names.size(); i++) {
      String name = Source.shown(names.get(i));
      List<BrokenJob.Part> parts = List.of(BrokenJob.Part.whole(name));
      each.get(i)
          .flatMap(Function.identity())
          .ifPresentOrElse(read -> reads.add(new Placed(read, parts)), () -> leftOut(name, parts));
    }
  }

  private Optional<JobReader.Read> job(String file, Problems found) {
    Source source = new Source(Source.shown(file), found);
    return files
        .text(file, found)
        .flatMap(t -> YamlTree.read(t, source))
        .map(n -> new JobReader(known, source).read(n))
        .map(read -> source.errors() == 0 ? read : read.without());
  }

  private void otherEnding(String file) {
    Matcher other = OTHER_ENDING.matcher(file);
    if (!file.endsWith(ENDING) && other.find()) {
      String name = Source.shown(file);
      problems.add(
          Problem.error(
              "wrong-ending",
              Where.file(name),
              "the file ends in " + other.group() + " and is not read",
              "rename it so that it ends in .yaml"));
      leftOut(name, List.of(BrokenJob.Part.whole(name)));
    } else if (!file.endsWith(ENDING) && isNeither(files.root().resolve(file))) {
      // Such as a link to a folder of jobs on a disk that is not there today.
      files.text(file, problems);
    }
  }

  private static boolean isNeither(Path path) {
    return !Files.isDirectory(path) && ShopFiles.insteadOfFile(path).isPresent();
  }

  /** A shop may keep old jobs away in a folder, so this is only noted. */
  private void folder(String name) {
    String folder = FOLDER + "/" + name;
    if (!name.startsWith(".") && !files.list(folder, ENDING).isEmpty()) {
      problems.add(
          Problem.notice(
              "folder-of-jobs",
              Where.file(Source.shown(folder)),
              "the jobs in this folder are not read",
              "put those that are to be made into jobs itself"));
    }
  }

  private void csv() {
    Source source = new Source(CsvJobs.FILE, problems);
    Optional<String> text = files.text(CsvJobs.FILE, problems);
    JobReader reader = new JobReader(known, source);
    CsvJobs csv = new CsvJobs(source);
    List<CsvJobs.Read> jobs = text.map(csv::read).orElse(List.of());
    for (CsvJobs.Read job : jobs) {
      if (job.whole()) {
        Faults.guard(job.node().where(), problems, () -> reader.read(job.node()))
            .map(read -> job.agrees() ? read : read.without())
            .ifPresentOrElse(read -> reads.add(new Placed(read, job.parts())), () -> leftOut(job));
      } else {
        leftOut(job);
      }
    }
    if (text.isEmpty() || csv.hasLost()) {
      leftOut(CsvJobs.FILE, List.of());
    }
  }

  private void leftOut(CsvJobs.Read job) {
    leftOut(Source.shown(job.id()), job.parts());
  }

  private Map<String, List<Placed>> byId() {
    Map<String, List<Placed>> byId = new LinkedHashMap<>();
    for (Placed placed : reads) {
      Optional<String> id = placed.read().id();
      if (id.isEmpty()) {
        leftOut(placed);
      } else {
        byId.computeIfAbsent(id.get().toLowerCase(Locale.ROOT), k -> new ArrayList<>()).add(placed);
      }
    }
    return byId;
  }

  private void duplicate(Placed placed, List<Placed> same) {
    JobReader.Read read = placed.read();
    JobReader.Read other = (same.get(0) == placed ? same.get(1) : same.get(0)).read();
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
