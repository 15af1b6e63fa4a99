package curewindow.why;

import curewindow.cure.Because;
import curewindow.cure.CureCase;
import curewindow.cure.Driver;
import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.page.JobView;
import curewindow.shop.FittedItem;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;

/** Writes the explanation as lines for a terminal. */
final class WhyText {

  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("EEE d MMM yyyy HH:mm", Locale.ENGLISH);
  private static final Map<Driver, String> DRIVERS =
      Map.of(
          Driver.DRY_OUT, "mounting water drying out through the film (dry-out)",
          Driver.BOND, "the adhesive gaining strength (bond)",
          Driver.CROSSLINK, "the coating hardening (crosslink)");

  private final JobView view;
  private final CureCase curing;
  private final StringBuilder out = new StringBuilder();

  WhyText(JobView view, CureCase curing) {
    this.view = view;
    this.curing = curing;
  }

  String text() {
    heading();
    for (Release release : view.timeline().releases()) {
      release(release);
    }
    line("");
    line("Reference hours are hours at 23 C and 50 % relative humidity. \"Likely\" is the median");
    line("weather, \"safe by\" holds in nine of ten; safe-by times are rounded up to a whole hour");
    line("between 8:00 and 20:00 where the car is.");
    return out.toString();
  }

  private void heading() {
    line("Job %s, %s", view.job().id(), view.job().car().text());
    line(
        "Place: %s (%.2f, %.2f, %.0f m, %s)",
        view.place().name(),
        view.place().latitude(),
        view.place().longitude(),
        view.place().height(),
        view.place().zone());
    line("Weather: %s", view.place().source());
    line(
        "Parking: %s by day, %s by night; %s paint",
        curing.parking().day().id(), curing.parking().night().id(), curing.paint().id());
    line(
        "In the bay (%.0f C, %.0f %% RH) until pickup, %s",
        curing.bay().temperature(), curing.bay().relativeHumidity(), when(view.job().pickup()));
    int number = 1;
    for (FittedItem item : view.job().items()) {
      line(
          "Item %d: %s on %s, finished %s",
          number++, film(item), String.join(", ", item.spots()), when(item.finished()));
    }
  }

  private void release(Release release) {
    line("");
    line("%s  [%s]", view.words().text("hold." + release.hold() + ".label"), release.hold());
    line("  %s %s", verdict(release), when(release.end().at()));
    line("  likely %s", when(release.likely()));
    reason(release.because(), "nine-in-ten weather");
    reason(release.becauseLikely(), "median weather");
  }

  private static String verdict(Release release) {
    if (release.end() instanceof Release.AskUs) {
      return "the weather may not be enough in time: ask us, look-by";
    }
    return release.kind() == HoldKind.VISIT ? "come in from" : "safe by";
  }

  private void reason(Because because, String weather) {
    FittedItem item = view.job().items().get(because.item());
    String cause =
        because
            .driver()
            .map(d -> "waits for " + DRIVERS.get(d))
            .orElse("the floor decides: never sooner, whatever the weather");
    line("  %s: item %d, %s on %s", weather, because.item() + 1, film(item), because.spot());
    line("    %s", cause);
    line(
        "    %.1f reference hours at %.3f an hour = %.1f real hours, %.1f of them in the bay",
        because.needHours(), because.meanRate(), because.realHours(), because.bayHours());
    line(
        "    on the mean: air %.1f C, film %.1f C, dew point %.1f C",
        because.meanAir(), because.meanFilm(), because.meanDewPoint());
  }

  private String film(FittedItem item) {
    return view.catalogue().films().containsKey(item.film())
        ? view.catalogue().films().get(item.film()).name()
        : item.film();
  }

  private String when(Instant at) {
    ZonedDateTime there = at.atZone(view.timeline().zone());
    return WHEN.format(there);
  }

  private void line(String format, Object... values) {
    out.append(values.length == 0 ? format : String.format(Locale.ROOT, format, values))
        .append('\n');
  }
}
