package curewindow.cli;

import curewindow.problem.Problems;
import curewindow.shop.Shop;
import curewindow.site.CallReport;
import curewindow.site.CallReportCsv;
import curewindow.site.CallReportText;
import curewindow.site.CallReports;
import curewindow.site.LoadedShop;
import curewindow.words.WordsLibrary;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** The options that count the calls that were noted. */
final class ReportOptions {

  @Option(
      names = "--report",
      required = true,
      description = "counts the calls that were noted, of 100 cars that were handed over")
  private boolean report;

  @Option(names = "--csv", description = "prints the report as comma-separated values")
  private boolean csv;

  @Option(
      names = "--since",
      paramLabel = "DAY",
      description = "counts cars picked up from this day on; from the first call on if left out")
  private String since;

  @Option(
      names = "--changed",
      paramLabel = "DAY",
      description = "also compares before and after the day on which you changed a guide")
  private String changed;

  /**
   * Prints the report.
   *
   * @param loaded a shop folder whose shop.yaml and ledgers are right
   * @param day the last day that counts; empty for now
   * @param now the time
   * @param spec the command
   * @return the exit code
   */
  int print(LoadedShop loaded, Optional<LocalDate> day, Instant now, CommandSpec spec) {
    ZoneId zone = loaded.shop().map(Shop::zone).orElseThrow();
    CallReport.Asked asked = asked(day, now, zone, spec);
    Problems problems = new Problems();
    CallReport made = CallReports.of(loaded, asked, problems);
    ProblemLines.print(problems.all(), spec.commandLine().getErr());
    spec.commandLine()
        .getOut()
        .print(
            csv
                ? CallReportCsv.of(made)
                : CallReportText.of(made, loaded.words().of(WordsLibrary.FALLBACK)));
    spec.commandLine().getOut().flush();
    boolean whole = JobLookup.sayLeftOut(loaded, spec.commandLine().getErr());
    return problems.hasErrors() || !whole ? Exit.PROBLEMS : Exit.OK;
  }

  private CallReport.Asked asked(
      Optional<LocalDate> day, Instant now, ZoneId zone, CommandSpec spec) {
    LocalDate today = LocalDate.ofInstant(now, zone);
    day.ifPresent(d -> refuseLater("--day", d, today, spec));
    Instant end =
        day.map(d -> d.plusDays(1).atStartOfDay(zone).toInstant().minusSeconds(1))
            .filter(e -> e.isBefore(now))
            .orElse(now);
    return new CallReport.Asked(
        end,
        past("--since", since, today, zone, spec),
        past("--changed", changed, today, zone, spec));
  }

  private static Optional<LocalDate> past(
      String option, String typed, LocalDate today, ZoneId zone, CommandSpec spec) {
    Optional<LocalDate> day =
        Optional.ofNullable(typed).map(text -> TimeOptions.day(option, text, zone, spec));
    day.ifPresent(d -> refuseLater(option, d, today, spec));
    return day;
  }

  private static void refuseLater(String option, LocalDate day, LocalDate today, CommandSpec spec) {
    if (day.isAfter(today)) {
      throw new ParameterException(
          spec.commandLine(), option + " " + day + " is still to come; give a day up to today");
    }
  }
}
