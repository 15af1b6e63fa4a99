package curewindow.cli;

import curewindow.shop.Job;
import curewindow.site.LoadedShop;
import java.io.PrintWriter;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** The jobs that handouts are made for: those named, or all of a day. */
final class CardJobs {

  @Spec(Target.MIXEE)
  private CommandSpec spec;

  @Parameters(paramLabel = "JOB", arity = "0..*", description = "the ids of the jobs")
  private List<String> ids = new ArrayList<>();

  @Option(
      names = "--pickup",
      paramLabel = "DAY",
      description = "all jobs that are picked up on this day, such as 2026-11-25")
  private String pickup;

  /** Refuses a command without jobs before anything is read. */
  void refuseNone() {
    if (ids.isEmpty() && pickup == null) {
      throw new ParameterException(
          spec.commandLine(), "name one or more jobs, or a day with --pickup");
    }
    day();
  }

  private Optional<LocalDate> day() {
    try {
      return Optional.ofNullable(pickup).map(LocalDate::parse);
    } catch (DateTimeException e) {
      throw new ParameterException(
          spec.commandLine(), "\"" + pickup + "\" is not a day like 2026-11-25");
    }
  }

  /** The jobs, or empty after saying why there are none. */
  Optional<List<Job>> of(LoadedShop loaded, PrintWriter err) {
    List<Job> jobs = new ArrayList<>();
    for (String id : ids) {
      Optional<Job> job = JobLookup.find(loaded, id, err);
      if (job.isEmpty()) {
        return Optional.empty();
      }
      jobs.add(job.get());
    }
    if (day().isPresent() && loaded.shop().isEmpty()) {
      JobLookup.find(loaded, "", err); // Says that shop.yaml comes first.
      return Optional.empty();
    }
    day().ifPresent(day -> ofDay(loaded, day).filter(j -> !jobs.contains(j)).forEach(jobs::add));
    if (jobs.isEmpty()) {
      err.println("No job is picked up on " + pickup);
    }
    return jobs.isEmpty() ? Optional.empty() : Optional.of(jobs);
  }

  /** The jobs of a day by the shop's clock, the first to be picked up first. */
  private static java.util.stream.Stream<Job> ofDay(LoadedShop loaded, LocalDate day) {
    ZoneId zone = loaded.shop().orElseThrow().zone();
    return loaded.jobs().stream()
        .filter(j -> j.pickup().atZone(zone).toLocalDate().equals(day))
        .sorted(Comparator.comparing(Job::pickup).thenComparing(Job::id));
  }
}
