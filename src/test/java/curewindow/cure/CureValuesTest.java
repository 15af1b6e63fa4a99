package curewindow.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CureValuesTest {

  private static final Instant NOON = Instant.parse("2026-01-15T12:00:00Z");

  private static void refused(String name, Runnable maker) {
    String message = assertThrows(IllegalArgumentException.class, maker::run).getMessage();
    assertTrue(message.contains(name), message);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, -10.1, 50.1, Double.POSITIVE_INFINITY})
  void refusesAbsurdBays(double value) {
    refused("temperature", () -> new Bay(value, 50));
    refused("relativeHumidity", () -> new Bay(20, value > 50 ? value + 50 : value));
    refused("relativeHumidity", () -> new Bay(20, 0.9));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, 0, -1, 20_000.1, Double.POSITIVE_INFINITY})
  void refusesAbsurdNeeds(double need) {
    refused("need bond", () -> Cases.rule("wash", Map.of(Driver.BOND, need), 1, 2));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, -0.1, 20_000.1, Double.NEGATIVE_INFINITY})
  void refusesAbsurdHours(double hours) {
    refused("wash: floor", () -> Cases.rule("wash", Map.of(Driver.BOND, 1.0), hours, 48));
    refused("limit", () -> Cases.rule("wash", Map.of(Driver.BOND, 1.0), 0, hours));
  }

  @Test
  void refusesRulesOutOfOrder() {
    refused("out of order", () -> Cases.rule("wash", Map.of(Driver.BOND, 1.0), 48, 24));
    refused("at least one driver", () -> Cases.rule("wash", Map.of(), 24, 48));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, 0, -1, 20.1})
  void refusesAbsurdPermeances(double permeance) {
    refused(
        "permeance",
        () -> new CureItem(0, "hood", Exposure.OUTSIDE_UP, permeance, NOON, List.of()));
    refused("item -1", () -> new CureItem(-1, "hood", Exposure.OUTSIDE_UP, 1, NOON, List.of()));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, 29.9, 100.1})
  void refusesAbsurdLamps(double surface) {
    refused("lamp", () -> new Bay(21, 50, surface));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, -1, Double.POSITIVE_INFINITY})
  void refusesAbsurdLampDoses(double hours) {
    Map<Driver, Double> lamp = Map.of(Driver.BOND, hours);
    refused(
        "lamp bond", () -> new CureItem(0, "hood", Exposure.OUTSIDE_UP, 1, NOON, lamp, List.of()));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, 29_999, 80_001})
  void refusesAbsurdEnergies(double energy) {
    refused(
        "bondEnergy",
        () ->
            new CureCase(
                List.of(),
                List.of(new Stay(NOON, NOON)),
                Cases.OUTSIDE,
                PaintTone.MID,
                Cases.place("UTC"),
                Cases.REFERENCE_BAY,
                energy));
  }

  @Test
  void knowsTheNamesUsedInFiles() {
    assertNames(Driver.ids(), Driver::of, Driver::id, Driver.values());
    assertNames(Exposure.ids(), Exposure::of, Exposure::id, Exposure.values());
    assertNames(HoldKind.ids(), HoldKind::of, HoldKind::id, HoldKind.values());
    assertNames(PaintTone.ids(), PaintTone::of, PaintTone::id, PaintTone.values());
    assertNames(Parking.ids(), Parking::of, Parking::id, Parking.values());
    assertEquals(List.of("dry-out", "bond", "crosslink"), Driver.ids());
  }

  private static <T> void assertNames(
      List<String> ids, Function<String, Optional<T>> of, Function<T, String> id, T[] values) {
    assertEquals(values.length, ids.size());
    for (T value : values) {
      assertEquals(Optional.of(value), of.apply(id.apply(value)));
    }
    assertEquals(Optional.empty(), of.apply("elsewhere"));
  }
}
