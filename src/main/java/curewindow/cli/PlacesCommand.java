package curewindow.cli;

import curewindow.climate.Place;
import curewindow.climate.Places;
import curewindow.problem.Problem;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopFolder;
import curewindow.shop.ShopRead;
import curewindow.words.CityNames;
import curewindow.words.PlaceFinder;
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
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
    name = "places",
    description = "Lists or finds the places whose weather is known, and where it comes from.",
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

  @Parameters(
      paramLabel = "WORD",
      arity = "0..*",
      description = "only places with all these words, or parts of words, in their names")
  private List<String> words = List.of();

  PlacesCommand(Clock clock) {
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    Optional<ShopRead> shop = folder == null ? Optional.empty() : Optional.of(read());
    List<Place> own = shop.map(PlacesCommand::own).orElse(List.of());
    List<Place> builtIn = List.copyOf(Places.builtIn().values());
    List<Place> foundOwn = PlaceFinder.named(words, own);
    List<Place> found = PlaceFinder.named(words, builtIn);
    if (found.isEmpty() && foundOwn.isEmpty() && !words.isEmpty()) {
      found = CityNames.called(String.join(" ", words), builtIn);
    }
    if (found.isEmpty() && foundOwn.isEmpty() && !words.isEmpty()) {
      sayNone(Stream.concat(own.stream(), builtIn.stream()).toList());
      return Exit.USAGE;
    }
    if (shop.isPresent()) {
      out.println(count(foundOwn, own) + " of the shop's own:");
      print(foundOwn, out);
      out.println();
    }
    out.println(count(found, builtIn).replace(" place", " built-in place") + ":");
    print(found, out);
    List<Problem> problems = shop.map(PlacesCommand::problems).orElse(List.of());
    ProblemLines.print(problems, spec.commandLine().getErr());
    return problems.isEmpty() ? Exit.OK : Exit.PROBLEMS;
  }

  private static String count(List<Place> found, List<Place> all) {
    String number = found.size() == all.size() ? "" : found.size() + " of ";
    return number + all.size() + (all.size() == 1 ? " place" : " places");
  }

  private void sayNone(List<Place> all) {
    String typed = String.join(" ", words);
    String near =
        PlaceFinder.meant(typed, all)
            .map(p -> "; did you mean " + p.id() + " (" + p.name() + ")?")
            .orElse("");
    PrintWriter err = spec.commandLine().getErr();
    err.println("No place is called " + typed + near);
    err.println("Names are English, such as Munich for M\u00FCnchen.");
    err.println("To find the nearest built-in place, give latitude and longitude, in degrees:");
    err.println("  places near LAT LON --height M");
    err.println("It also shows what to write into content/places for a place of your own.");
  }

  private ShopRead read() throws IOException {
    if (!Files.isDirectory(folder)) {
      throw new IOException(folder + " is not a folder; name the shop folder with --shop");
    }
    return ShopFolder.read(new ShopFiles(folder), clock.instant());
  }

  private static List<Place> own(ShopRead read) {
    return read.places().values().stream()
        .filter(p -> !p.equals(Places.builtIn().get(p.id())))
        .toList();
  }

  private static List<Problem> problems(ShopRead read) {
    return read.problems().stream().filter(PlacesCommand::stopsAPlace).toList();
  }

  private static boolean stopsAPlace(Problem problem) {
    String file = problem.file().toLowerCase(Locale.ROOT);
    return problem.isError()
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
