package curewindow.site;

import curewindow.site.CallReport.Change;
import curewindow.site.CallReport.Compared;
import curewindow.site.CallReport.Group;
import curewindow.site.CallReport.Held;
import curewindow.site.CallReport.Placed;
import curewindow.tally.Rate;
import curewindow.tally.RateRatio;
import curewindow.tally.Share;
import curewindow.words.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** A report of calls in plain text, with the words of the desk. */
public final class CallReportText {

  /** As wide as most terminals show, characters. */
  private static final int WIDTH = 100;

  private final StringBuilder text = new StringBuilder();
  private final CallReportWords words;

  private CallReportText(CallReportWords words) {
    this.words = words;
  }

  /**
   * The report as aligned text.
   *
   * @param report the report
   * @param words the language
   * @return lines, each ended by a line feed
   */
  public static String of(CallReport report, Words words) {
    CallReportText made = new CallReportText(new CallReportWords(words, LocalDate::toString));
    made.basis(report);
    if (report.basis().all().of() > 0) {
      made.groups("services", report.services());
      made.groups("questions", report.questions());
      made.groups("days", report.days());
      if (report.pages().calls() > 0) {
        made.text.append('\n');
        made.said(made.words.pages(report.pages()));
        made.holds(report.pages().holds());
        made.places(report.basis().all(), report.pages().places());
      }
    }
    report.change().ifPresent(made::change);
    return made.text.toString();
  }

  private void basis(CallReport report) {
    words.basis(report).forEach(this::said);
    if (report.basis().all().isEnough()) {
      said(words.text("sure-range"));
    }
    words.leftOut(report.basis().leftOut()).forEach(this::said);
  }

  private List<String> heads(String... keys) {
    List<String> heads = new ArrayList<>(List.of(""));
    List.of(keys).forEach(key -> heads.add(words.text(key)));
    heads.add("");
    return heads;
  }

  private void groups(String id, List<Group> groups) {
    List<List<String>> rows = new ArrayList<>(List.of(heads("calls", "per-100", "likely")));
    for (Group group : groups) {
      Rate rate = group.rate();
      rows.add(
          List.of(
              group.id(),
              words.of(rate.events(), rate.of()),
              rate.isEnough() ? words.number(rate.per100()) : "",
              rate.isEnough() ? words.range(rate.low(), rate.high()) : words.text("too-few"),
              label(id, group)));
    }
    table(id, rows);
  }

  private String label(String table, Group group) {
    if (table.equals("days")) {
      return words.text("day." + group.id());
    }
    return group.id().equals(CallNote.OTHER) ? words.text("other") : group.label();
  }

  private void holds(List<Held> holds) {
    List<List<String>> rows = new ArrayList<>(List.of(heads("calls", "of-100", "likely")));
    for (Held held : holds) {
      Share share = held.share();
      rows.add(
          List.of(
              held.id(),
              words.of(share.part(), share.of()),
              share.isEnough() ? words.number(share.of100()) : "",
              share.isEnough() ? words.range(share.low(), share.high()) : words.text("too-few"),
              held.label()));
    }
    table("holds", rows);
  }

  private void places(Rate all, List<Placed> places) {
    List<List<String>> rows = new ArrayList<>(List.of(heads("place", "glance", "folded", "off")));
    for (Placed placed : places) {
      String told =
          all.isEnough() ? placed.isTooLow() ? words.text("too-low") : "" : words.text("too-few");
      rows.add(
          List.of(
              placed.id(),
              number(placed.place()),
              words.number(placed.atAGlance()),
              words.number(placed.folded()),
              words.number(placed.off()),
              (told.isEmpty() ? "" : told + "  ") + placed.label()));
    }
    table("places", rows);
  }

  private void change(Change change) {
    text.append('\n');
    line(words.text("table.change"));
    said(words.change(change));
    if (change.days() > 0) {
      List<List<String>> rows = new ArrayList<>();
      rows.add(heads("before", "after", "each-100", "likely"));
      change.compared().forEach(c -> rows.add(row(c)));
      rows(rows);
    }
  }

  private List<String> row(Compared compared) {
    RateRatio ratio = compared.ratio();
    boolean known = ratio.verdict() != RateRatio.Verdict.TOO_FEW;
    return List.of(
        compared.id().isEmpty() ? words.text("all-calls") : compared.id(),
        words.of(ratio.before().events(), ratio.before().of()),
        words.of(ratio.after().events(), ratio.after().of()),
        known ? number(ratio.percent()) : "",
        known ? words.range(ratio) : words.text("too-few"),
        known ? words.said(ratio.verdict()) + "  " + compared.label() : compared.label());
  }

  private String number(OptionalInt number) {
    return number.isPresent() ? words.number(number.getAsInt()) : "-";
  }

  private void table(String id, List<List<String>> rows) {
    if (rows.size() > 1) {
      text.append('\n');
      line(words.text("table." + id));
      said(words.text("about." + id));
      rows(rows);
    }
  }

  /** Names to the left, numbers to the right, and what is of any length last. */
  private void rows(List<List<String>> rows) {
    for (List<String> row : rows) {
      List<String> cells = new ArrayList<>();
      for (int i = 0; i < row.size(); i++) {
        int column = i;
        int width = rows.stream().mapToInt(r -> letters(r.get(column))).max().orElse(0);
        String blank = " ".repeat(width - letters(row.get(i)));
        boolean left = i == 0 || i == row.size() - 1;
        cells.add(left ? row.get(i) + blank : blank + row.get(i));
      }
      line("  " + cells.stream().collect(Collectors.joining("  ")));
    }
  }

  private static int letters(String cell) {
    return cell.codePointCount(0, cell.length());
  }

  private void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }

  /** Sentences, broken where a terminal ends. */
  private void said(String sentences) {
    StringBuilder line = new StringBuilder();
    for (String word : sentences.split(" ")) {
      if (line.length() > 0 && letters(line.toString()) + letters(word) >= WIDTH) {
        line(line.toString());
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : " ").append(word);
    }
    line(line.toString());
  }
}
