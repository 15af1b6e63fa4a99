package curewindow.search;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.ShopFiles;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.mozilla.javascript.RhinoException;

/**
 * Builds search indexes. The very script that searches in the browser builds them here, so that
 * both agree on what a word is: the library Lunr (in its own words "a bit like Solr, but much
 * smaller") with {@code site-templates/search.js} around it, run by the JavaScript engine Rhino
 * without any way out of it. The same texts give the same bytes.
 */
public final class SearchPress {

  /** The part of the script that is not the library's. */
  public static final String OWN = "site-templates/search.js";

  private static final String LIBRARY = "/META-INF/resources/webjars/lunr/2.3.9/";

  private final String own;

  private SearchPress(String own) {
    this.own = own;
  }

  /**
   * Reads the script.
   *
   * @param files the shop folder laid over the program's own files
   * @param problems where it is said that it cannot be read
   * @return the press, or empty where the script cannot be read
   */
  public static Optional<SearchPress> read(ShopFiles files, Problems problems) {
    return files.text(OWN, problems).map(SearchPress::new);
  }

  /**
   * What a browser has to run before it can search: the library's licence and text, then ours.
   *
   * @return JavaScript that defines {@code lunr} and {@code lookup}
   */
  public String script() {
    return "/*\n" + resource("LICENSE").strip() + "\n*/\n" + resource("lunr.min.js") + "\n" + own;
  }

  /**
   * Builds the indexes of some languages.
   *
   * @param languages one a language
   * @param problems where a mistake in the script is reported
   * @return the indexes in the same order, or empty where the script has a mistake
   */
  public Optional<List<Lookup>> press(List<LanguageTexts> languages, Problems problems) {
    try (Engine engine = new Engine()) {
      engine.run(resource("lunr.min.js"), "lunr.min.js");
      engine.run(own, OWN);
      return Optional.of(languages.stream().map(v -> new Indexing(engine, v).lookup()).toList());
    } catch (RhinoException e) {
      String what = e.details() == null ? "the script has a mistake" : e.details();
      problems.add(
          Problem.error(
              "script-mistake",
              new Where(OWN, Math.max(0, e.lineNumber()), 0, ""),
              what.lines().findFirst().orElse("the script has a mistake"),
              "mend the script, or delete your own to use the one that comes with the program"));
      return Optional.empty();
    }
  }

  private static String resource(String name) {
    try (InputStream in = SearchPress.class.getResourceAsStream(LIBRARY + name)) {
      if (in == null) {
        throw new IllegalStateException(LIBRARY + name + " is not in the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
