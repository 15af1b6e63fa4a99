package curewindow.intake;

import curewindow.shop.Catalogue;
import curewindow.shop.ImportMap;
import curewindow.shop.JobColumns;
import curewindow.shop.TypedNumber;
import java.util.List;
import java.util.Set;

/** What a row says in each of our columns, in the words of a job file. */
final class OurCells {

  private final ImportMap map;
  private final Binding binding;
  private final TableDates dates;
  private final OurNames names;
  private final FilmServices films;

  OurCells(ImportMap map, Binding binding, TableDates dates, Catalogue catalogue) {
    this.map = map;
    this.binding = binding;
    this.dates = dates;
    this.names = new OurNames(map, catalogue);
    this.films = new FilmServices(catalogue);
  }

  /** Where the cells of a column stand. */
  Binding binding() {
    return binding;
  }

  /** What the table says; empty where it says nothing. */
  String told(TableRow row, String column) {
    List<String> texts = binding.texts(row, column);
    if (texts.isEmpty()) {
      return "";
    }
    if (JobColumns.isTime(column)) {
      return dates.told(column, texts);
    }
    String text = String.join(" ", texts);
    return JobColumns.isNumber(column)
        ? TypedNumber.plain(text)
        : JobColumns.isName(column) && !JobColumns.isList(column) ? names.one(column, text) : text;
  }

  /** What the table says, or else what it always is; a film tells its service. */
  String value(TableRow row, String column) {
    String told = told(row, column);
    String said = told.isEmpty() ? map.fixed().getOrDefault(column, "") : told;
    return said.isEmpty() && column.equals(JobColumns.SERVICE) ? service(row) : said;
  }

  private String service(TableRow row) {
    Set<String> services = services(row);
    return services.size() == 1 ? services.iterator().next() : "";
  }

  /** The services that the film of a row may be for. */
  Set<String> services(TableRow row) {
    String theirs = String.join(" ", binding.texts(row, JobColumns.FILM));
    boolean isTold = names.isTold(JobColumns.FILM, theirs);
    return films.of(value(row, JobColumns.FILM), isTold ? "" : theirs);
  }

  /** The names in a cell of a column that may have several. */
  List<String> list(TableRow row, String column) {
    String value = value(row, column);
    return value.isEmpty() ? List.of() : names.several(column, value);
  }
}
