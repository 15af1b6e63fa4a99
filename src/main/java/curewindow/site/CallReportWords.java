package curewindow.site;

import curewindow.tally.Rate;
import curewindow.tally.RateRatio;
import curewindow.words.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** What a report of calls says, in the terminal and at the desk alike. */
public final class CallReportWords {

  private static final String TEXTS = "desk.calls.";

  private final Words words;
  private final Function<LocalDate, String> day;

  /**
   * The words of a language.
   *
   * @param words the language
   * @param day how a day is written
   */
  public CallReportWords(Words words, Function<LocalDate, String> day) {
    this.words = words;
    this.day = day;
  }

  /**
   * A text without values.
   *
   * @param key its name behind what all of these begin with
   * @return the text
   */
  public String text(String key) {
    return words.text(TEXTS + key);
  }

  private String text(String key, Map<String, ?> values) {
    return words.text(TEXTS + key, values);
  }

  /**
   * How many calls there are in all, how sure that is, and of which cars.
   *
   * @param report the report
   * @return two sentences
   */
  public List<String> basis(CallReport report) {
    CallReport.Basis basis = report.basis();
    Rate all = basis.all();
    String of = text("all", Map.of("calls", all.events(), "cars", all.of()));
    return List.of(
        all.isEnough()
            ? text(
                "all-rate",
                Map.of(
                    "of", of,
                    "rate", number(all.per100()),
                    "low", number(all.low()),
                    "high", number(all.high())))
            : text("all-few", Map.of("of", of)),
        text("span", Map.of("from", day.apply(basis.from()), "to", day.apply(basis.to()))));
  }

  /**
   * Of which calls the places on pages and the dates are told.
   *
   * @param pages what the report says of pages
   * @return a sentence
   */
  public String pages(CallReport.Pages pages) {
    return text("pages", Map.of("n", pages.calls()));
  }

  /**
   * Which calls were left out, and why.
   *
   * @param left their numbers
   * @return sentences; none where all count
   */
  public List<String> leftOut(CallReport.LeftOut left) {
    List<String> lines = new ArrayList<>();
    leftOut(lines, left.gone(), "gone");
    leftOut(lines, left.notHandedOver(), "not-handed-over");
    leftOut(lines, left.earlier(), "earlier");
    leftOut(lines, left.beforePickup(), "before-pickup");
    return lines;
  }

  private void leftOut(List<String> lines, int calls, String why) {
    if (calls > 0) {
      String because = words.text("desk.calls.left." + why);
      lines.add(text("left-out", Map.of("n", calls, "why", because)));
    }
  }

  /**
   * Which cars are compared before and after a change, or that it is too soon.
   *
   * @param change what the report says of the change
   * @return sentences
   */
  public String change(CallReport.Change change) {
    return change.days() == 0
        ? text(
            "too-soon",
            Map.of("day", day.apply(change.day()), "n", CallReport.Change.FIRST_DAYS + 1))
        : text(
            "compared",
            Map.of(
                "day", day.apply(change.day()),
                "from", day.apply(change.beforeFrom()),
                "to", day.apply(change.beforeTo()),
                "until", day.apply(change.afterTo()),
                "n", CallReport.Change.FIRST_DAYS));
  }

  /**
   * A part of a number.
   *
   * @param part how many
   * @param all of how many
   * @return such as "9 of 54"
   */
  public String of(int part, int all) {
    return text("of", Map.of("part", number(part), "all", number(all)));
  }

  /**
   * From where to where a number likely lies.
   *
   * @param low the least
   * @param high the most
   * @return such as "7 to 32"
   */
  public String range(int low, int high) {
    return text("range", Map.of("low", number(low), "high", number(high)));
  }

  /**
   * From where to where a ratio likely lies.
   *
   * @param ratio the ratio, which may have no upper end
   * @return such as "40 to any number"
   */
  public String range(RateRatio ratio) {
    String low = ratio.low().isPresent() ? number(ratio.low().getAsInt()) : "-";
    return ratio.high().isPresent()
        ? text("range", Map.of("low", low, "high", number(ratio.high().getAsInt())))
        : text("or-more", Map.of("low", low));
  }

  /**
   * What became of the calls.
   *
   * @param verdict what is told of them, not that they are too few
   * @return such as "fewer"
   */
  public String said(RateRatio.Verdict verdict) {
    return text("verdict." + verdict.id());
  }

  /**
   * A whole number.
   *
   * @param number the number
   * @return as the language writes it
   */
  public String number(int number) {
    return words.number(number, 0);
  }
}
