package curewindow.intake;

import curewindow.problem.Faults;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.ImportMap;
import curewindow.shop.Job;
import curewindow.shop.JobCheck;
import curewindow.shop.JobColumns;
import curewindow.shop.JobText;
import curewindow.shop.ShopFiles;
import curewindow.site.LoadedShop;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds out what becomes of each row of one table. */
final class Planning {

  private final ForeignTable table;
  private final LoadedShop shop;
  private final JobsThere there;
  private final OurCells cells;
  private final TheirPlaces places;
  private final Map<Integer, RowPlan> plans = new HashMap<>();
  private final Map<String, String> texts = new LinkedHashMap<>();
  private final Map<String, Job> reads = new HashMap<>();
  private final Set<String> ids = new HashSet<>();

  private Planning(
      ForeignTable table, ImportMap map, OurCells cells, ShopFiles files, LoadedShop shop) {
    this.table = table;
    this.shop = shop;
    this.there = new JobsThere(files, shop);
    this.cells = cells;
    this.places = new TheirPlaces(table, map, cells);
  }

  /** What becomes of each row, in a shop folder as it was read. */
  static IntakePlan plan(ForeignTable table, ImportMap map, ShopFiles files, LoadedShop shop) {
    Problems stops = new Problems();
    Binding binding = Binding.of(table, map, stops);
    TableDates dates = TableDates.of(table, map, binding, stops);
    if (stops.hasErrors()) {
      return IntakePlan.stopped(table, stops.all());
    }
    OurCells cells = new OurCells(map, binding, dates, shop.read().catalogue());
    Planning planning = new Planning(table, map, cells, files, shop);
    planning.run(RowSorting.of(table, binding));
    List<RowPlan> rows = table.rows().stream().map(r -> planning.plans.get(r.line())).toList();
    return new IntakePlan(table, List.of(), notes(table, dates, binding), rows, planning.texts);
  }

  private static List<Problem> notes(ForeignTable table, TableDates dates, Binding binding) {
    List<Problem> notes = new ArrayList<>(List.of(table.howRead()));
    notes.addAll(dates.notes());
    if (!binding.unused().isEmpty()) {
      List<String> unused = binding.unused();
      notes.add(
          Problem.notice(
                  "headings-unread",
                  Where.file(table.name()),
                  "these headings are not read: "
                      + String.join(", ", unused.stream().map(Shown::of).toList()),
                  "write under columns of the map what they are")
              .with("headings", String.join("; ", unused.stream().map(Shown::bare).toList())));
    }
    return notes;
  }

  private void run(RowSorting sorting) {
    for (TableRow row : table.rows()) {
      sorting
          .fault(row.line())
          .ifPresent(fault -> plans.put(row.line(), RowPlan.left(row.line(), "", List.of(fault))));
    }
    for (Joined job : sorting.jobs()) {
      Problems problems = new Problems();
      job.rows().forEach(row -> sorting.fault(row.line()).ifPresent(problems::add));
      RowPlan.State state =
          problems.hasErrors()
              ? RowPlan.State.LEFT
              : Faults.guard(
                      table.where(job.rows().get(0)), problems, () -> judge(job, sorting, problems))
                  .orElse(RowPlan.State.LEFT);
      tell(job, state, problems.all());
    }
  }

  private RowPlan.State judge(Joined job, RowSorting sorting, Problems problems) {
    job.compare(cells, table, problems);
    if (problems.hasErrors()) {
      return RowPlan.State.LEFT;
    }
    String text = JobText.of(job.draft(cells));
    JobCheck.Tried tried = shop.tried(JobsThere.file(job.id()), text);
    FilmProblems.of(job, cells, tried.problems()).forEach(p -> problems.add(places.of(job, p)));
    sorting.lacking(job.id()).ifPresent(problems::add);
    if (tried.job().isEmpty() || problems.hasErrors()) {
      return RowPlan.State.LEFT;
    }
    Job read = tried.job().get();
    reads.put(job.id(), read);
    if (there.has(read, text)) {
      return RowPlan.State.THERE;
    }
    int cell = cells.binding().cells(JobColumns.JOB).get(0);
    there
        .inTheWay(read, table.where(job.rows().get(0), cell))
        .or(() -> twice(job, read, cell))
        .ifPresent(problems::add);
    if (problems.hasErrors()) {
      return RowPlan.State.LEFT;
    }
    texts.put(read.id(), text);
    return RowPlan.State.GOOD;
  }

  private Optional<Problem> twice(Joined job, Job read, int cell) {
    return ids.add(read.id().toLowerCase(Locale.ROOT))
        ? Optional.empty()
        : Optional.of(
            Problem.error(
                "duplicate-id",
                table.where(job.rows().get(0), cell),
                "the table has this number with other capitals too, which is the same",
                "give one of the two another number"));
  }

  /** What was read from a row; each row of a job has an item of its own. */
  private Optional<RowPlan.Read> read(Joined job, int row) {
    return Optional.ofNullable(reads.get(job.id()))
        .filter(read -> row < read.items().size())
        .map(read -> new RowPlan.Read(read, read.items().get(row)));
  }

  /** Each row has the problems of its lines; the others of a job that is left name one of them. */
  private void tell(Joined job, RowPlan.State state, List<Problem> problems) {
    for (int i = 0; i < job.rows().size(); i++) {
      int line = job.rows().get(i).line();
      int next = nextLine(line);
      boolean first = i == 0;
      List<Problem> own =
          problems.stream()
              .filter(p -> p.line() >= line && p.line() < next || first && !isOfAny(job, p))
              .toList();
      boolean lacks = state == RowPlan.State.LEFT && own.stream().noneMatch(Problem::isError);
      plans.put(
          line,
          state == RowPlan.State.LEFT
              ? RowPlan.left(line, job.id(), lacks ? List.of(other(job, i, problems)) : own)
              : new RowPlan(line, job.id(), state, own, read(job, i)));
    }
  }

  private boolean isOfAny(Joined job, Problem problem) {
    return job.rows().stream()
        .anyMatch(row -> problem.line() >= row.line() && problem.line() < nextLine(row.line()));
  }

  private int nextLine(int line) {
    return table.lineBehind(line);
  }

  private Problem other(Joined job, int row, List<Problem> problems) {
    int line =
        problems.stream().filter(Problem::isError).mapToInt(Problem::line).findFirst().orElse(0);
    return Problem.error(
            "other-row",
            table.where(job.rows().get(row)),
            "another row of the same job has a problem, in line " + line + " of " + table.name(),
            "mend that one; the job is then imported as a whole")
        .with("line", Integer.toString(line));
  }
}
