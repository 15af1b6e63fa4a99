package curewindow.shop;

import curewindow.problem.Nearest;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.Node.Leaf;
import curewindow.shop.Node.Row;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads the maps in {@code imports/*.yaml}. */
public final class ImportMaps {

  /** The longest heading or name of another program that is taken, in characters. */
  private static final int LONGEST = 200;

  private static final String LACKING = "missing-column";

  private static final Keys MAP =
      Keys.needs("columns").allows("fixed", "hours", "dates", "spots-between", "names");
  private static final Pattern HOUR = Pattern.compile("([01][0-9]|2[0-3]):[0-5][0-9]");

  private final Source source;

  private ImportMaps(Source source) {
    this.source = source;
  }

  /**
   * Where a map is kept.
   *
   * @param name its name
   * @return the file, relative to the shop folder
   */
  public static String file(String name) {
    return "imports/" + name + ".yaml";
  }

  private static String name(String file) {
    return file.replaceFirst(".*/", "").replaceFirst("[.]yaml$", "");
  }

  /**
   * Whether a map may have a name.
   *
   * @param name the name
   * @return true for up to 40 lower case letters and digits, words joined with hyphens
   */
  public static boolean isName(String name) {
    return Values.isName(name);
  }

  /**
   * A name for the map of a table.
   *
   * @param table the name of the table's file
   * @return a name that a map may have
   */
  public static String nameFor(String table) {
    String bare = Nearest.fold(table.replaceFirst("[.][^.]*$", "")).replaceAll("[^a-z0-9]+", "-");
    String cut = bare.length() > 40 ? bare.substring(0, 40) : bare;
    String name = cut.replaceAll("^-+|-+$", "");
    return name.isEmpty() ? "table" : name;
  }

  /**
   * A text as it may stand in a map, whatever is in it.
   *
   * @param text the text
   * @return YAML on one line
   */
  public static String quoted(String text) {
    return YamlWriting.quoted(text);
  }

  /**
   * The maps of a shop.
   *
   * @param files the files of the shop folder
   * @return their names, in alphabetical order
   */
  public static List<String> names(ShopFiles files) {
    return files.list("imports", ".yaml").stream()
        .map(ImportMaps::name)
        .filter(ImportMaps::isName)
        .sorted()
        .toList();
  }

  /**
   * Tells what is wrong with the maps of a shop.
   *
   * @param files the files of the shop folder
   * @return the problems, also of files that have a name by which no map can be asked for
   */
  public static List<Problem> check(ShopFiles files) {
    Problems problems = new Problems();
    for (String file : files.list("imports", ".yaml")) {
      String name = name(file);
      if (isName(name)) {
        read(files, name, problems);
      } else {
        Values.badName(Where.file(file), name, new Source(file, problems));
      }
    }
    return problems.all();
  }

  /**
   * Reads a map.
   *
   * @param files the files of the shop folder
   * @param name its name
   * @param problems where it is said what is wrong with it
   * @return the map; empty where anything is wrong
   */
  public static Optional<ImportMap> read(ShopFiles files, String name, Problems problems) {
    String file = file(name);
    Source source = new Source(file, problems);
    return files.text(file, problems).flatMap(text -> read(text, source));
  }

  /**
   * Reads a map that is not kept yet.
   *
   * @param name the name it is to have
   * @param text the text of its file
   * @param problems where it is said what is wrong with it
   * @return the map; empty where anything is wrong
   */
  public static Optional<ImportMap> of(String name, String text, Problems problems) {
    return read(text, new Source(file(name), problems));
  }

  /**
   * Reads a map that somebody is still at work on.
   *
   * @param name its name
   * @param text the text of its file
   * @return the map, which may lack columns without which there is no job; empty where anything
   *     else is wrong
   */
  public static Optional<ImportMap> unfinished(String name, String text) {
    Problems problems = new Problems();
    Optional<ImportMap> map = anyOf(text, new Source(file(name), problems));
    return map.filter(
        m -> problems.all().stream().allMatch(p -> p.code().equals(LACKING) || !p.isError()));
  }

  private static Optional<ImportMap> read(String text, Source source) {
    return anyOf(text, source).filter(m -> source.errors() == 0);
  }

  private static Optional<ImportMap> anyOf(String text, Source source) {
    Optional<Fields> fields =
        YamlTree.read(text, source).flatMap(node -> Fields.of(node, MAP, source));
    return fields.map(f -> new ImportMaps(source).map(f));
  }

  private ImportMap map(Fields f) {
    Map<String, List<PlacedText>> columns = new LinkedHashMap<>();
    Map<String, String> fixed = new LinkedHashMap<>();
    Map<String, String> hours = new LinkedHashMap<>();
    Map<String, Map<String, List<String>>> names = new LinkedHashMap<>();
    columns(f, "columns").forEach((c, of) -> columns.put(c, headings(of, c)));
    columns(f, "fixed").forEach((c, of) -> text(of, c).ifPresent(t -> fixed.put(c, t)));
    columns(f, "hours").forEach((c, of) -> hour(of, c).ifPresent(t -> hours.put(c, t)));
    columns(f, "names").forEach((c, of) -> names.put(c, names(of, c)));
    ImportMap map =
        new ImportMap(
            source.file(),
            columns,
            fixed,
            hours,
            f.name("dates", Names.of("order of dates", DateOrder.ids())).flatMap(DateOrder::of),
            f.text("spots-between", 20),
            names);
    lacking(f, map);
    return map;
  }

  /** The fields of a key whose own keys are columns of ours; unknown ones are told. */
  private Map<String, Fields> columns(Fields f, String key) {
    Map<String, Fields> found = new LinkedHashMap<>();
    if (!f.has(key)) {
      return found;
    }
    f.node(key)
        .flatMap(node -> Fields.anyKeys(node, source))
        .ifPresent(
            inner -> {
              for (String column : inner.keys()) {
                if (isKnown(column, key, inner.where(column))) {
                  found.put(column, inner);
                }
              }
            });
    return found;
  }

  private boolean isKnown(String column, String key, Where where) {
    List<String> known = JobColumns.all().stream().filter(c -> takes(key, c)).toList();
    if (!known.contains(column)) {
      source.error(
          "unknown-column",
          where,
          "the column " + Source.shown(column) + " is not known under " + key,
          source.suggestion(column, known));
    }
    return known.contains(column);
  }

  private static boolean takes(String key, String column) {
    return switch (key) {
      case "hours" -> JobColumns.isTime(column);
      case "names" -> JobColumns.isName(column);
      case "fixed" -> !column.equals(JobColumns.JOB);
      default -> true;
    };
  }

  private List<PlacedText> headings(Fields of, String column) {
    return texts(of.node(column), of.where(column));
  }

  /** One text, or a list of them. */
  private List<PlacedText> texts(Optional<Node> node, Where where) {
    List<PlacedText> texts = new ArrayList<>();
    List<Node> all =
        node.map(n -> n instanceof Row row ? row.items() : List.of(n)).orElse(List.of());
    for (Node one : all) {
      if (one instanceof Leaf leaf) {
        Values.code(leaf, LONGEST, source)
            .ifPresent(text -> texts.add(new PlacedText(text, leaf.where())));
      } else {
        Values.wrongType(one, "a text or a list of texts", "write it in quotes", source);
      }
    }
    if (all.isEmpty() && node.isPresent()) {
      source.error(
          "no-value", where, "the list is empty", "write at least one, or delete the line");
    }
    return texts;
  }

  private Optional<String> text(Fields of, String column) {
    return of.leaf(column).flatMap(leaf -> Values.code(leaf, LONGEST, source));
  }

  private Optional<String> hour(Fields of, String column) {
    Optional<String> hour = text(of, column);
    if (hour.isPresent() && !HOUR.matcher(hour.get()).matches()) {
      source.error(
          "bad-hour",
          of.where(column),
          column + " is no hour of the day: " + Source.shown(hour.get()),
          "write hour and minute in quotes, such as \"17:00\"");
      return Optional.empty();
    }
    return hour;
  }

  private Map<String, List<String>> names(Fields of, String column) {
    Map<String, List<String>> names = new LinkedHashMap<>();
    of.node(column)
        .flatMap(node -> Fields.anyKeys(node, source))
        .ifPresent(
            inner -> {
              for (String theirs : inner.keys()) {
                List<String> ours =
                    texts(inner.node(theirs), inner.where(theirs)).stream()
                        .map(PlacedText::text)
                        .toList();
                several(ours, column, inner.where(theirs));
                twice(names.put(ImportMap.key(theirs), ours), theirs, inner.where(theirs));
              }
            });
    return names;
  }

  private void several(List<String> ours, String column, Where where) {
    if (ours.size() > 1 && !JobColumns.isList(column)) {
      source.error(
          "several-names", where, column + " takes one name, not several", "keep one of them");
    }
  }

  private void twice(List<String> before, String theirs, Where where) {
    if (before != null) {
      source.error(
          "duplicate-key",
          where,
          "the name " + Source.shown(theirs) + " stands here twice",
          "keep one of the two; capitals and accents make no difference");
    }
  }

  private void lacking(Fields f, ImportMap map) {
    for (String column : map.lacking()) {
      boolean isJob = column.equals(JobColumns.JOB);
      source.error(
          LACKING,
          f.where("columns"),
          "nothing tells " + column,
          "write under columns which heading has it"
              + (isJob ? "" : ", or under fixed what it always is"));
    }
  }
}
