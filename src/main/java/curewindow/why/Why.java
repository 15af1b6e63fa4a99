package curewindow.why;

import curewindow.cure.Because;
import curewindow.cure.CureCase;
import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.page.JobView;
import curewindow.shop.FittedItem;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Explains the dates of a job: which item and which driver decide each, the weather that went in,
 * and reference hours against real hours.
 */
public final class Why {

  private final JobView view;
  private final CureCase curing;

  private Why(JobView view, CureCase curing) {
    this.view = view;
    this.curing = curing;
  }

  /**
   * The explanation of a job's dates.
   *
   * @param view the job with its dates
   * @param curing what the dates were computed from
   * @return the explanation
   */
  public static Why of(JobView view, CureCase curing) {
    return new Why(view, curing);
  }

  /**
   * The explanation as text for a terminal, in English.
   *
   * @return lines, each ended by a line feed
   */
  public String text() {
    return new WhyText(view, curing).text();
  }

  /**
   * The explanation as JSON with stable field names, described in {@code docs/why.md}.
   *
   * @return one JSON object, indented, ended by a line feed
   */
  public String json() {
    return WhyJson.write(data());
  }

  private Map<String, Object> data() {
    ZoneId zone = view.timeline().zone();
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("job", view.job().id());
    data.put("place", place());
    data.put(
        "parking",
        ordered(
            "day", curing.parking().day().id(),
            "night", curing.parking().night().id()));
    data.put("paint", curing.paint().id());
    data.put(
        "bay",
        ordered(
            "temperatureC", curing.bay().temperature(),
            "relativeHumidityPercent", curing.bay().relativeHumidity()));
    data.put("bondEnergyJPerMol", curing.bondEnergy());
    data.put("pickup", local(view.job().pickup(), zone));
    data.put("items", items(zone));
    data.put("holds", view.timeline().releases().stream().map(r -> hold(r, zone)).toList());
    return data;
  }

  private Map<String, Object> place() {
    return ordered(
        "id", view.place().id(),
        "name", view.place().name(),
        "latitude", view.place().latitude(),
        "longitude", view.place().longitude(),
        "heightM", view.place().height(),
        "zone", view.place().zone().getId(),
        "source", view.place().source());
  }

  private List<Map<String, Object>> items(ZoneId zone) {
    List<Map<String, Object>> items = new ArrayList<>();
    for (FittedItem item : view.job().items()) {
      items.add(
          ordered(
              "service", item.service(),
              "film", item.film(),
              "spots", item.spots(),
              "finished", local(item.finished(), zone)));
    }
    return items;
  }

  private static Map<String, Object> hold(Release release, ZoneId zone) {
    Map<String, Object> hold =
        ordered(
            "hold", release.hold(),
            "kind", release.kind().id(),
            "state", state(release),
            "end", local(release.end().at(), zone),
            "likely", local(release.likely(), zone));
    hold.put("because", because(release.because()));
    hold.put("becauseLikely", because(release.becauseLikely()));
    return hold;
  }

  /** The state's name in the data: what the published end means. */
  static String state(Release release) {
    if (release.end() instanceof Release.AskUs) {
      return "ask-us";
    }
    return release.kind() == HoldKind.VISIT ? "come-in-from" : "safe-by";
  }

  private static Map<String, Object> because(Because because) {
    return ordered(
        "item", because.item(),
        "spot", because.spot(),
        "driver", because.driver().map(d -> d.id()).orElse("floor"),
        "referenceHours", rounded(because.needHours()),
        "realHours", rounded(because.realHours()),
        "bayHours", rounded(because.bayHours()),
        "meanAirC", rounded(because.meanAir()),
        "meanFilmC", rounded(because.meanFilm()),
        "meanDewPointC", rounded(because.meanDewPoint()),
        "referenceHoursPerHour", Math.round(because.meanRate() * 1e4) / 1e4);
  }

  private static double rounded(double value) {
    return Math.round(value * 100) / 100.0;
  }

  private static String local(Instant at, ZoneId zone) {
    return OffsetDateTime.ofInstant(at, zone).toString();
  }

  private static Map<String, Object> ordered(Object... namesAndValues) {
    Map<String, Object> map = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      map.put((String) namesAndValues[i], namesAndValues[i + 1]);
    }
    return map;
  }
}
