package curewindow.cli;

import curewindow.problem.Nearest;
import curewindow.shop.Job;
import curewindow.site.LoadedShop;
import curewindow.site.WhyOf;
import curewindow.why.ExplanationChoice;
import curewindow.why.Trial;
import curewindow.why.TrialRead;
import curewindow.why.Why;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
    name = "why",
    description =
        "Explains every date of a job in words and numbers, and draws how it comes about.",
    mixinStandardHelpOptions = true)
final class WhyCommand implements Callable<Integer> {

  @Mixin private ShopOption shop;
  @Mixin private TrialOptions trial;
  @Mixin private AtOption at;
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "JOB", description = "the job's id")
  private String id;

  @Option(
      names = "--hold",
      paramLabel = "ID",
      split = ",",
      description = "draw only these holds; without it, the one that matters most is drawn")
  private List<String> holds = List.of();

  @Option(names = "--all", description = "draw every hold")
  private boolean all;

  @Option(names = "--plain", description = "use ASCII characters only")
  private boolean plain;

  @Option(names = "--json", description = "print it as data")
  private boolean json;

  @Override
  public Integer call() throws IOException {
    LoadedShop loaded = shop.load();
    PrintWriter err = spec.commandLine().getErr();
    Optional<Job> job = JobLookup.find(loaded, id, err);
    if (job.isEmpty()) {
      return Exit.PROBLEMS;
    }
    TrialRead read = WhyOf.trial(loaded, job.get(), trial.asked());
    if (read instanceof TrialRead.Refused refused) {
      refused.reasons().forEach(err::println);
      return Exit.USAGE;
    }
    return knowsHolds(WhyOf.holds(loaded, job.get()), err)
        ? explain(loaded, job.get(), (Trial) read)
        : Exit.USAGE;
  }

  private int explain(LoadedShop loaded, Job job, Trial tried) {
    ExplanationChoice look = new ExplanationChoice(holds, all, plain);
    PrintWriter out = spec.commandLine().getOut();
    Why why = WhyOf.of(loaded, job, tried, at.time(loaded.shop().orElseThrow().zone()));
    out.print(json ? why.json(look) : why.text(look));
    out.flush();
    return Exit.OK;
  }

  private boolean knowsHolds(List<String> known, PrintWriter err) {
    List<String> unknown = holds.stream().filter(h -> !known.contains(h)).toList();
    for (String hold : unknown) {
      err.println("Job " + id + " has no hold " + hold + Nearest.hint(hold, known));
      err.println("It has " + String.join(", ", known));
    }
    return unknown.isEmpty();
  }
}
