package curewindow.cli;

import curewindow.shop.Job;
import curewindow.site.LoadedShop;
import curewindow.site.WhyOf;
import java.io.IOException;
import java.io.PrintWriter;
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
    description = "Explains every date of a job in words and numbers.",
    mixinStandardHelpOptions = true)
final class WhyCommand implements Callable<Integer> {

  @Mixin private ShopOption shop;
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "JOB", description = "the job's id")
  private String id;

  @Option(names = "--json", description = "print it as data")
  private boolean json;

  @Override
  public Integer call() throws IOException {
    LoadedShop loaded = shop.load();
    Optional<Job> job = JobLookup.find(loaded, id, spec.commandLine().getErr());
    if (job.isEmpty()) {
      return Exit.PROBLEMS;
    }
    PrintWriter out = spec.commandLine().getOut();
    out.print(json ? WhyOf.json(loaded, job.get()) : WhyOf.text(loaded, job.get()));
    out.flush();
    return Exit.OK;
  }
}
