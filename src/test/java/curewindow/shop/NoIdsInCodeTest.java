package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import curewindow.problem.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a shop may rename or replace is data: no name of the catalogue stands in the program. */
class NoIdsInCodeTest {

  private static final Pattern LITERAL = Pattern.compile("\"([a-z0-9]+(?:-[a-z0-9]+)*)\"");

  /** Facts of spots that have the name of a hold: they are the program's own words. */
  private static final Set<String> FACTS =
      Set.of("SpotFact.java defroster", "SpotFact.java wipers");

  @Test
  void noNameOfTheCatalogueStandsInTheProgram() throws IOException {
    Catalogue catalogue =
        new CatalogueReader(new ShopFiles(Path.of("target/no-such-shop")), new Problems()).read();
    Set<String> ids = new TreeSet<>(catalogue.holds().keySet());
    ids.addAll(catalogue.services().keySet());
    ids.addAll(catalogue.spots().keySet());
    ids.addAll(catalogue.films().keySet());
    Set<String> found = new TreeSet<>();
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        Matcher literal = LITERAL.matcher(Files.readString(file));
        while (literal.find()) {
          if (ids.contains(literal.group(1))) {
            found.add(file.getFileName() + " " + literal.group(1));
          }
        }
      }
    }
    assertEquals(FACTS, found);
  }
}
