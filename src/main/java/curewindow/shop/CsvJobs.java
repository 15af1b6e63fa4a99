package curewindow.shop;

import curewindow.problem.Problem;
import curewindow.shop.Node.Branch;
import curewindow.shop.Node.Entry;
import curewindow.shop.Node.Leaf;
import curewindow.shop.Node.Row;
import curewindow.shop.Node.Type;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Turns the rows of jobs.csv, one for each fitted item, into jobs as a job file would hold them.
 */
final class CsvJobs {

  static final String FILE = "jobs.csv";

  /** Columns of the job itself, by the key they stand for. */
  private static final Map<String, String> JOB =
      ordered(
          "job",
          "id",
          "first-name",
          "first-name",
          "language",
          "language",
          "place",
          "place",
          "zone",
          "zone");

  private static final Map<String, String> STAY = ordered("in", "in", "pickup", "pickup");

  private static final Map<String, String> CAR =
      ordered(
          "car-year",
          "year",
          "body",
          "body",
          "paint",
          "paint",
          "paint-finish",
          "finish",
          "car",
          "text",
          "lacks",
          "lacks");
  private static final Map<String, String> PARKING =
      ordered("parking-day", "day", "parking-night", "night");
  private static final Map<String, String> ITEM =
      ordered(
          "service",
          "service",
          "film",
          "film",
          "spots",
          "spots",
          "finished",
          "finished",
          "vlt",
          "vlt",
          "glass-vlt",
          "glass-vlt",
          "batch",
          "batch",
          "warranty-years",
          "warranty-years");
  private static final Map<String, String> LAMP =
      ordered("lamp-surface", "surface", "lamp-minutes", "minutes");
  private static final Map<String, String> FOUND =
      ordered(
          "found", "kind", "found-spots", "spots", "found-since", "since", "found-text", "text");

  private static final Set<String> LISTS = Set.of("spots", "lacks", "found-spots");
  static final List<String> REQUIRED =
      List.of(
          "job",
          "body",
          "paint",
          "parking-day",
          "parking-night",
          "pickup",
          "service",
          "film",
          "spots",
          "finished");

  private final Source source;
  private boolean lost;

  CsvJobs(Source source) {
    this.source = source;
  }

  /**
   * A job.
   *
   * @param id its id, not checked
   * @param node what a job file would hold
   * @param parts its rows
   * @param whole whether all of its rows have all of their cells
   * @param agrees whether its rows agree on what they say of the job
   */
  record Read(String id, Node node, List<BrokenJob.Part> parts, boolean whole, boolean agrees) {}

  /** All columns that the file may have. */
  static List<String> columns() {
    return Stream.of(JOB, STAY, CAR, PARKING, ITEM, LAMP, FOUND)
        .flatMap(m -> m.keySet().stream())
        .toList();
  }

  /** Whether a column is one of a fitted item's. */
  static boolean isOfItem(String column) {
    return ITEM.containsKey(column) || LAMP.containsKey(column);
  }

  /** Whether a cell of a column may hold several names. */
  static boolean isList(String column) {
    return LISTS.contains(column);
  }

  List<Read> read(String text) {
    Map<String, List<CsvTable.Line>> jobs = new LinkedHashMap<>();
    CsvTable.read(text, REQUIRED, columns(), source)
        .ifPresentOrElse(rows -> sort(rows, jobs), () -> lost = true);
    return jobs.entrySet().stream().map(e -> job(e.getKey(), e.getValue())).toList();
  }

  /** Whether the file may have other jobs than those that were read. */
  boolean hasLost() {
    return lost;
  }

  private void sort(CsvTable.Rows rows, Map<String, List<CsvTable.Line>> jobs) {
    int last = rows.lines().size() - 1;
    for (int i = 0; i <= last; i++) {
      // Rows that are lost behind it may belong to the job of the last one.
      boolean open = i == last && rows.cut().isPresent();
      sort(open ? rows.lines().get(i).broken() : rows.lines().get(i), jobs);
    }
    lost |= rows.cut().isPresent();
  }

  private void sort(CsvTable.Line line, Map<String, List<CsvTable.Line>> jobs) {
    Leaf id = line.cells().get("job");
    if (id != null) {
      jobs.computeIfAbsent(id.text().strip(), k -> new ArrayList<>()).add(line);
      return;
    }
    lost = true;
    if (line.whole()) {
      source.error(
          Problem.missing(line.where(), "job", "the row names no job", "fill in the column job"));
    }
  }

  private Read job(String id, List<CsvTable.Line> lines) {
    boolean whole = lines.stream().allMatch(CsvTable.Line::whole);
    CsvTable.Line first = lines.get(0);
    boolean comesBack = lines.stream().anyMatch(line -> line.cells().containsKey("in"));
    int before = source.errors();
    lines.stream().filter(CsvTable.Line::whole).forEach(line -> same(first, line, comesBack));
    List<Node> items = new ArrayList<>();
    Set<Node> found = new LinkedHashSet<>();
    for (CsvTable.Line line : lines) {
      items.add(item(line));
      Branch finding = branch(line, FOUND);
      if (!finding.entries().isEmpty()) {
        found.add(finding);
      }
    }
    Branch job = branch(first, JOB);
    job.entries().put("car", entry(branch(first, CAR)));
    job.entries().put("parking", entry(branch(first, PARKING)));
    if (comesBack) {
      job.entries().put("stays", entry(stays(first, lines)));
    } else {
      job.entries().putAll(branch(first, STAY).entries());
    }
    job.entries().put("items", entry(new Row(first.where(), items)));
    if (!found.isEmpty()) {
      job.entries().put("found", entry(new Row(first.where(), List.copyOf(found))));
    }
    return new Read(id, job, parts(lines), whole, source.errors() == before);
  }

  private static List<BrokenJob.Part> parts(List<CsvTable.Line> lines) {
    return lines.stream().map(l -> new BrokenJob.Part(FILE, l.where().line(), l.last())).toList();
  }

  /** Every stay once, where the rows first name it. */
  private static Row stays(CsvTable.Line first, List<CsvTable.Line> lines) {
    Map<List<String>, Node> stays = new LinkedHashMap<>();
    for (CsvTable.Line line : lines) {
      Branch stay = branch(line, STAY);
      if (!stay.entries().isEmpty()) {
        stays.putIfAbsent(
            STAY.keySet().stream().map(c -> line.cells().get(c)).map(CsvJobs::text).toList(), stay);
      }
    }
    return new Row(first.where(), List.copyOf(stays.values()));
  }

  private static String text(Leaf cell) {
    return cell == null ? "" : cell.text().strip();
  }

  private static Branch item(CsvTable.Line line) {
    Branch item = branch(line, ITEM);
    Branch lamp = branch(line, LAMP);
    if (!lamp.entries().isEmpty()) {
      item.entries().put("lamp", entry(lamp));
    }
    return item;
  }

  /** Later rows of a job may repeat or leave out what the first one says of the job. */
  private void same(CsvTable.Line first, CsvTable.Line line, boolean comesBack) {
    Stream.of(JOB, CAR, PARKING).forEach(columns -> same(columns, first, line));
    if (!comesBack) {
      same(STAY, first, line);
    }
  }

  private void same(Map<String, String> columns, CsvTable.Line first, CsvTable.Line line) {
    for (String column : columns.keySet()) {
      Leaf said = first.cells().get(column);
      Leaf again = line.cells().get(column);
      if (again != null && !text(said).equals(text(again))) {
        source.error(
            "rows-differ",
            again.where(),
            column + " differs from line " + first.where().line() + " of the same job",
            "repeat what the job's first row says, or leave the cell empty");
      }
    }
  }

  private static Branch branch(CsvTable.Line line, Map<String, String> columns) {
    Map<String, Entry> entries = new LinkedHashMap<>();
    Map<String, String> labels = new LinkedHashMap<>();
    columns.forEach(
        (column, key) -> {
          labels.put(key, column);
          Leaf cell = line.cells().get(column);
          if (cell != null) {
            entries.put(key, new Entry(cell.where(), LISTS.contains(column) ? list(cell) : cell));
          }
        });
    return new Branch(line.where(), entries, labels);
  }

  /** A cell with several names, with spaces between them. */
  private static Row list(Leaf cell) {
    List<Node> names =
        Stream.of(cell.text().strip().split("\\s+"))
            .map(name -> (Node) new Leaf(cell.where(), Type.CELL, name))
            .toList();
    return new Row(cell.where(), names);
  }

  private static Entry entry(Node value) {
    return new Entry(value.where(), value);
  }

  private static Map<String, String> ordered(String... pairs) {
    Map<String, String> map = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      map.put(pairs[i], pairs[i + 1]);
    }
    return map;
  }
}
