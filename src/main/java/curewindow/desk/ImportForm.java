package curewindow.desk;

import curewindow.intake.TableGlance;
import curewindow.problem.Where;
import curewindow.shop.DateOrder;
import curewindow.shop.ImportMap;
import curewindow.shop.JobColumns;
import curewindow.shop.PlacedText;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the form in which a person tells how a table is read. */
final class ImportForm {

  private final Request.Values form;
  private final TableGlance table;
  private final ImportMap before;

  /**
   * A form.
   *
   * @param before the map that is changed, which has names of other tables too
   */
  ImportForm(Request.Values form, TableGlance table, ImportMap before) {
    this.form = form;
    this.table = table;
    this.before = before;
  }

  /** A map of which nothing is known yet. */
  static ImportMap empty(String file) {
    return new ImportMap(
        file, Map.of(), Map.of(), Map.of(), Optional.empty(), Optional.empty(), Map.of());
  }

  ImportMap map() {
    return new ImportMap(
        before.file(),
        columns(),
        texts("fixed."),
        texts("hour."),
        Arrays.stream(DateOrder.values()).filter(o -> o.id().equals(form.one("dates"))).findFirst(),
        Optional.of(form.one("between")).filter(b -> !b.isEmpty()),
        names());
  }

  private Map<String, List<PlacedText>> columns() {
    Map<String, List<String>> chosen = new LinkedHashMap<>();
    List<String> headings = form.list("heading");
    List<String> columns = form.list("column");
    for (String column : JobColumns.all()) {
      for (int i = 0; i < Math.min(headings.size(), columns.size()); i++) {
        if (columns.get(i).equals(column)) {
          chosen.computeIfAbsent(column, c -> new ArrayList<>()).add(headings.get(i));
        }
      }
    }
    Map<String, List<PlacedText>> placed = new LinkedHashMap<>();
    chosen.forEach(
        (column, all) ->
            placed.put(
                column,
                table.inOrder(column, all).stream()
                    .map(text -> new PlacedText(text, Where.file(before.file())))
                    .toList()));
    return placed;
  }

  private Map<String, String> texts(String begins) {
    Map<String, String> texts = new LinkedHashMap<>();
    for (String column : JobColumns.all()) {
      String text = String.join(" ", form.list(begins + column)).strip();
      if (!text.isEmpty()) {
        texts.put(column, text);
      }
    }
    return texts;
  }

  /** What was told now, and of names that this table does not have, what was told before. */
  private Map<String, Map<String, List<String>>> names() {
    Map<String, Map<String, List<String>>> names = new LinkedHashMap<>();
    for (String column : JobColumns.all().stream().filter(JobColumns::isName).toList()) {
      Map<String, List<String>> all = new LinkedHashMap<>();
      List<String> theirs = form.list("their." + column);
      for (int i = 0; i < theirs.size(); i++) {
        List<String> ours = ours(column, i);
        if (!ours.isEmpty()) {
          all.put(theirs.get(i), ours);
        }
      }
      List<String> told = theirs.stream().map(ImportMap::key).toList();
      before.names().getOrDefault(column, Map.of()).entrySet().stream()
          .filter(e -> !told.contains(ImportMap.key(e.getKey())))
          .forEach(e -> all.put(e.getKey(), e.getValue()));
      if (!all.isEmpty()) {
        names.put(column, all);
      }
    }
    return names;
  }

  private List<String> ours(String column, int number) {
    return form.list("ours." + column + "." + number).stream()
        .map(String::strip)
        .filter(name -> !name.isEmpty())
        .toList();
  }

  /** Whether the names of a column were asked for, so that those without an answer have none. */
  boolean wasAsked(String column) {
    return form.list("asked").contains(column);
  }
}
