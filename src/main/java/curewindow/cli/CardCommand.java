package curewindow.cli;

import curewindow.problem.Faults;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.Handout;
import curewindow.shop.HandoutChoice;
import curewindow.shop.Job;
import curewindow.site.CardFile;
import curewindow.site.CodeReport;
import curewindow.site.LoadedShop;
import curewindow.site.Tokens;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
    name = "card",
    description = "Makes a print-ready PDF with cards or other handouts of some jobs.",
    mixinStandardHelpOptions = true)
final class CardCommand implements Callable<Integer> {

  private final Clock clock;

  @Mixin private ShopOption shop;
  @Mixin private CardJobs which;
  @Mixin private HandoutOptions handout;
  @Spec private CommandSpec spec;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      defaultValue = "cards.pdf",
      description = "the PDF to write; ${DEFAULT-VALUE} if left out")
  private Path file;

  @Option(
      names = "--explain",
      description = "writes nothing, and tells how large the code is on each handout")
  private boolean explain;

  CardCommand(Clock clock) {
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    which.refuseNone();
    if (!explain) {
      PaperOut.refuseAllButPdf(file);
    }
    CompletableFuture<Void> ready =
        explain ? CompletableFuture.completedFuture(null) : CardFile.getReady();
    LoadedShop loaded = shop.load();
    PrintWriter err = spec.commandLine().getErr();
    Optional<List<Job>> jobs = which.of(loaded, err);
    if (jobs.isEmpty()) {
      return Exit.PROBLEMS;
    }
    if (loaded.ledgerIsBroken()) {
      ProblemLines.print(loaded.problems(), err);
      return Exit.PROBLEMS;
    }
    HandoutChoice choice = handout.or(loaded.shop().orElseThrow().handout());
    int made = explain ? explain(loaded, jobs.get()) : write(loaded, jobs.get(), choice, ready);
    return which.areWhole() ? made : Exit.PROBLEMS;
  }

  private int explain(LoadedShop loaded, List<Job> jobs) {
    List<Handout> kinds = handout.kind().map(List::of).orElse(Arrays.asList(Handout.values()));
    PrintWriter out = spec.commandLine().getOut();
    Problems problems = new Problems();
    for (Job job : jobs) {
      Faults.guard(job.where(), problems, () -> CodeReport.of(loaded, job, kinds))
          .ifPresent(
              lines -> {
                out.println(job.id() + ":");
                lines.forEach(line -> out.println("  " + line));
              });
    }
    ProblemLines.print(problems.all(), spec.commandLine().getErr());
    return problems.hasErrors() ? Exit.PROBLEMS : Exit.OK;
  }

  private int write(
      LoadedShop loaded, List<Job> jobs, HandoutChoice choice, CompletableFuture<Void> ready)
      throws IOException {
    CardFile cards = new CardFile(loaded, clock, Tokens.secure());
    CardFile.Result result = cards.write(jobs, choice, file, ready);
    PrintWriter out = spec.commandLine().getOut();
    Problems problems = new Problems();
    problems.addAll(loaded.read().problems().stream().filter(CardCommand::isOfLook).toList());
    problems.addAll(result.problems());
    ProblemLines.print(problems.all(), spec.commandLine().getErr());
    if (!result.without().isEmpty()) {
      out.println("no window has to wait: " + String.join(", ", result.without()));
    }
    if (result.printed() > 0) {
      out.println(file + ": " + told(result.printed(), choice));
    }
    return problems.hasErrors() ? Exit.PROBLEMS : Exit.OK;
  }

  /** A card without the shop's logo, or in another color, is not what the shop meant. */
  private static boolean isOfLook(Problem problem) {
    return problem.code().equals("bad-logo") || problem.code().equals("bad-color");
  }

  private static String told(int jobs, HandoutChoice choice) {
    return choice.as().many() + " for " + jobs + (jobs == 1 ? " job" : " jobs");
  }
}
