package curewindow.intake;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.JobColumns;
import curewindow.shop.JobDraft;
import curewindow.shop.JobDraft.CarDraft;
import curewindow.shop.JobDraft.ItemDraft;
import java.util.List;

/**
 * The rows of a table that are one job, as jobs.csv joins them: what belongs to the job stands in
 * the first row, and later ones repeat it or leave it out.
 *
 * @param id the job's id as it stands in the table
 * @param rows its rows, at least one
 */
record Joined(String id, List<TableRow> rows) {

  private TableRow first() {
    return rows.get(0);
  }

  /** Tells where a later row differs from the first in what belongs to the job. */
  void compare(OurCells cells, ForeignTable table, Problems problems) {
    for (String column : JobColumns.all()) {
      if (JobColumns.isOfItem(column) || !cells.binding().has(column)) {
        continue;
      }
      String said = cells.told(first(), column);
      for (TableRow row : rows.subList(1, rows.size())) {
        String again = cells.told(row, column);
        if (!again.isEmpty() && !again.equals(said)) {
          int cell = cells.binding().cells(column).get(0);
          problems.add(
              Problem.error(
                      "rows-differ",
                      table.where(row, cell),
                      Shown.of(table.headings().get(cell))
                          + " differs from line "
                          + first().line()
                          + " of the same job",
                      "repeat what the job's first row says, or leave the cell empty")
                  .with("line", Integer.toString(first().line())));
        }
      }
    }
  }

  /** The job as somebody would type it. */
  JobDraft draft(OurCells cells) {
    TableRow row = first();
    return new JobDraft(
        id,
        cells.value(row, "first-name"),
        cells.value(row, "language"),
        new CarDraft(
            cells.value(row, "car-year"),
            cells.value(row, "body"),
            cells.value(row, "paint"),
            cells.value(row, "paint-finish"),
            cells.value(row, "car"),
            cells.list(row, "lacks")),
        cells.value(row, "place"),
        cells.value(row, "parking-day"),
        cells.value(row, "parking-night"),
        cells.value(row, "pickup"),
        rows.stream().map(r -> item(r, cells)).toList());
  }

  private static ItemDraft item(TableRow row, OurCells cells) {
    return new ItemDraft(
        cells.value(row, "service"),
        cells.value(row, "film"),
        cells.list(row, "spots"),
        cells.value(row, "finished"),
        cells.value(row, "vlt"),
        cells.value(row, "glass-vlt"),
        cells.value(row, "batch"),
        cells.value(row, "warranty-years"),
        cells.value(row, "lamp-surface"),
        cells.value(row, "lamp-minutes"));
  }
}
