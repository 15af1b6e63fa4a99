package curewindow.desk;

import curewindow.desk.CallsPicture.Axis;
import curewindow.desk.CallsPicture.Mark;
import curewindow.desk.CallsPicture.Part;
import curewindow.site.CallNote;
import curewindow.site.CallReport;
import curewindow.site.CallReport.Change;
import curewindow.site.CallReport.Compared;
import curewindow.site.CallReport.Group;
import curewindow.site.CallReport.Held;
import curewindow.site.CallReport.Placed;
import curewindow.site.CallReportWords;
import curewindow.tally.Rate;
import curewindow.tally.RateRatio;
import curewindow.tally.Share;
import curewindow.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The numbers of a report of calls as tables, each row with its own part of a picture. */
final class CallsTables {

  /** All calls before a change; it is compared with what comes after. */
  private static final int BEFORE = 100;

  /** A ratio is shown at least up to twice as often. */
  private static final int TWICE = 2 * BEFORE;

  /**
   * A table.
   *
   * @param tells whether something is said of a row beside its numbers
   * @param axis the line that the picture of each row follows; empty where nothing is drawn
   */
  record Table(
      String id,
      String title,
      String note,
      List<String> heads,
      boolean tells,
      Optional<Axis> axis,
      List<Row> rows) {}

  /**
   * A row.
   *
   * @param told what can be said of it, where that is more than its numbers
   * @param mark its number with the interval; empty where it is too little to tell
   * @param parts the parts of its bar, where it has one
   */
  record Row(String label, List<Cell> cells, String told, Optional<Mark> mark, List<Part> parts) {}

  /** A number with what it is. */
  record Cell(String head, String text) {}

  private final Words words;
  private final CallReportWords said;

  CallsTables(Words words) {
    this.words = words;
    this.said = new CallReportWords(words, words::date);
  }

  /** All tables that have something in them. */
  List<Table> of(CallReport report) {
    List<Table> tables = new ArrayList<>();
    if (report.basis().all().of() > 0) {
      tables.add(groups("services", report.services(), g -> known("service." + g.id(), g.label())));
      tables.add(groups("questions", report.questions(), g -> question(g.id(), g.label())));
      tables.add(groups("days", report.days(), g -> text("day." + g.id())));
      tables.add(holds(report.pages().holds()));
      tables.add(places(report.pages().places(), report.basis().all().isEnough()));
    }
    report.change().ifPresent(change -> tables.add(change(change)));
    return tables.stream().filter(t -> !t.rows().isEmpty()).toList();
  }

  private String text(String key) {
    return said.text(key);
  }

  private String question(String id, String label) {
    return id.equals(CallNote.OTHER) ? text("other") : label;
  }

  /** What the shop took out of its catalogue has no text any more. */
  private String known(String key, String id) {
    return words.has(key) ? words.text(key) : id;
  }

  private Table groups(String id, List<Group> groups, Function<Group, String> label) {
    List<String> heads = List.of(text("calls"), text("per-100"), text("likely"));
    CallsPicture picture =
        CallsPicture.upTo(
            most(groups.stream().map(Group::rate).filter(Rate::isEnough), Rate::high));
    List<Row> rows = new ArrayList<>();
    for (Group group : groups) {
      Rate rate = group.rate();
      String of = of(rate.events(), rate.of());
      rows.add(
          rate.isEnough()
              ? row(
                  label.apply(group),
                  cells(heads, of, number(rate.per100()), said.range(rate.low(), rate.high())),
                  picture.mark(
                      OptionalInt.of(rate.per100()), rate.low(), OptionalInt.of(rate.high())))
              : tooFew(label.apply(group), cells(heads, of)));
    }
    return table(id, heads, picture.axis(OptionalInt.empty()), rows);
  }

  private Table holds(List<Held> holds) {
    List<String> heads = List.of(text("calls"), text("of-100"), text("likely"));
    CallsPicture picture =
        CallsPicture.upTo(
            most(holds.stream().map(Held::share).filter(Share::isEnough), Share::high));
    List<Row> rows = new ArrayList<>();
    for (Held held : holds) {
      Share share = held.share();
      String label = known("hold." + held.id() + ".label", held.label());
      String of = of(share.part(), share.of());
      rows.add(
          share.isEnough()
              ? row(
                  label,
                  cells(heads, of, number(share.of100()), said.range(share.low(), share.high())),
                  picture.mark(
                      OptionalInt.of(share.of100()), share.low(), OptionalInt.of(share.high())))
              : tooFew(label, cells(heads, of)));
    }
    return table("holds", heads, picture.axis(OptionalInt.empty()), rows);
  }

  /** How many see a question at a glance, as bars; of few cars in all nothing is drawn. */
  private Table places(List<Placed> places, boolean enough) {
    List<String> heads = List.of(text("place"), text("glance"), text("folded"), text("off"));
    CallsPicture picture = CallsPicture.upTo(most(places.stream(), p -> p.atAGlance() + p.low()));
    List<Row> rows = new ArrayList<>();
    for (Placed placed : places) {
      List<Cell> cells =
          cells(
              heads,
              placed.place().isPresent() ? number(placed.place().getAsInt()) : "-",
              number(placed.atAGlance()),
              number(placed.folded()),
              number(placed.off()));
      List<Part> parts =
          List.of(
              picture.part("glance", 0, placed.atAGlance()),
              picture.part("folded", placed.atAGlance(), placed.folded()),
              picture.part("off", placed.atAGlance() + placed.folded(), placed.off()));
      String told = enough ? placed.isTooLow() ? text("too-low") : "" : text("too-few");
      rows.add(new Row(placed.label(), cells, told, Optional.empty(), enough ? parts : List.of()));
    }
    return table("places", heads, picture.axis(OptionalInt.empty()), rows);
  }

  private Table change(Change change) {
    List<String> heads = List.of(text("before"), text("after"), text("each-100"), text("likely"));
    List<RateRatio> told =
        change.compared().stream().map(Compared::ratio).filter(CallsTables::isTold).toList();
    CallsPicture picture = CallsPicture.upTo(Math.max(TWICE, most(told.stream(), this::inView)));
    List<Row> rows = new ArrayList<>();
    for (Compared compared : change.compared()) {
      RateRatio ratio = compared.ratio();
      String label = compared.id().isEmpty() ? text("all-calls") : question(compared);
      String before = of(ratio.before().events(), ratio.before().of());
      String after = of(ratio.after().events(), ratio.after().of());
      rows.add(
          isTold(ratio)
              ? compared(
                  label,
                  cells(heads, before, after, percent(ratio), said.range(ratio)),
                  ratio,
                  picture)
              : tooFew(label, cells(heads, before, after)));
    }
    return table("change", heads, picture.axis(OptionalInt.of(BEFORE)), rows);
  }

  private String question(Compared compared) {
    return question(compared.id(), compared.label());
  }

  private static boolean isTold(RateRatio ratio) {
    return ratio.verdict() != RateRatio.Verdict.TOO_FEW;
  }

  /** An interval may be so long that nothing else could be seen beside it. */
  private int inView(RateRatio ratio) {
    return Math.max(ratio.percent().orElse(0), Math.min(2 * TWICE, ratio.high().orElse(0)));
  }

  private Row compared(String label, List<Cell> cells, RateRatio ratio, CallsPicture picture) {
    Mark mark = picture.mark(ratio.percent(), ratio.low().orElse(0), ratio.high());
    String told = this.said.said(ratio.verdict());
    return new Row(label, cells, told, Optional.of(mark), List.of());
  }

  private String percent(RateRatio ratio) {
    return ratio.percent().isPresent() ? number(ratio.percent().getAsInt()) : "-";
  }

  private String of(int part, int all) {
    return said.of(part, all);
  }

  private String number(int number) {
    return said.number(number);
  }

  private static <T> int most(Stream<T> all, ToIntFunction<T> number) {
    return all.mapToInt(number).max().orElse(0);
  }

  private static List<Cell> cells(List<String> heads, String... texts) {
    return IntStream.range(0, heads.size())
        .mapToObj(i -> new Cell(heads.get(i), i < texts.length ? texts[i] : ""))
        .toList();
  }

  private static Row row(String label, List<Cell> cells, Mark mark) {
    return new Row(label, cells, "", Optional.of(mark), List.of());
  }

  private Row tooFew(String label, List<Cell> cells) {
    return new Row(label, cells, text("too-few"), Optional.empty(), List.of());
  }

  /** Without anything drawn there is no line to draw it on. */
  private Table table(String id, List<String> heads, Axis axis, List<Row> rows) {
    boolean drawn = rows.stream().anyMatch(r -> r.mark().isPresent() || !r.parts().isEmpty());
    return new Table(
        id,
        text("table." + id),
        text("about." + id),
        heads,
        rows.stream().anyMatch(r -> !r.told().isEmpty()),
        drawn ? Optional.of(axis) : Optional.empty(),
        rows);
  }
}
