package curewindow.why;

import curewindow.cure.AtPickup;
import curewindow.cure.CureCase;
import curewindow.cure.ExplanationCause;
import curewindow.cure.Lamp;
import curewindow.cure.Release;
import curewindow.cure.Stay;
import curewindow.shop.FittedItem;
import curewindow.told.BeforePickup;
import curewindow.told.JobView;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The explanation as names and values, as {@code docs/why.md} describes them. */
final class WhyData {

  private final JobView view;
  private final ExplanationInputs inputs;
  private final ExplanationChoice look;
  private final ZoneId zone;

  WhyData(ExplanationInputs inputs, ExplanationChoice look) {
    this.view = inputs.view();
    this.inputs = inputs;
    this.look = look;
    this.zone = view.timeline().zone();
  }

  Map<String, Object> data() {
    CureCase curing = inputs.curing();
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("job", view.job().id());
    data.put("trial", trial());
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
            "relativeHumidityPercent", curing.bay().relativeHumidity(),
            "lampSurfaceC", curing.bay().lamp()));
    data.put("bondEnergyJPerMol", curing.bondEnergy());
    data.put("pickup", ExplanationWayData.local(view.job().pickup(), zone));
    data.put("stays", curing.stays().stream().map(this::stay).toList());
    data.put("items", items());
    data.put("seen", seen());
    data.put("beforePickup", beforePickup());
    data.put(
        "holds",
        view.timeline().releases().stream()
            .filter(r -> look.shows(r.hold()))
            .map(this::hold)
            .toList());
    return data;
  }

  private Map<String, Object> trial() {
    Trial trial = inputs.trial();
    return ordered(
        "triedParking", trial.parking().isPresent(),
        "triedPlace", trial.place().isPresent(),
        "triedFinished", trial.finished().isPresent(),
        "triedPickup", trial.pickup().isPresent());
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

  private List<Map<String, Object>> items() {
    List<Map<String, Object>> items = new ArrayList<>();
    for (FittedItem item : view.job().items()) {
      Map<String, Object> data =
          ordered(
              "service", item.service(),
              "film", item.film(),
              "spots", item.spots(),
              "finished", ExplanationWayData.local(item.finished(), zone));
      data.put("lamp", item.lamp().map(WhyData::lamp).orElse(null));
      items.add(data);
    }
    return items;
  }

  private Map<String, Object> stay(Stay stay) {
    return ordered(
        "in", ExplanationWayData.local(stay.in(), zone),
        "out", ExplanationWayData.local(stay.pickup(), zone));
  }

  private List<Map<String, Object>> seen() {
    return view.job().seen().stream()
        .map(
            visit ->
                ordered(
                    "day", visit.day().toString(),
                    "what", visit.what(),
                    "result", visit.result().id(),
                    "note", visit.note()))
        .toList();
  }

  private Map<String, Object> beforePickup() {
    return inputs
        .before()
        .map(
            before -> {
              Map<String, Object> data =
                  ordered("lacking", before.lacking().stream().map(WhyData::lacking).toList());
              data.put("bayHours", before.bayHours().orElse(null));
              data.put("warmBay", before.warmBay().map(WhyData::warmBay).orElse(null));
              data.put("lamp", before.lamp().map(WhyData::lamp).orElse(null));
              data.put("lampStayHours", before.lampStayHours());
              return data;
            })
        .orElse(null);
  }

  private static Map<String, Object> lacking(AtPickup need) {
    return ordered(
        "hold", need.hold(),
        "item", need.item(),
        "spot", need.spot(),
        "driver", need.driver().id(),
        "needReferenceHours", ExplanationWayData.rounded(need.needHours()),
        "hasReferenceHours", ExplanationWayData.rounded(need.hasHours()),
        "floorHours", ExplanationWayData.rounded(need.floorHours()));
  }

  private static Map<String, Object> warmBay(BeforePickup.WarmBay bay) {
    return ordered("temperatureC", bay.temperature(), "hours", bay.hours());
  }

  private static Map<String, Object> lamp(Lamp lamp) {
    return ordered("surfaceC", lamp.surface(), "minutes", lamp.minutes());
  }

  private Map<String, Object> hold(Release release) {
    Map<String, Object> hold =
        ordered(
            "hold", release.hold(),
            "kind", release.kind().id(),
            "state", release.end().id(),
            "end", ExplanationWayData.local(release.end().at(), zone),
            "likely", ExplanationWayData.local(release.likely(), zone));
    ExplanationWayData.putLimit(hold, release, zone);
    hold.put("waitsForHold", release.waitsFor().orElse(null));
    hold.put("because", because(release.because()));
    hold.put("becauseLikely", because(release.becauseLikely()));
    hold.putAll(new ExplanationWayData(zone).of(inputs.explanations().apply(release.hold())));
    return hold;
  }

  private static Map<String, Object> because(ExplanationCause because) {
    return ordered(
        "item", because.item(),
        "spot", because.spot(),
        "driver", because.driver().map(d -> d.id()).orElse("floor"),
        "referenceHours", ExplanationWayData.rounded(because.needHours()),
        "lampReferenceHours", ExplanationWayData.rounded(because.lampHours()),
        "realHours", ExplanationWayData.rounded(because.realHours()),
        "bayHours", ExplanationWayData.rounded(because.bayHours()),
        "meanAirC", ExplanationWayData.rounded(because.meanAir()),
        "meanFilmC", ExplanationWayData.rounded(because.meanFilm()),
        "meanDewPointC", ExplanationWayData.rounded(because.meanDewPoint()),
        "referenceHoursPerHour", ExplanationWayData.fine(because.meanRate()),
        "met", because.isMet());
  }

  /** Names and values in turn, in this order. */
  static Map<String, Object> ordered(Object... namesAndValues) {
    Map<String, Object> map = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      map.put((String) namesAndValues[i], namesAndValues[i + 1]);
    }
    return map;
  }
}
