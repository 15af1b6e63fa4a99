package curewindow.cli;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.site.CardFile;
import curewindow.site.DueCalls;
import curewindow.site.LoadedShop;
import curewindow.site.Output;
import curewindow.site.PickupNotes;
import curewindow.site.Press;
import curewindow.site.PressPlan;
import curewindow.site.PressReport;
import curewindow.site.Tokens;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
    name = "press",
    description = "Builds the site, the cards and the calendars of all good jobs.",
    mixinStandardHelpOptions = true)
final class PressCommand implements Callable<Integer> {

  private final Clock clock;

  @Mixin private ShopOption shop;
  @Spec private CommandSpec spec;

  @Mixin private OutOption folder;

  @Option(
      names = "--plan",
      description = "only says which pages would be made or taken down, and why")
  private boolean plan;

  @Option(
      names = "--let-go",
      description =
          "takes down the pages of all jobs that are gone from the shop folder; without it, pages"
              + " stay where many jobs are gone at once")
  private boolean letGo;

  @Option(
      names = "--same",
      paramLabel = "JOB",
      description =
          "this job is the same customer's as its card, although it looks like another's; may be"
              + " given more than once")
  private List<String> same = List.of();

  PressCommand(Clock clock) {
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    Optional<FileTime> before = Output.lastUsed(folder.path());
    if (!plan) {
      CardFile.getReady();
    }
    LoadedShop loaded = shop.load();
    if (isBroken(loaded)) {
      return refuse(loaded);
    }
    if (plan) {
      return plan(loaded);
    }
    try (Output output = Output.open(folder.path())) {
      // A press that was at work meanwhile may know jobs that this one would take down again.
      LoadedShop now = output.isAsOf(before) ? loaded : shop.load();
      output.tell(
          new PressProgress(
              spec.commandLine().getErr(), System.console() != null, System::nanoTime));
      return isBroken(now) ? refuse(now) : press(now, output);
    }
  }

  private static boolean isBroken(LoadedShop loaded) {
    return loaded.shop().isEmpty() || loaded.ledgerIsBroken();
  }

  private int refuse(LoadedShop loaded) {
    PrintWriter out = spec.commandLine().getOut();
    ProblemLines.print(loaded.problems(), out);
    out.println(
        "Nothing was built: shop.yaml, its folders and the ledgers have to be right first.");
    return Exit.PROBLEMS;
  }

  private int plan(LoadedShop loaded) throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    if (!knowsAllSame(loaded)) {
      return Exit.PROBLEMS;
    }
    PressPlan told = PressPlan.of(loaded, folder.path(), allowed(), clock);
    told.lines().forEach(out::println);
    List<Problem> errors = errors(loaded, told.problems());
    ProblemLines.print(errors, out);
    return errors.isEmpty() ? Exit.OK : Exit.PROBLEMS;
  }

  private boolean knowsAllSame(LoadedShop loaded) {
    return JobLookup.find(loaded, same, spec.commandLine().getErr()).size() >= same.size();
  }

  private Press.Allowed allowed() {
    return new Press.Allowed(letGo, Set.copyOf(same));
  }

  private static List<Problem> errors(LoadedShop loaded, List<Problem> others) {
    return Stream.concat(loaded.problems().stream(), others.stream())
        .filter(Problem::isError)
        .distinct()
        .toList();
  }

  private int press(LoadedShop loaded, Output output) throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    if (!knowsAllSame(loaded)) {
      return Exit.PROBLEMS;
    }
    Press.Wish wish = new Press.Wish(allowed(), Press.Extent.ALL);
    PressReport report = Press.run(loaded, output, clock, Tokens.secure(), wish);
    if (report.files().made() == 0) {
      ProblemLines.print(report.problems(), out);
      out.println("Nothing was built: printed cards would lead nowhere.");
      return Exit.PROBLEMS;
    }
    print(report, loaded, out);
    // Faults were told by the press.
    int calls = DueCalls.of(loaded, clock.instant(), new Problems()).tooEarly().size();
    if (calls > 0) {
      out.println("To call: " + CallsLine.of(calls));
    }
    return loaded.hasErrors() || report.hasErrors() ? Exit.PROBLEMS : Exit.OK;
  }

  private void sayBeforePickup(LoadedShop loaded, PrintWriter out) {
    List<Problem> notes = PickupNotes.of(loaded, clock.instant());
    if (!notes.isEmpty()) {
      out.println("Before pickup:");
      notes.forEach(note -> out.println("  " + note.oneLine()));
      out.println();
    }
  }

  private void print(PressReport report, LoadedShop loaded, PrintWriter out) {
    int jobs = report.jobs();
    int made = report.made().size();
    String anew = made == jobs ? "" : ", " + (made == 0 ? "none" : made) + " new or changed";
    out.printf(
        "%s: %d %s%s%n%n",
        loaded.shop().orElseThrow().name(), jobs, jobs == 1 ? "job" : "jobs", anew);
    for (PressReport.Made job : report.made()) {
      out.printf("  %-10s %-12s %s%n", job.job(), job.firstName(), job.firstAnswer());
    }
    if (made > 0) {
      out.println();
    }
    sayBeforePickup(loaded, out);
    List<Problem> errors = errors(loaded, report.problems());
    if (!errors.isEmpty()) {
      out.printf("To fix (%d):%n", errors.size());
      ProblemLines.print(errors, out);
      sayLeftOut(report.leftOut(), out);
      out.println();
    }
    out.printf(
        "%d files, %d of them new or changed, %d old ones removed%n",
        report.files().made(), report.files().changed(), report.files().removed());
    tellFolders(report.cards(), out);
  }

  private static void sayLeftOut(List<String> jobs, PrintWriter out) {
    if (!jobs.isEmpty()) {
      String stay =
          jobs.size() == 1
              ? "a page from before stays as it was"
              : "pages from before stay as they were";
      out.println("Left out: " + String.join(", ", jobs) + " (" + stay + ")");
    }
  }

  private void tellFolders(int cards, PrintWriter out) {
    out.println(
        "  " + folder.path().resolve("site") + "    the public site: this is what you publish");
    out.println(
        "  " + folder.path().resolve("office") + "  private: today.pdf to print, pages.csv");
    if (cards > 0) {
      out.println(
          "  "
              + folder.path().resolve("office/cards.pdf")
              + "  preview only: "
              + (cards == 1 ? "the car" : "the " + cards + " cars")
              + " still to be picked up");
    }
    out.println(
        "To hand out a card, print it with this. It keeps a record of the dates on it:\n  "
            + Program.call("card JOB --shop " + Program.quoted(shop.folder())));
    out.println("To look at it: " + Program.call("view --out " + Program.quoted(folder.path())));
  }
}
