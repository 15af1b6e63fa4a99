package curewindow.intake;

import curewindow.intake.DateOrders.Placed;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.DateOrder;
import curewindow.shop.ImportMap;
import curewindow.shop.JobColumns;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Reads the times of a table, after all of them were looked at to find out which number is the day.
 */
final class TableDates {

  private final ImportMap map;
  private final Binding binding;
  private final Map<String, DateOrder> orders = new LinkedHashMap<>();
  private final List<Problem> notes = new ArrayList<>();

  /** Many rows of a table have the same day. */
  private final Map<String, Optional<DateCell>> known = new HashMap<>();

  private TableDates(ImportMap map, Binding binding) {
    this.map = map;
    this.binding = binding;
  }

  /**
   * Looks at all times of a table; a column that cannot be told is told as a problem of the map.
   */
  static TableDates of(ForeignTable table, ImportMap map, Binding binding, Problems problems) {
    TableDates dates = new TableDates(map, binding);
    Map<String, DateOrders.Told> told = new LinkedHashMap<>();
    for (String column : map.columns().keySet()) {
      if (JobColumns.isTime(column) && binding.has(column)) {
        map.dates()
            .ifPresentOrElse(
                order -> dates.orders.put(column, order),
                () -> told.put(column, DateOrders.of(dates.placed(table, column))));
      }
    }
    told.forEach((column, what) -> dates.guess(table, column, what, told.values(), problems));
    return dates;
  }

  private List<Placed> placed(ForeignTable table, String column) {
    List<Placed> placed = new ArrayList<>();
    for (TableRow row : table.rows()) {
      binding.texts(row, column).stream()
          .findFirst()
          .ifPresent(
              text -> cell(text).ifPresent(d -> placed.add(new Placed(row.line(), text, d))));
    }
    return placed;
  }

  private Optional<DateCell> cell(String text) {
    return known.computeIfAbsent(text, DateCell::of);
  }

  private void guess(
      ForeignTable table,
      String column,
      DateOrders.Told told,
      Iterable<DateOrders.Told> all,
      Problems problems) {
    if (told instanceof DateOrders.Order order) {
      orders.put(column, order.order());
      order.by().ifPresent(by -> note(column, order.order(), by));
      return;
    }
    Set<DateOrder> others = new LinkedHashSet<>();
    for (DateOrders.Told other : all) {
      if (other instanceof DateOrders.Order order && order.by().isPresent()) {
        others.add(order.order());
      }
    }
    if (told instanceof DateOrders.Unsure && others.size() == 1) {
      orders.put(column, others.iterator().next());
      return;
    }
    problems.add(refused(table, column, told));
  }

  private void note(String column, DateOrder order, Placed by) {
    String message =
        "the dates of "
            + column
            + " are read "
            + order.id()
            + ", as line "
            + by.line()
            + " has "
            + Shown.of(by.text());
    notes.add(
        Problem.notice(
                "dates-read",
                Where.file(map.file()),
                message,
                "write dates: there where that is wrong")
            .with("column", column)
            .with("order", order.id())
            .with("line", Integer.toString(by.line()))
            .with("value", Shown.bare(by.text())));
  }

  private Problem refused(ForeignTable table, String column, DateOrders.Told told) {
    Placed example =
        told instanceof DateOrders.Mixed mixed
            ? mixed.other()
            : ((DateOrders.Unsure) told).example();
    String heading = Shown.of(table.headings().get(binding.cells(column).get(0)));
    String message =
        told instanceof DateOrders.Mixed mixed
            ? heading + " has days in two ways: " + place(mixed.one()) + ", " + place(mixed.other())
            : heading + " can be read in more than one way, such as " + days(example);
    String fix =
        "write into "
            + map.file()
            + " which it is: dates: "
            + DateOrder.DAY_FIRST.id()
            + " or dates: "
            + DateOrder.MONTH_FIRST.id();
    return Problem.error(
            told instanceof DateOrders.Mixed ? "mixed-dates" : "unsure-dates",
            Where.line(table.name(), example.line(), 1),
            message,
            fix)
        .with("heading", Shown.bare(table.headings().get(binding.cells(column).get(0))))
        .with("value", Shown.bare(example.text()))
        .with("line", Integer.toString(example.line()));
  }

  private static String place(Placed placed) {
    return Shown.of(placed.text()) + " in line " + placed.line();
  }

  private static String days(Placed placed) {
    return Shown.of(placed.text())
        + ", which may be "
        + placed.cell().days().values().stream()
            .distinct()
            .map(Object::toString)
            .collect(Collectors.joining(" or "));
  }

  /** What was guessed. */
  List<Problem> notes() {
    return List.copyOf(notes);
  }

  /**
   * A time as a job file has it.
   *
   * @param texts what stands in the cells of the column: day and time, in one cell or in two
   * @return the time; what stands there, where it is none, so that the reader of jobs tells why
   */
  String told(String column, List<String> texts) {
    Optional<DateCell> day = cell(texts.get(0));
    if (day.isEmpty()) {
      return String.join(" ", texts);
    }
    Optional<DayTime> apart = texts.size() > 1 ? clock(texts.get(1)) : Optional.empty();
    if (texts.size() > 1 && apart.isEmpty()) {
      return String.join(" ", texts);
    }
    Optional<DayTime> clock = apart.or(day.get()::time);
    Optional<DayTime> usual = Optional.ofNullable(map.hours().get(column)).flatMap(DayTime::of);
    boolean isDay = clock.isEmpty() || apart.isEmpty() && clock.get().isMidnight();
    Optional<DayTime> shown = isDay && usual.isPresent() ? usual : clock;
    DateOrder order = orders.getOrDefault(column, DateOrder.DAY_FIRST);
    return day.get().told(order, shown).orElse(texts.get(0));
  }

  /** A time alone, or the time behind a day that some programs write with each time. */
  private static Optional<DayTime> clock(String text) {
    return text.length() > 40
        ? Optional.empty()
        : DayTime.of(PlainCell.of(text)).or(() -> DateCell.of(text).flatMap(DateCell::time));
  }
}
