package curewindow.desk;

import curewindow.problem.Problem;
import curewindow.problem.Where;
import curewindow.shop.BrokenJob;
import curewindow.site.CardFile;
import curewindow.site.LoadedShop;
import curewindow.words.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Cars that are not lost, but whose file is gone or cannot be read: which file, and what to do. */
final class LostCars {

  /** More of what is wrong helps nobody at the counter. */
  private static final int TOLD = 5;

  /** More numbers fill a screen; who mends these sees the next. */
  private static final int MOST_NAMED = 20;

  private static final String WRONG = "wrong";

  private LostCars() {}

  /**
   * Why a car cannot be shown.
   *
   * @param words of the desk
   * @param about that its file is gone, or cannot be read
   * @param wrong what is wrong in that
   */
  record Lost(Words words, Problem about, List<Problem> wrong) {

    /** A line each. */
    List<String> lines() {
      return Stream.concat(
              Stream.of(new ProblemWords(words).told(about.with(WRONG, "")).strip()), told())
          .toList();
    }

    private Stream<String> told() {
      return wrong.stream().map(new ProblemWords(words)::toldOf);
    }

    /** The same as a problem of a form. */
    Problem problem() {
      return about.with(WRONG, told().collect(Collectors.joining(" ")));
    }
  }

  /** Why the car of a number cannot be shown; empty where there never was one. */
  static Optional<Lost> of(LoadedShop shop, String id, Words words) {
    List<String> names =
        shop.brokenJobs().stream().filter(n -> BrokenJob.likelyId(n).equals(id)).toList();
    if (!names.isEmpty()) {
      List<Problem> wrong = shop.errorsOf(names).stream().limit(TOLD).toList();
      return Optional.of(new Lost(words, broken(id), wrong));
    }
    return shop.knownToken(id).isPresent() || CardFile.isHandedOver(shop, id)
        ? Optional.of(new Lost(words, gone(id), List.of()))
        : Optional.empty();
  }

  private static Problem broken(String job) {
    return Problem.error(
            "job-broken",
            Where.file("jobs/" + job),
            "the file of this car cannot be read",
            "put right what is wrong in it")
        .with("job", job);
  }

  private static Problem gone(String job) {
    return Problem.error(
            "job-gone",
            Where.file("jobs/" + job),
            "the file of this car is gone",
            "bring it back from a copy")
        .with("job", job);
  }

  /**
   * Cars that a screen is without.
   *
   * @param text says so, and how many there are
   * @param jobs the numbers of some of them
   */
  record Unread(String text, List<String> jobs) {}

  /** The cars that a screen is without, as their files cannot be read; empty where none is. */
  static Optional<Unread> unread(LoadedShop shop, String key, Words words) {
    return unread(unread(shop), key, words);
  }

  /** The same of some of them. */
  static Optional<Unread> unread(List<String> jobs, String key, Words words) {
    return jobs.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Unread(
                words.text(key, Map.of("n", jobs.size())),
                jobs.stream().limit(MOST_NAMED).toList()));
  }

  /** The cars that cannot be found by their words, as nothing of them can be read. */
  static List<String> unread(LoadedShop shop) {
    return shop.brokenJobs().stream().map(BrokenJob::likelyId).sorted().toList();
  }
}
