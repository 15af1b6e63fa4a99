package curewindow.cli;

import curewindow.shop.Job;
import curewindow.site.LoadedShop;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
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
      description =
          "all jobs that are picked up on this day, such as 2026-11-25, or on that of a time")
  private String pickup;

  private boolean whole = true;

  /** Refuses a command without jobs, or with a wrong day, before anything is read. */
  void refuseNone() {
    if (ids.isEmpty() && pickup == null) {
      throw new ParameterException(
          spec.commandLine(), "name one or more jobs, or a day with --pickup");
    }
    // The shop's zone is not known yet; the form is right or wrong in any.
    day(ZoneOffset.UTC);
  }

  private Optional<LocalDate> day(ZoneId zone) {
    return Optional.ofNullable(pickup).map(p -> TimeOptions.day("--pickup", p, zone, spec));
  }

  /** The jobs that can be used, or empty where there is none; those that cannot are told. */
  Optional<List<Job>> of(LoadedShop loaded, PrintWriter err) {
    if (!JobLookup.sayIfShopIsBroken(loaded, err)) {
      return Optional.empty();
    }
    boolean ofDay = pickup != null;
    List<Job> jobs =
        new ArrayList<>(
            ofDay ? JobLookup.findBesideAll(loaded, ids, err) : JobLookup.find(loaded, ids, err));
    whole = jobs.size() == ids.size();
    whole &= !ofDay || JobLookup.sayLeftOut(loaded, err);
    Optional<LocalDate> day = loaded.shop().flatMap(shop -> day(shop.zone()));
    day.ifPresent(d -> ofDay(loaded, d).filter(j -> !jobs.contains(j)).forEach(jobs::add));
    if (jobs.isEmpty() && day.isPresent()) {
      err.println("No job is picked up on " + day.get());
    }
    return jobs.isEmpty() ? Optional.empty() : Optional.of(jobs);
  }

  /** Whether all that were asked for are among them, once {@link #of} is done. */
  boolean areWhole() {
    return whole;
  }

  /** The jobs of a day by the shop's clock, the first to be picked up first. */
  private static java.util.stream.Stream<Job> ofDay(LoadedShop loaded, LocalDate day) {
    ZoneId zone = loaded.shop().orElseThrow().zone();
    return loaded.jobs().stream()
        .filter(j -> j.pickup().atZone(zone).toLocalDate().equals(day))
        .sorted(Comparator.comparing(Job::pickup).thenComparing(Job::id));
  }
}
