package curewindow.desk;

import curewindow.problem.Problem;
import curewindow.words.Words;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Says what is wrong in the words of the counter. What it has no words for stands in a file that
 * somebody wrote by hand: the reader's own words are English, so in another language it says where
 * that is, and who can tell more.
 */
final class ProblemWords {

  /** What the names of these texts begin with; behind it stands the code of a problem. */
  static final String TEXTS = "desk.problem.";

  private static final String UNKNOWN = "unknown-";

  /** Facts that are names of ours, and the texts that say them. */
  private static final Map<String, String> OURS =
      Map.of(
          "column", "desk.import.column.",
          "order", "desk.import.dates.",
          "separator", "desk.import.separator.",
          "service", "service.");

  private final Words words;

  /** Texts that are looked for first. */
  private final List<String> own;

  ProblemWords(Words words) {
    this(words, List.of());
  }

  private ProblemWords(Words words, List<String> own) {
    this.words = words;
    this.own = own;
  }

  /** As it is said of the rows of a table, in which something else can be done. */
  static ProblemWords ofRows(Words words) {
    return new ProblemWords(words, List.of("desk.import.problem."));
  }

  /** What is wrong and what to do. */
  String told(Problem problem) {
    String code = code(problem);
    for (String begins : own) {
      if (words.has(begins + code)) {
        return words.text(begins + code, facts(problem));
      }
    }
    return words.has(TEXTS + code) ? words.text(TEXTS + code, facts(problem)) : unsaid(problem);
  }

  /** The same with the file, where that is none that the screen is about. */
  String toldOf(Problem problem) {
    String code = code(problem);
    return words.has(TEXTS + code)
        ? place(problem) + ": " + words.text(TEXTS + code, facts(problem))
        : unsaid(problem);
  }

  /** Whatever the name is of that is not known, it is said alike, unless there is a word for it. */
  private String code(Problem problem) {
    boolean isName = problem.code().startsWith(UNKNOWN) && problem.facts().containsKey("name");
    return isName && !words.has(TEXTS + problem.code()) ? "unknown-name" : problem.code();
  }

  private String unsaid(Problem problem) {
    return isEnglish()
        ? place(problem) + ": " + problem.message() + ": " + problem.fix()
        : words.text("desk.problem-unsaid", Map.of("where", place(problem)));
  }

  private String place(Problem problem) {
    return problem.line() > 0
        ? words.text(
            "desk.problem-line",
            Map.of("file", problem.file(), "line", Integer.toString(problem.line())))
        : problem.file();
  }

  private boolean isEnglish() {
    return words.language().equals("en");
  }

  private Map<String, String> facts(Problem problem) {
    Map<String, String> facts = new HashMap<>(problem.facts());
    facts.replaceAll(
        (fact, value) ->
            OURS.containsKey(fact) && words.has(OURS.get(fact) + value)
                ? words.text(OURS.get(fact) + value)
                : value);
    return facts;
  }

  /** Why something could not be written; what the machine says of it is English. */
  static List<String> told(IOException e, Words words) {
    String said = words.text("desk.message.not-written");
    return words.language().equals("en")
        ? List.of(said, String.valueOf(e.getMessage()))
        : List.of(said);
  }
}
