package curewindow.desk;

import curewindow.desk.FormFields.Choice;
import curewindow.intake.TableGlance;
import curewindow.shop.DateOrder;
import curewindow.shop.ImportMap;
import curewindow.shop.JobColumns;
import curewindow.shop.PlacedText;
import curewindow.site.LoadedShop;
import curewindow.words.Words;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The fields in which a person tells how a table is read. */
final class ImportFields {

  private static final List<String> ALWAYS_OFFERED =
      List.of(
          "language",
          "place",
          "body",
          "paint",
          "paint-finish",
          "parking-day",
          "parking-night",
          "service",
          "film",
          "spots",
          "warranty-years");

  /** A heading of theirs, and which column of ours it fills. */
  record Heading(String text, String sample, List<Choice> columns) {}

  /** The names in a column. */
  record Names(String column, String label, boolean several, boolean typed, List<Name> all) {}

  /** A name of theirs, and what it is called here. */
  record Name(String field, String theirs, String told, List<Choice> ours) {}

  /** What stands in a column where the table says nothing; without choices it is typed. */
  record Fixed(String field, String label, String told, boolean typed, List<Choice> ours) {}

  /** At which hour it was where a time has a day alone. */
  record Hour(String field, String label, String told) {}

  /** All fields. */
  record Fields(
      List<Heading> headings,
      List<Choice> dates,
      List<Hour> hours,
      String between,
      List<Fixed> fixed,
      List<Names> names,
      List<Choice> places) {}

  private final TableGlance table;
  private final ImportMap map;
  private final Words words;
  private final OurWords ours;

  ImportFields(LoadedShop shop, TableGlance table, ImportMap map, Words words) {
    this.table = table;
    this.map = map;
    this.words = words;
    this.ours = new OurWords(shop, words);
  }

  Fields all() {
    return new Fields(
        table.headings().stream().map(this::heading).toList(),
        dates(),
        JobColumns.all().stream().filter(JobColumns::isTime).map(this::hour).toList(),
        map.between().orElse(""),
        fixed(),
        names(),
        ours.choices("place", List.of()));
  }

  private Heading heading(TableGlance.Heading heading) {
    List<Choice> columns = new ArrayList<>();
    for (String column : JobColumns.all()) {
      boolean chosen =
          map.columns().getOrDefault(column, List.of()).stream()
              .map(PlacedText::text)
              .anyMatch(t -> ImportMap.key(t).equals(ImportMap.key(heading.text())));
      columns.add(new Choice(column, ours.column(column), chosen));
    }
    return new Heading(heading.text(), heading.sample(), columns);
  }

  private List<Choice> dates() {
    return Arrays.stream(DateOrder.values())
        .map(
            o ->
                new Choice(
                    o.id(),
                    words.text("desk.import.dates." + o.id()),
                    map.dates().equals(Optional.of(o))))
        .toList();
  }

  private Hour hour(String column) {
    return new Hour("hour." + column, ours.column(column), map.hours().getOrDefault(column, ""));
  }

  private List<Fixed> fixed() {
    return JobColumns.all().stream()
        .filter(c -> ALWAYS_OFFERED.contains(c) || map.fixed().containsKey(c))
        .map(this::fixed)
        .toList();
  }

  private Fixed fixed(String column) {
    String told = map.fixed().getOrDefault(column, "");
    List<String> chosen = told.isEmpty() ? List.of() : List.of(told);
    boolean typed = OurWords.isTyped(column) || !JobColumns.isName(column);
    return new Fixed(
        "fixed." + column,
        ours.column(column),
        told,
        typed,
        typed ? List.of() : ours.choices(column, chosen));
  }

  private List<Names> names() {
    return JobColumns.all().stream()
        .filter(c -> JobColumns.isName(c) && map.columns().containsKey(c))
        .map(this::names)
        .filter(n -> !n.all().isEmpty())
        .toList();
  }

  private Names names(String column) {
    List<String> theirs = theirs(column);
    List<Name> all = new ArrayList<>();
    for (int i = 0; i < theirs.size(); i++) {
      List<String> told = told(column, theirs.get(i));
      all.add(
          new Name(
              "ours." + column + "." + i,
              theirs.get(i),
              String.join(" ", told),
              OurWords.isTyped(column) ? List.of() : ours.choices(column, told)));
    }
    return new Names(
        column, ours.column(column), JobColumns.isList(column), OurWords.isTyped(column), all);
  }

  private List<String> theirs(String column) {
    return table.names(
        column, map, List.of("place", "language").contains(column) ? ours.ids(column) : List.of());
  }

  private List<String> told(String column, String theirs) {
    Map<String, List<String>> names = map.names().getOrDefault(column, Map.of());
    return names.entrySet().stream()
        .filter(e -> ImportMap.key(e.getKey()).equals(ImportMap.key(theirs)))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse(List.of());
  }

  /** The columns whose names nobody has told yet. */
  Stream<String> untold() {
    return names().stream()
        .filter(n -> n.all().stream().anyMatch(name -> name.told().isEmpty()))
        .map(Names::column);
  }
}
