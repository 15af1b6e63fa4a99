package curewindow.desk;

import curewindow.page.Templates;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.ShopFiles;
import curewindow.words.Words;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The desk's own templates, style and script, which come with the program. */
final class DeskPages {

  private static final List<String> TEMPLATES =
      List.of(
          "frame",
          "today",
          "job",
          "hand-over",
          "car",
          "find",
          "enter",
          "message",
          "shop",
          "films",
          "film",
          "film-remove",
          "rules",
          "calls",
          "import",
          "import-map",
          "import-rows");

  /** The style that the desk shares with customers' pages. */
  private static final String PAPER = "site-templates/page.css";

  private final Templates templates;
  private final String style;
  private final String script = resource("desk.js");

  DeskPages() {
    Map<String, String> texts = new LinkedHashMap<>();
    TEMPLATES.forEach(name -> texts.put(name, resource(name + ".html")));
    this.templates = Templates.of(texts);
    this.style =
        new ShopFiles(Path.of("")).withoutShop().original(PAPER).orElseThrow()
            + resource("desk.css");
  }

  String html(String template, Record view, Words words) {
    Problems problems = new Problems();
    return templates
        .fill(template, view, words, problems)
        .orElseThrow(
            () ->
                new IllegalStateException(
                    problems.all().stream().map(Problem::oneLine).toList().toString()));
  }

  String style() {
    return style;
  }

  String script() {
    return script;
  }

  private static String resource(String name) {
    try (InputStream in = DeskPages.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
