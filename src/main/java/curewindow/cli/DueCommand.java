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
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

@Command(
    name = "due",
    description =
        "Lists whom to call because a date on a card has become too early, and what else has moved.",
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

  @Option(
      names = "--called",
      paramLabel = "JOB",
      description = "notes that the customer of this job was told, who is then not listed any more")
  private String called;

  @Override
  public Integer call() throws IOException {
    if (file != null && called != null) {
      throw new ParameterException(
          spec.commandLine(), "--called and --out are two things to do; give one of them");
    }
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
    DueCalls due = DueCalls.of(loaded, time, problems);
    ProblemLines.print(problems.all(), spec.commandLine().getErr());
    if (called != null) {
      return note(due, loaded, time);
    }
    boolean whole = JobLookup.sayLeftOut(loaded, spec.commandLine().getErr());
    print(due, loaded, out);
    return problems.hasErrors() || !whole ? Exit.PROBLEMS : Exit.OK;
  }

  private int note(DueCalls due, LoadedShop loaded, Instant time) throws IOException {
    if (JobLookup.find(loaded, called, spec.commandLine().getErr()).isEmpty()) {
      return Exit.PROBLEMS;
    }
    PrintWriter out = spec.commandLine().getOut();
    List<DueCalls.Call> told = due.called(loaded, called, time);
    if (told.isEmpty()) {
      out.println("There is nothing to tell the customer of " + called + ", so nothing is noted.");
    }
    told.forEach(c -> out.println("noted: " + c.job() + " was told " + c.now() + ", " + c.about()));
    return Exit.OK;
  }

  private static void print(DueCalls due, LoadedShop loaded, PrintWriter out) {
    if (due.tooEarly().isEmpty()) {
      out.println(
          loaded.remembersCards()
              ? "No one to call: every card date still ahead is good."
              : "No one to call: no card was made yet, or printed-dates.csv is gone.");
    }
    due.tooEarly().forEach(c -> print("call", c, "wait until " + c.now(), out));
    if (!due.sooner().isEmpty()) {
      out.println("May go ahead sooner than they were told:");
      due.sooner().forEach(c -> print("sooner", c, "free from " + c.now(), out));
    }
    if (!due.visits().isEmpty()) {
      out.println("The visit has moved to another day:");
      due.visits().forEach(c -> print("visit", c, "from " + c.now(), out));
    }
    if (!due.tooEarly().isEmpty() || !due.sooner().isEmpty() || !due.visits().isEmpty()) {
      out.println("After you tell someone, run due --called JOB to take them off the list.");
    }
  }

  private static void print(String what, DueCalls.Call call, String now, PrintWriter out) {
    out.printf(
        "%s  %-10s %-12s %s%n    %s %s%n    now %s%n",
        what,
        call.job(),
        call.firstName(),
        call.about(),
        call.byCard() ? "the card says" : "we said",
        call.told(),
        now);
  }

  private int write(LoadedShop loaded, Instant time) throws IOException {
    Problems problems = new Problems();
    Office office = Office.of(loaded, problems);
    boolean written = office.write(office.day(time), file, problems);
    ProblemLines.print(problems.all(), spec.commandLine().getErr());
    if (written) {
      spec.commandLine().getOut().println(file + ": the day of " + office.day(time));
    }
    boolean whole = JobLookup.sayLeftOut(loaded, spec.commandLine().getErr());
    return problems.hasErrors() || !whole ? Exit.PROBLEMS : Exit.OK;
  }
}
