package curewindow.intake;

import curewindow.intake.TableText.Coding;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.ShopFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The table of another program: its headings, and its rows as they stand. */
public final class ForeignTable {

  /** The largest table that is read, bytes. */
  public static final long MAX_BYTES = 64L << 20;

  private final String name;
  private final TableText text;
  private final char separator;
  private final List<String> headings;
  private final List<TableRow> rows;
  private final int[] lineStarts;
  private final Map<Integer, Integer> behind = new HashMap<>();

  private ForeignTable(String name, TableText text, TableRows.Read read) {
    this.name = name;
    this.text = text;
    this.separator = read.separator();
    this.headings = read.rows().get(0).cells().stream().map(String::strip).toList();
    this.rows =
        read.rows().stream()
            .skip(1)
            .filter(row -> row.cells().stream().anyMatch(cell -> !cell.isBlank()))
            .toList();
    for (int i = 1; i < rows.size(); i++) {
      behind.put(rows.get(i - 1).line(), rows.get(i).line());
    }
    this.lineStarts = TableRows.lineStarts(text.text());
  }

  /**
   * Reads a table.
   *
   * @param file the file
   * @param problems where it is said why it cannot be read
   * @return the table; empty after telling why not
   */
  public static Optional<ForeignTable> read(Path file, Problems problems) {
    String name = Objects.toString(file.getFileName(), "");
    try {
      Optional<String> other = ShopFiles.insteadOfFile(file);
      if (other.isPresent() || !Files.exists(file)) {
        problems.add(
            Problem.error(
                "no-file",
                Where.file(name),
                other.orElse("there is no such file: " + file),
                "name the file that the other program has written"));
        return Optional.empty();
      }
      return Files.size(file) > MAX_BYTES
          ? tooLarge(name, Files.size(file), problems)
          : of(name, Files.readAllBytes(file), problems);
    } catch (IOException e) {
      problems.add(
          Problem.error(
              "unreadable", Where.file(name), "the file cannot be read", "check its permissions"));
      return Optional.empty();
    }
  }

  /**
   * A table that is at hand.
   *
   * @param name what it is called in messages
   * @param bytes its bytes, in any of the codings and with any of the separators that are known
   * @param problems where it is said why it cannot be read
   * @return the table; empty after telling why not
   */
  public static Optional<ForeignTable> of(String name, byte[] bytes, Problems problems) {
    if (bytes.length > MAX_BYTES) {
      return tooLarge(name, bytes.length, problems);
    }
    TableText text = TableText.of(bytes);
    TableRows.Read read = TableRows.read(text.text());
    boolean lacksHeadings = !read.rows().isEmpty() && !read.rows().get(0).whole();
    if (read.rows().size() < 2 || lacksHeadings) {
      problems.add(
          Problem.error(
              lacksHeadings ? "broken-headings" : "no-rows",
              Where.file(name),
              lacksHeadings
                  ? "the headings cannot be read: a quotation mark is not closed, or stands inside a"
                      + " cell"
                  : "the file has no row under its headings",
              "let the other program write it again, with the names of the columns in the first"
                  + " line"));
      return Optional.empty();
    }
    return Optional.of(new ForeignTable(name, text, read));
  }

  private static Optional<ForeignTable> tooLarge(String name, long bytes, Problems problems) {
    problems.add(
        Problem.error(
            "too-large",
            Where.file(name),
            "the file has " + bytes + " bytes, more than the " + MAX_BYTES + " that are read",
            "let the other program write it in parts, such as a year each"));
    return Optional.empty();
  }

  /**
   * What it is called in messages.
   *
   * @return the name of its file
   */
  public String name() {
    return name;
  }

  /**
   * How it was read.
   *
   * @return such as {@code Windows-1252, columns separated by semicolons}
   */
  public String readAs() {
    return text.coding().told() + ", columns separated by " + TableRows.told(separator);
  }

  /** How it was read, as a notice. */
  Problem howRead() {
    return Problem.notice(
            "table-read",
            Where.file(name),
            name + " is read as " + readAs(),
            "save it as UTF-8 where letters are wrong")
        .with("table", name)
        .with("coding", text.coding().told())
        .with("separator", TableRows.told(separator));
  }

  /**
   * Its headings.
   *
   * @return the first row, spaces around its cells taken off
   */
  public List<String> headings() {
    return headings;
  }

  /**
   * How many rows it has.
   *
   * @return the number, without the headings and empty ones
   */
  public int size() {
    return rows.size();
  }

  /** Its rows, without the headings and without those that have nothing in them. */
  List<TableRow> rows() {
    return rows;
  }

  char separator() {
    return separator;
  }

  Coding coding() {
    return text.coding();
  }

  /** Whether its lines end as on Windows. */
  boolean hasReturns() {
    return text.text().contains("\r\n");
  }

  /** The line on which the row behind one begins, or beyond all lines. */
  int lineBehind(int line) {
    Integer next = behind.get(line);
    return next == null ? Integer.MAX_VALUE : next;
  }

  /** Where a row begins. */
  Where where(TableRow row) {
    return Where.line(name, row.line(), 1);
  }

  /**
   * Where a cell begins.
   *
   * @param row a row
   * @param cell its number from 0
   * @return line and column; the path is its heading
   */
  Where where(TableRow row, int cell) {
    int line = row.line();
    int i = lineStarts[line - 1];
    boolean quoted = false;
    for (int passed = 0; passed < cell && i < text.text().length(); i++) {
      char c = text.text().charAt(i);
      quoted ^= c == '"';
      passed += c == separator && !quoted ? 1 : 0;
      if (line < lineStarts.length && i + 1 == lineStarts[line]) {
        line++;
      }
    }
    String path = cell < headings.size() ? headings.get(cell) : "";
    return new Where(name, line, i + 1 - lineStarts[line - 1], path);
  }
}
