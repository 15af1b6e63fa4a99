package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a shop may rename or replace is data: no name of the catalogue stands in the program. */
class NoIdsInCodeTest {

  private static final Pattern COMMENT =
      Pattern.compile("/\\*.*?\\*/|^\\s*//[^\\n]*", Pattern.DOTALL | Pattern.MULTILINE);
  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
  private static final Pattern NAME = Pattern.compile("[a-z0-9]+(?:-[a-z0-9]+)*");
  private static final Pattern DOTTED = Pattern.compile("[a-z0-9-]*(?:[.][a-z0-9-]*)*");

  /** Facts of spots that have the name of a hold: they are the program's own words. */
  private static final Set<String> FACTS =
      Set.of("SpotFact.java defroster", "SpotFact.java wipers");

  @Test
  void noNameOfTheCatalogueStandsInTheProgram() throws IOException {
    Set<String> ids = ids();
    Set<String> found = new TreeSet<>();
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        for (String name : names(Files.readString(file))) {
          if (ids.contains(name)) {
            found.add(file.getFileName() + " " + name);
          }
        }
      }
    }
    assertEquals(FACTS, found);
  }

  private static Set<String> ids() {
    Catalogue catalogue =
        ShopFolder.read(new ShopFiles(Path.of("no-such-shop")), Instant.EPOCH).catalogue();
    Set<String> ids = new TreeSet<>(catalogue.holds().keySet());
    ids.addAll(catalogue.services().keySet());
    ids.addAll(catalogue.spots().keySet());
    ids.addAll(catalogue.films().keySet());
    return ids;
  }

  /**
   * What might be a name in the literals of a source: all of it and between points, as in {@code
   * hold.rain.label}; within a sentence only what has a hyphen, as others are plain words there.
   */
  private static Set<String> names(String source) {
    Set<String> names = new TreeSet<>();
    Matcher literal = LITERAL.matcher(COMMENT.matcher(source).replaceAll(""));
    while (literal.find()) {
      boolean dotted = DOTTED.matcher(literal.group(1)).matches();
      Matcher name = NAME.matcher(literal.group(1));
      while (name.find()) {
        if (dotted || name.group().contains("-")) {
          names.add(name.group());
        }
      }
    }
    return names;
  }
}
