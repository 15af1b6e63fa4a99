package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.shop.Hold;
import curewindow.told.JobView;
import curewindow.told.Safety;
import curewindow.told.Urgency;
import curewindow.told.When;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a customer's page may say at a time in a case of parking, by the computed dates alone.
 *
 * @param cases the job in each case, the noted one first
 * @param chosen which of them the page shows
 * @param now the time; for a page without a script that of the pickup
 * @param hasClock whether the page can know the time
 * @param where told where something is not true
 */
record TruePage(List<JobView> cases, int chosen, Instant now, boolean hasClock, String where) {

  private static final String MARK = "|";

  private JobView view() {
    return cases.get(chosen);
  }

  private ZoneId zone() {
    return view().timeline().zone();
  }

  private boolean isOver(Release release) {
    return !now.isBefore(release.end().at());
  }

  private String text(String key, String name, String value) {
    return view().words().text(key, Map.of(name, value));
  }

  private static String plain(String text) {
    return text.replaceAll("[\\s\u00A0\u202F]+", " ").strip();
  }

  /**
   * Holds all that is seen to the computed dates.
   *
   * @param in how the time until the answer's date is told; empty without a script
   */
  void holds(SeenPage seen, String in) {
    answer(seen, in);
    assertEquals(view().timeline().releases().size(), seen.rows().size(), where);
    seen.rows().forEach(this::row);
    order(seen.rows());
    calendars(seen.calendars());
  }

  /** The most urgent of what is in force, if anything is. */
  Optional<Release> first() {
    return Urgency.holds(view()).stream().filter(r -> !isOver(r)).findFirst();
  }

  /** When the last hold that ended at its limit is fully set, while some care is needed. */
  private Optional<Instant> almost() {
    return view().timeline().releases().stream()
        .flatMap(r -> r.gentleUntil().stream())
        .filter(now::isBefore)
        .max(Comparator.naturalOrder());
  }

  private void answer(SeenPage seen, String in) {
    String nothing = almost().isPresent() ? "almost" : "";
    assertEquals(List.of(first().map(Release::hold).orElse(nothing)), seen.answers(), where);
    if (first().isEmpty() && almost().isPresent()) {
      String day = view().words().fullMonthDay(almost().get(), zone());
      assertEquals(plain(view().words().text("page.now.almost") + " " + day), seen.answer(), where);
      String more = plain(view().words().text("page.now.almost-more"));
      assertTrue(seen.more().endsWith(more), where + " " + seen.more());
      return;
    }
    if (first().isEmpty()) {
      assertEquals(plain(view().words().text("page.now.clear")), seen.answer(), where);
      assertEquals(plain(view().words().text("page.now.none")), seen.more(), where);
      return;
    }
    Release release = first().get();
    Instant at = release.end().at();
    String[] sentence = text("hold." + release.hold() + ".until", "when", MARK).split("[|]", 2);
    String date =
        String.join(
            ", ",
            view().words().fullWeekday(at, zone()),
            view().words().fullMonthDay(at, zone()),
            view().words().time(at, zone()));
    assertEquals(plain(sentence[0] + " " + date), seen.answer(), where);
    assertEquals(at, OffsetDateTime.parse(seen.stamp()).toInstant(), where);
    assertTrue(seen.more().startsWith(in), where + ": " + in + ", not " + seen.more());
    When when = new When(view());
    Stream.of(Safety.of(release, view()), when.setInShort(release))
        .flatMap(Optional::stream)
        .forEach(more -> assertTrue(seen.more().contains(plain(more)), where + " " + more));
  }

  private void row(SeenPage.Row row) {
    String told = where + " " + row;
    Release release = view().timeline().of(row.hold()).orElseThrow();
    assertEquals(isOver(release), row.over(), told);
    assertEquals(release.end().at(), OffsetDateTime.parse(row.time()).toInstant(), told);
    When said = new When(view());
    String state = "page.state." + (isOver(release) ? "over" : release.kind().id());
    String date = said.shortDay(release) + (isOver(release) ? "" : " " + said.time(release));
    String what = isOver(release) ? ".event" : ".short";
    assertEquals(plain(view().words().text("hold." + row.hold() + what)), row.what(), told);
    String when = plain(view().words().text(state) + " " + date);
    if (isLongOver(release)) {
      assertEquals("", row.when(), told);
    } else if (isOver(release) || isLikelyOver(release)) {
      assertEquals(when, row.when(), told);
    } else {
      assertEquals(plain(when + " " + likely(release)), row.when(), told);
    }
    assertEquals(plain(isOver(release) ? care(release) : below(release)), row.below(), told);
    bar(release, row.bar(), told);
    assertEquals(hasClock && isHandedOver() && !isOver(release), !row.bar().now().isEmpty(), told);
  }

  /** What still needs care until it is fully set, or what to do if it has not settled. */
  private String care(Release release) {
    When when = new When(view());
    boolean set = release.gentleUntil().filter(now::isBefore).isEmpty();
    return release.kind() == HoldKind.SETTLE
        ? when.done(release)
        : set ? "" : when.gentlyInShort(release).orElse("");
  }

  /** Not of the answer on top, which says so itself. */
  private String below(Release release) {
    return first().filter(release::equals).isPresent()
        ? ""
        : Safety.of(release, view()).orElse("")
            + " "
            + new When(view()).setInShort(release).orElse("");
  }

  /** A day of another year, which would be taken for one ahead. */
  private boolean isLongOver(Release release) {
    return now.isAfter(release.end().at().plus(Duration.ofDays(180)));
  }

  /** What was likely by now is said no more; it is known to a thousandth of the line. */
  private boolean isLikelyOver(Release release) {
    double sure = Math.round(10 * percent(likelyAt(release))) / 10.0;
    return hasClock && sure < 100 && percent(now) >= sure;
  }

  /** What may be sooner, where that is another day. */
  private String likely(Release release) {
    String day = view().words().monthDay(likelyAt(release), zone());
    Instant pickup = view().timeline().pickup();
    boolean isOther = !day.equals(view().words().monthDay(release.end().at(), zone()));
    boolean isAhead = !day.equals(view().words().monthDay(pickup, zone()));
    return isOther && isAhead && !likelyAt(release).isBefore(pickup)
        ? text("page.likely", "day", day)
        : "";
  }

  private static Instant likelyAt(Release release) {
    Instant end = release.end().at();
    return release.end() instanceof Release.SafeBy && release.likely().isBefore(end)
        ? release.likely()
        : end;
  }

  /** From the pickup to the last end of a hold in any case. */
  private Instant last() {
    Instant pickup = view().timeline().pickup();
    Comparator<Instant> order = Comparator.naturalOrder();
    return Stream.of(HoldKind.HOLD, HoldKind.SETTLE)
        .flatMap(
            kind ->
                cases.stream()
                    .flatMap(v -> v.timeline().releases().stream())
                    .filter(r -> r.kind() == kind && r.end().at().isAfter(pickup))
                    .map(r -> r.end().at())
                    .max(order)
                    .stream())
        .findFirst()
        .orElseThrow();
  }

  /** Where an instant stands on the line, in percent of it. */
  private double percent(Instant at) {
    Instant pickup = view().timeline().pickup();
    double part = Duration.between(pickup, at).toSeconds();
    return 100 * part / Duration.between(pickup, last()).toSeconds();
  }

  private void bar(Release release, SeenPage.Bar bar, String told) {
    if (isOver(release)) {
      assertEquals(new SeenPage.Bar("", "", "", ""), bar, told);
      return;
    }
    Instant end = release.end().at();
    reaches(likelyAt(release), bar.sure(), told);
    reaches(end, bar.may(), told);
    assertEquals(end.isAfter(last()) ? "100%" : "", bar.broken(), told);
    if (!bar.now().isEmpty()) {
      reaches(now, bar.now(), told);
    }
  }

  /** What is beyond the line of time is marked at its end, where the bars are broken. */
  private boolean isHandedOver() {
    return !now.isBefore(view().timeline().pickup());
  }

  private void reaches(Instant at, String percent, String told) {
    double seen = Double.parseDouble(percent.substring(0, percent.length() - 1));
    assertEquals(Math.max(0, Math.min(100, percent(at))), seen, 0.06, told);
  }

  /** What is ahead by date, then what is over by date. */
  private void order(List<SeenPage.Row> rows) {
    List<Release> shown =
        rows.stream().map(r -> view().timeline().of(r.hold()).orElseThrow()).toList();
    List<Release> ordered =
        shown.stream()
            .sorted(Comparator.comparing(this::isOver).thenComparing(r -> r.end().at()))
            .toList();
    assertEquals(ordered, shown, where);
  }

  /**
   * The dates of this case: in a file for the noted one, in the link for another; and all. Nobody
   * needs one of dates that are all over.
   */
  private void calendars(List<String> links) {
    if (view().timeline().releases().stream().allMatch(this::isOver)) {
      assertEquals(List.of(), links, where);
      return;
    }
    if (chosen == 0) {
      assertEquals(List.of("care.ics", "all.ics"), links, where);
      return;
    }
    assertEquals(1, links.size(), where + " " + links);
    String text = URLDecoder.decode(links.get(0), StandardCharsets.UTF_8);
    assertTrue(text.startsWith("data:text/calendar;charset=utf-8,BEGIN:VCALENDAR"), where + text);
    DateTimeFormatter stamp =
        DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);
    assertEquals(
        Urgency.holds(view()).stream()
            .filter(r -> r.end().at().isAfter(view().timeline().pickup()))
            .filter(r -> view().catalogue().is(r.hold(), Hold.Mark.MAIN))
            .limit(2)
            .map(r -> "DTSTART:" + stamp.format(r.end().at()))
            .sorted()
            .toList(),
        text.lines().filter(line -> line.startsWith("DTSTART:")).sorted().toList(),
        where);
  }

  /** The dates of this case that are not the same in all cases, each with its name. */
  List<String> differing() {
    When when = new When(view());
    return view().timeline().releases().stream()
        .filter(
            r ->
                cases.stream()
                        .map(v -> v.timeline().of(r.hold()).orElseThrow().end())
                        .distinct()
                        .count()
                    > 1)
        .map(r -> plain(name(r) + ": " + date(when, r)))
        .toList();
  }

  private String name(Release release) {
    return view().words().text("hold." + release.hold() + ".short");
  }

  private String date(When when, Release release) {
    String time = when.time(release);
    return when.shortDay(release)
        + (time.isEmpty() ? "" : view().words().language().equals("ar") ? "، " : ", ")
        + time;
  }
}
