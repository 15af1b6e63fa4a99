package curewindow.site;

import curewindow.problem.Problem;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopFolder;
import curewindow.shop.ShopRead;
import java.io.IOException;
import java.time.Instant;
import java.util.List;
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
   * Changes a file. What the program brings is copied into the shop folder first.
   *
   * @param shop the shop folder
   * @param change what is changed
   * @param now the time of reading
   * @return the text that was written; a change that breaks a job or anything else in the folder is
   *     refused
   * @throws IOException where the shop folder cannot be written; the message is for the user
   */
  public static Saved<String> change(LoadedShop shop, Change change, Instant now)
      throws IOException {
    ShopFiles files = shop.files();
    return KeptFile.change(
        files,
        new KeptFile.Change(change.file(), change.version(), change.how()),
        text -> {
          List<Problem> problems = problems(files, change, text, now);
          return problems.isEmpty() ? new Saved.Written<>(text) : new Saved.Refused<>(problems);
        });
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
}
