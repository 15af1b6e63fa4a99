package curewindow.shop;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Takes the rows of one job out of a table that the shop keeps; all else stays to the byte. */
public final class JobRows {

  private static final String COLUMN = "job";

  /** The byte order mark, as it looks when each byte is taken for a letter. */
  private static final String MARK = "\u00EF\u00BB\u00BF";

  private JobRows() {}

  /**
   * What is left of a table.
   *
   * @param bytes the table
   * @param rows how many rows were taken out
   */
  public record Left(byte[] bytes, int rows) {}

  /**
   * A table without the rows of a job.
   *
   * @param table a table whose header names the column {@code job}
   * @param job the job's id
   * @return what is left, or empty where not all rows can be told apart
   */
  public static Optional<Left> without(byte[] table, String job) {
    // Whatever its encoding, ids and all that a table is made of are of one byte.
    String whole = new String(table, StandardCharsets.ISO_8859_1);
    String mark = whole.startsWith(MARK) ? MARK : "";
    String text = whole.substring(mark.length());
    int[] starts = CsvTable.lineStarts(text);
    Optional<List<CsvRecord>> rows = rowsOf(text, job);
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    StringBuilder left = new StringBuilder(mark);
    int from = 0;
    for (CsvRecord row : rows.get()) {
      left.append(text, from, starts[(int) row.getStartingLineNumber() - 1]);
      int next = CsvTable.lineAfter(row) - 1;
      from = next < starts.length ? starts[next] : text.length();
    }
    left.append(text.substring(from));
    return Optional.of(
        new Left(left.toString().getBytes(StandardCharsets.ISO_8859_1), rows.get().size()));
  }

  private static Optional<List<CsvRecord>> rowsOf(String text, String job) {
    List<CsvRecord> rows = new ArrayList<>();
    int column = -1;
    try (CsvReader<CsvRecord> records =
        CsvReader.builder()
            .fieldSeparator(CsvTable.separator(text))
            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            .allowUnclosedQuote(false)
            .ofCsvRecord(text)) {
      for (CsvRecord row : records) {
        if (column < 0) {
          column = row.getFields().stream().map(String::strip).toList().indexOf(COLUMN);
          if (column < 0) {
            return Optional.empty();
          }
        } else if (row.getFieldCount() > column && row.getField(column).strip().equals(job)) {
          rows.add(row);
        }
      }
    } catch (CsvParseException e) {
      return Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return Optional.of(rows);
  }
}
