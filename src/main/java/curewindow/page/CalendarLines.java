package curewindow.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The calendars of the parkings beside the noted one, as JSON in the page: the lines of the first,
 * unfolded (RFC 5545 section 3.1), then what others have in their place, and for each case runs of
 * these lines as pairs of numbers, from and to. The script puts them together and folds them.
 */
final class CalendarLines {

  private final List<String> lines = new ArrayList<>();
  private final List<List<Integer>> cases = new ArrayList<>(List.of(List.of()));

  private CalendarLines(List<String> calendars) {
    for (String calendar : calendars) {
      cases.add(runs(calendar.replace("\r\n ", "").lines().toList()));
    }
  }

  /**
   * The JSON.
   *
   * @param calendars the calendar of each case but the noted one, whose own is a file
   */
  static String json(List<String> calendars) {
    CalendarLines all = new CalendarLines(calendars);
    return Json.of(new TreeMap<>(Map.of("lines", all.lines, "cases", all.cases)));
  }

  private List<Integer> runs(List<String> calendar) {
    boolean isFirst = lines.isEmpty();
    List<Integer> runs = new ArrayList<>();
    int next = 0;
    for (String line : calendar) {
      int at = isFirst ? lines.size() : place(line, next);
      boolean isNew = at == lines.size();
      if (isNew) {
        lines.add(line);
      }
      if (!runs.isEmpty() && runs.get(runs.size() - 1) == at - 1) {
        runs.set(runs.size() - 1, at);
      } else {
        runs.add(at);
        runs.add(at);
      }
      // A new line stands in the place of one of the first calendar.
      next = isNew && !isFirst ? next + 1 : at + 1;
    }
    return runs;
  }

  /** The next place that has the line, so that runs are long; the end where none has. */
  private int place(String line, int from) {
    int ahead = lines.subList(Math.min(from, lines.size()), lines.size()).indexOf(line);
    int any = ahead < 0 ? lines.indexOf(line) : from + ahead;
    return any < 0 ? lines.size() : any;
  }
}
