package curewindow.cure;

import static curewindow.cure.Driver.BOND;
import static curewindow.cure.Driver.CROSSLINK;
import static curewindow.cure.Driver.DRY_OUT;

import java.util.Map;

/** Holds of the starting catalogue, typed again here; common practice, no source. */
enum StartingHolds {
  WINDOWS_UP("tint: windows up", Exposure.BEHIND_GLASS, Map.of(BOND, 48.0), 24, 336),
  DEFROSTER(
      "tint: rear defroster", Exposure.BEHIND_GLASS, Map.of(BOND, 96.0, DRY_OUT, 168.0), 72, 720),
  INSIDE_GLASS(
      "tint: clean inside glass",
      Exposure.BEHIND_GLASS,
      Map.of(BOND, 168.0, DRY_OUT, 240.0),
      168,
      720),
  HAZE("tint: haze settles", Exposure.BEHIND_GLASS, Map.of(DRY_OUT, 336.0), 72, 1440),
  FILM_WASH("paint film: first hand wash", Exposure.OUTSIDE_UP, Map.of(BOND, 120.0), 72, 336),
  FILM_POCKETS(
      "paint film: water pockets settle", Exposure.OUTSIDE_UP, Map.of(DRY_OUT, 240.0), 72, 1080),
  COATING_DRY("coating: keep fully dry", Exposure.OUTSIDE_UP, Map.of(CROSSLINK, 24.0), 12, 72),
  COATING_WASH("coating: first hand wash", Exposure.OUTSIDE_UP, Map.of(CROSSLINK, 168.0), 120, 336),
  COATING_FULL("coating: full cure", Exposure.OUTSIDE_UP, Map.of(CROSSLINK, 336.0), 168, 720);

  private final String words;
  private final Exposure exposure;
  private final HoldRule rule;

  StartingHolds(
      String words, Exposure exposure, Map<Driver, Double> need, double floor, double lookBy) {
    this.words = words;
    this.exposure = exposure;
    this.rule = new HoldRule(words, HoldKind.HOLD, need, floor, lookBy);
  }

  String words() {
    return words;
  }

  Exposure exposure() {
    return exposure;
  }

  HoldRule rule() {
    return rule;
  }
}
