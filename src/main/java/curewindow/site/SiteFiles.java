package curewindow.site;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The files of a site by the paths that browsers ask for. */
public final class SiteFiles {

  private static final Map<String, String> TYPES =
      Map.ofEntries(
          Map.entry("html", "text/html; charset=utf-8"),
          Map.entry("css", "text/css; charset=utf-8"),
          Map.entry("js", "text/javascript; charset=utf-8"),
          Map.entry("json", "application/json"),
          Map.entry("webmanifest", "application/manifest+json"),
          Map.entry("ics", "text/calendar; charset=utf-8"),
          Map.entry("vcf", "text/vcard; charset=utf-8"),
          Map.entry("svg", "image/svg+xml"),
          Map.entry("png", "image/png"),
          Map.entry("txt", "text/plain; charset=utf-8"),
          Map.entry("xml", "application/xml"));

  private SiteFiles() {}

  /**
   * The file of a path; of a folder its {@code index.html}.
   *
   * @param root the site
   * @param path the path of a request, forward slashes
   * @return the file; empty where there is none, or none inside the site
   * @throws IOException where the disk cannot be read
   */
  public static Optional<Path> find(Path root, String path) throws IOException {
    Path file;
    try {
      file = root.resolve(path.replaceFirst("^/+", "")).normalize();
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
    if (Files.isDirectory(file)) {
      file = file.resolve("index.html");
    }
    boolean inside = Files.isRegularFile(file) && file.toRealPath().startsWith(root.toRealPath());
    return inside ? Optional.of(file) : Optional.empty();
  }

  /**
   * The media type of a file by its ending.
   *
   * @param file the file
   * @return the value of {@code Content-Type}
   */
  public static String type(Path file) {
    String name = file.getFileName().toString();
    String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    return TYPES.getOrDefault(ending, "application/octet-stream");
  }
}
