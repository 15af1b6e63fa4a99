package curewindow.cli;

import java.io.PrintWriter;
import java.util.List;

/** Prints rows of words in columns that line up. */
final class PlacesTable {

  private PlacesTable() {}

  /**
   * Prints rows.
   *
   * @param rows the rows, all of one length, the headings first
   * @param sides for each column {@code l} where words begin in line, {@code r} where they end so
   * @param out where to
   */
  static void print(List<List<String>> rows, String sides, PrintWriter out) {
    int[] widths = new int[sides.length()];
    for (List<String> row : rows) {
      for (int c = 0; c < widths.length; c++) {
        widths[c] = Math.max(widths[c], length(row.get(c)));
      }
    }
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int c = 0; c < widths.length; c++) {
        String blanks = " ".repeat(widths[c] - length(row.get(c)));
        line.append("  ");
        line.append(sides.charAt(c) == 'r' ? blanks + row.get(c) : row.get(c) + blanks);
      }
      out.println(line.toString().stripTrailing());
    }
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }
}
