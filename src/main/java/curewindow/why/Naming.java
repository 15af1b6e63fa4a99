package curewindow.why;

import curewindow.cure.Driver;
import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.shop.FittedItem;
import curewindow.told.JobView;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;

/** The names of things in an explanation, in English. */
final class Naming {

  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("EEE d MMM yyyy HH:mm", Locale.ENGLISH);
  private static final Map<Driver, String> DRIVERS =
      Map.of(
          Driver.DRY_OUT, "install water drying out through the film (dry-out)",
          Driver.BOND, "the adhesive gaining strength (bond)",
          Driver.CROSSLINK, "the coating hardening (crosslink)");

  private final JobView view;

  Naming(ExplanationInputs inputs) {
    this.view = inputs.view();
  }

  String hold(String id) {
    return view.words().text("hold." + id + ".label") + "  [" + id + "]";
  }

  String spot(String id) {
    return view.words().has("spot." + id) ? view.words().text("spot." + id) : id;
  }

  String item(int position, String spot) {
    FittedItem item = view.job().items().get(position);
    return "item " + (position + 1) + ", " + film(item) + " on " + spot(spot);
  }

  String film(FittedItem item) {
    return view.catalogue().films().containsKey(item.film())
        ? view.catalogue().films().get(item.film()).name()
        : item.film();
  }

  String when(Instant at) {
    return when(at, view.timeline().zone());
  }

  /** The published end of a hold. */
  String end(Release release) {
    return when(release.end().at());
  }

  private static String when(Instant at, ZoneId zone) {
    return WHEN.format(at.atZone(zone));
  }

  static String driver(Driver driver) {
    return DRIVERS.get(driver);
  }

  /** What the published end of a hold means; the time follows. */
  static String verdict(Release release) {
    if (release.end() instanceof Release.AtLimit limit) {
      return limit.isGentle() ? "at the limit, gently from" : "at the limit,";
    }
    if (release.end() instanceof Release.BySeason) {
      return "by the season, in the median weather";
    }
    if (release.end() instanceof Release.Seen) {
      return "over, as the shop has looked,";
    }
    return release.kind() == HoldKind.HOLD ? "safe by" : "settled by";
  }
}
