package curewindow.why;

import curewindow.cure.ExplanationWay;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** Puts the days of a walk into no more rows than a terminal shows at once. */
final class Rows {

  private static final int MOST = 16;
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
  private static final DateTimeFormatter SHORT =
      DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

  private Rows() {}

  /** One or several days that follow each other, all in the bay or all after it. */
  record Row(List<ExplanationWay.Stretch> days) {

    String label() {
      if (!days.get(0).inBay()) {
        return span(days.get(0).date(), last().date());
      }
      return (days.size() == 1 ? "bay " : "bay to ") + SHORT.format(last().date());
    }

    double air() {
      return mean(ExplanationWay.Stretch::air);
    }

    double film() {
      return mean(ExplanationWay.Stretch::film);
    }

    double dewPoint() {
      return mean(ExplanationWay.Stretch::dewPoint);
    }

    /** A single day's sum, or the mean of whole days. */
    double sun() {
      double sum = days.stream().mapToDouble(ExplanationWay.Stretch::sun).sum();
      return days.size() == 1 ? sum : sum / hours() * 24;
    }

    double rate() {
      return mean(ExplanationWay.Stretch::rate);
    }

    double doseAtEnd() {
      return last().doseAtEnd();
    }

    Instant to() {
      return last().to();
    }

    private ExplanationWay.Stretch last() {
      return days.get(days.size() - 1);
    }

    private double hours() {
      return days.stream().mapToDouble(ExplanationWay.Stretch::hours).sum();
    }

    private double mean(ToDoubleFunction<ExplanationWay.Stretch> value) {
      double sum = days.stream().mapToDouble(d -> value.applyAsDouble(d) * d.hours()).sum();
      return sum / hours();
    }
  }

  static List<Row> of(List<ExplanationWay.Stretch> days) {
    int each = (days.size() + MOST - 1) / MOST;
    List<Row> rows = new ArrayList<>();
    List<ExplanationWay.Stretch> row = new ArrayList<>();
    for (ExplanationWay.Stretch day : days) {
      if (!row.isEmpty() && (row.size() == each || row.get(0).inBay() != day.inBay())) {
        rows.add(new Row(List.copyOf(row)));
        row.clear();
      }
      row.add(day);
    }
    rows.add(new Row(List.copyOf(row)));
    return rows;
  }

  /** One day with its weekday, or the first and the last day. */
  static String span(LocalDate first, LocalDate last) {
    return first.equals(last)
        ? DAY.format(first)
        : SHORT.format(first) + " - " + SHORT.format(last);
  }
}
