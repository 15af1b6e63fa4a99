package curewindow.handout;

import java.util.HashMap;
import java.util.Map;

/**
 * How many rows of a list a handout has room for. It is not known before the handout was set with
 * all of them; then it is set anew with as many as fit. Where what was fitted does not, it stands
 * in fewer words, and what has room beside those is measured again.
 */
final class ListRoom {

  /** The list that stands in fewer words where not all its rows have room. */
  static final String BRIEF = "fitted";

  private final Map<String, Integer> most = new HashMap<>();

  /** What a list of one handout is called where it does not fit whole. */
  static String name(String list, int codeNumber) {
    return list + " " + codeNumber;
  }

  /** How many rows may stand. */
  int of(String list, int codeNumber) {
    return most.getOrDefault(name(list, codeNumber), Integer.MAX_VALUE);
  }

  /** Whether the list that has fewer words is to stand in these. */
  boolean isBrief(int codeNumber) {
    return most.containsKey(name(BRIEF, codeNumber));
  }

  /** Takes over what was found to fit; false where all lists have the room they need. */
  boolean narrow(Map<String, Integer> fitting) {
    fitting.forEach(
        (list, rows) -> {
          String brief = BRIEF + list.substring(Math.max(0, list.lastIndexOf(' ')));
          if (list.equals(brief) || !fitting.containsKey(brief)) {
            most.put(list, rows);
          }
        });
    return !fitting.isEmpty();
  }
}
