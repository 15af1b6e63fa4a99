package curewindow.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The HTML of several cases in one, line by line: a line that only some cases have is marked with
 * their numbers; where the cases have other words in a line, each of them stands there, marked
 * likewise; instants stand in one list. So a page that changes its dates with a choice weighs
 * hardly more than one that does not.
 */
final class MergedHtml {

  private static final Pattern PIECE = Pattern.compile("<[^>]+>|[^<]+");
  private static final Pattern INSTANT = Pattern.compile("(data-(?:from|to)=\")(\\d+)(\")");
  private static final Spots INSTANTS = new Spots("data-", INSTANT);

  /** The tags and words by which a line of one case is known in another. */
  private static final Pattern KEY = Pattern.compile("^(?:<[^>]+>)*(?:[^ <]+ ?){0,2}");

  private static final Pattern OPENING = Pattern.compile("^<[a-z0-9]+");

  /** One line in each case, nothing where the case lacks it, by the key of the first. */
  private record Line(String key, String[] each) {}

  /** The pieces of a line in each of the cases that have it. */
  private final List<List<String>> cases;

  /** The numbers of these cases, and of how many there are in all. */
  private final List<Integer> numbers;

  private final int all;

  private MergedHtml(List<List<String>> cases, List<Integer> numbers, int all) {
    this.cases = cases;
    this.numbers = numbers;
    this.all = all;
  }

  private static String key(String line) {
    Matcher key = KEY.matcher(withoutInstants(line));
    return key.find() ? key.group() : line;
  }

  private static String withoutInstants(String line) {
    return INSTANTS.replaced(line, m -> m.group(1) + m.group(3));
  }

  /**
   * Merges the HTML of all cases.
   *
   * @param cases the HTML of each case, the one first that is shown; blocks one a line
   * @return one HTML
   */
  static String of(List<String> cases) {
    if (cases.stream().distinct().count() == 1) {
      return cases.get(0).lines().collect(Collectors.joining("\n"));
    }
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < cases.size(); i++) {
      lines = joined(lines, cases.get(i).lines().toList(), i, cases.size());
    }
    return lines.stream().map(MergedHtml::line).collect(Collectors.joining("\n"));
  }

  /**
   * Puts the lines of one more case beside those that are the same, and in between where none is.
   */
  private static List<Line> joined(List<Line> known, List<String> more, int number, int cases) {
    List<String> keys = more.stream().map(MergedHtml::key).toList();
    int[][] same = new int[known.size() + 1][more.size() + 1];
    for (int i = known.size() - 1; i >= 0; i--) {
      for (int j = more.size() - 1; j >= 0; j--) {
        same[i][j] =
            known.get(i).key().equals(keys.get(j))
                ? same[i + 1][j + 1] + 1
                : Math.max(same[i + 1][j], same[i][j + 1]);
      }
    }
    List<Line> joined = new ArrayList<>();
    int i = 0;
    int j = 0;
    while (i < known.size() || j < more.size()) {
      boolean both = i < known.size() && j < more.size() && known.get(i).key().equals(keys.get(j));
      if (both) {
        known.get(i).each()[number] = more.get(j++);
        joined.add(known.get(i++));
      } else if (j == more.size() || i < known.size() && same[i + 1][j] >= same[i][j + 1]) {
        joined.add(known.get(i++));
      } else {
        Line line = new Line(keys.get(j), new String[cases]);
        line.each()[number] = more.get(j++);
        joined.add(line);
      }
    }
    return joined;
  }

  private static String line(Line line) {
    List<Integer> having =
        IntStream.range(0, line.each().length).filter(i -> line.each()[i] != null).boxed().toList();
    List<String> each = having.stream().map(i -> line.each()[i]).toList();
    int all = line.each().length;
    Optional<String> one =
        each.stream().distinct().count() == 1
            ? Optional.of(each.get(0))
            : pieces(each, having, all);
    if (one.isPresent()) {
      return having.size() == all ? one.get() : marked(one.get(), new TreeSet<>(having));
    }
    Map<String, TreeSet<Integer>> texts = new LinkedHashMap<>();
    having.forEach(i -> texts.computeIfAbsent(line.each()[i], t -> new TreeSet<>()).add(i));
    return texts.entrySet().stream()
        .map(e -> marked(e.getKey(), e.getValue()))
        .collect(Collectors.joining("\n"));
  }

  private static String marked(String line, TreeSet<Integer> cases) {
    Matcher tag = OPENING.matcher(line);
    if (!tag.find()) {
      return line;
    }
    String rest = line.substring(tag.end());
    boolean hidden = rest.substring(0, rest.indexOf('>')).contains(" hidden");
    return tag.group() + mark(cases) + (hidden ? "" : hidden(cases)) + rest;
  }

  private static Optional<String> pieces(List<String> each, List<Integer> numbers, int all) {
    MergedHtml merged =
        new MergedHtml(
            each.stream()
                .map(html -> PIECE.matcher(html).results().map(MatchResult::group).toList())
                .toList(),
            numbers,
            all);
    int pieces = merged.cases.get(0).size();
    if (merged.cases.stream().anyMatch(one -> one.size() != pieces)) {
      return Optional.empty();
    }
    List<Optional<String>> made = IntStream.range(0, pieces).mapToObj(merged::piece).toList();
    return made.stream().anyMatch(Optional::isEmpty)
        ? Optional.empty()
        : Optional.of(made.stream().map(Optional::get).collect(Collectors.joining()));
  }

  private Optional<String> piece(int at) {
    List<String> each = cases.stream().map(one -> one.get(at)).toList();
    if (each.stream().distinct().count() == 1) {
      return Optional.of(each.get(0));
    }
    boolean tags = each.stream().anyMatch(piece -> piece.startsWith("<"));
    return tags ? tag(each) : Optional.of(words(each));
  }

  /** Tags that differ in their instants alone get all of them, nothing for a case without one. */
  private Optional<String> tag(List<String> each) {
    if (each.stream().map(MergedHtml::withoutInstants).distinct().count() > 1) {
      return Optional.empty();
    }
    StringBuilder tag = new StringBuilder();
    List<Matcher> instants = each.stream().map(INSTANT::matcher).toList();
    int last = 0;
    while (instants.stream().allMatch(Matcher::find)) {
      Matcher first = instants.get(0);
      tag.append(each.get(0), last, first.start())
          .append(first.group(1))
          .append(inTheirPlaces(instants.stream().map(m -> m.group(2)).toList()))
          .append(first.group(3));
      last = first.end();
    }
    return Optional.of(tag.append(each.get(0), last, each.get(0).length()).toString());
  }

  private String inTheirPlaces(List<String> instants) {
    return IntStream.range(0, all)
        .mapToObj(i -> numbers.contains(i) ? instants.get(numbers.indexOf(i)) : "")
        .collect(Collectors.joining(","));
  }

  /** What all begin and end with stands once. */
  private String words(List<String> each) {
    List<List<String>> words = each.stream().map(text -> List.of(text.split("(?<= )"))).toList();
    int least = words.stream().mapToInt(List::size).min().orElseThrow();
    int head = 0;
    while (head < least && alike(words, head, true)) {
      head++;
    }
    int tail = 0;
    while (tail < least - head && alike(words, tail, false)) {
      tail++;
    }
    Map<String, TreeSet<Integer>> middles = new LinkedHashMap<>();
    for (int i = 0; i < words.size(); i++) {
      List<String> one = words.get(i);
      String middle = String.join("", one.subList(head, one.size() - tail));
      middles.computeIfAbsent(middle, m -> new TreeSet<>()).add(numbers.get(i));
    }
    List<String> first = words.get(0);
    List<String> parts = new ArrayList<>(first.subList(0, head));
    String space = middles.keySet().stream().allMatch(text -> text.endsWith(" ")) ? " " : "";
    middles.forEach(
        (text, n) -> parts.add(span(text.substring(0, text.length() - space.length()), n)));
    parts.add(space);
    parts.addAll(first.subList(first.size() - tail, first.size()));
    return String.join("", parts);
  }

  private static boolean alike(List<List<String>> words, int at, boolean fromStart) {
    return words.stream()
            .map(one -> one.get(fromStart ? at : one.size() - 1 - at))
            .distinct()
            .count()
        == 1;
  }

  private static String span(String text, TreeSet<Integer> cases) {
    return "<span" + mark(cases) + hidden(cases) + ">" + text + "</span>";
  }

  private static String mark(TreeSet<Integer> cases) {
    return " data-p=\"%s\""
        .formatted(cases.stream().map(String::valueOf).collect(Collectors.joining(" ")));
  }

  private static String hidden(TreeSet<Integer> cases) {
    return cases.contains(0) ? "" : " hidden";
  }
}
