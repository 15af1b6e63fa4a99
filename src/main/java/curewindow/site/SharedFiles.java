package curewindow.site;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.OwnCopies;
import curewindow.shop.Sha256;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopFolder;
import curewindow.shop.ShopRead;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Writes the files that all jobs share, {@code shop.yaml} and those of the catalogue: only what the
 * one reader of shop folders takes, never over what somebody else wrote meanwhile, and each as a
 * whole.
 */
public final class SharedFiles {

  private SharedFiles() {}

  /**
   * A file as it stands, the shop's own or the program's.
   *
   * @param file relative to the shop folder
   * @param text its text
   * @param version changes whenever the text does
   */
  public record Kept(String file, String text, String version) {

    /** Refuses missing parts. */
    public Kept {
      Objects.requireNonNull(file, "file");
      Objects.requireNonNull(text, "text");
      Objects.requireNonNull(version, "version");
    }
  }

  /** What came of writing. */
  public sealed interface Result permits Written, Refused, Overtaken {}

  /** It is on the disk. */
  public record Written() implements Result {}

  /**
   * Nothing was written.
   *
   * @param problems what would be wrong then, each with its file and path
   */
  public record Refused(List<Problem> problems) implements Result {

    /** Copies the list. */
    public Refused {
      problems = List.copyOf(problems);
    }
  }

  /**
   * Nothing was written, as the file is another by now.
   *
   * @param now the file as it stands
   */
  public record Overtaken(Kept now) implements Result {}

  /**
   * A change to a file.
   *
   * @param file relative to the shop folder
   * @param version of the file that the change was made from
   * @param concerns the paths in the file at which nothing may be wrong afterwards, even what was
   *     wrong before
   * @param how makes the new text of the old one; empty where somebody has to do it by hand
   */
  public record Change(
      String file,
      String version,
      Predicate<String> concerns,
      Function<String, Optional<String>> how) {}

  /**
   * A file as it stands.
   *
   * @param files the shop folder
   * @param file relative to the shop folder
   * @return the file; empty where there is none that can be read
   */
  public static Optional<Kept> of(ShopFiles files, String file) {
    return files
        .text(file, new Problems())
        .map(text -> new Kept(file, text, HexFormat.of().formatHex(Sha256.of(text))));
  }

  /**
   * Changes a file. What the program brings is copied into the shop folder first.
   *
   * @param shop the shop folder
   * @param change what is changed
   * @param now the time of reading
   * @return what came of it; a change that breaks a job or anything else in the folder is refused
   * @throws IOException where the shop folder cannot be written; the message is for the user
   */
  public static Result change(LoadedShop shop, Change change, Instant now) throws IOException {
    ShopFiles files = shop.files();
    try (FolderLock lock = FolderLock.on(files.root())) {
      Optional<Kept> kept = of(files, change.file());
      if (kept.isEmpty()) {
        return byHand(change.file());
      }
      if (!kept.get().version().equals(change.version())) {
        return new Overtaken(kept.get());
      }
      Optional<String> text = change.how().apply(kept.get().text());
      if (text.isEmpty()) {
        return byHand(change.file());
      }
      List<Problem> problems = problems(files, change, text.get(), now);
      if (!problems.isEmpty()) {
        return new Refused(problems);
      }
      if (!text.get().equals(kept.get().text())) {
        write(lock.folder(), files, change.file(), text.get());
      }
      return new Written();
    }
  }

  private static void write(Path folder, ShopFiles files, String file, String text)
      throws IOException {
    if (!files.isOwn(file)) {
      OwnCopies.make(folder, file);
    }
    AtomicFiles.replace(folder.resolve(file), text.getBytes(StandardCharsets.UTF_8));
  }

  /** What is wrong where the change is, and what was right in the folder without it. */
  private static List<Problem> problems(ShopFiles files, Change change, String text, Instant now) {
    Set<Said> before =
        ShopFolder.read(files, now).problems().stream().map(Said::of).collect(Collectors.toSet());
    ShopRead after = ShopFolder.read(files.with(change.file(), text), now);
    return after.problems().stream()
        .filter(Problem::isError)
        .filter(p -> isAt(p, change) || !before.contains(Said.of(p)))
        .toList();
  }

  private static boolean isAt(Problem problem, Change change) {
    return problem.file().equals(change.file()) && change.concerns().test(problem.path());
  }

  /** A problem wherever its line is by now. */
  private record Said(String file, String path, String message) {

    static Said of(Problem problem) {
      return new Said(problem.file(), problem.path(), problem.message());
    }
  }

  private static Refused byHand(String file) {
    return new Refused(
        List.of(
            Problem.error(
                "by-hand",
                Where.file(file),
                "this cannot be changed here",
                "change it in " + file)));
  }
}
