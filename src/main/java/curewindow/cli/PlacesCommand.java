package curewindow.cli;

import curewindow.climate.Place;
import curewindow.climate.Places;
import curewindow.problem.Problem;
import curewindow.problem.Severity;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopFolder;
import curewindow.shop.ShopRead;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
    name = "places",
    description = "Lists the places whose weather is known, and where it comes from.",
    subcommands = PlacesNearCommand.class,
    mixinStandardHelpOptions = true)
final class PlacesCommand implements Callable<Integer> {

  private final Clock clock;

  @Spec private CommandSpec spec;

  @Option(
      names = "--shop",
      paramLabel = "DIR",
      description = "also list the places of this shop folder")
  private Path folder;

  PlacesCommand(Clock clock) {
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    List<Problem> problems = folder == null ? List.of() : own(out);
    out.println(Places.builtIn().size() + " built-in places:");
    print(List.copyOf(Places.builtIn().values()), out);
    ProblemLines.print(problems, spec.commandLine().getErr());
    return problems.isEmpty() ? Exit.OK : Exit.PROBLEMS;
  }

  /** Prints the shop's own places; returns what is wrong with them. */
  private List<Problem> own(PrintWriter out) throws IOException {
    if (!Files.isDirectory(folder)) {
      throw new IOException(folder + " is not a folder; name the shop folder with --shop");
    }
    ShopRead read = ShopFolder.read(new ShopFiles(folder), clock.instant());
    List<Place> own =
        read.places().values().stream()
            .filter(p -> !p.equals(Places.builtIn().get(p.id())))
            .toList();
    out.println(own.size() + (own.size() == 1 ? " place" : " places") + " of the shop's own:");
    print(own, out);
    out.println();
    return read.problems().stream().filter(PlacesCommand::stopsAPlace).toList();
  }

  private static boolean stopsAPlace(Problem problem) {
    String file = problem.file().toLowerCase(Locale.ROOT);
    return problem.severity() == Severity.ERROR
        && (file.startsWith("content/places/") || file.endsWith(".epw") || file.endsWith(".zip"));
  }

  private static void print(List<Place> places, PrintWriter out) {
    Map<String, String> countries = new HashMap<>();
    Places.byCountry().forEach((code, all) -> all.forEach(p -> countries.put(p.id(), code)));
    Map<String, Integer> sources = new LinkedHashMap<>();
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("id", "name", "country", "north", "east", "height", "source"));
    for (Place place : places) {
      int source = sources.computeIfAbsent(place.source(), s -> sources.size() + 1);
      boolean builtIn = place.equals(Places.builtIn().get(place.id()));
      rows.add(
          List.of(
              place.id(),
              place.name(),
              builtIn ? countries.get(place.id()) : "-",
              number("%.2f", place.latitude()),
              number("%.2f", place.longitude()),
              number("%.0f m", place.height()),
              "[" + source + "]"));
    }
    PlacesTable.print(rows, "lllrrrl", out);
    sources.forEach((source, index) -> out.println("  [" + index + "] " + source));
  }

  private static String number(String format, double value) {
    return String.format(Locale.ROOT, format, value);
  }
}
