package curewindow.page;

import curewindow.told.Listing;
import curewindow.told.YearHere;
import curewindow.words.Words;
import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;

/**
 * The year at the shop's place in the words of a language, as a page and as what guides quote of
 * it.
 */
final class PublicYear {

  /** Heights in the pictures, pixels: of the tallest column, and where all columns stand. */
  private static final int TALLEST = 64;

  private static final int GROUND = 80;

  /** Shares of the width, percent: a month, a column, and where the columns of a month begin. */
  private static final double MONTH = 100 / 12.0;

  private static final double COLUMN = 3;
  private static final double FIRST = 1;
  private static final double SECOND = 4.4;

  private final YearHere year;
  private final Words words;

  PublicYear(YearHere year, Words words) {
    this.year = year;
    this.words = words;
  }

  /** The page; services and holds that last equally long all year stand together. */
  PublicView.Year page() {
    Map<List<YearHere.Course>, List<String>> works = new LinkedHashMap<>();
    for (YearHere.Work work : year.services()) {
      List<YearHere.Course> shown = work.courses().stream().filter(YearHere.Course::shown).toList();
      if (!shown.isEmpty()) {
        works
            .computeIfAbsent(shown, courses -> new ArrayList<>())
            .add(words.text("service." + work.service()));
      }
    }
    List<PublicView.YearWork> groups = new ArrayList<>();
    works.forEach((courses, names) -> groups.add(new PublicView.YearWork(names, holds(courses))));
    return new PublicView.Year(
        words.text(
            "public.year.lede",
            Map.of("place", words.place(year.place().name(), year.place().zone()))),
        words.text(
            "public.year.assumed",
            Map.of(
                "time",
                words.time(YearHere.start(year.place(), Month.JANUARY), year.place().zone()))),
        groups);
  }

  private List<PublicView.YearHold> holds(List<YearHere.Course> courses) {
    Map<List<YearHere.InMonth>, List<YearHere.Course>> alike = new LinkedHashMap<>();
    courses.forEach(c -> alike.computeIfAbsent(c.months(), m -> new ArrayList<>()).add(c));
    return alike.values().stream().map(this::hold).toList();
  }

  private PublicView.YearHold hold(List<YearHere.Course> alike) {
    YearHere.Course course = alike.get(0);
    List<String> names =
        alike.stream().map(c -> words.text("hold." + c.hold() + ".label")).toList();
    String range = said("range", year.range(course), YearHere.Days::safe);
    List<PublicView.YearRow> rows = new ArrayList<>();
    for (Month month : Month.values()) {
      YearHere.InMonth days = course.months().get(month.ordinal());
      rows.add(new PublicView.YearRow(name(month), cell(days.outside()), cell(days.garage())));
    }
    String alt = Listing.of(names, words) + ": " + range;
    return new PublicView.YearHold(names, range, alt, picture(course), rows);
  }

  private String cell(YearHere.Days days) {
    return days.likely() == days.safe()
        ? words.number(days.safe(), 0)
        : words.text("public.year.cell", Map.of("likely", days.likely(), "safe", days.safe()));
  }

  private PublicView.YearPicture picture(YearHere.Course course) {
    int most =
        course.months().stream()
            .mapToInt(m -> Math.max(m.outside().safe(), m.garage().safe()))
            .max()
            .orElseThrow();
    List<PublicView.YearColumn> columns = new ArrayList<>();
    List<PublicView.YearLetter> letters = new ArrayList<>();
    for (Month month : Month.values()) {
      YearHere.InMonth days = course.months().get(month.ordinal());
      double at = month.ordinal() * MONTH;
      columns.add(column("out", at + FIRST, days.outside().safe(), most));
      columns.add(column("in", at + SECOND, days.garage().safe(), most));
      letters.add(
          new PublicView.YearLetter(percent(mirrored(at, MONTH) + MONTH / 2), letter(month)));
    }
    return new PublicView.YearPicture(
        words.text("public.year.days", Map.of("days", most)),
        words.rightToLeft() ? "100%" : "0",
        columns,
        letters);
  }

  private PublicView.YearColumn column(String kind, double x, int days, int most) {
    long height = Math.max(2, Math.round((double) TALLEST * days / most));
    return new PublicView.YearColumn(
        kind, percent(mirrored(x, COLUMN)), percent(COLUMN), GROUND - height, height);
  }

  /** The year runs as the language is written. */
  private double mirrored(double x, double width) {
    return words.rightToLeft() ? 100 - x - width : x;
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.2f%%", share);
  }

  private String name(Month month) {
    return words.month(YearHere.start(year.place(), month), year.place().zone());
  }

  private String letter(Month month) {
    String name = Listing.capital(name(month));
    return name.substring(0, name.offsetByCodePoints(0, 1));
  }

  /** For what work and where a car stands the days are that a guide quotes. */
  String basis(String guide) {
    return words.text(year.isOfWork(guide) ? "public.year.own" : "public.year.longest");
  }

  /**
   * What a guide quotes of a hold.
   *
   * @param year the shortest and the longest month, where they differ
   * @param months work in each month, January first
   */
  record Quote(String year, List<String> months) {}

  /**
   * What a guide quotes of a hold.
   *
   * @param guide the guide's id
   * @param hold the hold's id
   * @param what {@code until}, {@code likely}, {@code day} or {@code full}, as in a job's values
   * @return words that stand where a job's date would; empty where no service has the hold
   */
  Optional<Quote> quoted(String guide, String hold, String what) {
    return year.of(guide, hold)
        .map(
            range ->
                switch (what) {
                  case "until" -> quote("until", range, YearHere.Days::safe);
                  case "likely" -> quote("until", range, YearHere.Days::likely);
                  case "full" -> quote("day", range, YearHere.Days::full);
                  default -> quote("day", range, YearHere.Days::safe);
                });
  }

  private Quote quote(String what, YearHere.Range range, ToIntFunction<YearHere.Days> days) {
    String year = said(what, range, days);
    if (days.applyAsInt(range.least()) == days.applyAsInt(range.most())) {
      return new Quote(year, Collections.nCopies(12, year));
    }
    return new Quote(
        year,
        Arrays.stream(Month.values())
            .map(m -> inMonth(what, days.applyAsInt(range.months().get(m.ordinal())), m))
            .toList());
  }

  private String inMonth(String what, int days, Month month) {
    return words.text("public.year." + what + ".month", Map.of("days", days, "month", name(month)));
  }

  private String said(String what, YearHere.Range range, ToIntFunction<YearHere.Days> days) {
    int least = days.applyAsInt(range.least());
    int most = days.applyAsInt(range.most());
    String key = "public.year." + what;
    return least == most
        ? words.text(key + ".always", Map.of("days", most))
        : words.text(
            key + ".varies",
            Map.of(
                "least",
                least,
                "shortest",
                name(range.shortest()),
                "most",
                most,
                "longest",
                name(range.longest())));
  }
}
