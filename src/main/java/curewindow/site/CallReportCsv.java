package curewindow.site;

import curewindow.site.CallReport.Change;
import curewindow.site.CallReport.Compared;
import curewindow.site.CallReport.Group;
import curewindow.site.CallReport.Held;
import curewindow.site.CallReport.LeftOut;
import curewindow.site.CallReport.Placed;
import curewindow.tally.Rate;
import curewindow.tally.RateRatio;
import curewindow.tally.Share;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.StringWriter;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;

/** A report of calls as comma-separated values, one row a number with what belongs to it. */
public final class CallReportCsv {

  private static final List<String> HEADER =
      List.of(
          "table",
          "id",
          "label",
          "from",
          "to",
          "handovers",
          "calls",
          "of-calls",
          "per-100",
          "low",
          "high",
          "at-a-glance",
          "folded",
          "not-there",
          "place",
          "told");
  private static final String TOO_FEW = RateRatio.Verdict.TOO_FEW.id();

  private final CsvWriter csv;

  private CallReportCsv(CsvWriter csv) {
    this.csv = csv;
  }

  /**
   * The report as rows, described in {@code docs/formats.md}.
   *
   * @param report the report
   * @return a header and the rows, each ended by a line feed
   */
  public static String of(CallReport report) {
    StringWriter text = new StringWriter();
    // Without a buffer there is nothing to close.
    CallReportCsv rows =
        new CallReportCsv(
            CsvWriter.builder().bufferSize(0).lineDelimiter(LineDelimiter.LF).build(text));
    rows.csv.writeRecord(HEADER);
    rows.basis(report.basis());
    rows.groups("service", report.services());
    rows.groups("question", report.questions());
    rows.groups("days", report.days());
    report.pages().holds().forEach(rows::held);
    boolean enough = report.basis().all().isEnough();
    report.pages().places().forEach(placed -> rows.placed(placed, enough));
    report.change().ifPresent(rows::change);
    return text.toString();
  }

  private void basis(CallReport.Basis basis) {
    Map<String, String> all = rate("all", "", "", basis.all());
    span(all, basis.from(), basis.to());
    write(all);
    LeftOut left = basis.leftOut();
    leftOut("gone", left.gone());
    leftOut("not-handed-over", left.notHandedOver());
    leftOut("earlier", left.earlier());
    leftOut("before-pickup", left.beforePickup());
  }

  private void leftOut(String why, int calls) {
    Map<String, String> row = row("left-out", why, "");
    row.put("calls", String.valueOf(calls));
    write(row);
  }

  private void groups(String table, List<Group> groups) {
    groups.forEach(group -> write(rate(table, group.id(), group.label(), group.rate())));
  }

  private void held(Held held) {
    Share share = held.share();
    Map<String, String> row = row("hold", held.id(), held.label());
    row.put("calls", String.valueOf(share.part()));
    row.put("of-calls", String.valueOf(share.of()));
    row.put("told", share.isEnough() ? "" : TOO_FEW);
    if (share.isEnough()) {
      row.put("per-100", String.valueOf(share.of100()));
      row.put("low", String.valueOf(share.low()));
      row.put("high", String.valueOf(share.high()));
    }
    write(row);
  }

  private void placed(Placed placed, boolean enough) {
    Map<String, String> row = row("page", placed.id(), placed.label());
    row.put("at-a-glance", String.valueOf(placed.atAGlance()));
    row.put("folded", String.valueOf(placed.folded()));
    row.put("not-there", String.valueOf(placed.off()));
    row.put("place", number(placed.place()));
    row.put("told", !enough ? TOO_FEW : placed.isTooLow() ? "too-low" : "");
    write(row);
  }

  private void change(Change change) {
    if (change.days() == 0) {
      Map<String, String> row = row("change", "", "");
      row.put("from", change.day().toString());
      row.put("told", TOO_FEW);
      write(row);
    }
    change.compared().forEach(compared -> compared(change, compared));
  }

  private void compared(Change change, Compared compared) {
    RateRatio ratio = compared.ratio();
    Map<String, String> before = rate("before", compared.id(), compared.label(), ratio.before());
    span(before, change.beforeFrom(), change.beforeTo());
    write(before);
    Map<String, String> after = rate("after", compared.id(), compared.label(), ratio.after());
    span(after, change.day(), change.afterTo());
    write(after);
    Map<String, String> row = row("change", compared.id(), compared.label());
    row.put("from", change.day().toString());
    row.put("told", ratio.verdict().id());
    if (ratio.verdict() != RateRatio.Verdict.TOO_FEW) {
      row.put("per-100", number(ratio.percent()));
      row.put("low", number(ratio.low()));
      row.put("high", number(ratio.high()));
    }
    write(row);
  }

  private static Map<String, String> rate(String table, String id, String label, Rate rate) {
    Map<String, String> row = row(table, id, label);
    row.put("handovers", String.valueOf(rate.of()));
    row.put("calls", String.valueOf(rate.events()));
    if (rate.isEnough()) {
      row.put("per-100", String.valueOf(rate.per100()));
      row.put("low", String.valueOf(rate.low()));
      row.put("high", String.valueOf(rate.high()));
    } else {
      row.put("told", TOO_FEW);
    }
    return row;
  }

  private static Map<String, String> row(String table, String id, String label) {
    return new TreeMap<>(Map.of("table", table, "id", id, "label", label));
  }

  private static void span(Map<String, String> row, LocalDate from, LocalDate to) {
    row.put("from", from.toString());
    row.put("to", to.toString());
  }

  private static String number(OptionalInt number) {
    return number.isPresent() ? String.valueOf(number.getAsInt()) : "";
  }

  private void write(Map<String, String> row) {
    csv.writeRecord(HEADER.stream().map(name -> row.getOrDefault(name, "")).toList());
  }
}
