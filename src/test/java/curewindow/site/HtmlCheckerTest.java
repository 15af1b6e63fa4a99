package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.Npm;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * Every page that a press writes is valid HTML to the Nu Html Checker (npm {@code vnu-jar}), the
 * checker of the authors of the HTML standard. It also reads the pages whose quotes and end tags
 * were left away.
 */
class HtmlCheckerTest {

  @TempDir Path temp;

  /**
   * What the checker takes for a mistake and is none: style that it does not know yet. {@code
   * paint-order} is of SVG 2 (13.10), {@code container-type}, {@code @container} and the unit
   * {@code cqi} of CSS Containment Level 3 (sections 3.1 and 5).
   */
  private static boolean newerThanTheChecker(JsonNode message) {
    String says = message.path("message").asString();
    return says.equals("CSS: “paint-order”: Property “paint-order” doesn't exist.")
        || says.equals("CSS: “container-type”: Property “container-type” doesn't exist.")
        || says.equals("CSS: Unrecognized at-rule “@container”")
        || says.matches("CSS: “(font-size|padding)”: Parse Error.")
            && message.path("extract").asString().matches(".*(cqi|ar\\(--n\\)).*");
  }

  @Test
  void everyPageIsValid() throws Exception {
    List<Path> pages = PressedDemo.get().pages();
    assertTrue(pages.size() > 40, pages.toString());
    assertEquals(List.of(), errors(pages));
  }

  @Test
  void thePaperOfTheOfficeIsValid() throws Exception {
    assertEquals(List.of(), errors(List.of(PressedDemo.get().out().resolve(Office.HTML))));
  }

  @Test
  void aMistakeIsSeen() throws Exception {
    Path wrong = Files.writeString(temp.resolve("wrong.html"), WRONG);
    List<String> errors = errors(List.of(wrong));
    assertTrue(errors.toString().contains("Duplicate ID"), errors.toString());
    assertTrue(errors.toString().contains("Unclosed element"), errors.toString());
  }

  private static final String WRONG =
      "<!DOCTYPE html><html lang=en><title>x</title><p id=a>x<p id=a>y<section><h2>z</h2>";

  private List<String> errors(List<Path> pages) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    String checker = Npm.file("vnu-jar/build/dist/vnu.jar").toString();
    command.addAll(List.of("-jar", checker, "--format", "json", "--stdout", "--exit-zero-always"));
    pages.forEach(page -> command.add(page.toString()));
    Path said = temp.resolve("said.json");
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(said.toFile())
            .redirectError(temp.resolve("errors.txt").toFile())
            .start();
    if (!process.waitFor(300, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new IOException("the checker did not end in time");
    }
    String problems = Files.readString(temp.resolve("errors.txt"));
    assertEquals(0, process.exitValue(), problems);
    return read(Files.readString(said, StandardCharsets.UTF_8));
  }

  private static List<String> read(String json) {
    List<String> errors = new ArrayList<>();
    for (JsonNode message : new ObjectMapper().readTree(json).path("messages")) {
      if (!message.path("type").asString().equals("info") && !newerThanTheChecker(message)) {
        errors.add(
            message.path("url").asString().replaceFirst(".*/site/", "")
                + ":"
                + message.path("lastLine").asInt()
                + " "
                + message.path("message").asString());
      }
    }
    return errors.stream().distinct().toList();
  }
}
