package curewindow.cli;

import curewindow.intake.ForeignTable;
import curewindow.intake.GuessedMap;
import curewindow.intake.Intake;
import curewindow.intake.IntakePlan;
import curewindow.intake.RowPlan;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.ImportMaps;
import curewindow.site.LoadedShop;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
    name = "import",
    description =
        "Takes jobs from a table (CSV) that another program has written, by a map of its columns."
            + " Without a map that is there, writes a first one and imports nothing.",
    mixinStandardHelpOptions = true)
final class ImportCommand implements Callable<Integer> {

  private final Clock clock;

  @Mixin private ShopOption shop;
  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "FILE", description = "the table of the other program")
  private Path file;

  @Option(
      names = "--map",
      paramLabel = "NAME",
      description = "the map, imports/NAME.yaml in the shop folder; named after FILE if left out")
  private Optional<String> map;

  @Option(
      names = "--plan",
      description = "only say of each row what would become of it; write nothing")
  private boolean plan;

  ImportCommand(Clock clock) {
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    shop.refuseOthers();
    String name = map.orElseGet(() -> ImportMaps.nameFor(file.getFileName().toString()));
    if (!ImportMaps.isName(name)) {
      throw new ParameterException(
          spec.commandLine(),
          "--map takes a name of lower case letters and digits, words joined with hyphens");
    }
    Problems problems = new Problems();
    Optional<ForeignTable> table = ForeignTable.read(file, problems);
    if (table.isEmpty()) {
      ProblemLines.print(problems.all(), err());
      return Exit.PROBLEMS;
    }
    if (!Intake.hasMap(shop.folder(), name)) {
      return firstMap(table.get(), name);
    }
    if (map.isEmpty()) {
      err().println("there is a map " + ImportMaps.file(name) + "; to use it add: --map " + name);
      return Exit.USAGE;
    }
    return plan ? show(table.get(), name) : carryOut(table.get(), name);
  }

  private PrintWriter out() {
    return spec.commandLine().getOut();
  }

  private PrintWriter err() {
    return spec.commandLine().getErr();
  }

  private int firstMap(ForeignTable table, String name) throws IOException {
    GuessedMap first = Intake.guess(table, name, LoadedShop.load(shop.folder(), clock));
    if (plan) {
      err().println("there is no map " + first.file() + "; leave out --plan to have one written");
      return Exit.PROBLEMS;
    }
    if (!Intake.keep(first, shop.folder())) {
      err().println(first.file() + " has come meanwhile; look at it");
      return Exit.PROBLEMS;
    }
    out().println(table.name() + " is read as " + table.readAs() + ".");
    ProblemLines.print(first.looks(), out());
    out()
        .println(
            "A first map is in " + shop.folder().resolve(first.file()) + "; nothing was imported.");
    out()
        .println(
            "Next: look at "
                + lines(first.looks())
                + ", then: import FILE --map "
                + name
                + " --plan");
    return first.looks().stream().anyMatch(Problem::isError) ? Exit.PROBLEMS : Exit.OK;
  }

  private static String lines(List<Problem> looks) {
    return looks.isEmpty() ? "it" : "these lines of it";
  }

  private int show(ForeignTable table, String name) {
    IntakePlan plan = Intake.plan(table, name, LoadedShop.load(shop.folder(), clock));
    sayHow(plan);
    for (RowPlan row : plan.rows()) {
      if (row.state() != RowPlan.State.LEFT) {
        boolean isGood = row.state() == RowPlan.State.GOOD;
        out()
            .println(
                table.name()
                    + ":"
                    + row.line()
                    + "  "
                    + row.job()
                    + (isGood ? "  good" : "  already there"));
      }
      ProblemLines.print(row.problems(), out());
    }
    if (plan.stops().isEmpty()) {
      out().println("Would be imported: " + counts(plan, plan.jobs().size()));
    }
    return code(plan);
  }

  private int carryOut(ForeignTable table, String name) throws IOException {
    IntakePlan done = Intake.carryOut(table, name, shop.folder(), clock);
    sayHow(done);
    done.rows().stream()
        .filter(row -> row.state() == RowPlan.State.LEFT)
        .forEach(row -> ProblemLines.print(row.problems(), out()));
    Optional<Path> rest = Intake.writeRest(file, done);
    if (done.stops().isEmpty()) {
      out().println("Imported: " + counts(done, done.jobs().size()));
    }
    rest.ifPresent(
        left ->
            out()
                .println(
                    "The rows that are left are in "
                        + left
                        + ", each with the reason. Mend them there and import that file."));
    return code(done);
  }

  private void sayHow(IntakePlan plan) {
    ProblemLines.print(plan.stops(), err());
    plan.notes().forEach(note -> out().println(note.message() + "."));
  }

  private static String counts(IntakePlan plan, int jobs) {
    return count(jobs, "job")
        + " from "
        + count(plan.count(RowPlan.State.GOOD), "row")
        + "; already there: "
        + count(plan.count(RowPlan.State.THERE), "row")
        + "; left: "
        + count(plan.count(RowPlan.State.LEFT), "row");
  }

  private static String count(long number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }

  private static int code(IntakePlan plan) {
    boolean isWell = plan.stops().isEmpty() && plan.count(RowPlan.State.LEFT) == 0;
    return isWell ? Exit.OK : Exit.PROBLEMS;
  }
}
