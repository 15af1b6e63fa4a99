package curewindow.site;

import curewindow.problem.Problems;
import curewindow.tally.Rate;
import curewindow.tally.RateRatio;
import curewindow.words.Words;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Counts what customers call about. */
public final class CallReports {

  private static final int NO_END = Integer.MAX_VALUE;

  private final CountedCalls counted;
  private final CalledPages pages;

  private CallReports(CountedCalls counted, CalledPages pages) {
    this.counted = counted;
    this.pages = pages;
  }

  /** Days since pickup. */
  private record Days(String id, String label, int first, int last) {

    static final List<Days> ALL =
        List.of(
            new Days("0", "the day of the pickup", 0, 0),
            new Days("1", "the day after", 1, 1),
            new Days("2-3", "days 2 and 3", 2, 3),
            new Days("4-7", "the rest of the week", 4, 7),
            new Days("8-14", "the second week", 8, 14),
            new Days("15-30", "up to a month", 15, 30),
            new Days("later", "later, so far", 31, NO_END));

    boolean has(CountedCalls.Call call) {
      return call.days() >= first && call.days() <= last;
    }

    /** Whether all of these days are over; of those without an end, the first. */
    boolean areOver(CountedCalls.Handover handover, LocalDate today) {
      return handover.day().plusDays(last == NO_END ? first : last).isBefore(today);
    }
  }

  /**
   * The report of a shop.
   *
   * @param shop a shop folder whose shop.yaml and ledgers are right
   * @param asked what is asked for
   * @param problems where faults are told; a call of a job with one has no place and no hold
   * @return the report
   */
  public static CallReport of(LoadedShop shop, CallReport.Asked asked, Problems problems) {
    return of(shop, asked, shop.words().of(shop.shop().orElseThrow().language()), problems);
  }

  /**
   * The same in some language.
   *
   * @param shop a shop folder whose shop.yaml and ledgers are right
   * @param asked what is asked for
   * @param words of the language in which questions and holds are named
   * @param problems where faults are told; a call of a job with one has no place and no hold
   * @return the report
   */
  public static CallReport of(
      LoadedShop shop, CallReport.Asked asked, Words words, Problems problems) {
    CountedCalls counted = new CountedCalls(shop, asked);
    CalledPages pages = new CalledPages(shop, counted.calls(), words, problems);
    CallReports made = new CallReports(counted, pages);
    return new CallReport(
        counted.basis(),
        made.services(),
        made.questions(),
        made.days(),
        made.pages.found(),
        asked.changed().map(made::change));
  }

  private static Map<String, Integer> questions(List<CountedCalls.Call> calls) {
    return CountedCalls.by(calls, c -> Set.of(c.note().question()));
  }

  private List<CallReport.Group> services() {
    Map<String, Integer> calls = CountedCalls.by(counted.calls(), c -> c.handover().services());
    return ranked(
        counted.handoversBy(CountedCalls.Handover::services).entrySet().stream()
            .map(
                e ->
                    new CallReport.Group(
                        e.getKey(),
                        pages.service(e.getKey()),
                        new Rate(calls.getOrDefault(e.getKey(), 0), e.getValue()))));
  }

  private List<CallReport.Group> questions() {
    int handovers = counted.all().of();
    return ranked(
        questions(counted.calls()).entrySet().stream()
            .map(
                e ->
                    new CallReport.Group(
                        e.getKey(), pages.text(e.getKey()), new Rate(e.getValue(), handovers))));
  }

  /** The most often first; those that are too few to tell last, by name. */
  private static List<CallReport.Group> ranked(Stream<CallReport.Group> groups) {
    Comparator<CallReport.Group> often =
        (a, b) -> a.rate().isEnough() && b.rate().isEnough() ? b.rate().compareOften(a.rate()) : 0;
    return groups
        .sorted(
            Comparator.comparing((CallReport.Group g) -> !g.rate().isEnough())
                .thenComparing(often)
                .thenComparing(CallReport.Group::id))
        .toList();
  }

  private List<CallReport.Group> days() {
    return Days.ALL.stream()
        .map(
            d ->
                new CallReport.Group(
                    d.id(), d.label(), counted.rate(h -> d.areOver(h, counted.today()), d::has)))
        .toList();
  }

  /** As many days of pickups on either side as are known on both. */
  private CallReport.Change change(LocalDate day) {
    CallReport.Change none = new CallReport.Change(day, 0, List.of());
    LocalDate lastWhole = counted.today().minusDays(CallReport.Change.FIRST_DAYS + 1L);
    long after = ChronoUnit.DAYS.between(day, lastWhole) + 1;
    long before = ChronoUnit.DAYS.between(counted.from(), none.beforeTo()) + 1;
    int days = (int) Math.max(0, Math.min(before, after));
    return days == 0
        ? none
        : new CallReport.Change(day, days, compared(new CallReport.Change(day, days, List.of())));
  }

  private List<CallReport.Compared> compared(CallReport.Change change) {
    Predicate<CountedCalls.Handover> before = between(change.beforeFrom(), change.beforeTo());
    Predicate<CountedCalls.Handover> after = between(change.day(), change.afterTo());
    List<CountedCalls.Call> early =
        counted.calls().stream()
            .filter(CallReports::isEarly)
            .filter(c -> before.or(after).test(c.handover()))
            .toList();
    List<CallReport.Compared> compared = new ArrayList<>();
    compared.add(new CallReport.Compared("", "", ratio(before, after, CallReports::isEarly)));
    for (String question : questions(early).keySet()) {
      compared.add(
          new CallReport.Compared(
              question,
              pages.text(question),
              ratio(before, after, c -> isEarly(c) && c.note().question().equals(question))));
    }
    return compared;
  }

  private RateRatio ratio(
      Predicate<CountedCalls.Handover> before,
      Predicate<CountedCalls.Handover> after,
      Predicate<CountedCalls.Call> told) {
    return new RateRatio(counted.rate(before, told), counted.rate(after, told));
  }

  private static boolean isEarly(CountedCalls.Call call) {
    return call.days() <= CallReport.Change.FIRST_DAYS;
  }

  private static Predicate<CountedCalls.Handover> between(LocalDate first, LocalDate last) {
    return h -> !h.day().isBefore(first) && !h.day().isAfter(last);
  }
}
