package curewindow.shop;

import curewindow.problem.Problem;
import curewindow.problem.Where;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Lays out a new shop folder, which reads without problems and can be pressed at once: what every
 * shop changes, and what helps in writing it. All else follows the program until the shop takes a
 * copy of it ({@link OwnCopies}).
 */
public final class NewShop {

  private static final String OWN = "content/starter-shop/";

  /** What every shop changes, beside its own samples. */
  private static final String FILMS = "content/catalogue/films.yaml";

  private static final List<String> HELPS = List.of("content/schemas/", "content/places/");
  private static final String SCHEMA = "# yaml-language-server: $schema=";

  private NewShop() {}

  /** What became of the attempt. */
  public sealed interface Result {}

  /**
   * The folder was laid out.
   *
   * @param files the files written, relative to the folder, with forward slashes, alphabetical
   */
  public record Written(List<String> files) implements Result {

    /** Copies the list. */
    public Written {
      files = List.copyOf(files);
    }
  }

  /**
   * The folder was left alone, or could not be written to.
   *
   * @param problem why, and what to do
   */
  public record Refused(Problem problem) implements Result {}

  /**
   * Lays out a new shop folder.
   *
   * @param dir the folder, which must be empty or not exist yet
   * @return the files written, or why there are none
   */
  public static Result write(Path dir) {
    Path root = dir.toAbsolutePath().normalize();
    try {
      if (Files.exists(root) && !isEmptyFolder(root)) {
        return refused(
            dir, "not-empty", "is not an empty folder", "name a folder that does not exist yet");
      }
      return new Written(lay(root));
    } catch (IOException e) {
      return refused(
          dir,
          "unwritable",
          "cannot be written to",
          "check its permissions and the space on the disk, or name another folder");
    }
  }

  private static Refused refused(Path dir, String code, String what, String fix) {
    String shown = Source.shown(dir.toString());
    return new Refused(Problem.error(code, Where.file(shown), shown + " " + what, fix));
  }

  private static boolean isEmptyFolder(Path dir) throws IOException {
    if (!Files.isDirectory(dir)) {
      return false;
    }
    try (Stream<Path> files = Files.list(dir)) {
      return files.findAny().isEmpty();
    }
  }

  private static List<String> lay(Path root) throws IOException {
    Map<String, byte[]> files = files();
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      Path target = root.resolve(file.getKey());
      Files.createDirectories(target.getParent());
      Files.write(target, file.getValue());
    }
    OwnCopies.note(root, List.of(FILMS));
    return new ArrayList<>(files.keySet());
  }

  /**
   * What is laid out in a new shop folder, its sample jobs and {@code shop.yaml} among it.
   *
   * @return the bytes by the file, relative to the folder, with forward slashes, alphabetical
   * @throws IOException where the program itself cannot be read
   */
  public static Map<String, byte[]> files() throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    for (String file : Starter.bundled().all()) {
      boolean own = file.startsWith(OWN);
      if (own || file.equals(FILMS) || HELPS.stream().anyMatch(file::startsWith)) {
        byte[] bytes = Starter.bundled().bytes(file).orElseThrow();
        files.put(own ? file.substring(OWN.length()) : file, own ? withSchemaPath(bytes) : bytes);
      }
    }
    return files;
  }

  /** One of the files that are laid out, as text. */
  static String text(String file) {
    try {
      return new String(files().get(file), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The samples lie two folders deeper with the program than in a shop folder. */
  private static byte[] withSchemaPath(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8)
        .replace(SCHEMA + "../schemas/", SCHEMA + "content/schemas/")
        .replace(SCHEMA + "../../schemas/", SCHEMA + "../content/schemas/")
        .getBytes(StandardCharsets.UTF_8);
  }
}
