package curewindow.intake;

import java.util.List;

/**
 * A row of a table.
 *
 * @param line the line on which it begins, from 1
 * @param cells its cells as they stand
 * @param whole false where it could not be told into cells; it is then one cell
 */
record TableRow(int line, List<String> cells, boolean whole) {

  TableRow {
    cells = List.copyOf(cells);
  }
}
