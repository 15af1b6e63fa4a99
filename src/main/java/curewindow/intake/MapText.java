package curewindow.intake;

import curewindow.problem.Nearest;
import curewindow.shop.DateOrder;
import curewindow.shop.ImportMap;
import curewindow.shop.ImportMaps;
import curewindow.shop.PlacedText;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes a map of a table's columns that nobody writes by hand. */
public final class MapText {

  private final StringBuilder text =
      new StringBuilder(
          "# yaml-language-server: $schema=../content/schemas/import.schema.json\n"
              + "# How a table of another program is read as jobs: first our column, then its"
              + " heading.\n");

  private MapText() {}

  /**
   * A map as the text of its file.
   *
   * @param map the map; what it has of names may be spelled as in the table
   * @return YAML
   */
  public static String of(ImportMap map) {
    MapText made = new MapText();
    made.line("columns:" + (map.columns().isEmpty() ? " {}" : ""));
    map.columns().forEach((c, all) -> made.entry("  " + c, texts(all)));
    made.block("fixed", map.fixed());
    made.block("hours", map.hours());
    map.dates().map(DateOrder::id).ifPresent(order -> made.line("dates: " + order));
    map.between().ifPresent(b -> made.line("spots-between: " + ImportMaps.quoted(b)));
    if (map.names().values().stream().anyMatch(of -> !of.isEmpty())) {
      made.line("names:");
      map.names().forEach(made::names);
    }
    return made.text.toString();
  }

  /**
   * Whether nothing is lost where a text is written anew, as nobody has put notes of their own into
   * it.
   *
   * @param name the name of the map
   * @param text the text of its file
   * @return true where it is as this class writes it
   */
  public static boolean isOurs(String name, String text) {
    return ImportMaps.unfinished(name, text)
        .filter(map -> Nearest.fold(of(map)).equals(Nearest.fold(text)))
        .isPresent();
  }

  private static List<String> texts(List<PlacedText> all) {
    return all.stream().map(PlacedText::text).toList();
  }

  private void block(String key, Map<String, String> texts) {
    if (!texts.isEmpty()) {
      line(key + ":");
      texts.forEach((column, text) -> entry("  " + column, List.of(text)));
    }
  }

  private void names(String column, Map<String, List<String>> names) {
    if (!names.isEmpty()) {
      line("  " + column + ":");
      names.forEach((theirs, ours) -> entry("    " + ImportMaps.quoted(theirs), ours));
    }
  }

  private void entry(String key, List<String> texts) {
    String all = texts.stream().map(ImportMaps::quoted).collect(Collectors.joining(", "));
    line(key + ": " + (texts.size() == 1 ? all : "[" + all + "]"));
  }

  private void line(String line) {
    text.append(line).append('\n');
  }
}
