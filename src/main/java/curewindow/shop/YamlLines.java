package curewindow.shop;

import curewindow.shop.Node.Branch;
import curewindow.shop.Node.Entry;
import curewindow.shop.Node.Row;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Writes keys and values as YAML 1.2 the way a person would, a key on a line, and changes single
 * values of a text that a person wrote.
 */
final class YamlLines {

  /** What needs no quotes: it is read as text, a number or a time, as it stands. */
  private static final Pattern PLAIN =
      Pattern.compile(
          "[\\p{L}][\\p{L}\\p{N} ./()+&'_-]*(?<![ ])|[1-9][0-9]{0,8}|0|[0-9]+[.][0-9]+"
              + "|[0-9]{4}-[0-9]{2}-[0-9]{2}(T[0-9]{2}:[0-9]{2}([+-][0-9]{2}:[0-9]{2})?)?");

  /** YAML reads these as something else than text; some only in its first version. */
  private static final Set<String> WORDS =
      Set.of("true", "false", "null", "yes", "no", "on", "off", "y", "n");

  /** A line's value and what stands behind it, where the value is not in quotes. */
  private static final Pattern COMMENT = Pattern.compile("\\s+#.*$");

  private static final Pattern QUOTED =
      Pattern.compile("^(\"(?:[^\"\\\\]|\\\\.)*\"|'(?:[^']|'')*')(\\s+#.*)?\\s*$");

  private final List<String> lines;
  private final String ending;

  /** New lines by the first old one, counted from 0, and how many old ones they replace. */
  private final Map<Integer, Change> changes = new LinkedHashMap<>();

  private record Change(int old, List<String> lines) {}

  private YamlLines(String text) {
    this.lines = text.lines().toList();
    this.ending = text.contains("\r\n") ? "\r\n" : "\n";
  }

  static String of(Map<String, Object> tree) {
    return block(tree, "").stream().map(l -> l + "\n").collect(Collectors.joining());
  }

  private static List<String> block(Map<String, Object> tree, String indent) {
    List<String> lines = new ArrayList<>();
    tree.forEach((key, value) -> lines.addAll(entry(key, value, indent)));
    return lines;
  }

  private static List<String> entry(String key, Object value, String indent) {
    boolean ofBranches = value instanceof List<?> list && list.get(0) instanceof Map;
    if (!ofBranches) {
      return List.of(indent + key + ": " + inline(value));
    }
    List<String> lines = new ArrayList<>(List.of(indent + key + ":"));
    ((List<?>) value).forEach(item -> lines.addAll(item(tree(item), indent + "  ")));
    return lines;
  }

  private static List<String> item(Map<String, Object> tree, String indent) {
    List<String> lines = block(tree, indent + "  ");
    lines.set(0, indent + "- " + lines.get(0).strip());
    return lines;
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> tree(Object value) {
    return (Map<String, Object>) value;
  }

  private static String inline(Object value) {
    if (value instanceof Map<?, ?> map) {
      return map.entrySet().stream()
          .map(e -> e.getKey() + ": " + inline(e.getValue()))
          .collect(Collectors.joining(", ", "{", "}"));
    }
    if (value instanceof List<?> list) {
      return list.stream().map(YamlLines::inline).collect(Collectors.joining(", ", "[", "]"));
    }
    String text = (String) value;
    boolean plain = PLAIN.matcher(text).matches() && !WORDS.contains(text.toLowerCase(Locale.ROOT));
    return plain ? text : quoted(text);
  }

  static String quoted(String text) {
    StringBuilder out = new StringBuilder("\"");
    text.codePoints()
        .forEach(
            c -> {
              if (c == '"' || c == '\\') {
                out.append('\\').appendCodePoint(c);
              } else if (Source.isPlain(c)) {
                out.appendCodePoint(c);
              } else {
                out.append(String.format(c > 0xffff ? "\\U%08x" : "\\u%04x", c));
              }
            });
    return out.append('"').toString();
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
    if (!isBlock(branch)) {
      return false;
    }
    String indent = indent(branch);
    int last = Math.max(0, branch.where().line() - 1);
    for (String key : both(before, after)) {
      Entry entry = branch.entries().get(key);
      Object now = after.get(key);
      if (entry == null) {
        if (now != null) {
          insert(last, entry(key, now, indent));
        }
        continue;
      }
      int from = entry.key().line() - 1;
      int to = endOf(branch, from, end);
      if (!Objects.equals(before.get(key), now) && !change(entry, before.get(key), now, to)) {
        replace(from, to, now == null ? List.of() : entry(key, now, indent));
      }
      last = to;
    }
    return true;
  }

  /** Changes a value in place; false where its lines have to be written anew. */
  private boolean change(Entry entry, Object before, Object after, int end) {
    int line = entry.key().line() - 1;
    if (entry.value() instanceof Branch inner && before instanceof Map && after instanceof Map) {
      return inner.where().line() - 1 > line && change(inner, tree(before), tree(after), end);
    }
    if (entry.value() instanceof Row row
        && before instanceof List<?> old
        && after instanceof List<?> now
        && row.items().size() == old.size()
        && old.size() <= now.size()
        && old.get(0) instanceof Map
        && row.items().stream().allMatch(i -> i instanceof Branch b && isBlock(b))) {
      return changeItems(row, old, now, end);
    }
    return after instanceof String text
        && end == line + 1
        && inLine(line, entry.value().where().column() - 1, text);
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
    now.stream().skip(old.size()).forEach(item -> insert(end, item(tree(item), indent)));
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

  private boolean inLine(int line, int column, String value) {
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
    replace(line, line + 1, List.of(text.substring(0, column) + inline(value) + behind));
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
