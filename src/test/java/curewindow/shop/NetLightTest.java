package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Light through glass and film, against published figures. */
class NetLightTest {

  private static FittedItem item(OptionalDouble measured, OptionalDouble glass) {
    return new FittedItem(
        "tint",
        "film",
        List.of("front-door-glass"),
        Instant.EPOCH,
        measured,
        glass,
        Optional.empty(),
        OptionalInt.empty(),
        Optional.empty());
  }

  private static Optional<Film> film(OptionalDouble vlt, OptionalDouble reflectance) {
    return Optional.of(
        new Film(
            "film",
            "tint",
            "Film",
            "PET",
            OptionalDouble.empty(),
            13.6,
            vlt,
            reflectance,
            false,
            Optional.empty()));
  }

  private static OptionalDouble of(double value) {
    return OptionalDouble.of(value);
  }

  private static final OptionalDouble NONE = OptionalDouble.empty();

  /** EN 410 / ISO 9050, formula from memory: two panes of 0.89 that throw back 0.08 each. */
  @Test
  void twoPanes() {
    assertEquals(0.797, NetLight.layers(0.89, 0.89, 0.08, 0.08), 0.0005);
  }

  /** A film maker's note to dealers: film of 35 percent on glass of 80 percent, net 28 percent. */
  @Test
  void filmOnGlass() {
    NetLight net = NetLight.of(item(NONE, of(80)), film(of(35), NONE)).orElseThrow();
    assertEquals(28, net.percent(), 1e-9);
    assertEquals(NetLight.How.COMPUTED, net.how());
  }

  /**
   * 49 CFR 571.205 asks for 70 percent where it applies: 78 percent glass needs 89.7 (computed).
   */
  @Test
  void clearFilmOnWindshieldGlass() {
    assertTrue(light(89.7, 78) < 70);
    assertTrue(light(89.75, 78) >= 70);
  }

  private static double light(double film, double glass) {
    return NetLight.of(item(NONE, of(glass)), film(of(film), NONE)).orElseThrow().percent();
  }

  @Test
  void aFilmThatThrowsLightBackLetsALittleMoreThroughThanTheProduct() {
    NetLight net = NetLight.of(item(NONE, of(80)), film(of(35), of(40))).orElseThrow();
    assertEquals(100 * 0.8 * 0.35 / (1 - 0.08 * 0.4), net.percent(), 1e-9);
  }

  @Test
  void glassAndFilmNeverLetMoreThroughThanTheGlass() {
    assertEquals(
        80, NetLight.of(item(NONE, of(80)), film(of(100), of(20))).orElseThrow().percent(), 1e-9);
  }

  @Test
  void whatWasMeasuredGoesFirst() {
    NetLight net = NetLight.of(item(of(27.5), of(80)), film(of(35), NONE)).orElseThrow();
    assertEquals(new NetLight(27.5, NetLight.How.MEASURED), net);
  }

  @Test
  void withoutGlassItIsTheFilmAlone() {
    assertEquals(
        Optional.of(new NetLight(35, NetLight.How.FILM)),
        NetLight.of(item(NONE, NONE), film(of(35), NONE)));
    assertEquals(Optional.empty(), NetLight.of(item(NONE, of(80)), film(NONE, NONE)));
  }
}
