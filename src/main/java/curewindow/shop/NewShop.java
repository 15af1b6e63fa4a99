package curewindow.shop;

import curewindow.problem.Problem;
import curewindow.problem.Where;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
    List<String> written = new ArrayList<>();
    for (String file : Starter.bundled().all()) {
      boolean own = file.startsWith(OWN);
      if (!own && !file.equals(FILMS) && HELPS.stream().noneMatch(file::startsWith)) {
        continue;
      }
      String name = own ? file.substring(OWN.length()) : file;
      byte[] bytes = Starter.bundled().bytes(file).orElseThrow();
      Path target = root.resolve(name);
      Files.createDirectories(target.getParent());
      Files.write(target, own ? withSchemaPath(bytes) : bytes);
      written.add(name);
    }
    OwnCopies.note(root, List.of(FILMS));
    written.sort(null);
    return written;
  }

  /** The samples lie two folders deeper with the program than in a shop folder. */
  private static byte[] withSchemaPath(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8)
        .replace(SCHEMA + "../schemas/", SCHEMA + "content/schemas/")
        .replace(SCHEMA + "../../schemas/", SCHEMA + "../content/schemas/")
        .getBytes(StandardCharsets.UTF_8);
  }
}
