package curewindow.why;

import curewindow.cure.CureCase;
import curewindow.cure.ExplanationCause;
import curewindow.cure.Release;
import curewindow.cure.Stay;
import curewindow.shop.FittedItem;
import curewindow.shop.Hold;
import curewindow.shop.PastVisit;
import curewindow.told.JobView;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Writes the explanation as lines for a terminal. */
final class WhyText {

  private final JobView view;

  private final ExplanationInputs inputs;
  private final ExplanationChoice look;
  private final Naming names;
  private final Lines lines;

  WhyText(ExplanationInputs inputs, ExplanationChoice look) {
    this.view = inputs.view();
    this.inputs = inputs;
    this.look = look;
    this.names = new Naming(inputs);
    this.lines = new Lines(look.plain());
  }

  String text() {
    trial();
    Summary.say(inputs, look, lines);
    heading();
    beforePickup();
    List<Release> shown =
        view.timeline().releases().stream().filter(r -> look.shows(r.hold())).toList();
    Optional<String> first = mattersMost();
    shown.stream().filter(r -> look.draws(r.hold(), first)).forEach(this::drawn);
    shown.stream().filter(r -> !look.draws(r.hold(), first)).forEach(this::told);
    glossary(shown);
    return lines.text();
  }

  /** The hold that stands first before the customer. */
  private Optional<String> mattersMost() {
    return view.timeline().releases().stream()
        .map(Release::hold)
        .min(Comparator.comparingInt(this::rank));
  }

  private int rank(String hold) {
    Hold known = view.catalogue().holds().get(hold);
    return known == null ? Integer.MAX_VALUE : known.rank();
  }

  private void trial() {
    Trial trial = inputs.trial();
    if (!trial.any()) {
      return;
    }
    lines.say(0, "A TRIAL: not the job as its file has it, and nothing is printed from it.");
    trial
        .parking()
        .ifPresent(
            p ->
                lines.say(2, "tried: parked %s by day, %s by night", p.day().id(), p.night().id()));
    trial.place().ifPresent(p -> lines.say(2, "tried: the car stands in %s", view.place().name()));
    trial.finished().ifPresent(at -> lines.say(2, "tried: all work finished %s", names.when(at)));
    if (trial.pickup().isPresent() || trial.finished().isPresent()) {
      String how = trial.pickup().isPresent() ? "tried" : "moved along, as long in the bay";
      lines.say(2, "%s: pickup %s", how, names.when(view.job().pickup()));
    }
    lines.gap();
  }

  private void heading() {
    CureCase curing = inputs.curing();
    lines.say(0, "Weather: %s", view.place().source());
    lines.say(
        0,
        "In the bay (%.0f C, %.0f%% RH) %s",
        curing.bay().temperature(),
        curing.bay().relativeHumidity(),
        stays(curing.stays()));
    items();
    view.job().seen().forEach(this::seen);
    counts();
  }

  private void items() {
    int number = 1;
    for (FittedItem item : view.job().items()) {
      String spots = item.spots().stream().map(names::spot).collect(Collectors.joining(", "));
      lines.say(
          0,
          "Item %d: %s on %s, finished %s",
          number++,
          names.film(item),
          spots,
          names.when(item.finished()));
      item.lamp()
          .ifPresent(
              l ->
                  lines.say(2, "under the lamp: %.0f minutes at %.0f C", l.minutes(), l.surface()));
    }
  }

  private String stays(List<Stay> stays) {
    return stays.size() == 1
        ? "until pickup, " + names.when(stays.get(0).pickup())
        : stays.stream()
            .map(stay -> names.when(stay.in()) + " to " + names.when(stay.pickup()))
            .collect(Collectors.joining("; "));
  }

  private void seen(PastVisit visit) {
    String what = visit.what().isEmpty() ? "all that was due" : String.join(", ", visit.what());
    String note = visit.note().isEmpty() ? "" : "; " + visit.note();
    lines.say(0, "Seen %s: %s, %s%s", visit.day(), what, visit.result().id(), note);
  }

  private void counts() {
    List<Release> all = view.timeline().releases();
    long limits = all.stream().filter(r -> r.end() instanceof Release.AtLimit).count();
    lines.say(
        0, limits == 0 ? "%d dates" : "%d dates, %d of them at the limit", all.size(), limits);
  }

  /** Said whatever is drawn: it is for the shop, as long as the car is there. */
  private void beforePickup() {
    inputs
        .before()
        .map(before -> PickupAdvice.of(before, view, inputs.curing()))
        .ifPresent(
            told -> {
              lines.gap();
              lines.say(0, "Before pickup, for what nobody can keep to on the way home:");
              told.facts().forEach(fact -> lines.say(2, "%s", fact));
              lines.say(2, "%s", told.advice());
            });
  }

  private String setBy(Release.AtLimit limit) {
    return limit.full().isAfter(limit.at())
        ? String.format(
            Locale.ROOT,
            "by then %.0f%% cured in the median weather, fully about %s",
            Math.min(99, 100 * limit.share()),
            names.when(limit.full()))
        : "by then fully cured in the median weather";
  }

  private void dates(Release release) {
    lines.gap();
    lines.say(0, "%s", names.hold(release.hold()));
    lines.say(2, "%s %s", Naming.verdict(release), names.end(release));
    if (release.end() instanceof Release.AtLimit limit) {
      lines.say(2, "%s", setBy(limit));
    } else if (release.end() instanceof Release.SafeBy) {
      lines.say(2, "likely %s", names.when(release.likely()));
    } else if (release.end() instanceof Release.Seen) {
      lines.say(2, "what follows is how long it would have been held");
    }
    release
        .waitsFor()
        .ifPresent(
            other -> lines.say(2, "over sooner by itself, but waits for %s", names.hold(other)));
  }

  private void drawn(Release release) {
    dates(release);
    new Drawing(names, lines, view.timeline().zone())
        .draw(inputs.explanations().apply(release.hold()));
  }

  private void told(Release release) {
    dates(release);
    reason(release.because(), "nine-in-ten weather");
    reason(release.becauseLikely(), "median weather");
  }

  private void reason(ExplanationCause because, String weather) {
    lines.say(2, "%s: %s", weather, names.item(because.item(), because.spot()));
    if (because.driver().isEmpty()) {
      lines.say(4, "the floor decides: never sooner, whatever the weather");
      lines.say(4, "by then %s", dose(because));
    } else if (!because.isMet()) {
      lines.say(4, "waits for %s", Naming.driver(because.driver().get()));
      lines.say(4, "not done by the limit: %s", dose(because));
    } else {
      lines.say(4, "waits for %s", Naming.driver(because.driver().get()));
      lines.say(
          4,
          "%.1f reference hours at %.3f an hour = %s",
          because.needHours() - because.lampHours(),
          because.meanRate(),
          real(because));
    }
    if (because.lampHours() > 0) {
      lines.say(
          4,
          "the lamp gave %.1f of the %.1f reference hours needed",
          because.lampHours(),
          because.needHours());
    }
    lines.say(
        4,
        "on average: air %.1f C, film %.1f C, dew point %.1f C",
        because.meanAir(),
        because.meanFilm(),
        because.meanDewPoint());
  }

  /** What was gained of the need. */
  private static String dose(ExplanationCause because) {
    return String.format(
        Locale.ROOT,
        "%.1f reference hours of the %.1f needed, %.3f an hour in %s",
        because.gainedHours(),
        because.needHours(),
        because.meanRate(),
        real(because));
  }

  private static String real(ExplanationCause because) {
    return String.format(
        Locale.ROOT,
        "%.1f real hours, %.1f of them in the bay",
        because.realHours(),
        because.bayHours());
  }

  private void glossary(List<Release> shown) {
    lines.gap();
    lines.say(
        0,
        "Reference hours are hours at 23 C and 50% relative humidity. \"Likely\" is the median"
            + " weather, \"safe by\" holds in nine of ten; safe-by times are rounded up to a whole"
            + " hour between 8:00 and 20:00 where the car is.");
    if (shown.stream().anyMatch(r -> r.end() instanceof Release.AtLimit)) {
      lines.say(
          0,
          "The limit is the longest the trade asks anyone to wait. If the weather falls short,"
              + " the wait still ends, and the customer is told where to go easy.");
    }
  }
}
