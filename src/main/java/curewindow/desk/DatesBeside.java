package curewindow.desk;

import curewindow.cure.AtPickup;
import curewindow.cure.CureCase;
import curewindow.cure.ExplanationCause;
import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.shop.Job;
import curewindow.shop.OpenDays;
import curewindow.shop.Shop;
import curewindow.site.LoadedShop;
import curewindow.told.BeforePickup;
import curewindow.told.JobView;
import curewindow.told.Listing;
import curewindow.told.OtherClock;
import curewindow.told.VisitWords;
import curewindow.told.When;
import curewindow.words.Words;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The customer's dates as they stand beside a form, each with its reason in a line. */
final class DatesBeside {

  /**
   * The dates.
   *
   * @param rows the holds and what is normal, by date
   * @param advice what to do before the car goes; empty where it may go
   * @param clock whose clock tells the hours, where that is not the shop's
   */
  record Dates(List<Row> rows, List<String> advice, Optional<String> clock) {}

  /** A hold with its day and hour, and why it is that one. */
  record Row(String label, String when, String reason) {}

  private final JobView view;
  private final CureCase curing;
  private final Words words;

  private DatesBeside(JobView view, CureCase curing) {
    this.view = view;
    this.curing = curing;
    this.words = view.words();
  }

  /** The dates of a job that may not be in the folder yet, in the words of the desk. */
  static Dates of(LoadedShop shop, Job job, Words words) {
    JobView view = shop.view(job, "0").in(words.around(job.pickup()));
    DatesBeside beside = new DatesBeside(view, shop.cureCase(job));
    return new Dates(beside.rows(), beside.advice(), OtherClock.of(view));
  }

  /** The same for a job that may have left; then it is too late for advice. */
  static Dates of(LoadedShop shop, Job job, Words words, Instant now) {
    Dates dates = of(shop, job, words);
    return job.hasLeft(now) ? new Dates(dates.rows(), List.of(), dates.clock()) : dates;
  }

  private List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    view.timeline().releases().forEach(r -> rows.add(row(r)));
    view.visit()
        .ifPresent(
            v ->
                rows.add(
                    new Row(VisitWords.title(v, words), VisitWords.shortDay(v.day(), view), "")));
    return rows;
  }

  private Row row(Release release) {
    String state = words.text("page.state." + release.kind().id());
    String when = state + " " + new When(view).shortDayAndTime(release);
    boolean over = !view.timeline().isAhead(release);
    return new Row(
        When.shortLabel(release, words),
        over && release.kind() == HoldKind.HOLD ? words.text("desk.dates.over") : when,
        reason(release));
  }

  private String reason(Release release) {
    if (release.waitsFor().isPresent()) {
      String other = words.text("hold." + release.waitsFor().get() + ".label");
      return words.text("desk.why.waits", Map.of("other", other));
    }
    ExplanationCause cause = release.because();
    Map<String, String> facts =
        Map.of(
            "film", filmName(cause),
            "spot", words.text("spot." + cause.spot()),
            "temperature", words.temperature(cause.meanFilm()));
    if (release.end() instanceof Release.Seen) {
      return words.text("desk.why.seen", facts);
    }
    if (release.end() instanceof Release.AtLimit limit) {
      return limit.isGentle()
          ? words.text("desk.why.limit", facts)
          : words.text("desk.why.limit-ready", facts);
    }
    return cause.driver().isEmpty()
        ? words.text("desk.why.floor", facts)
        : words.text("desk.why." + cause.driver().get().id(), facts);
  }

  private String filmName(ExplanationCause cause) {
    String film = view.job().items().get(cause.item()).film();
    return view.catalogue().films().get(film).name();
  }

  private List<String> advice() {
    Optional<BeforePickup> before = BeforePickup.of(curing, view.catalogue());
    List<String> lines = new ArrayList<>();
    before.ifPresent(
        b -> {
          lines.add(words.text("desk.advice.lacking", Map.of("holds", lacking(b))));
          b.bayHours()
              .ifPresent(h -> lines.add(words.text("desk.advice.bay", Map.of("when", after(h)))));
          b.warmBay()
              .ifPresent(
                  w ->
                      lines.add(
                          words.text(
                              "desk.advice.warm",
                              Map.of(
                                  "temperature", words.temperature(w.temperature()),
                                  "when", after(w.hours())))));
          b.lamp()
              .ifPresent(
                  l ->
                      lines.add(
                          words.text(
                              "desk.advice.lamp",
                              Map.of(
                                  "minutes", words.number(l.minutes(), 0),
                                  "temperature", words.temperature(l.surface()),
                                  "when", after(b.lampStayHours())))));
          if (lines.size() == 1) {
            lines.add(words.text("desk.advice.nothing"));
          }
        });
    return lines;
  }

  private String lacking(BeforePickup before) {
    List<String> holds =
        before.lacking().stream()
            .map(AtPickup::hold)
            .distinct()
            .map(h -> words.text("hold." + h + ".label"))
            .toList();
    return Listing.of(holds, words);
  }

  private String after(long hours) {
    Shop shop = view.shop();
    Instant pickup = view.job().pickup();
    Instant met = pickup.plus(Duration.ofHours(hours));
    Instant at = hours == 0 ? met : firstOpen(met, shop);
    return words.dayAndTime(at, shop.zone());
  }

  /** Nobody picks a car up at night. */
  private static Instant firstOpen(Instant from, Shop shop) {
    return new OpenDays(shop)
        .firstOpen(from.atZone(shop.zone()).toLocalDateTime())
        .map(at -> at.atZone(shop.zone()).toInstant())
        .filter(at -> at.isAfter(from))
        .orElse(from);
  }
}
