package curewindow.climate;

import java.util.ArrayList;
import java.util.List;

/** The lines of a weather file, one by one, counted from 1. */
final class EpwLines {

  private final String text;
  private int next;
  private int number;

  EpwLines(String text) {
    this.text = text;
    // Some editors put the UTF-8 mark in front; read as Latin-1 it is these three characters.
    this.next = text.startsWith("\u00ef\u00bb\u00bf") ? 3 : 0;
  }

  /** The next line without its end, or an empty text where there is none. */
  String next() {
    if (!hasMore()) {
      return "";
    }
    int end = text.indexOf('\n', next);
    int stop = end < 0 ? text.length() : end;
    String line =
        text.substring(next, stop > next && text.charAt(stop - 1) == '\r' ? stop - 1 : stop);
    next = end < 0 ? text.length() : end + 1;
    number++;
    return line;
  }

  boolean hasMore() {
    return next < text.length();
  }

  /** The number of the line that was taken last, from 1; 0 before the first. */
  int number() {
    return number;
  }

  /** The fields of a line, with their outer blanks removed. */
  static List<String> fields(String line) {
    List<String> fields = new ArrayList<>();
    int start = 0;
    for (int comma = line.indexOf(','); comma >= 0; comma = line.indexOf(',', start)) {
      fields.add(line.substring(start, comma).strip());
      start = comma + 1;
    }
    fields.add(line.substring(start).strip());
    return fields;
  }
}
