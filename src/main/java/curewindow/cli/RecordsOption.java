package curewindow.cli;

import curewindow.site.JobRecords;
import curewindow.site.LoadedShop;
import curewindow.site.Outcome;
import java.io.IOException;
import java.io.PrintWriter;
import java.time.Clock;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** The shop folder of a command that changes what is kept of its jobs. */
final class RecordsOption {

  private final Clock clock;

  @Mixin private ShopOption shop;

  @Spec(Target.MIXEE)
  private CommandSpec spec;

  RecordsOption(Clock clock) {
    this.clock = clock;
  }

  /** What a command does with it. */
  interface Change {
    Outcome make(JobRecords records) throws IOException;
  }

  /** Makes a change where the folder is right, and says what became of it. */
  int change(Change change) throws IOException {
    LoadedShop loaded = shop.load();
    PrintWriter err = spec.commandLine().getErr();
    if (!JobLookup.sayIfShopIsBroken(loaded, err)) {
      return Exit.PROBLEMS;
    }
    if (loaded.ledgerIsBroken()) {
      ProblemLines.print(loaded.problems(), err);
      return Exit.PROBLEMS;
    }
    return say(change.make(new JobRecords(loaded, clock)), spec);
  }

  /** Says what became of a change. */
  static int say(Outcome outcome, CommandSpec spec) {
    PrintWriter to = outcome.done() ? spec.commandLine().getOut() : spec.commandLine().getErr();
    outcome.lines().forEach(to::println);
    return outcome.done() ? Exit.OK : Exit.PROBLEMS;
  }
}
