package curewindow.site;

import curewindow.site.CallReport.Basis;
import curewindow.site.CallReport.Change;
import curewindow.site.CallReport.Compared;
import curewindow.site.CallReport.Group;
import curewindow.site.CallReport.Held;
import curewindow.site.CallReport.LeftOut;
import curewindow.site.CallReport.Pages;
import curewindow.site.CallReport.Placed;
import curewindow.tally.Rate;
import curewindow.tally.RateRatio;
import curewindow.tally.Share;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** A report of calls in plain text. */
public final class CallReportText {

  private static final String TOO_FEW = "too few to tell";

  private final StringBuilder text = new StringBuilder();

  private CallReportText() {}

  /**
   * The report as aligned text.
   *
   * @param report the report
   * @return lines in English, each ended by a line feed
   */
  public static String of(CallReport report) {
    CallReportText made = new CallReportText();
    made.basis(report.basis());
    if (report.basis().all().of() > 0) {
      made.groups("By service; a car with several counts in each", report.services());
      made.groups("By question", report.questions());
      made.groups("By days since pickup; only cars whose days are over count", report.days());
      made.pages(report.basis().all(), report.pages());
    }
    report.change().ifPresent(made::change);
    return made.text.toString();
  }

  private void basis(Basis basis) {
    Rate all = basis.all();
    line("Calls with a question from cars picked up " + basis.from() + " to " + basis.to() + ": ");
    line(calls(all.events()) + " of " + handovers(all.of()) + ", " + spoken(all) + ".");
    if (all.isEnough()) {
      line("The true number lies between those two, 19 times in 20 (exact Poisson interval).");
    }
    LeftOut left = basis.leftOut();
    leftOut(left.gone(), "the job is gone, has to be mended, or its id is another car's by now");
    leftOut(left.notHandedOver(), "no card was handed over, or the car is still in the shop");
    leftOut(left.earlier(), "the car was picked up before " + basis.from());
    leftOut(left.beforePickup(), "it came before the day of the last pickup");
  }

  private void leftOut(int calls, String why) {
    if (calls > 0) {
      line("Left out: " + calls(calls) + ", as " + why + ".");
    }
  }

  private static String spoken(Rate rate) {
    return rate.isEnough()
        ? rate.per100() + " per 100 (" + range(rate) + ")"
        : "which is " + TOO_FEW;
  }

  private void groups(String title, List<Group> groups) {
    if (groups.isEmpty()) {
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("", "handovers", "calls", "per 100", "likely", ""));
    for (Group group : groups) {
      Rate rate = group.rate();
      rows.add(
          List.of(
              group.id(),
              String.valueOf(rate.of()),
              String.valueOf(rate.events()),
              rate.isEnough() ? String.valueOf(rate.per100()) : "",
              rate.isEnough() ? range(rate) : TOO_FEW,
              group.label()));
    }
    table(title, rows);
  }

  private void pages(Rate all, Pages pages) {
    if (pages.calls() == 0) {
      return;
    }
    text.append('\n');
    line(
        "The pages of those who called, as they are made today; the newest "
            + calls(pages.calls()));
    line("with a question of the guides.");
    holds(pages.holds());
    places(all, pages.places());
  }

  private void holds(List<Held> holds) {
    if (holds.isEmpty()) {
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("", "calls", "of 100", "likely", ""));
    for (Held held : holds) {
      Share share = held.share();
      rows.add(
          List.of(
              held.id(),
              String.valueOf(share.part()),
              share.isEnough() ? String.valueOf(share.of100()) : "",
              share.isEnough() ? share.low() + " to " + share.high() : TOO_FEW,
              held.label()));
    }
    table("By hold that the answer waits for; a call may count in several", rows);
  }

  private void places(Rate all, List<Placed> places) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("", "place", "at a glance", "folded", "not there", ""));
    for (Placed placed : places) {
      boolean marked = all.isEnough() && placed.isTooLow();
      rows.add(
          List.of(
              placed.id(),
              number(placed.place()),
              String.valueOf(placed.atAGlance()),
              String.valueOf(placed.folded()),
              String.valueOf(placed.off()),
              (marked ? "TOO LOW  " : "") + placed.label()));
    }
    String told = all.isEnough() ? "" : "; what stands too low is " + TOO_FEW;
    table("Where the question stands: how many see it at a glance, or have to search" + told, rows);
  }

  private void change(Change change) {
    text.append('\n');
    if (change.days() == 0) {
      line(
          "Before and after " + change.day() + ": it is too soon to tell, or calls were not noted");
      line(
          "long enough before. Both sides need cars whose first "
              + (Change.FIRST_DAYS + 1)
              + " days are over.");
      return;
    }
    line("Before and after " + change.day() + ", as many days of pickups on either side:");
    line("  before: picked up " + change.beforeFrom() + " to " + change.beforeTo());
    line("  after:  picked up " + change.day() + " to " + change.afterTo());
    line(
        "Only calls on the day of the pickup and the "
            + Change.FIRST_DAYS
            + " days after it count,");
    line(
        "so all of them came before the change, or all after it. The last column is how many calls");
    line("there are now for each 100 before (exact interval of the ratio, 19 times in 20).");
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("", "before", "after", "for each 100", "likely", ""));
    change.compared().forEach(c -> rows.add(row(c)));
    rows(rows);
  }

  private static List<String> row(Compared compared) {
    RateRatio ratio = compared.ratio();
    boolean known = ratio.verdict() != RateRatio.Verdict.TOO_FEW;
    String high = ratio.high().isPresent() ? number(ratio.high()) : "any number";
    return List.of(
        compared.id().isEmpty() ? "all calls" : compared.id(),
        ratio.before().events() + " of " + ratio.before().of(),
        ratio.after().events() + " of " + ratio.after().of(),
        known ? number(ratio.percent()) : "",
        known ? number(ratio.low()) + " to " + high : TOO_FEW,
        known ? said(ratio.verdict()) + "  " + compared.label() : compared.label());
  }

  private static String said(RateRatio.Verdict verdict) {
    return switch (verdict) {
      case FEWER -> "fewer";
      case MORE -> "more";
      default -> "may be chance";
    };
  }

  private static String number(OptionalInt number) {
    return number.isPresent() ? String.valueOf(number.getAsInt()) : "-";
  }

  private static String range(Rate rate) {
    return rate.low() + " to " + rate.high();
  }

  private static String calls(int calls) {
    return calls == 1 ? "1 call" : calls + " calls";
  }

  private static String handovers(int handovers) {
    return handovers == 1 ? "1 handover" : handovers + " handovers";
  }

  private void table(String title, List<List<String>> rows) {
    text.append('\n');
    line(title);
    rows(rows);
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
}
