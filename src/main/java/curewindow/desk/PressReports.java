package curewindow.desk;

import curewindow.problem.Problem;
import curewindow.words.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** What came of making a car's page, the last time for each of the last few hundred cars. */
final class PressReports {

  private static final int MOST = 300;

  private final Map<String, Report> last = new LastFew<>(MOST);

  private int number;

  /** Something that was done, which is said in the language of whoever looks at it. */
  record Step(boolean good, Function<Words, String> text) {

    static Step of(boolean good, String key, Map<String, ?> facts) {
      return new Step(good, words -> words.text(key, facts));
    }

    static Step of(Problem problem) {
      return new Step(false, words -> new ProblemWords(words).toldOf(problem));
    }

    Said in(Words words) {
      return new Said(good, text.apply(words));
    }
  }

  /** Something that was done, in words. */
  record Said(boolean good, String text) {}

  /**
   * What came of it.
   *
   * @param steps what was done and what came of it
   * @param online whether the page answered at its address; empty where that was not asked
   */
  record Made(List<Step> steps, Optional<Boolean> online) {}

  /** The same with the number under which it is shown. */
  record Report(String number, Made made) {}

  /** Keeps a report, and gives its number. */
  synchronized String keep(String job, Made made) {
    number++;
    last.remove(job);
    last.put(job, new Report(String.valueOf(number), made));
    return String.valueOf(number);
  }

  /** The last report of a car since the desk was started. */
  synchronized Optional<Report> of(String job) {
    return Optional.ofNullable(last.get(job));
  }
}
