package curewindow.send;

import curewindow.shop.Sha256;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What has to be done so that the other place has the site: what is put there, pages before what
 * links to them, and what is taken away, last of all.
 *
 * @param put the files to put, in order
 * @param remove the files to take away
 * @param hashes the SHA-256 of every file of the site, in hexadecimal
 */
record SendPlan(List<String> put, List<String> remove, Map<String, String> hashes) {

  /**
   * Compares the site with what was sent.
   *
   * @param site the folder of the site
   * @param sent the hash of each file that is there, by its path
   * @param all whether files are put that are there as they are
   * @throws IOException where the site cannot be read
   */
  static SendPlan of(Path site, Map<String, String> sent, boolean all) throws IOException {
    Map<String, String> hashes = new TreeMap<>();
    for (String path : files(site)) {
      byte[] hash = Sha256.of(Files.readAllBytes(site.resolve(path)));
      hashes.put(path, HexFormat.of().formatHex(hash));
    }
    return new SendPlan(
        hashes.keySet().stream()
            .filter(path -> all || !hashes.get(path).equals(sent.get(path)))
            .sorted(Comparator.comparingInt(SendPlan::turn).thenComparing(path -> path))
            .toList(),
        sent.keySet().stream().filter(path -> !hashes.containsKey(path)).sorted().toList(),
        hashes);
  }

  private static List<String> files(Path site) throws IOException {
    try (Stream<Path> all = Files.walk(site)) {
      return all.filter(Files::isRegularFile)
          .map(file -> site.relativize(file).toString().replace('\\', '/'))
          .toList();
    }
  }

  /**
   * First what pages need, then customers' pages, then those for anyone, the lists of them last.
   */
  private static int turn(String path) {
    boolean isPage = path.endsWith(".html");
    if (!isPage) {
      return path.endsWith(".xml") || path.equals("robots.txt") ? 5 : 0;
    }
    return path.startsWith("C/") ? 1 : path.endsWith("/find.html") ? 3 : isHome(path) ? 4 : 2;
  }

  private static boolean isHome(String path) {
    return path.equals("index.html") || path.endsWith("/index.html");
  }

  /** A customer's page by its folder, such as {@code C/7F3K/}. */
  static Optional<String> customersFolder(String path) {
    return path.startsWith("C/") && path.endsWith("/index.html")
        ? Optional.of(path.substring(0, path.length() - "index.html".length()))
        : Optional.empty();
  }
}
