package curewindow.cli;

import curewindow.shop.Job;
import curewindow.shop.Shop;
import curewindow.site.LoadedShop;
import curewindow.site.WhyOf;
import curewindow.why.JustDates;
import curewindow.why.Trial;
import curewindow.why.TrialAsked;
import curewindow.why.TrialRead;
import java.io.IOException;
import java.io.PrintWriter;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
    name = "dates",
    description = "Prints the dates of some jobs, or of all, a line each.",
    mixinStandardHelpOptions = true)
final class DatesCommand implements Callable<Integer> {

  @Mixin private ShopOption shop;
  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "JOB",
      arity = "0..*",
      description = "the ids of the jobs; all if left out")
  private List<String> ids = new ArrayList<>();

  @Option(
      names = "--parking",
      paramLabel = "DAY[,NIGHT]",
      description = "as if the cars were parked elsewhere: outside, shade, garage or heated")
  private String parking;

  @Option(
      names = "--at",
      paramLabel = "TIME",
      description =
          "only what is still to come at this day or time, such as 2026-11-25 or 2026-11-25T14:30"
              + " by the shop's clock")
  private String at;

  @ArgGroup private Form form = new Form();

  /** One way to print them. */
  static final class Form {

    @Option(names = "--csv", description = "print them as comma-separated values")
    private boolean csv;

    @Option(names = "--json", description = "print them as data")
    private boolean json;

    String of(JustDates dates) {
      return csv ? dates.csv() : json ? dates.json() : dates.text();
    }
  }

  @Override
  public Integer call() throws IOException {
    LoadedShop loaded = shop.load();
    PrintWriter err = spec.commandLine().getErr();
    List<Job> jobs = jobs(loaded, err);
    List<Job> tried = new ArrayList<>();
    for (Job job : jobs) {
      TrialRead read = WhyOf.trial(loaded, job, asked());
      if (read instanceof TrialRead.Refused refused) {
        refused.reasons().forEach(err::println);
        return Exit.USAGE;
      }
      tried.add(((Trial) read).on(job));
    }
    JustDates dates = ahead(loaded, WhyOf.dates(loaded, tried));
    PrintWriter out = spec.commandLine().getOut();
    if (parking != null && !form.csv && !form.json) {
      out.println("A TRIAL: parked otherwise than the files of the jobs say.");
    }
    out.print(form.of(dates));
    out.flush();
    return isWhole(loaded, jobs) ? Exit.OK : Exit.PROBLEMS;
  }

  /** Those still to come at the time that is asked for. */
  private JustDates ahead(LoadedShop loaded, JustDates all) {
    if (at == null) {
      return all;
    }
    ZoneId zone = loaded.shop().map(Shop::zone).orElse(ZoneOffset.UTC);
    return all.after(TimeOptions.moment("--at", at, zone, spec));
  }

  private TrialAsked asked() {
    return new TrialAsked(
        Optional.ofNullable(parking), Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** The good ones among the jobs asked for; why the others are not is said. */
  private List<Job> jobs(LoadedShop loaded, PrintWriter err) {
    if (!ids.isEmpty()) {
      return JobLookup.find(loaded, ids.stream().distinct().toList(), err);
    }
    if (!JobLookup.sayIfShopIsBroken(loaded, err)) {
      return List.of();
    }
    JobLookup.sayLeftOut(loaded, err);
    return loaded.jobs();
  }

  private boolean isWhole(LoadedShop loaded, List<Job> jobs) {
    return ids.isEmpty()
        ? loaded.shop().isPresent() && loaded.brokenJobs().isEmpty()
        : jobs.size() == ids.stream().distinct().count();
  }
}
