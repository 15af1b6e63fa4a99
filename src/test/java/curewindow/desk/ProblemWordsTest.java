package curewindow.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.ShopFiles;
import curewindow.shop.YamlTexts;
import curewindow.site.LoadedShop;
import curewindow.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Each kind of problem that can come from what is typed at the desk, or from a table that is
 * imported there, has its words in both languages of the desk.
 */
class ProblemWordsTest {

  private static final Path JAVA = Path.of("src/main/java/curewindow");

  /** Who tells a problem with its code as a literal, first or behind where it stands. */
  private static final Pattern TELLS =
      Pattern.compile(
          "\\b(?:Problem\\.(?:error|notice)|error|notice|TypedTime\\.Wrong|look|stop|formed|fault)\\(");

  private static final Pattern CODE = Pattern.compile("\"([a-z]+(?:-[a-z0-9]+)*)\"");

  /** Packages whose classes read what the desk writes, or write it. */
  private static final List<String> READERS = List.of("desk", "intake", "shop");

  private static final List<String> ALSO =
      List.of(
          "problem/Faults.java",
          "site/JobFiles.java",
          "site/KeptFile.java",
          "site/SharedFiles.java",
          "site/ShopSetUp.java");

  /** Readers of files that no screen writes. */
  private static final Set<String> OF_OTHER_FILES =
      Set.of(
          "shop/CsvJobs.java",
          "shop/CsvTable.java",
          "shop/HoldFacts.java",
          "shop/JobsReader.java",
          "shop/NewShop.java",
          "shop/ObservedReader.java",
          "shop/OwnCopies.java",
          "shop/PlaceReader.java",
          "shop/PlainText.java",
          "shop/ShopFiles.java",
          "shop/ShopFolder.java",
          "shop/VisitRowReader.java",
          "shop/VisitsReader.java",
          "shop/WeatherFiles.java",
          "shop/YamlTexts.java",
          "shop/YamlTree.java");

  /**
   * Of the readers that are left, what no form can bring about: keys that the desk never writes.
   */
  private static final Set<String> BY_HAND =
      Set.of(
          "after-a-settle",
          "after-itself",
          "bad-logo",
          "bad-spot",
          "bad-time-span",
          "both-given",
          "former-key",
          "key-of-another-kind",
          "looks-at-a-hold",
          "missing-column", // said in the words of the form, see ImportTold
          "no-file",
          "no-need",
          "no-stays",
          "not-in-street",
          "out-of-order",
          "pickup-before-in",
          "stays-out-of-order",
          "too-large",
          "unknown-key",
          "unreadable");

  private static Map<String, Set<String>> codes() throws IOException {
    Map<String, Set<String>> codes = new TreeMap<>();
    try (Stream<Path> files = Files.walk(JAVA)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        String name = JAVA.relativize(file).toString().replace('\\', '/');
        boolean reads = READERS.contains(name.split("/")[0]) && !OF_OTHER_FILES.contains(name);
        if (reads || ALSO.contains(name)) {
          codes(Files.readString(file))
              .forEach(code -> codes.computeIfAbsent(code, c -> new TreeSet<>()).add(name));
        }
      }
    }
    return codes;
  }

  /** The codes that a class tells: literals among the first two arguments, or constants of them. */
  private static Set<String> codes(String source) {
    Set<String> codes = new TreeSet<>();
    Matcher calls = TELLS.matcher(source);
    while (calls.find()) {
      List<String> arguments = arguments(source, calls.end());
      int last = calls.group().startsWith("fault") ? 2 : calls.group().startsWith("formed") ? 4 : 1;
      int first = last == 1 ? 0 : last - 1;
      for (String argument :
          arguments.subList(Math.min(first, arguments.size()), Math.min(last, arguments.size()))) {
        if (argument.contains("Problem.")) {
          continue; // That call is looked at by itself.
        }
        CODE.matcher(argument).results().map(r -> r.group(1)).forEach(codes::add);
        constant(source, argument.strip()).ifPresent(codes::add);
      }
    }
    return codes;
  }

  private static java.util.Optional<String> constant(String source, String name) {
    return name.matches("[A-Z_]+")
        ? Pattern.compile("String " + name + " = \"([a-z-]+)\"")
            .matcher(source)
            .results()
            .map((MatchResult r) -> r.group(1))
            .findFirst()
        : java.util.Optional.empty();
  }

  private static List<String> arguments(String source, int from) {
    List<String> arguments = new ArrayList<>();
    StringBuilder now = new StringBuilder();
    int depth = 0;
    boolean quoted = false;
    for (int i = from; i < source.length() && arguments.size() < 4; i++) {
      char c = source.charAt(i);
      quoted ^= c == '"' && source.charAt(i - 1) != '\\';
      depth += quoted ? 0 : "([{".indexOf(c) >= 0 ? 1 : ")]}".indexOf(c) >= 0 ? -1 : 0;
      boolean ends = depth < 0 || !quoted && depth == 0 && c == ',';
      if (ends) {
        arguments.add(now.toString());
        now.setLength(0);
      } else {
        now.append(c);
      }
      if (depth < 0) {
        break;
      }
    }
    return arguments;
  }

  private static Set<String> texts(String language) {
    return YamlTexts.read(
            new ShopFiles(Path.of("no-such-shop")),
            "content/words/" + language + "/desk.yaml",
            new Problems())
        .orElseThrow()
        .keySet();
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void eachProblemOfAFormOrATableHasItsWords(String language) throws IOException {
    Set<String> texts = texts(language);
    Map<String, Set<String>> lacking = new TreeMap<>(codes());
    assertTrue(lacking.size() > 80, lacking::toString);
    lacking.keySet().removeIf(c -> texts.contains(ProblemWords.TEXTS + c));
    lacking.keySet().removeIf(c -> texts.contains("desk.import.problem." + c));
    lacking.keySet().removeAll(BY_HAND);
    assertEquals(Map.of(), lacking, "give it words in desk.yaml, or say why no form can bring it");
  }

  @Test
  void whatIsSaidToBeWrittenByHandIsToldSomewhereAndHasNoWords() throws IOException {
    Set<String> told = codes().keySet();
    for (String code : BY_HAND) {
      assertTrue(told.contains(code), code);
      assertTrue(!texts("en").contains(ProblemWords.TEXTS + code), code);
    }
    for (String file : OF_OTHER_FILES) {
      assertTrue(Files.exists(JAVA.resolve(file)), file);
    }
  }

  private static Words words(String language) {
    Clock clock = Clock.fixed(Instant.parse("2026-11-25T20:00:00Z"), ZoneOffset.UTC);
    return LoadedShop.load(Path.of("content/demo"), clock).words().of(language);
  }

  /** What stands in a file that somebody wrote by hand is not told in another language. */
  @Test
  void whatHasNoWordsIsPlaced() {
    Problem problem =
        Problem.error("no-stays", Where.line("jobs/Q-3101.yaml", 4, 1), "no stay", "list one");
    assertEquals(
        "jobs/Q-3101.yaml, line 4: no stay: list one", new ProblemWords(words("en")).told(problem));
    assertEquals(
        "jobs/Q-3101.yaml, línea 4 no se puede usar así. El comando check dice por qué.",
        new ProblemWords(words("es")).told(problem));
  }

  @Test
  void namesOfOursAreSaidAsTheDeskSaysThem() {
    Problem problem =
        Problem.notice("dates-read", Where.file("imports/diary.yaml"), "", "")
            .with("column", "pickup")
            .with("order", "day-first")
            .with("line", "2")
            .with("value", "24.11.2026");
    assertEquals(
        "Entrega: Primero el día, 24.11.2026; la línea 2 tiene “24.11.2026”.",
        ProblemWords.ofRows(words("es")).told(problem));
  }
}
