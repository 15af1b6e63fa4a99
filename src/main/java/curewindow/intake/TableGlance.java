package curewindow.intake;

import curewindow.problem.Problems;
import curewindow.shop.Catalogue;
import curewindow.shop.ImportMap;
import curewindow.shop.JobColumns;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** What a table shows to somebody who is to tell how it is read. */
public final class TableGlance {

  /** As many names as anybody tells one by one. */
  private static final int NAMES = 200;

  private static final int SAMPLE = 40;

  private final ForeignTable table;
  private final Catalogue catalogue;

  /**
   * A glance at a table.
   *
   * @param table the table
   * @param catalogue what the shop fits
   */
  public TableGlance(ForeignTable table, Catalogue catalogue) {
    this.table = Objects.requireNonNull(table, "table");
    this.catalogue = Objects.requireNonNull(catalogue, "catalogue");
  }

  /**
   * A column of theirs.
   *
   * @param text its heading
   * @param sample the first thing that stands below it, cut short; empty where nothing does
   */
  public record Heading(String text, String sample) {

    /** Refuses missing parts. */
    public Heading {
      Objects.requireNonNull(text, "text");
      Objects.requireNonNull(sample, "sample");
    }
  }

  /**
   * The headings that may tell something of a job.
   *
   * @return in their order, each once
   */
  public List<Heading> headings() {
    Map<String, Heading> all = new LinkedHashMap<>();
    for (int i = 0; i < table.headings().size(); i++) {
      String text = table.headings().get(i);
      if (!text.isEmpty() && !text.equals(RestFile.HEADING)) {
        all.putIfAbsent(ImportMap.key(text), new Heading(text, sample(i)));
      }
    }
    return List.copyOf(all.values());
  }

  private String sample(int cell) {
    String first =
        table.rows().stream()
            .filter(row -> cell < row.cells().size())
            .map(row -> row.cells().get(cell).strip())
            .filter(text -> !text.isEmpty())
            .findFirst()
            .orElse("");
    int letters = first.codePointCount(0, first.length());
    return letters > SAMPLE ? first.substring(0, first.offsetByCodePoints(0, SAMPLE)) : first;
  }

  /**
   * Headings in the order in which a map has them: of a day and a time of day, the day first.
   *
   * @param column the column that they fill
   * @param headings some headings of the table
   * @return the same
   */
  public List<String> inOrder(String column, List<String> headings) {
    List<String> ordered = new ArrayList<>(headings);
    if (JobColumns.isTime(column)) {
      ordered.sort(Comparator.comparing(heading -> !isDay(heading)));
    }
    return List.copyOf(ordered);
  }

  private boolean isDay(String heading) {
    int cell = table.headings().indexOf(heading);
    return cell >= 0 && GuessedColumns.first(table, cell).flatMap(DateCell::of).isPresent();
  }

  /**
   * Their names in a column that a map tells, or has to tell as nothing is called so here.
   *
   * @param column a column that holds names
   * @param map the map, which may lack what a whole one has
   * @param known what is called so here beside what {@link #ours} has
   * @return at most 200, in the order of the table; those that only differ in capitals or accents
   *     once
   */
  public List<String> names(String column, ImportMap map, Collection<String> known) {
    Binding binding = Binding.of(table, map, new Problems());
    OurNames names = new OurNames(map, catalogue);
    Map<String, String> found = new LinkedHashMap<>();
    for (TableRow row : table.rows()) {
      String cell = String.join(" ", binding.texts(row, column));
      if (found.size() < NAMES && !cell.isEmpty() && !known.contains(cell)) {
        names.theirs(column, cell).forEach(n -> found.putIfAbsent(ImportMap.key(n), n));
      }
    }
    return found.values().stream().limit(NAMES).toList();
  }

  /**
   * What may be called something else by another program.
   *
   * @param column a column that holds names
   * @param catalogue what the shop fits
   * @return our names, as far as they are few; none for places and languages
   */
  public static List<String> ours(String column, Catalogue catalogue) {
    return List.copyOf(OurNames.of(column, catalogue));
  }
}
