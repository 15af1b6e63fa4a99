package curewindow.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Guides and what comes out of them for a job, from the files under {@code guide/golden}. A file
 * has several cases; a case has a guide and one or more jobs, each with its HTML.
 */
class GoldenGuideTest {

  @TestFactory
  Stream<DynamicTest> comesOutAsWritten() throws IOException, URISyntaxException {
    List<DynamicTest> tests = new ArrayList<>();
    for (Path file : files()) {
      for (Case each : cases(file)) {
        tests.add(
            DynamicTest.dynamicTest(
                file.getFileName() + ": " + each.name(), () -> check(each, Locale.getDefault())));
      }
    }
    assertTrue(tests.size() >= 30, "only " + tests.size() + " cases were found");
    return tests.stream();
  }

  /**
   * In Turkish, lower case of I is a dotless i: names must not depend on the machine's language.
   */
  @Test
  void comesOutTheSameOnATurkishMachine() throws IOException, URISyntaxException {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(new Locale("tr", "TR"));
      for (Path file : files()) {
        for (Case each : cases(file)) {
          check(each, Locale.getDefault());
        }
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void aValueThatEndsWithAStopEndsItsSentence() {
    String guide = "Wait until (= hold.haze.until =). Then (= hold.haze.day =)...\n";
    assertEquals(
        "<p>Wait until 7 p.m. Then go...</p>\n",
        Samples.guide(guide).html(Samples.facts("hold.haze.until = 7 p.m.\nhold.haze.day = go")));
    assertEquals(
        "<p>Wait until noon. Then 7 p.m....</p>\n",
        Samples.guide(guide).html(Samples.facts("hold.haze.until = noon\nhold.haze.day = 7 p.m.")));
  }

  private static void check(Case each, Locale locale) {
    String html = Samples.guide(each.guide()).html(Samples.facts(each.facts()));
    assertEquals(each.html(), html, () -> each.name() + " (" + locale + ")");
  }

  private record Case(String name, String guide, String facts, String html) {}

  private static List<Path> files() throws IOException, URISyntaxException {
    Path folder = Path.of(GoldenGuideTest.class.getResource("/guide/golden").toURI());
    try (Stream<Path> all = Files.list(folder)) {
      return all.sorted().toList();
    }
  }

  private static List<Case> cases(Path file) throws IOException {
    List<Case> cases = new ArrayList<>();
    for (String text : Files.readString(file).split("(?m)^=== ")) {
      String[] parts = text.split("(?m)^--- ");
      String name = parts[0].strip();
      for (int i = 2; i + 1 < parts.length; i += 2) {
        cases.add(new Case(name, body(parts[1]), body(parts[i]), lines(body(parts[i + 1]))));
      }
    }
    return cases;
  }

  /** What follows the heading line of a part. */
  private static String body(String part) {
    return part.substring(part.indexOf('\n') + 1);
  }

  /** The text with one line break at its end, or none where it is blank. */
  private static String lines(String text) {
    return text.isBlank() ? "" : text.stripTrailing() + "\n";
  }
}
