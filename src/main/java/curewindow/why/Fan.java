package curewindow.why;

import curewindow.cure.Ends;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntPredicate;

/** Draws in how many weathers a hold ends on which day. */
final class Fan {

  /** The shares of the weathers that are marked, percent. */
  static final List<Integer> PERCENTS = List.of(5, 25, 50, 75, 90);

  private static final int MOST = 14;
  private static final int BAR = 30;

  private final Lines lines;
  private final ZoneId zone;

  Fan(Lines lines, ZoneId zone) {
    this.lines = lines;
    this.zone = zone;
  }

  void draw(Ends ends) {
    lines.say(
        2,
        "ends in %d weather runs, before rounding; marked where so many in a hundred"
            + " have ended:",
        ends.weathers());
    int most = Math.max(ends.open(), 1);
    List<Bin> bins = ends.met().isEmpty() ? List.of() : bins(ends);
    for (Bin bin : bins) {
      most = Math.max(most, count(ends, bin));
    }
    for (Bin bin : bins) {
      row(Rows.span(bin.first, bin.last), count(ends, bin), most, marks(ends, bin));
    }
    if (ends.open() > 0) {
      row("at the limit", ends.open(), most, open(ends));
    }
  }

  private record Bin(LocalDate first, LocalDate last) {

    boolean holds(LocalDate date) {
      return !date.isBefore(first) && !date.isAfter(last);
    }
  }

  private List<Bin> bins(Ends ends) {
    LocalDate first = date(ends.met().get(0));
    LocalDate last = date(ends.met().get(ends.met().size() - 1));
    long days = ChronoUnit.DAYS.between(first, last) + 1;
    long each = (days + MOST - 1) / MOST;
    List<Bin> bins = new ArrayList<>();
    for (LocalDate from = first; !from.isAfter(last); from = from.plusDays(each)) {
      bins.add(new Bin(from, from.plusDays(each - 1)));
    }
    return bins;
  }

  private int count(Ends ends, Bin bin) {
    return (int) ends.met().stream().filter(at -> bin.holds(date(at))).count();
  }

  private String marks(Ends ends, Bin bin) {
    return marks(p -> ends.by(p).filter(at -> bin.holds(date(at))).isPresent());
  }

  private static String open(Ends ends) {
    return marks(p -> ends.by(p).isEmpty());
  }

  private static String marks(IntPredicate here) {
    List<String> marked = new ArrayList<>();
    for (int percent : PERCENTS) {
      if (here.test(percent)) {
        marked.add(String.valueOf(percent));
      }
    }
    return marked.isEmpty() ? "" : String.join(", ", marked) + "%";
  }

  private void row(String label, int count, int most, String marks) {
    int cells = most <= BAR ? count : (int) Math.ceil(count * (double) BAR / most);
    lines.row(
        String.format(
            Locale.ROOT,
            "  %-15s %-" + BAR + "s%4d  %s",
            label,
            lines.sign(Lines.Sign.FULL).repeat(cells),
            count,
            marks));
  }

  private LocalDate date(Instant at) {
    return LocalDate.ofInstant(at, zone);
  }
}
