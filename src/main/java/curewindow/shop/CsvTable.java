package curewindow.shop;

import curewindow.problem.Where;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a CSV file with a header into rows of cells that know their line and column. */
final class CsvTable {

  private final Source source;
  private final String text;
  private final char separator;
  private final int[] lineStarts;
  private Optional<Where> cut = Optional.empty();

  private CsvTable(String text, Source source) {
    this.source = source;
    this.text = text;
    this.separator = separator(text);
    this.lineStarts = lineStarts(text);
  }

  /**
   * A row.
   *
   * @param where its start
   * @param last the line on which it ends
   * @param cells the cells that are not empty, by column name
   * @param whole whether it has as many cells as the header, and all of them can be read
   */
  record Line(Where where, int last, Map<String, Node.Leaf> cells, boolean whole) {

    /** The same row as one of which something is missing. */
    Line broken() {
      return new Line(where, last, cells, false);
    }
  }

  /**
   * The rows of a file.
   *
   * @param lines those that can be told apart
   * @param cut where those begin that cannot, if the file has any; that is told
   */
  record Rows(List<Line> lines, Optional<Where> cut) {}

  /** The rows of a text, or empty after telling that its header cannot be used. */
  static Optional<Rows> read(
      String text, List<String> required, List<String> known, Source source) {
    CsvTable table = new CsvTable(text, source);
    List<CsvRecord> records = table.records();
    if (records.isEmpty()) {
      if (source.errors() == 0) {
        source.error("empty-file", "the file is empty", "write the header, or delete the file");
      }
      return Optional.empty();
    }
    List<String> header = records.get(0).getFields().stream().map(String::strip).toList();
    if (!table.isUsable(records.get(0), header, required, known)) {
      return Optional.empty();
    }
    List<Line> lines = new ArrayList<>();
    for (CsvRecord row : records.subList(1, records.size())) {
      lines.add(table.line(row, header));
    }
    return Optional.of(new Rows(lines, table.cut));
  }

  private List<CsvRecord> records() {
    List<CsvRecord> records = new ArrayList<>();
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .fieldSeparator(separator)
            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            .allowUnclosedQuote(false)
            .ofCsvRecord(text)) {
      reader.forEach(records::add);
    } catch (CsvParseException e) {
      int next = records.isEmpty() ? 1 : lineAfter(records.get(records.size() - 1));
      cut = Optional.of(Where.line(source.file(), next, 1));
      source.error(
          "not-csv",
          cut.get(),
          "the rows from here on cannot be read: a quotation mark is not closed, or stands inside"
              + " a cell",
          "put the cell in quotes, and double each quotation mark inside it");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return records;
  }

  static int lineAfter(CsvRecord row) {
    long breaks = row.getFields().stream().mapToLong(f -> count(f, '\n')).sum();
    return (int) (row.getStartingLineNumber() + breaks + 1);
  }

  private boolean isUsable(
      CsvRecord row, List<String> header, List<String> required, List<String> known) {
    int before = source.errors();
    List<Where> places = places(row);
    for (int i = 0; i < header.size(); i++) {
      String name = header.get(i);
      if (!known.contains(name)) {
        source.error(
            "unknown-column",
            places.get(i),
            "the column " + Source.shown(name) + " is not known",
            source.suggestion(name, known));
      } else if (header.indexOf(name) < i) {
        source.error(
            "duplicate-column",
            places.get(i),
            "the column " + name + " stands in the header twice",
            "keep one of the two");
      }
    }
    for (String name : required) {
      if (!header.contains(name)) {
        source.error(
            "missing-column",
            places.get(0),
            "the column " + name + " is missing from the header",
            "add it; the first line names the columns, with commas between them");
      }
    }
    return source.errors() == before;
  }

  private Line line(CsvRecord row, List<String> header) {
    List<Where> places = places(row);
    boolean whole = row.getFieldCount() == header.size();
    if (!whole) {
      source.error(
          "wrong-columns",
          places.get(0),
          "the row has " + row.getFieldCount() + " columns, the header " + header.size(),
          "add or remove separators; put a cell that holds one in quotes");
    } else if (row.getFields().stream().anyMatch(cell -> cell.contains("\uFFFD"))) {
      whole = false;
      source.error(
          "not-utf8",
          places.get(0),
          "the row is not UTF-8",
          "save the file again with the encoding UTF-8");
    }
    Map<String, Node.Leaf> cells = new LinkedHashMap<>();
    for (int i = 0; i < Math.min(header.size(), row.getFieldCount()); i++) {
      String value = row.getField(i);
      if (!value.isBlank()) {
        Where at = places.get(i);
        Where where = new Where(at.file(), at.line(), at.column(), header.get(i));
        cells.put(header.get(i), new Node.Leaf(where, Node.Type.CELL, value));
      }
    }
    return new Line(places.get(0), lineAfter(row) - 1, cells, whole);
  }

  /** Where each cell of a row begins. */
  private List<Where> places(CsvRecord row) {
    List<Where> places = new ArrayList<>();
    int line = (int) row.getStartingLineNumber();
    int i = lineStarts[line - 1];
    boolean quoted = false;
    places.add(Where.line(source.file(), line, 1));
    for (; places.size() < row.getFieldCount() && i < text.length(); i++) {
      char c = text.charAt(i);
      quoted ^= c == '"';
      if (line < lineStarts.length && i + 1 == lineStarts[line]) {
        line++;
      }
      if (c == separator && !quoted) {
        places.add(Where.line(source.file(), line, i + 2 - lineStarts[line - 1]));
      }
    }
    while (places.size() < row.getFieldCount()) {
      places.add(places.get(0));
    }
    return places;
  }

  /** The separator that stands in the first line most often. */
  static char separator(String text) {
    String first = text.lines().findFirst().orElse("");
    char best = ',';
    for (char c : new char[] {';', '\t'}) {
      best = count(first, c) > count(first, best) ? c : best;
    }
    return best;
  }

  private static long count(String text, char c) {
    return text.chars().filter(o -> o == c).count();
  }

  static int[] lineStarts(String text) {
    List<Integer> starts = new ArrayList<>(List.of(0));
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean ends =
          c == '\n' || c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n');
      if (ends) {
        starts.add(i + 1);
      }
    }
    return starts.stream().mapToInt(Integer::intValue).toArray();
  }
}
