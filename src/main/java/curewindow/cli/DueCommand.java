package curewindow.cli;

import curewindow.problem.Problems;
import curewindow.site.DueCalls;
import curewindow.site.LoadedShop;
import curewindow.site.Office;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
    name = "due",
    description = "Lists whom to call because a date on a card has become too early.",
    mixinStandardHelpOptions = true)
final class DueCommand implements Callable<Integer> {

  @Mixin private ShopOption shop;
  @Mixin private AtOption at;
  @Spec private CommandSpec spec;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "writes the paper of the day for the counter instead: FILE.pdf or FILE.html")
  private Path file;

  @Override
  public Integer call() throws IOException {
    if (file != null) {
      PaperOut.refuseOthers(file);
    }
    PrintWriter out = spec.commandLine().getOut();
    LoadedShop loaded = shop.load();
    if (loaded.shop().isEmpty() || loaded.ledgerIsBroken()) {
      ProblemLines.print(loaded.problems(), out);
      out.println("shop.yaml and the ledgers have to be right first.");
      return Exit.PROBLEMS;
    }
    Instant time = at.time(loaded.shop().get().zone());
    if (file != null) {
      return write(loaded, time);
    }
    Problems problems = new Problems();
    List<DueCalls.Call> calls = DueCalls.of(loaded, time, problems);
    ProblemLines.print(problems.all(), spec.commandLine().getErr());
    if (calls.isEmpty()) {
      out.println(
          loaded.remembersCards()
              ? "Nobody to call: every date on a card that is still ahead holds."
              : "Nobody to call: no card was made yet, or printed-dates.csv is gone.");
    }
    for (DueCalls.Call call : calls) {
      out.printf(
          "call  %-10s %-12s %s%n    %s %s%n    now %s%n",
          call.job(),
          call.firstName(),
          call.hold(),
          call.byCard() ? "the card says" : "we said since",
          call.told(),
          (call.ask() ? "come in on " : "wait until ") + call.now());
    }
    return problems.hasErrors() ? Exit.PROBLEMS : Exit.OK;
  }

  private int write(LoadedShop loaded, Instant time) throws IOException {
    Problems problems = new Problems();
    Office office = Office.of(loaded, problems);
    boolean written = office.write(office.day(time), file, problems);
    ProblemLines.print(problems.all(), spec.commandLine().getErr());
    if (written) {
      spec.commandLine().getOut().println(file + ": the day of " + office.day(time));
    }
    return problems.all().isEmpty() ? Exit.OK : Exit.PROBLEMS;
  }
}
