package curewindow.handout;

import java.util.HashMap;
import java.util.Map;

/**
 * How many rows of a list a handout has room for. It is not known before the handout was set with
 * all of them; then it is set anew with as many as fit.
 */
final class ListRoom {

  private final Map<String, Integer> most = new HashMap<>();

  /** What a list of one handout is called where it does not fit whole. */
  static String name(String list, int codeNumber) {
    return list + " " + codeNumber;
  }

  /** How many rows may stand. */
  int of(String list, int codeNumber) {
    return most.getOrDefault(name(list, codeNumber), Integer.MAX_VALUE);
  }

  /** Takes over what was found to fit; false where all lists have the room they need. */
  boolean narrow(Map<String, Integer> fitting) {
    most.putAll(fitting);
    return !fitting.isEmpty();
  }
}
