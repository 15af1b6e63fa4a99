package curewindow.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.Driver;
import curewindow.cure.HoldKind;
import curewindow.cure.PaintTone;
import curewindow.cure.Parking;
import curewindow.intake.RowPlan;
import curewindow.problem.Problems;
import curewindow.send.NotLive;
import curewindow.send.SendTrouble;
import curewindow.shop.BodyType;
import curewindow.shop.Catalogue;
import curewindow.shop.DateOrder;
import curewindow.shop.FindingKind;
import curewindow.shop.Handout;
import curewindow.shop.Hold;
import curewindow.shop.JobColumns;
import curewindow.shop.PastVisit;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopFolder;
import curewindow.shop.SpotFact;
import curewindow.shop.YamlTexts;
import curewindow.site.CallOutcome;
import curewindow.tally.RateRatio;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A text that nothing shows is a text that somebody translates in vain. */
class UnusedTextsTest {

  private static final Path JAVA = Path.of("src/main/java/curewindow");
  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
  private static final Pattern SHOWN =
      Pattern.compile("text\\(\\s*\"([^\"]+)\"|#\\{([a-z][a-z0-9.-]*)}");

  private static final ShopFiles FILES = new ShopFiles(Path.of("no-such-shop"));
  private static final Catalogue CATALOGUE = ShopFolder.read(FILES, Instant.EPOCH).catalogue();
  private static final String CODE =
      all("src/main/java", ".java")
          + all("site-templates", ".html")
          + all("src/main/resources/curewindow/desk", ".html");

  /**
   * Names that the program puts together.
   *
   * @param begins how they begin
   * @param by the class that writes the beginning
   * @param ends how they may end
   */
  private record Built(String begins, String by, Set<String> ends) {

    boolean has(String key) {
      return key.startsWith(begins) && ends.contains(key.substring(begins.length()));
    }
  }

  private static final List<Built> BUILT =
      List.of(
          // By the entries of the catalogue.
          new Built("service.", "page/CarPicture", CATALOGUE.services().keySet()),
          new Built("spot.", "page/Fittings", CATALOGUE.spots().keySet()),
          new Built("finish.", "page/Fittings", finishes()),
          new Built("hold.", "told/When", ofHolds()),
          new Built(
              "hold.", "handout/GlassWords", withPart("sticker", h -> h.is(Hold.Mark.STICKER))),
          new Built("hold.", "page/CoatingFirst", withPart("order", UnusedTextsTest::isOfAnOrder)),
          new Built("unnamed.", "words/IcuWords", holdParts()),
          new Built("handout.care.always.", "handout/CareWords", CATALOGUE.services().keySet()),
          // By names of the program's own.
          new Built("car.body.", "told/JobView", Set.copyOf(BodyType.ids())),
          new Built("finding.", "page/Fittings", Set.copyOf(FindingKind.ids())),
          new Built("parking.", "told/ParkingWords", Set.copyOf(Parking.ids())),
          new Built("import.heading.", "intake/GuessWords", headings()),
          new Built("import.paint.", "intake/GuessWords", Set.copyOf(PaintTone.ids())),
          new Built("handout.title.", "handout/HandoutPress", handouts()),
          new Built(
              "handout.window.",
              "handout/GlassWords",
              Set.of(
                  "left",
                  "right",
                  "front-door-glass-left",
                  "front-door-glass-right",
                  "rear-door-glass-left",
                  "rear-door-glass-right")),
          new Built("office.give.", "handout/OfficePickups", handouts()),
          new Built("page.state.", "page/DateList", states()),
          quotedIn("page.state.", "guide/Questions"),
          new Built("page.weekday.", "told/Contact", weekdays()),
          new Built("page.seen.", "page/SeenWords", results()),
          new Built("done.seen.", "page/SeenWords", results()),
          new Built("desk.paint.", "desk/JobFields", Set.copyOf(PaintTone.ids())),
          new Built("desk.lacks.", "desk/JobFields", Set.of("defroster", "wipers", "rolls")),
          new Built("desk.parking.", "desk/JobFields", Set.copyOf(Parking.ids())),
          new Built("desk.why.", "desk/DatesBeside", drivers()),
          new Built("desk.print.", "desk/HandOverScreen", handouts()),
          new Built("desk.car.seen.", "desk/CarHistory", results()),
          new Built("desk.car.outcome.", "desk/CarHistory", outcomes()),
          new Built("desk.silent.", "desk/PagePress", ids(NotLive.How.values())),
          new Built("desk.send.", "desk/PagePress", ids(SendTrouble.Kind.values())),
          new Built("desk.rules.where.", "desk/RuleScreen", Set.copyOf(SpotFact.ids())),
          new Built("desk.rules.", "desk/RuleScreen", numbers()),
          new Built("desk.shop.by-text.", "desk/ShopFields", Set.of("same", "other", "none")),
          new Built("desk.shop.in-units.", "desk/ShopFields", Set.of("usual", "us", "metric")),
          new Built("desk.shop.day.", "desk/ShopFields", Set.of("same", "open", "closed")),
          new Built("desk.import.column.", "desk/OurWords", Set.copyOf(JobColumns.all())),
          new Built("desk.import.dates.", "desk/ImportFields", dateOrders()),
          new Built("desk.import.state.", "desk/ImportRows", rowStates()),
          // By what the class itself, or one more that is named, has in quotes.
          quotedIn("desk.done.", "desk/Screens"),
          quotedIn(
              "desk.problem.",
              "desk/ProblemWords",
              "desk/FormFields",
              "desk/FilmScreen",
              "desk/LostCars",
              "desk/ShopScreen",
              "problem/Faults",
              "problem/Problem",
              "shop/Fields",
              "shop/HardlyMeant",
              "shop/HoldsReader",
              "shop/ImportMaps",
              "shop/ItemReader",
              "shop/JobReader",
              "shop/PickupSlips",
              "shop/SendToReader",
              "shop/ShopReader",
              "shop/Source",
              "shop/Times",
              "shop/UnsureJobs",
              "shop/Values",
              "shop/VisitRowReader",
              "shop/YamlTree",
              "site/JobFiles",
              "site/KeptFile"),
          quotedIn(
              "desk.import.problem.",
              "desk/ProblemWords",
              "intake/Binding",
              "intake/FilmProblems",
              "intake/FirstMap",
              "intake/ForeignTable",
              "intake/Joined",
              "intake/JobsThere",
              "intake/Planning",
              "intake/RowSorting",
              "intake/TableDates",
              "problem/Problem",
              "shop/Fields",
              "shop/Times"),
          new Built(
              "desk.import.separator.",
              "desk/ProblemWords",
              Set.of("commas", "semicolons", "tabs")),
          new Built("desk.calls.", "site/CallReportWords", callTexts()),
          quotedIn("desk.calls.left.", "site/CallReportWords"),
          quotedIn("later.", "told/LaterCare"),
          quotedIn("office.", "handout/OfficeValues", "handout/OfficeCallers"),
          quotedIn("office.calls.", "site/Office"),
          quotedIn("office.give.", "handout/OfficePickups"),
          quotedIn("handout.care.", "handout/CareWords"),
          quotedIn("page.card.", "page/CardNotes"),
          quotedIn("page.fitted.", "page/Fittings"),
          quotedIn("page.public.", "page/PublicFacts", "guide/KnownNames"),
          quotedIn("public.year.", "page/PublicYear"),
          quotedIn("page.season.", "told/When"),
          quotedIn("page.visit.", "told/VisitWords"));

  private static Set<String> drivers() {
    return Arrays.stream(Driver.values()).map(Driver::id).collect(Collectors.toSet());
  }

  private static Set<String> ids(Enum<?>[] all) {
    return Arrays.stream(all)
        .map(one -> one.name().toLowerCase(Locale.ROOT).replace('_', '-'))
        .collect(Collectors.toSet());
  }

  private static Set<String> dateOrders() {
    return Arrays.stream(DateOrder.values()).map(DateOrder::id).collect(Collectors.toSet());
  }

  private static Set<String> rowStates() {
    return Stream.concat(
            Arrays.stream(RowPlan.State.values()).map(s -> s.name().toLowerCase(Locale.ROOT)),
            Stream.of("imported"))
        .collect(Collectors.toSet());
  }

  /** The heads of the tables of calls, and what belongs to each table, its days and verdicts. */
  private static Set<String> callTexts() {
    String source = source("desk/CallsTables");
    Stream<String> heads =
        Pattern.compile("[( .]text\\(\\s*\"([a-z0-9-]+)\"")
            .matcher(
                source
                    + source("desk/CallsScreen")
                    + source("site/CallReportText")
                    + source("site/CallReportWords"))
            .results()
            .map(m -> m.group(1));
    Stream<String> tables =
        Pattern.compile("(?:groups|table)\\(\\s*\"([a-z]+)\"")
            .matcher(source)
            .results()
            .flatMap(m -> Stream.of("table." + m.group(1), "about." + m.group(1)));
    Stream<String> days =
        Pattern.compile("new Days\\(\"([^\"]+)\"")
            .matcher(source("site/CallReports"))
            .results()
            .map(m -> "day." + m.group(1));
    Stream<String> verdicts =
        Arrays.stream(RateRatio.Verdict.values())
            .filter(v -> v != RateRatio.Verdict.TOO_FEW)
            .map(v -> "verdict." + v.id());
    return Stream.of(heads, tables, days, verdicts).flatMap(s -> s).collect(Collectors.toSet());
  }

  /** A part that only some holds need. */
  private static Set<String> withPart(String part, Predicate<Hold> which) {
    return CATALOGUE.holds().values().stream()
        .filter(which)
        .map(hold -> hold.id() + "." + part)
        .collect(Collectors.toSet());
  }

  private static boolean isOfAnOrder(Hold hold) {
    return !hold.wants().isEmpty() || !hold.forbids().isEmpty();
  }

  private static Set<String> finishes() {
    return CATALOGUE.films().values().stream()
        .flatMap(film -> film.finish().stream())
        .collect(Collectors.toSet());
  }

  private static Set<String> headings() {
    return Stream.concat(JobColumns.all().stream(), Stream.of("ignored"))
        .collect(Collectors.toSet());
  }

  private static Set<String> handouts() {
    return Arrays.stream(Handout.values()).map(Handout::id).collect(Collectors.toSet());
  }

  private static Set<String> results() {
    return Arrays.stream(PastVisit.Result.values())
        .map(PastVisit.Result::id)
        .collect(Collectors.toSet());
  }

  private static Set<String> outcomes() {
    return Arrays.stream(CallOutcome.values()).map(CallOutcome::id).collect(Collectors.toSet());
  }

  /** What a rule of a hold has a number for. */
  private static Set<String> numbers() {
    return Stream.concat(drivers().stream(), Stream.of("floor", "limit", "horizon"))
        .collect(Collectors.toSet());
  }

  private static Set<String> states() {
    return HoldKind.ids().stream()
        .flatMap(kind -> Stream.of(kind, kind + "-over"))
        .collect(Collectors.toSet());
  }

  private static Set<String> weekdays() {
    return IntStream.rangeClosed(1, 7).mapToObj(String::valueOf).collect(Collectors.toSet());
  }

  /** What is said of holds: those parts of names that stand in the program. */
  private static Set<String> holdParts() {
    return CatalogueTexts.of(CATALOGUE, FILES).texts().stream()
        .filter(text -> text.startsWith("hold."))
        .map(text -> text.substring(text.lastIndexOf('.') + 1))
        .filter(part -> CODE.contains("\"." + part + "\""))
        .collect(Collectors.toSet());
  }

  private static Set<String> ofHolds() {
    Set<String> parts = holdParts();
    return CatalogueTexts.of(CATALOGUE, FILES).texts().stream()
        .filter(text -> text.startsWith("hold."))
        .filter(text -> parts.contains(text.substring(text.lastIndexOf('.') + 1)))
        .map(text -> text.substring("hold.".length()))
        .collect(Collectors.toSet());
  }

  /** The literals of some classes, and those put together where one ends or begins with a point. */
  private static Built quotedIn(String begins, String by, String... more) {
    Set<String> quoted = new TreeSet<>();
    Stream.concat(Stream.of(by), Arrays.stream(more))
        .map(UnusedTextsTest::source)
        .flatMap(source -> LITERAL.matcher(source).results())
        .forEach(literal -> quoted.add(literal.group(1)));
    Set<String> ends = new TreeSet<>(quoted);
    for (String one : quoted) {
      for (String other : quoted) {
        if (one.endsWith(".") || other.startsWith(".")) {
          ends.add(one + other);
        }
      }
      ends.add(one.substring(one.lastIndexOf('.') + 1));
    }
    return new Built(begins, by, ends);
  }

  private static Set<String> keys() {
    Set<String> keys = new TreeSet<>();
    for (String file : FILES.list("content/words/en", ".yaml")) {
      keys.addAll(YamlTexts.read(FILES, file, new Problems()).orElseThrow().keySet());
    }
    return keys;
  }

  @Test
  void everyTextIsShownSomewhere() {
    Set<String> unused = new TreeSet<>();
    for (String key : keys()) {
      boolean named = CODE.contains("\"" + key + "\"") || CODE.contains("#{" + key + "}");
      if (!named && BUILT.stream().noneMatch(built -> built.has(key))) {
        unused.add(key);
      }
    }
    assertEquals(Set.of(), unused);
  }

  @Test
  void everyTextThatIsShownIsThere() {
    Set<String> keys = keys();
    Set<String> missing = new TreeSet<>();
    Matcher shown = SHOWN.matcher(CODE);
    while (shown.find()) {
      String key = shown.group(1) == null ? shown.group(2) : shown.group(1);
      boolean whole = key.contains(".") && !key.endsWith(".");
      if (whole && !keys.contains(key) && keys.stream().noneMatch(k -> k.endsWith("." + key))) {
        missing.add(key);
      }
    }
    assertEquals(Set.of(), missing);
  }

  @Test
  void eachPatternStandsInItsClassAndIsNeeded() {
    Set<String> keys = keys();
    for (Built built : BUILT) {
      assertTrue(source(built.by()).contains("\"" + built.begins() + "\""), built.by());
      assertTrue(keys.stream().anyMatch(built::has), built.begins());
    }
  }

  private static String source(String of) {
    return text(JAVA.resolve(of + ".java"));
  }

  private static String all(String folder, String ending) {
    try (Stream<Path> files = Files.walk(Path.of(folder))) {
      return files
          .filter(f -> f.toString().endsWith(ending))
          .sorted()
          .map(UnusedTextsTest::text)
          .collect(Collectors.joining("\n"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
