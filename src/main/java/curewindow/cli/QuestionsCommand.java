package curewindow.cli;

import curewindow.handout.OfficeCallers;
import curewindow.problem.Problems;
import curewindow.shop.OpenDays;
import curewindow.site.LoadedShop;
import curewindow.site.Office;
import java.io.IOException;
import java.io.PrintWriter;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
    name = "questions",
    description =
        "Tells who may call on a day and what they will ask, with each car's answers; notes who"
            + " did call, and counts the calls.",
    mixinStandardHelpOptions = true)
final class QuestionsCommand implements Callable<Integer> {

  private final Clock clock;

  @Mixin private ShopOption shop;
  @Spec private CommandSpec spec;

  @Option(
      names = "--day",
      paramLabel = "DAY",
      description = "the day, such as 2026-11-25, or a time of that day; today if left out")
  private String day;

  @Option(names = "--all", description = "leaves out nobody and no question")
  private boolean all;

  @ArgGroup private Task task = new Task();

  /** Another thing to do in place of telling who may call. */
  static final class Task {

    @ArgGroup(exclusive = false)
    private AskedOptions asked;

    @ArgGroup(exclusive = false)
    private ReportOptions report;
  }

  QuestionsCommand(Clock clock) {
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    LoadedShop loaded = shop.load();
    PrintWriter out = spec.commandLine().getOut();
    if (loaded.shop().isEmpty() || loaded.ledgerIsBroken()) {
      ProblemLines.print(loaded.problems(), out);
      out.println("shop.yaml and the ledgers have to be right first.");
      return Exit.PROBLEMS;
    }
    if (task.asked != null) {
      return task.asked.note(loaded, clock.instant(), spec);
    }
    Optional<LocalDate> typed =
        Optional.ofNullable(day)
            .map(d -> TimeOptions.day("--day", d, loaded.shop().orElseThrow().zone(), spec));
    return task.report == null
        ? tell(loaded, typed, out)
        : task.report.print(loaded, typed, clock.instant(), spec);
  }

  private int tell(LoadedShop loaded, Optional<LocalDate> typed, PrintWriter out) {
    Problems problems = new Problems();
    Office office = Office.of(loaded, problems);
    LocalDate told = typed.orElseGet(() -> office.day(clock.instant()));
    OfficeCallers callers =
        office.callers(told, all ? OfficeCallers.Most.ALL : OfficeCallers.Most.ON_PAPER, problems);
    ProblemLines.print(problems.all(), spec.commandLine().getErr());
    if (!new OpenDays(loaded.shop().orElseThrow()).isOpen(told)) {
      out.println("The shop is closed on " + told + ".");
    }
    out.println(
        callers.callers().isEmpty()
            ? "Nobody is likely to call on " + told + ": no date is near."
            : "Who may call on " + told + ", the most likely first:");
    callers.callers().forEach(c -> print(c, out));
    if (callers.more() > 0) {
      out.printf("%n%d more could call and are left out; --all tells them%n", callers.more());
    }
    return problems.hasErrors() ? Exit.PROBLEMS : Exit.OK;
  }

  private static void print(OfficeCallers.Caller caller, PrintWriter out) {
    String who =
        Stream.of(caller.job(), caller.firstName(), caller.car(), caller.language())
            .filter(t -> !t.isEmpty())
            .collect(Collectors.joining("  "));
    out.printf("%n%s%n    %s%n", who, String.join("; ", caller.reasons()));
    for (OfficeCallers.Asked asked : caller.asked()) {
      String stand = asked.stand().isEmpty() ? "" : "  [" + asked.stand() + "]";
      out.printf("  %s%s%n    %s%n", asked.question(), stand, asked.answer());
    }
    if (caller.more() > 0) {
      out.printf("  %d more questions are left out; --all tells them%n", caller.more());
    }
  }
}
