package curewindow.cli;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.ImportMaps;
import curewindow.shop.Shop;
import curewindow.site.DueCalls;
import curewindow.site.LoadedShop;
import curewindow.site.PickupNotes;
import curewindow.site.Press;
import java.io.IOException;
import java.io.PrintWriter;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
    name = "check",
    description = "Reads the whole shop folder and reports all problems at once.",
    mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {

  @Mixin private ShopOption shop;
  @Mixin private AtOption at;
  @Spec private CommandSpec spec;

  @Option(names = "--notes", description = "also print what is worth knowing but stops nothing")
  private boolean notes;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    LoadedShop loaded = shop.load();
    Instant time = at.time(loaded.shop().map(Shop::zone).orElse(ZoneOffset.UTC));
    List<Problem> problems = problems(loaded, time);
    List<Problem> errors = problems.stream().filter(Problem::isError).toList();
    int notices = problems.size() - errors.size();
    List<Problem> told = problems.stream().filter(p -> notes || isToldAlways(p)).toList();
    ProblemLines.print(told, out);
    String hint =
        told.size() < problems.size()
            ? " (--notes shows " + (notices == 1 ? "it" : "them") + ")"
            : "";
    out.printf(
        "%s; %s; %s%s%n",
        count(errors.size(), "problem"),
        count(good(loaded, errors), "good job"),
        count(notices, "note"),
        hint);
    loaded.languages().forEach(l -> out.println("Language " + l.line()));
    sayCalls(loaded, time, out);
    return errors.isEmpty() ? Exit.OK : Exit.PROBLEMS;
  }

  /** What a shop has put into a template and waits for in vain is told without being asked. */
  private static boolean isToldAlways(Problem problem) {
    return problem.isError() || problem.code().equals("picture-dropped");
  }

  private static String count(long number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }

  /** How many jobs press would make: an error of the rehearsal stands at the job it leaves out. */
  private static long good(LoadedShop loaded, List<Problem> errors) {
    return loaded.jobs().stream()
        .filter(j -> errors.stream().noneMatch(e -> e.isAt(j.where())))
        .count();
  }

  private static void sayCalls(LoadedShop loaded, Instant time, PrintWriter out) {
    if (loaded.shop().isEmpty() || loaded.ledgerIsBroken()) {
      return;
    }
    // Faults were told by the rehearsal.
    int calls = DueCalls.of(loaded, time, new Problems()).tooEarly().size();
    if (calls > 0) {
      out.println("To call: " + CallsLine.of(calls));
    }
  }

  private static List<Problem> problems(LoadedShop loaded, Instant time) {
    Stream<Problem> more =
        loaded.shop().isPresent()
            ? Stream.concat(Press.rehearse(loaded).stream(), PickupNotes.of(loaded, time).stream())
            : Stream.of();
    // A map only matters to an import, so no press asks for it.
    Stream<Problem> maps = ImportMaps.check(loaded.files()).stream();
    return Stream.of(loaded.problems().stream(), maps, more)
        .flatMap(Function.identity())
        .distinct()
        .sorted()
        .toList();
  }
}
