package curewindow.cure;

import static curewindow.cure.Driver.BOND;
import static curewindow.cure.Driver.CROSSLINK;
import static curewindow.cure.Driver.DRY_OUT;

import java.util.Map;

/** Holds of the starting catalogue, typed again here; common practice, no source. */
enum StartingHolds {
  WINDOWS_UP("tint: windows up", Exposure.BEHIND_GLASS, Map.of(BOND, 48.0), 24, 10),
  DEFROSTER(
      "tint: rear defroster", Exposure.BEHIND_GLASS, Map.of(BOND, 72.0, DRY_OUT, 96.0), 72, 14),
  INSIDE_GLASS(
      "tint: clean inside glass",
      Exposure.BEHIND_GLASS,
      Map.of(BOND, 168.0, DRY_OUT, 240.0),
      168,
      30),
  HAZE("tint: haze settles", Exposure.BEHIND_GLASS, Map.of(DRY_OUT, 336.0), 168, 180),
  FILM_WASH("paint film: first hand wash", Exposure.OUTSIDE_UP, Map.of(BOND, 96.0), 72, 14),
  FILM_POCKETS(
      "paint film: water pockets settle", Exposure.OUTSIDE_UP, Map.of(DRY_OUT, 240.0), 72, 180),
  COATING_DRY("coating: keep fully dry", Exposure.OUTSIDE_UP, Map.of(CROSSLINK, 24.0), 12, 3),
  COATING_WASH("coating: first hand wash", Exposure.OUTSIDE_UP, Map.of(CROSSLINK, 96.0), 120, 14),
  COATING_FULL("coating: full cure", Exposure.OUTSIDE_UP, Map.of(CROSSLINK, 336.0), 168, 45);

  private final String words;
  private final Exposure exposure;
  private final HoldRule rule;

  StartingHolds(
      String words, Exposure exposure, Map<Driver, Double> need, double floor, double limitDays) {
    this.words = words;
    this.exposure = exposure;
    HoldKind kind =
        words.endsWith("settles") || words.endsWith("settle") ? HoldKind.SETTLE : HoldKind.HOLD;
    this.rule = new HoldRule(words, kind, need, floor, 24 * limitDays);
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
