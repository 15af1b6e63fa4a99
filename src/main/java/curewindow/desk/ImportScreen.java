package curewindow.desk;

import curewindow.intake.ForeignTable;
import curewindow.intake.GuessedMap;
import curewindow.intake.Intake;
import curewindow.intake.IntakePlan;
import curewindow.intake.MapText;
import curewindow.intake.TableGlance;
import curewindow.problem.Problems;
import curewindow.shop.ImportMap;
import curewindow.shop.ImportMaps;
import curewindow.site.LoadedShop;
import curewindow.words.Words;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Takes jobs from the table of another program: the table, how it is read, what becomes of each
 * row. Each form carries the table along, so nothing is kept between them but the map.
 */
final class ImportScreen {

  /** Where a table is given. */
  record Start(
      Frame frame, List<String> maps, List<ImportTold.Told> problems, String rows, int most) {}

  /**
   * Where it is told how the table is read.
   *
   * @param map the name that the map gets
   * @param draft which map it was before, and how its file stood
   * @param notice a sentence above the form
   * @param looks what was guessed
   */
  record Mapping(
      Frame frame,
      SentTable table,
      String map,
      ImportMapFile.Draft draft,
      Optional<String> notice,
      List<ImportTold.Told> problems,
      List<String> looks,
      ImportFields.Fields fields) {}

  /**
   * What becomes of each row.
   *
   * @param go what the button says; empty where there is nothing to import
   * @param done whether it was imported
   */
  record Preview(
      Frame frame,
      SentTable table,
      String map,
      List<ImportTold.Told> stops,
      List<String> notes,
      ImportRows.Rows rows,
      Optional<String> go,
      boolean done) {}

  /** A form that was sent, with the table in it. */
  private record Sent(
      Request.Values form, SentTable sent, ForeignTable table, Frame frame, Words words) {

    ImportTold told() {
      return new ImportTold(table.name(), words);
    }
  }

  private static final int MOST_LOOKS = 20;

  private final DeskShop desk;
  private final DeskPages pages;
  private final Path folder;
  private final Clock clock;

  ImportScreen(DeskShop desk, DeskPages pages, Path folder, Clock clock) {
    this.desk = desk;
    this.pages = pages;
    this.folder = folder;
    this.clock = clock;
  }

  Answer show(Request request, Frame frame, Words words) {
    return request.isPost()
        ? sent(request.form(), frame, words)
        : start(frame, List.of(), "", words);
  }

  private Answer start(Frame frame, List<ImportTold.Told> problems, String rows, Words words) {
    Start view = new Start(frame, Intake.maps(folder), problems, rows, SentTable.MOST);
    return Answer.html(problems.isEmpty() ? 200 : 422, pages.html("import", view, words));
  }

  private Answer sent(Request.Values form, Frame frame, Words words) {
    Optional<SentTable> sent = SentTable.of(form);
    String rows = form.list("rows").stream().findFirst().orElse("");
    if (form.one("do").equals("begin")) {
      return start(frame, List.of(), rows, words);
    }
    if (sent.isEmpty() || sent.get().isTooLarge()) {
      String key = sent.isEmpty() ? "desk.import.nothing" : "desk.import.too-large";
      return start(frame, List.of(new ImportTold.Told("", words.text(key), "")), rows, words);
    }
    Problems problems = new Problems();
    Optional<ForeignTable> table = sent.get().read(problems);
    return table.isEmpty()
        ? start(frame, new ImportTold(sent.get().name(), words).all(problems.all()), rows, words)
        : step(new Sent(form, sent.get(), table.get(), frame, words));
  }

  private Answer step(Sent sent) {
    String map = sent.form().one("map");
    String wanted = sent.form().one("do");
    if (wanted.equals("keep") || wanted.equals("names")) {
      return mapped(sent, wanted.equals("keep"));
    }
    if (!ImportMaps.isName(map) || !Intake.hasMap(folder, map)) {
      return first(sent);
    }
    return switch (wanted) {
      case "change" -> change(sent, map);
      case "take" -> take(sent, map);
      case "rest" -> rest(sent, map);
      default -> preview(sent, map);
    };
  }

  private Answer first(Sent sent) {
    String name = ImportMapFile.free(folder, ImportMaps.nameFor(sent.sent().name()));
    GuessedMap guess = Intake.guess(sent.table(), name, desk.now().shop());
    ProblemWords told = ProblemWords.ofRows(sent.words());
    List<String> looks = guess.looks().stream().limit(MOST_LOOKS).map(told::told).toList();
    return mapping(
        sent,
        name,
        new Asked(guessed(guess), ImportMapFile.Draft.NEW, Optional.empty(), List.of(), looks));
  }

  private static ImportMap guessed(GuessedMap guess) {
    return ImportMaps.unfinished(guess.name(), guess.text())
        .orElseGet(() -> ImportForm.empty(guess.file()));
  }

  private Answer change(Sent sent, String name) {
    ImportMapFile file = ImportMapFile.of(folder, name);
    ImportMap map =
        file.map().orElseGet(() -> guessed(Intake.guess(sent.table(), name, desk.now().shop())));
    boolean here = file.isOurs();
    Optional<String> notice =
        here
            ? Optional.empty()
            : Optional.of(sent.words().text("desk.import.own-notes", Map.of("map", name)));
    return mapping(
        sent,
        here ? name : ImportMapFile.free(folder, name),
        new Asked(map, file.draft(), notice, List.of(), List.of()));
  }

  /** What the form of a map shows. */
  private record Asked(
      ImportMap map,
      ImportMapFile.Draft draft,
      Optional<String> notice,
      List<ImportTold.Told> problems,
      List<String> looks) {}

  private Answer mapping(Sent sent, String name, Asked asked) {
    ImportFields fields =
        new ImportFields(desk.now().shop(), glance(sent), asked.map(), sent.words());
    Mapping view =
        new Mapping(
            sent.frame(),
            sent.sent(),
            name,
            asked.draft(),
            asked.notice(),
            asked.problems(),
            asked.looks(),
            fields.all());
    return Answer.html(
        asked.problems().isEmpty() ? 200 : 422, pages.html("import-map", view, sent.words()));
  }

  private TableGlance glance(Sent sent) {
    return new TableGlance(sent.table(), desk.now().shop().read().catalogue());
  }

  /** The form of a map was sent: it is kept where it is right, and all names were asked for. */
  private Answer mapped(Sent sent, boolean wanted) {
    ImportMapFile.Draft draft = ImportMapFile.Draft.of(sent.form());
    String typed = sent.form().one("map");
    String name = ImportMaps.isName(typed) ? typed : ImportMaps.nameFor(typed + ".csv");
    ImportMap before = draft.map(folder).orElseGet(() -> ImportForm.empty(ImportMaps.file(name)));
    ImportForm form = new ImportForm(sent.form(), glance(sent), before);
    ImportMap spelled = form.map();
    // As it is read again: the names of a map are found by what capitals do not change.
    ImportMap map = ImportMaps.unfinished(name, MapText.of(spelled)).orElse(spelled);
    LoadedShop shop = desk.now().shop();
    boolean untold =
        new ImportFields(shop, glance(sent), map, sent.words())
            .untold()
            .anyMatch(column -> !form.wasAsked(column));
    if (!wanted || untold) {
      Optional<String> notice =
          untold ? Optional.of(sent.words().text("desk.import.new-names")) : Optional.empty();
      return mapping(sent, name, new Asked(map, draft, notice, List.of(), List.of()));
    }
    List<ImportTold.Told> problems = kept(sent, name, spelled, draft);
    return problems.isEmpty()
        ? preview(sent, name)
        : mapping(sent, name, new Asked(map, draft, Optional.empty(), problems, List.of()));
  }

  private List<ImportTold.Told> kept(
      Sent sent, String name, ImportMap map, ImportMapFile.Draft draft) {
    Words words = sent.words();
    Problems problems = new Problems();
    boolean kept;
    try {
      kept = ImportMapFile.keep(folder, name, map, draft, problems);
    } catch (IOException e) {
      return notWritten(e, words);
    }
    return kept || problems.hasErrors()
        ? sent.told().ofMap(problems.all(), map)
        : List.of(
            new ImportTold.Told(
                ImportMaps.file(name),
                words.text("desk.import.taken"),
                words.text("desk.import.taken-do")));
  }

  private static List<ImportTold.Told> notWritten(IOException e, Words words) {
    return ProblemWords.told(e, words).stream()
        .map(line -> new ImportTold.Told("", line, ""))
        .toList();
  }

  private Answer preview(Sent sent, String map) {
    return preview(sent, map, Outcome.of(plan(sent, map), sent.told()));
  }

  /** What would become of the rows in the shop as the desk has it in memory. */
  private IntakePlan plan(Sent sent, String map) {
    return Intake.plan(sent.table(), map, desk.now().shop());
  }

  /** What becomes of the rows, or became of them, and why it did not. */
  private record Outcome(IntakePlan plan, boolean done, List<ImportTold.Told> failed) {

    static Outcome of(IntakePlan plan, ImportTold told) {
      return new Outcome(plan, false, told.all(plan.stops()));
    }
  }

  private Answer preview(Sent sent, String map, Outcome outcome) {
    Words words = sent.words();
    IntakePlan plan = outcome.plan();
    int jobs = plan.jobs().size();
    Optional<String> go =
        outcome.done() || jobs == 0
            ? Optional.empty()
            : Optional.of(words.text("desk.import.go", Map.of("n", jobs)));
    Preview view =
        new Preview(
            sent.frame(),
            sent.sent(),
            map,
            outcome.failed(),
            plan.notes().stream().map(ProblemWords.ofRows(words)::told).toList(),
            ImportRows.of(plan, outcome.done(), sent.told(), desk.now().shop(), words),
            go,
            outcome.done());
    return Answer.html(
        outcome.failed().isEmpty() ? 200 : 422, pages.html("import-rows", view, words));
  }

  private Answer take(Sent sent, String map) {
    try {
      IntakePlan done = desk.write(shop -> Intake.carryOut(sent.table(), map, folder, clock));
      return preview(sent, map, new Outcome(done, true, sent.told().all(done.stops())));
    } catch (IOException e) {
      // Somebody else is at work; what was sent is still there to be sent again.
      return preview(sent, map, new Outcome(plan(sent, map), false, notWritten(e, sent.words())));
    }
  }

  /** The rows that are left over, of which those that were imported are none. */
  private Answer rest(Sent sent, String map) {
    IntakePlan plan = plan(sent, map);
    String name =
        URLEncoder.encode(Intake.restName(sent.sent().name()), StandardCharsets.UTF_8)
            .replace("+", "%20");
    return plan.rest(sent.told()::text)
        .map(
            bytes ->
                Answer.of("text/csv", bytes)
                    .with("Content-Disposition", "attachment; filename*=UTF-8''" + name))
        .orElseGet(() -> preview(sent, map, Outcome.of(plan, sent.told())));
  }
}
