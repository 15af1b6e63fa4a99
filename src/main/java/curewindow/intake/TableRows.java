package curewindow.intake;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Tells the text of a table into rows and cells. */
final class TableRows {

  /** As some spreadsheets write above the headings, for themselves. */
  private static final Pattern STATED = Pattern.compile("\\A(?i:sep=)([;,\t])\\R");

  private static final char[] SEPARATORS = {';', '\t', ','};

  /** As long as a whole table may be, characters. */
  private static final int LONGEST_CELL = (64 << 20) + 1;

  /** How many rows are looked at to find out the separator. */
  private static final int LOOKED_AT = 100;

  private final String text;
  private final char separator;
  private final int[] lineStarts;
  private final List<TableRow> rows = new ArrayList<>();

  private TableRows(String text, char separator) {
    this.text = text;
    this.separator = separator;
    this.lineStarts = lineStarts(text);
  }

  /** All rows, that of the headings first, and what separates their cells. */
  record Read(List<TableRow> rows, char separator) {}

  static Read read(String text) {
    Matcher stated = STATED.matcher(text);
    boolean isStated = stated.find();
    char separator = isStated ? stated.group(1).charAt(0) : separator(text);
    TableRows table = new TableRows(text, separator);
    table.readFrom(isStated ? 2 : 1, Integer.MAX_VALUE);
    return new Read(List.copyOf(table.rows), separator);
  }

  /** What a separator is called. */
  static String told(char separator) {
    return switch (separator) {
      case ';' -> "semicolons";
      case '\t' -> "tabs";
      default -> "commas";
    };
  }

  /** The one by which most rows have as many cells as the headings, and then by most cells. */
  private static char separator(String text) {
    char best = ',';
    long most = 0;
    for (char one : SEPARATORS) {
      TableRows tried = new TableRows(text, one);
      tried.readFrom(1, LOOKED_AT);
      int width = tried.rows.isEmpty() ? 0 : tried.rows.get(0).cells().size();
      long alike = tried.rows.stream().filter(r -> r.cells().size() == width).count();
      long score = width < 2 ? 0 : alike * 1_000 + Math.min(width, 999);
      if (score > most) {
        best = one;
        most = score;
      }
    }
    return best;
  }

  /** A line that cannot be told into cells becomes a row of one; reading goes on behind it. */
  private void readFrom(int firstLine, int most) {
    int line = firstLine;
    while (line <= lineStarts.length && rows.size() < most) {
      line = readSome(line, most);
    }
  }

  /** Reads until a line that cannot be read; gives the one behind it. */
  private int readSome(int from, int most) {
    int next = from;
    try (StringReader in = new StringReader(text)) {
      in.skip(lineStarts[from - 1]);
      CsvReader<CsvRecord> reader = reader(in);
      for (CsvRecord row : reader) {
        int line = from - 1 + (int) row.getStartingLineNumber();
        next = line + 1 + row.getFields().stream().mapToInt(TableRows::breaks).sum();
        rows.add(new TableRow(line, row.getFields(), true));
        if (rows.size() >= most) {
          break;
        }
      }
      return lineStarts.length + 1;
    } catch (CsvParseException e) {
      return broken(next);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private CsvReader<CsvRecord> reader(StringReader in) {
    return CsvReader.builder()
        .fieldSeparator(separator)
        .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
        .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
        .allowUnclosedQuote(false)
        .maxBufferSize(LONGEST_CELL)
        .ofCsvRecord(in);
  }

  /** The first line from one on that is not empty, which is the one that cannot be read. */
  private int broken(int from) {
    for (int line = from; line <= lineStarts.length; line++) {
      String whole = line(line);
      if (!whole.isBlank()) {
        rows.add(new TableRow(line, List.of(whole), false));
        return line + 1;
      }
    }
    return lineStarts.length + 1;
  }

  private String line(int line) {
    int end = line < lineStarts.length ? lineStarts[line] : text.length();
    return text.substring(lineStarts[line - 1], end).replaceAll("[\r\n]+\\z", "");
  }

  private static int breaks(String cell) {
    return cell.indexOf('\n') < 0 && cell.indexOf('\r') < 0 ? 0 : lineStarts(cell).length - 1;
  }

  /** Where each line begins. */
  static int[] lineStarts(String text) {
    int[] starts = new int[16];
    int count = 1;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean ends =
          c == '\n' || c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n');
      if (ends) {
        starts = count == starts.length ? Arrays.copyOf(starts, 2 * count) : starts;
        starts[count++] = i + 1;
      }
    }
    return Arrays.copyOf(starts, count);
  }
}
