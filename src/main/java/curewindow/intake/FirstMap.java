package curewindow.intake;

import curewindow.problem.Problem;
import curewindow.problem.Where;
import curewindow.shop.ImportMaps;
import curewindow.shop.JobColumns;
import curewindow.shop.ShopFiles;
import curewindow.site.LoadedShop;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Writes the first map of a table, with the best guesses, and says which lines to look at. */
final class FirstMap {

  private static final List<String> PARKINGS = List.of("parking-day", "parking-night");

  private final ForeignTable table;
  private final String file;
  private final GuessWords words;
  private final GuessedColumns columns;
  private final List<String> lines = new ArrayList<>();
  private final List<Problem> looks = new ArrayList<>();

  private FirstMap(ForeignTable table, String file, GuessWords words) {
    this.table = table;
    this.file = file;
    this.words = words;
    this.columns = GuessedColumns.of(table, words);
  }

  static GuessedMap of(ForeignTable table, String name, ShopFiles files, LoadedShop shop) {
    GuessWords words = new GuessWords(files, shop.read().catalogue());
    FirstMap map = new FirstMap(table, ImportMaps.file(name), words);
    map.write();
    String text = map.lines.stream().map(line -> line + "\n").collect(Collectors.joining());
    return new GuessedMap(name, text, map.looks);
  }

  private void write() {
    lines.add("# yaml-language-server: $schema=../content/schemas/import.schema.json");
    lines.add(
        "# How a table of another program is read as jobs: first our column, then its heading.");
    lines.add("# This is a guess from " + Shown.of(table.name()) + ". Mend it and keep it.");
    lines.add("columns:");
    columns.cells().forEach(this::column);
    JobColumns.required().stream()
        .filter(c -> !columns.cells().containsKey(c) && !PARKINGS.contains(c))
        .forEach(this::lacking);
    if (!columns.unread().isEmpty()) {
      lines.add(
          "# Not read: "
              + columns.unread().stream()
                  .map(ImportMaps::quoted)
                  .collect(Collectors.joining(", ")));
    }
    lines.add("# What is the same in all rows, or where a cell is empty.");
    lines.add("fixed:");
    PARKINGS.stream().filter(c -> !columns.cells().containsKey(c)).forEach(this::parking);
    if (lines.get(lines.size() - 1).equals("fixed:")) {
      lines.set(lines.size() - 1, "# fixed:");
    }
    dates();
    names();
  }

  private void column(String column, List<Integer> cells) {
    List<String> headings =
        cells.stream().map(table.headings()::get).map(ImportMaps::quoted).toList();
    String value = headings.size() == 1 ? headings.get(0) : "[" + String.join(", ", headings) + "]";
    if (columns.isUnsure(column)) {
      lines.add("  " + column + ": " + value + " # look: a guess");
      looks.add(
          look(
                  "column-guessed",
                  "the heading of " + column + " is a guess",
                  "keep it, or write the right one")
              .with("column", column));
    } else {
      lines.add("  " + column + ": " + value);
    }
  }

  private void lacking(String column) {
    lines.add("  # " + column + ": \"\" # look: no heading was found for it");
    looks.add(
        Problem.error(
                "column-not-found",
                here(),
                "no heading was found for " + column + ", without which there is no job",
                "write the heading between the quotes and take the # away"
                    + (column.equals(JobColumns.JOB)
                        ? ""
                        : ", or write under fixed what it always is"))
            .with("column", column));
  }

  private void parking(String column) {
    lines.add("  " + column + ": outside # look: no heading was found for it");
    looks.add(
        look(
                "parking-not-told",
                "the table does not tell " + column,
                "write where most cars stand: outside, shade, garage or heated")
            .with("column", column));
  }

  private Where here() {
    return Where.line(file, lines.size(), 1);
  }

  private Problem look(String code, String message, String fix) {
    return Problem.notice(code, here(), message, fix);
  }

  /** All times of a table together: a program writes them alike. */
  private void dates() {
    List<DateOrders.Placed> all = new ArrayList<>();
    columns.cells().entrySet().stream()
        .filter(e -> JobColumns.isTime(e.getKey()))
        .forEach(e -> all.addAll(days(e.getValue().get(0))));
    if (all.isEmpty()) {
      return;
    }
    if (DateOrders.of(all) instanceof DateOrders.Order order) {
      order
          .by()
          .ifPresent(
              by ->
                  lines.add(
                      "dates: " + order.order().id() + " # as " + Shown.of(by.text()) + " has it"));
      return;
    }
    lines.add("# dates: day-first # look: or month-first; this table does not tell");
    looks.add(
        Problem.error(
            "order-not-told",
            here(),
            "the table does not tell whether days or months stand first",
            "take the # away, and write month-first where that is right"));
  }

  private List<DateOrders.Placed> days(int cell) {
    List<DateOrders.Placed> days = new ArrayList<>();
    for (TableRow row : table.rows()) {
      String text = cell < row.cells().size() ? row.cells().get(cell).strip() : "";
      DateCell.of(text).ifPresent(day -> days.add(new DateOrders.Placed(row.line(), text, day)));
    }
    return days;
  }

  private void names() {
    lines.add("# What their names are called here.");
    int begin = lines.size();
    lines.add("names:");
    boolean any = false;
    for (Map.Entry<String, List<Integer>> column : columns.cells().entrySet()) {
      if (JobColumns.isName(column.getKey()) && words.knows(column.getKey())) {
        any |= names(column.getKey());
      }
    }
    if (!any) {
      lines.set(begin, "# names:");
    }
  }

  /** The names of a column; false where none of them could be guessed. */
  private boolean names(String column) {
    List<String> theirs = columns.names(column).stream().filter(n -> !isOurs(column, n)).toList();
    if (theirs.isEmpty()) {
      return false;
    }
    int begin = lines.size();
    lines.add("  " + column + ":");
    boolean any = false;
    for (String name : theirs) {
      any |= name(column, name);
    }
    if (!any) {
      lines.set(begin, "  # " + column + ":");
    }
    return any;
  }

  private boolean isOurs(String column, String name) {
    return words.name(column, name).filter(g -> g.ours().equals(name)).isPresent();
  }

  private boolean name(String column, String name) {
    Optional<GuessWords.Guess> guess = words.name(column, name);
    if (guess.isEmpty()) {
      lines.add("    # " + ImportMaps.quoted(name) + ": # look: which " + column + " is it?");
      looks.add(
          Problem.error(
                  "name-not-found",
                  here(),
                  "it is not known which " + column + " " + Shown.of(name) + " is",
                  "write the name it has here behind the colon and take the # away")
              .with("column", column)
              .with("name", Shown.bare(name)));
      return false;
    }
    boolean sure = guess.get().sure();
    lines.add(
        "    "
            + ImportMaps.quoted(name)
            + ": "
            + guess.get().ours()
            + (sure ? "" : " # look: a guess"));
    if (!sure) {
      looks.add(
          look(
                  "name-guessed",
                  "what " + Shown.of(name) + " is called here is a guess",
                  "keep it, or write the right name")
              .with("column", column)
              .with("name", Shown.bare(name)));
    }
    return true;
  }
}
