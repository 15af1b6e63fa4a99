package curewindow.shop;

import static curewindow.shop.YamlWriting.tree;

import curewindow.problem.Where;
import curewindow.shop.Node.Branch;
import curewindow.shop.Node.Entry;
import curewindow.shop.Node.Leaf;
import curewindow.shop.Node.Row;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Changes single values of a YAML text that a person wrote; all else stays as it is. */
final class YamlLines {

  /** A line's value and what stands behind it, where the value is not in quotes. */
  private static final Pattern COMMENT = Pattern.compile("\\s+#.*$");

  private static final Pattern QUOTED =
      Pattern.compile("^(\"(?:[^\"\\\\]|\\\\.)*\"|'(?:[^']|'')*')(\\s+#.*)?\\s*$");

  /** A bracket, or a text in quotes, in which brackets are none. */
  private static final Pattern PIECE =
      Pattern.compile(
          "(?:(?<=[\\[{,:] {0,9})(?:\"(?:[^\"\\\\]|\\\\.)*\"|'(?:[^']|'')*'))|([\\[\\]{}])");

  private final List<String> lines;
  private final String ending;

  /** New lines by the first old one, counted from 0, and how many old ones they replace. */
  private final Map<Integer, Change> changes = new LinkedHashMap<>();

  private record Change(int old, List<String> lines) {}

  private YamlLines(String text) {
    this.lines = text.lines().toList();
    this.ending = text.contains("\r\n") ? "\r\n" : "\n";
  }

  /**
   * A text with other values in some places.
   *
   * @param before the values that a caller found in it
   * @param after those that it should have; the same values stay as they are written
   * @return the new text; empty where the text is not written a key on a line
   */
  static Optional<String> changed(
      String text, Branch root, Map<String, Object> before, Map<String, Object> after) {
    YamlLines file = new YamlLines(text);
    return file.change(root, before, after, file.lines.size())
        ? Optional.of(file.text())
        : Optional.empty();
  }

  private String text() {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i <= lines.size(); i++) {
      Change change = changes.get(i);
      if (change != null) {
        change.lines().forEach(l -> out.append(l).append(ending));
      }
      int old = change == null ? 0 : change.old();
      if (old > 0) {
        i += old - 1;
      } else if (i < lines.size()) {
        out.append(lines.get(i)).append(ending);
      }
    }
    return out.toString();
  }

  /** Changes what differs between keys that end before a line; false where it cannot. */
  private boolean change(
      Branch branch, Map<String, Object> before, Map<String, Object> after, int end) {
    if (before.equals(after)) {
      return true;
    }
    if (branch.entries().isEmpty() || !isBlock(branch)) {
      return false;
    }
    String indent = indent(branch);
    int last = Math.max(0, branch.where().line() - 1);
    for (String key : both(before, after)) {
      Entry entry = branch.entries().get(key);
      Object now = after.get(key);
      if (entry == null) {
        if (now != null) {
          insert(last, YamlWriting.entry(key, now, indent));
        }
        continue;
      }
      int from = entry.key().line() - 1;
      int to = endOf(branch, from, end);
      if (!Objects.equals(before.get(key), now) && !change(entry, before.get(key), now, to)) {
        replace(from, to, now == null ? List.of() : YamlWriting.entry(key, now, indent));
      }
      last = to;
    }
    return true;
  }

  /** Changes a value in place; false where its lines have to be written anew. */
  private boolean change(Entry entry, Object before, Object after, int end) {
    int line = entry.key().line() - 1;
    Where at = entry.value().where();
    if (entry.value() instanceof Branch inner && before instanceof Map && after instanceof Map) {
      boolean below = at.line() - 1 > line;
      return (below && change(inner, tree(before), tree(after), end)) || inBrackets(at, after);
    }
    if (entry.value() instanceof Row row
        && before instanceof List<?> old
        && after instanceof List<?> now) {
      return areMaps(row, old, now)
          ? changeItems(row, old, now, end)
          : changeWords(row, now) || inBrackets(at, now);
    }
    return !(after instanceof Map || after instanceof List)
        && after != null
        && end == line + 1
        && inLine(line, at.column() - 1, after);
  }

  private boolean areMaps(Row row, List<?> old, List<?> now) {
    return row.items().size() == old.size()
        && old.size() <= now.size()
        && old.get(0) instanceof Map
        && row.items().stream().allMatch(i -> i instanceof Branch b && isBlock(b));
  }

  /** Changes a list that has each of its words on a line of its own. */
  private boolean changeWords(Row row, List<?> now) {
    int first = row.where().line() - 1;
    boolean apart =
        now.stream().noneMatch(Map.class::isInstance)
            && row.items().stream().allMatch(i -> i instanceof Leaf leaf && isAlone(leaf.where()));
    if (!apart || row.items().isEmpty()) {
      return false;
    }
    String before = lines.get(row.items().get(0).where().line() - 1);
    String hyphen = before.substring(0, row.items().get(0).where().column() - 1);
    int line = first;
    for (int i = 0; i < row.items().size(); i++) {
      Where at = row.items().get(i).where();
      line = at.line() - 1;
      if (i >= now.size()) {
        replace(line, line + 1, List.of());
      } else if (!YamlWriting.isText(now.get(i), ((Leaf) row.items().get(i)).text())) {
        inLine(line, at.column() - 1, now.get(i));
      }
    }
    List<String> more =
        now.stream()
            .skip(row.items().size())
            .map(word -> hyphen + YamlWriting.inline(word))
            .toList();
    insert(line + 1, more);
    return true;
  }

  private boolean isAlone(Where word) {
    return lines.get(word.line() - 1).substring(0, word.column() - 1).matches("\\s*- +");
  }

  /** Changes a map or list in brackets that end on their line; what stands behind them stays. */
  private boolean inBrackets(Where at, Object value) {
    String text = lines.get(at.line() - 1);
    int from = at.column() - 1;
    int to = closing(text, from);
    if (to < 0) {
      return false;
    }
    String with = text.substring(0, from) + YamlWriting.inline(value) + text.substring(to + 1);
    replace(at.line() - 1, at.line(), List.of(with));
    return true;
  }

  /**
   * Where the bracket that opens at a column is closed; -1 where none opens, or on another line.
   */
  private static int closing(String text, int from) {
    if (from < 0 || from >= text.length() || "{[".indexOf(text.charAt(from)) < 0) {
      return -1;
    }
    Matcher pieces = PIECE.matcher(text).region(from, text.length());
    int depth = 0;
    while (pieces.find()) {
      String piece = pieces.group(1);
      depth += "{".equals(piece) || "[".equals(piece) ? 1 : 0;
      depth -= "}".equals(piece) || "]".equals(piece) ? 1 : 0;
      if (depth == 0) {
        return pieces.start(1);
      }
    }
    return -1;
  }

  private boolean changeItems(Row row, List<?> old, List<?> now, int end) {
    for (int i = 0; i < old.size(); i++) {
      int to = i + 1 < old.size() ? row.items().get(i + 1).where().line() - 1 : end;
      Branch item = (Branch) row.items().get(i);
      if (firstKey(item).equals(firstWanted(old.get(i), now.get(i)))) {
        change(item, tree(old.get(i)), tree(now.get(i)), to);
      } else {
        return false;
      }
    }
    String indent = indent((Branch) row.items().get(0)).substring(2);
    now.stream()
        .skip(old.size())
        .forEach(item -> insert(end, YamlWriting.item(tree(item), indent)));
    return true;
  }

  private static String firstKey(Branch item) {
    return item.entries().keySet().iterator().next();
  }

  /** The first key of an item stands behind its hyphen, and so may change but not go. */
  private static String firstWanted(Object old, Object now) {
    String first = tree(old).keySet().iterator().next();
    return tree(now).containsKey(first) ? first : "";
  }

  private boolean inLine(int line, int column, Object value) {
    String text = lines.get(line);
    if (column <= 0 || column > text.length()) {
      return false;
    }
    String rest = text.substring(column);
    Matcher quoted = QUOTED.matcher(rest);
    Matcher comment = COMMENT.matcher(rest);
    String behind =
        quoted.matches()
            ? Objects.toString(quoted.group(2), "")
            : !rest.startsWith("\"") && !rest.startsWith("'") && comment.find()
                ? comment.group()
                : "";
    replace(
        line, line + 1, List.of(text.substring(0, column) + YamlWriting.inline(value) + behind));
    return true;
  }

  private void replace(int from, int to, List<String> with) {
    Change inserted = changes.get(from);
    List<String> all = new ArrayList<>(inserted == null ? List.of() : inserted.lines());
    all.addAll(with);
    changes.put(from, new Change(to - from, all));
  }

  private void insert(int at, List<String> with) {
    Change there = changes.get(at);
    List<String> all = new ArrayList<>(there == null ? List.of() : there.lines());
    all.addAll(with);
    changes.put(at, new Change(there == null ? 0 : there.old(), all));
  }

  /** Each key begins a line of its own, or the first one stands behind a hyphen. */
  private boolean isBlock(Branch branch) {
    List<Integer> starts = branch.entries().values().stream().map(e -> e.key().line()).toList();
    boolean apart = starts.stream().distinct().count() == starts.size();
    return apart
        && branch.entries().values().stream()
            .allMatch(
                e ->
                    lines
                        .get(e.key().line() - 1)
                        .substring(0, e.key().column() - 1)
                        .matches("\\s*(- *)?"));
  }

  private String indent(Branch branch) {
    int column = branch.entries().values().iterator().next().key().column() - 1;
    return " ".repeat(column);
  }

  /** Where the lines of a key end; comments above the next key are that key's. */
  private int endOf(Branch branch, int from, int end) {
    int next =
        branch.entries().values().stream()
            .mapToInt(e -> e.key().line() - 1)
            .filter(line -> line > from)
            .min()
            .orElse(end);
    while (next > from + 1 && lines.get(next - 1).strip().matches("(#.*)?")) {
      next--;
    }
    return next;
  }

  /** All keys in the order in which they are written. */
  private static List<String> both(Map<String, Object> before, Map<String, Object> after) {
    List<String> keys = new ArrayList<>(after.keySet());
    before.keySet().stream().filter(k -> !after.containsKey(k)).forEach(keys::add);
    return keys;
  }
}
