package curewindow.desk;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.site.CallReport;
import curewindow.site.CallReportWords;
import curewindow.site.CallReports;
import curewindow.site.LoadedShop;
import curewindow.words.Words;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What customers call about, counted: the numbers of the report of calls, as tables with pictures.
 */
final class CallsScreen {

  /**
   * The screen.
   *
   * @param basis what was counted, in sentences
   * @param leftOut what was not, and why
   * @param unread cars that could not be looked at
   * @param compared which pickups are compared
   * @param soon that it is too soon to compare any
   * @param since the first day whose pickups count
   * @param changed the day on which a guide was changed
   * @param last the last day that can be chosen
   */
  record View(
      Frame frame,
      List<String> basis,
      List<String> leftOut,
      Optional<LostCars.Unread> unread,
      List<CallsTables.Table> tables,
      Optional<String> compared,
      Optional<String> soon,
      Day since,
      Day changed,
      String last) {}

  /** A day as it was typed, and whether it is none up to today. */
  record Day(String typed, boolean wrong) {

    static Day of(String typed, LocalDate today) {
      return new Day(typed, !typed.isEmpty() && read(typed, today).isEmpty());
    }

    static Optional<LocalDate> read(String typed, LocalDate today) {
      try {
        return Optional.of(LocalDate.parse(typed)).filter(day -> !day.isAfter(today));
      } catch (DateTimeException e) {
        return Optional.empty();
      }
    }
  }

  private final DeskShop desk;
  private final DeskPages pages;

  CallsScreen(DeskShop desk, DeskPages pages) {
    this.desk = desk;
    this.pages = pages;
  }

  Answer show(Request request, Frame frame, Words words) {
    LoadedShop shop = desk.now().shop();
    LocalDate today = desk.today();
    Day since = Day.of(request.query().one("since"), today);
    Day changed = Day.of(request.query().one("changed"), today);
    Problems problems = new Problems();
    CallReport report =
        CallReports.of(
            shop,
            new CallReport.Asked(
                desk.time(), Day.read(since.typed(), today), Day.read(changed.typed(), today)),
            words,
            problems);
    CallReportWords said = new CallReportWords(words, words::date);
    View view =
        new View(
            frame,
            basis(report, said),
            leftOut(report, problems, words),
            LostCars.unread(shop, "desk.calls.unread", words),
            new CallsTables(words).of(report),
            report.change().filter(c -> c.days() > 0).map(said::change),
            report.change().filter(c -> c.days() == 0).map(said::change),
            since,
            changed,
            today.toString());
    return Answer.html(
        since.wrong() || changed.wrong() ? 422 : 200, pages.html("calls", view, words));
  }

  private static List<String> basis(CallReport report, CallReportWords said) {
    List<String> lines = new ArrayList<>(said.basis(report));
    if (report.basis().all().isEnough()) {
      lines.add(said.text("sure"));
    }
    if (report.pages().calls() > 0) {
      lines.add(said.pages(report.pages()));
    }
    return lines;
  }

  private static List<String> leftOut(CallReport report, Problems problems, Words words) {
    CallReportWords said = new CallReportWords(words, words::date);
    List<String> lines = new ArrayList<>(said.leftOut(report.basis().leftOut()));
    problems.all().stream()
        .filter(Problem::isError)
        .map(new ProblemWords(words)::toldOf)
        .forEach(lines::add);
    return lines;
  }
}
