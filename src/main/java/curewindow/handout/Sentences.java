package curewindow.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Shortens what must not be cut within a sentence, as it would say something else. */
final class Sentences {

  /** A question belongs to its answer. */
  private static final Pattern SENTENCE = Pattern.compile(".+?(?:[.!]+(?=\\s|$)|$)\\s*");

  private Sentences() {}

  /** The text without its last sentence, without the last two, and so on, to the first alone. */
  static List<String> shorter(String text) {
    List<Integer> ends = new ArrayList<>();
    for (Matcher m = SENTENCE.matcher(text); m.find(); ) {
      ends.add(m.end());
    }
    List<String> shorter = new ArrayList<>();
    for (int last = ends.size() - 2; last >= 0; last--) {
      shorter.add(text.substring(0, ends.get(last)).strip());
    }
    return shorter;
  }
}
