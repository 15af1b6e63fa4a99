package curewindow.page;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Takes out of a customer's page what it has for each case of parking more than once: an instant
 * that is the end of a row in the list of dates is told by the name of its hold, and words that
 * stand before are told by their number. The script knows both; without one the words of the noted
 * case stand.
 */
final class SaidOnce {

  private static final Spots ROW =
      new Spots("data-hold=", "data-hold=\"?([\\w-]+)\"? data-end=\"?([\\d,]+)\"?");

  /** What a row has itself, first, stays. */
  private static final Spots INSTANT =
      new Spots(
          " data-", "( data-hold=\"?[\\w-]+\"?)?( data-(?:to|from|end)=)(\"?)([\\d,]+)\\3(?=[ >])");

  private static final Pattern ONE =
      Pattern.compile("<span data-p=(\"[\\d ]+\"|\\d+)( hidden(?:=\"hidden\")?)?>([^<]*)</span>");

  private static final Spots WORDS = new Spots("<span data-p=", "(?:" + ONE.pattern() + "){2,}");

  private SaidOnce() {}

  /** The same page, with less in it. */
  static String of(String html) {
    return words(instants(html));
  }

  private static String instants(String html) {
    Map<String, String> ends = new HashMap<>();
    ROW.each(html, row -> ends.putIfAbsent(row.group(2), row.group(1)));
    return INSTANT.replaced(
        html,
        m ->
            m.group(1) == null && ends.containsKey(m.group(4))
                ? m.group(2) + m.group(3) + ends.get(m.group(4)) + m.group(3)
                : m.group());
  }

  private static String words(String html) {
    Map<String, Integer> times = new HashMap<>();
    WORDS.each(html, m -> times.merge(m.group(), 1, Integer::sum));
    Map<String, Integer> numbers = new HashMap<>();
    return WORDS.replaced(
        html,
        m -> {
          String group = m.group();
          List<MatchResult> each = ONE.matcher(group).results().toList();
          if (times.get(group) == 1 || !isOneEach(each)) {
            return group;
          }
          Integer number = numbers.putIfAbsent(group, numbers.size());
          return number == null
              ? group.replaceFirst("<span", "<span data-g=" + (numbers.size() - 1))
              : "<span data-g=" + number + ">" + noted(each) + "</span>";
        });
  }

  private static boolean isOneEach(List<MatchResult> each) {
    List<String> cases =
        each.stream()
            .flatMap(m -> List.of(m.group(1).replace("\"", "").split(" ")).stream())
            .toList();
    return cases.stream().distinct().count() == cases.size();
  }

  private static String noted(List<MatchResult> each) {
    return each.stream()
        .filter(m -> m.group(2) == null)
        .map(m -> m.group(3))
        .findFirst()
        .orElse("");
  }
}
