package curewindow.search;

import curewindow.problem.Problems;
import curewindow.shop.ShopFiles;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * What searches in the browser: the library Lunr (in its own words "a bit like Solr, but much
 * smaller") with {@code site-templates/search.js} around it.
 */
public final class SearchScript {

  private static final String OWN = "site-templates/search.js";

  private static final String LIBRARY = "/META-INF/resources/webjars/lunr/2.3.9/";

  private SearchScript() {}

  /**
   * Reads what a browser has to run before it can search: the library's licence and text, then
   * ours.
   *
   * @param files the shop folder laid over the program's own files
   * @param problems where it is said that it cannot be read
   * @return JavaScript that defines {@code lunr} and {@code lookup}, or empty where it cannot be
   *     read
   */
  public static Optional<String> read(ShopFiles files, Problems problems) {
    return files
        .text(OWN, problems)
        .map(
            own ->
                "/*\n"
                    + resource("LICENSE").strip()
                    + "\n*/\n"
                    + resource("lunr.min.js")
                    + "\n"
                    + own);
  }

  private static String resource(String name) {
    try (InputStream in = SearchScript.class.getResourceAsStream(LIBRARY + name)) {
      if (in == null) {
        throw new IllegalStateException(LIBRARY + name + " is not in the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
