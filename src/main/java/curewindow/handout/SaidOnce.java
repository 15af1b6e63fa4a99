package curewindow.handout;

import curewindow.handout.OfficeCallers.Asked;
import curewindow.handout.OfficeCallers.Caller;
import curewindow.words.Isolates;
import curewindow.words.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** What several callers will hear alike stands on the paper with the first of them. */
final class SaidOnce {

  private static final Pattern SENTENCES = Pattern.compile("(?<=[.!?\u061f])\\s+");

  /** Where less than this could be left out, in letters, a hint to it would be as long. */
  private static final int WORTH_IT = 60;

  private final Words words;
  private final Map<String, Told> told = new HashMap<>();

  /** What was said to a question, and whose car it stands with. */
  private record Told(String job, Set<String> sentences) {}

  private SaidOnce(Words words) {
    this.words = words;
  }

  /** The same callers, later ones with what is not said with an earlier one. */
  static List<Caller> of(List<Caller> callers, Words words) {
    SaidOnce once = new SaidOnce(words);
    return callers.stream().map(once::caller).toList();
  }

  private Caller caller(Caller caller) {
    List<Asked> asked = caller.asked().stream().map(a -> asked(caller.job(), a)).toList();
    return new Caller(
        caller.why(),
        caller.job(),
        caller.firstName(),
        caller.car(),
        caller.language(),
        caller.reasons(),
        asked,
        caller.more());
  }

  private Asked asked(String job, Asked asked) {
    List<String> sentences = List.of(SENTENCES.split(asked.answer()));
    Told before = told.putIfAbsent(asked.question(), new Told(job, Set.copyOf(sentences)));
    if (before == null || before.job().equals(job)) {
      return asked;
    }
    List<String> own = new ArrayList<>(sentences);
    own.removeAll(before.sentences());
    String left = String.join(" ", own);
    return asked.answer().length() - left.length() < WORTH_IT
        ? asked
        : new Asked(asked.question(), asked.stand(), as(before.job(), left));
  }

  private String as(String job, String left) {
    String hint = words.text("office.callers.as", Map.of("job", Isolates.own(job, words)));
    return left.isEmpty() ? hint : left + " " + hint;
  }
}
