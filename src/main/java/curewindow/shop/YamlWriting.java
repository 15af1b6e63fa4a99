package curewindow.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Writes keys and values as YAML 1.2 the way a person would, a key on a line. A value is a text
 * that may be a number, something {@link Said}, a flag, a list or a map.
 */
final class YamlWriting {

  /** What needs no quotes: it is read as text, a number or a time, as it stands. */
  private static final Pattern PLAIN =
      Pattern.compile(
          "[\\p{L}][\\p{L}\\p{N} ./()+&'_-]*(?<![ ])|-?[1-9][0-9]{0,8}|0|-?[0-9]+[.][0-9]+"
              + "|[0-9]{4}-[0-9]{2}-[0-9]{2}(T[0-9]{2}:[0-9]{2}([+-][0-9]{2}:[0-9]{2})?)?");

  /** YAML reads these as something else than text; some only in its first version. */
  private static final Set<String> WORDS =
      Set.of("true", "false", "null", "yes", "no", "on", "off", "y", "n");

  private YamlWriting() {}

  /** Text that stays one where it looks like a number, such as the name of a film. */
  record Said(String text) {}

  static String of(Map<String, Object> tree) {
    return block(tree, "").stream().map(l -> l + "\n").collect(Collectors.joining());
  }

  private static List<String> block(Map<String, Object> tree, String indent) {
    List<String> lines = new ArrayList<>();
    tree.forEach((key, value) -> lines.addAll(entry(key, value, indent)));
    return lines;
  }

  static List<String> entry(String key, Object value, String indent) {
    boolean ofBranches = value instanceof List<?> list && list.get(0) instanceof Map;
    if (!ofBranches) {
      return List.of(indent + key + ": " + inline(value));
    }
    List<String> lines = new ArrayList<>(List.of(indent + key + ":"));
    ((List<?>) value).forEach(item -> lines.addAll(item(tree(item), indent + "  ")));
    return lines;
  }

  static List<String> item(Map<String, Object> tree, String indent) {
    if (tree.isEmpty()) {
      return List.of(indent + "- {}");
    }
    List<String> lines = block(tree, indent + "  ");
    lines.set(0, indent + "- " + lines.get(0).strip());
    return lines;
  }

  @SuppressWarnings("unchecked")
  static Map<String, Object> tree(Object value) {
    return (Map<String, Object>) value;
  }

  static String inline(Object value) {
    if (value instanceof Map<?, ?> map) {
      return map.entrySet().stream()
          .map(e -> e.getKey() + ": " + inline(e.getValue()))
          .collect(Collectors.joining(", ", "{", "}"));
    }
    if (value instanceof List<?> list) {
      return list.stream().map(YamlWriting::inline).collect(Collectors.joining(", ", "[", "]"));
    }
    if (value instanceof Boolean) {
      return value.toString();
    }
    if (value instanceof Said said) {
      return isPlain(said.text()) && Character.isLetter(said.text().codePointAt(0))
          ? said.text()
          : quoted(said.text());
    }
    String text = (String) value;
    return isPlain(text) ? text : quoted(text);
  }

  /** Whether a value is written as a text. */
  static boolean isText(Object value, String text) {
    return value.equals(text) || value.equals(new Said(text));
  }

  private static boolean isPlain(String text) {
    return PLAIN.matcher(text).matches() && !WORDS.contains(text.toLowerCase(Locale.ROOT));
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
}
