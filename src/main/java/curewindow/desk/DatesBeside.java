package curewindow.desk;

import curewindow.cure.AtPickup;
import curewindow.cure.CureCase;
import curewindow.cure.ExplanationCause;
import curewindow.cure.HoldKind;
import curewindow.cure.Lamp;
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
import java.time.LocalDateTime;
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
    return BeforePickup.of(curing, view.catalogue()).map(this::advice).orElse(List.of());
  }

  private List<String> advice(BeforePickup before) {
    List<String> lines = new ArrayList<>();
    lines.add(words.text("desk.advice.lacking", Map.of("holds", lacking(before))));
    Optional<Instant> kept = before.bayHours().map(this::after);
    kept.ifPresent(at -> lines.add(words.text("desk.advice.bay", Map.of("when", told(at)))));
    before.warmBay().ifPresent(warm -> lines.add(warm(warm)));
    Instant lit = after(before.lampStayHours());
    before
        .lamp()
        // Who has to wait for the same opening hour need not work for it.
        .filter(lamp -> kept.isEmpty() || lit.isBefore(kept.get()))
        .ifPresent(lamp -> lines.add(underLamp(lamp, lit, lines.size() > 1)));
    if (lines.size() == 1) {
      lines.add(words.text("desk.advice.nothing"));
    }
    return lines;
  }

  private String warm(BeforePickup.WarmBay warm) {
    return words.text(
        "desk.advice.warm",
        Map.of(
            "temperature", words.temperature(warm.temperature()),
            "when", told(after(warm.hours()))));
  }

  private String underLamp(Lamp lamp, Instant until, boolean other) {
    return words.text(
        other ? "desk.advice.or-lamp" : "desk.advice.lamp",
        Map.of(
            "minutes", words.number(lamp.minutes(), 0),
            "temperature", words.temperature(lamp.surface()),
            "when", told(until)));
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

  private String told(Instant at) {
    return words.dayAndTime(at, view.shop().zone());
  }

  /**
   * When a car can go that stays for some hours after its pickup: at that time where somebody is
   * there. The pickup itself may be at any hour of an open day, as it was agreed on.
   */
  private Instant after(long hours) {
    Shop shop = view.shop();
    Instant met = view.job().pickup().plus(Duration.ofHours(hours));
    LocalDateTime there = met.atZone(shop.zone()).toLocalDateTime();
    OpenDays days = new OpenDays(shop);
    return hours == 0 && days.isOpen(there.toLocalDate())
        ? met
        : days.firstOpen(there)
            .map(at -> at.atZone(shop.zone()).toInstant())
            .filter(at -> at.isAfter(met))
            .orElse(met);
  }
}
