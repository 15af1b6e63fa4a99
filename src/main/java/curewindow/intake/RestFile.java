package curewindow.intake;

import curewindow.problem.Problem;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The rows of a table that are left over. */
final class RestFile {

  /** The heading of the column that tells why; a table may come back with it. */
  static final String HEADING = "not imported because";

  private RestFile() {}

  /**
   * Writes the rows that are left over as they stand, with the separator, the coding and the
   * headings of their table.
   *
   * @param rows what becomes of each row, in the order of the table
   * @param said says what is wrong with a row, and what to do
   */
  static Optional<byte[]> of(
      ForeignTable table, List<RowPlan> rows, Function<Problem, String> said) {
    if (rows.stream().noneMatch(row -> row.state() == RowPlan.State.LEFT)) {
      return Optional.empty();
    }
    StringWriter text = new StringWriter();
    try (CsvWriter csv =
        CsvWriter.builder()
            .fieldSeparator(table.separator())
            .lineDelimiter(table.hasReturns() ? LineDelimiter.CRLF : LineDelimiter.LF)
            .build(text)) {
      int why = why(table);
      csv.writeRecord(row(table.headings(), why, HEADING));
      for (int i = 0; i < rows.size(); i++) {
        if (rows.get(i).state() == RowPlan.State.LEFT) {
          csv.writeRecord(row(table.rows().get(i).cells(), why, because(rows.get(i), said)));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return Optional.of(table.coding().encode(text.toString()));
  }

  /** Where the reason stands: behind all columns, or where a table that came back has it. */
  static int why(ForeignTable table) {
    int there = table.headings().indexOf(HEADING);
    return there < 0 ? table.headings().size() : there;
  }

  private static List<String> row(List<String> cells, int why, String reason) {
    List<String> row = new ArrayList<>(cells);
    while (row.size() <= why) {
      row.add("");
    }
    if (row.get(why).isEmpty() || cells.size() <= why + 1) {
      row.set(why, reason);
    } else {
      row.add(reason);
    }
    return row;
  }

  /** Short, as it is read in a narrow column; a row may have many problems. */
  private static String because(RowPlan row, Function<Problem, String> said) {
    return row.problems().stream()
        .filter(Problem::isError)
        .map(said)
        .limit(5)
        .collect(Collectors.joining(" | "));
  }
}
