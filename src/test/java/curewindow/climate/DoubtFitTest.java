package curewindow.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import curewindow.climate.DoubtFit.Departure;
import java.io.IOException;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The doubt of built-in places: fitted to the months of some stations, held against others'. */
class DoubtFitTest {

  private static List<Station> stations(boolean usa, boolean heldOut) throws IOException {
    assertTrue(Station.areThere() || !Boolean.getBoolean("judge"), "no months of stations");
    assumeTrue(Station.areThere(), "no months of stations");
    return Station.all().stream().filter(s -> s.usa() == usa && s.heldOut() == heldOut).toList();
  }

  /** The fit finds the spreads that departures were drawn with. */
  @Test
  void findsWhatDeparturesWereDrawnWith() {
    SplitMix random = new SplitMix(7);
    List<Departure> drawn = new ArrayList<>();
    Place builtIn = Places.builtIn().get("denver");
    MonthNormals month = new MonthNormals(0, 10, 0, 4);
    for (int i = 0; i < 20_000; i++) {
      double km = 400 * random.nextShare();
      double height = builtIn.height() + 1000 * random.nextNormal();
      Place place =
          new Place(
              "x",
              "X",
              40,
              -105,
              Math.max(0, height),
              ZoneOffset.UTC,
              Collections.nCopies(12, month),
              "invented");
      Station station = new Station(place, new Places.Near(builtIn, km), true, false);
      Doubt doubt = Doubt.OF_BUILT_IN.away(km, place.height() - builtIn.height());
      drawn.add(
          new Departure(
              station,
              doubt.warmth() * random.nextNormal(),
              doubt.dryness() * random.nextNormal(),
              Double.NaN));
    }
    DoubtFit fit = DoubtFit.to(drawn);
    assertEquals(1.7, fit.near().warmth(), 0.1);
    assertEquals(1.4, fit.far().warmth(), 0.1);
    assertEquals(0.16, fit.near().dryness(), 0.01);
    assertEquals(0.09, fit.far().dryness(), 0.01);
    assertEquals(0, fit.near().sun());
  }

  /**
   * What the code has, against the fit to one half: about as wide near by and with the distance,
   * but wider for the sun near by, as {@code docs/climate.md} tells. The height is left to the
   * table there: few stations are high, and the fit of it is loose.
   */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  @Tag("judge")
  @EnabledIfSystemProperty(named = "judge", matches = "true", disabledReason = "asked for by name")
  void theDoubtIsFittedToOneHalf(boolean usa) throws IOException {
    DoubtFit fit = DoubtFit.to(DoubtFit.departures(stations(usa, false)));
    print(usa, "fitted to", fit);
    print(usa, "held out", DoubtFit.to(DoubtFit.departures(stations(usa, true))));
    Doubt near = Doubt.OF_BUILT_IN;
    Doubt far = near.away(Doubt.NEAR_KM + 100, 0);
    assertEquals(fit.near().warmth(), near.warmth(), 0.2, "warmth near by");
    assertEquals(fit.near().dryness(), near.dryness(), 0.03, "dryness near by");
    assertTrue(near.sun() >= fit.near().sun() && near.sun() <= fit.near().sun() + 0.06, "sun");
    assertEquals(fit.far().warmth(), more(far, near, Doubt::warmth), 0.4, "warmth far off");
    assertEquals(fit.far().dryness(), more(far, near, Doubt::dryness), 0.06, "dryness far off");
    assertEquals(fit.far().sun(), more(far, near, Doubt::sun), 0.05, "sun far off");
  }

  private static double more(Doubt far, Doubt near, ToDoubleFunction<Doubt> of) {
    return Math.sqrt(Math.pow(of.applyAsDouble(far), 2) - Math.pow(of.applyAsDouble(near), 2));
  }

  private static void print(boolean usa, String half, DoubtFit fit) {
    for (Doubt d : List.of(fit.near(), fit.far(), fit.high())) {
      System.out.printf(
          Locale.ROOT,
          "%-10s %-10s %.2f K %.3f %.3f%n",
          usa ? "USA" : "elsewhere",
          half,
          d.warmth(),
          d.dryness(),
          d.sun());
    }
  }

  /** The measured months of stations that were not fitted to depart by no more than the doubt. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void monthsElsewhereLieWithinTheDoubt(boolean usa) throws IOException {
    List<Station> near =
        stations(usa, true).stream().filter(s -> s.near().distanceKm() <= Doubt.NEAR_KM).toList();
    assertTrue(near.size() >= 20, "only " + near.size() + " stations");
    List<Departure> departures = DoubtFit.departures(near);
    within("warmth", departures, d -> d.warmth() / doubt(d).warmth());
    within("dryness", departures, d -> d.dryness() / doubt(d).dryness());
    within("sun", departures, d -> d.sun() / doubt(d).sun());
  }

  private static Doubt doubt(Departure departure) {
    Station s = departure.station();
    return Doubt.OF_BUILT_IN.away(
        s.near().distanceKm(), s.place().height() - s.near().place().height());
  }

  private static void within(String what, List<Departure> all, ToDoubleFunction<Departure> of) {
    double[] known = all.stream().mapToDouble(of).filter(v -> !Double.isNaN(v)).toArray();
    double squares = 0;
    for (double share : known) {
      squares += share * share / known.length;
    }
    double spread = Math.sqrt(squares);
    System.out.printf(Locale.ROOT, "Held-out months, %s: %.2f of the doubt%n", what, spread);
    assertTrue(spread <= 1.05, what + " departs by " + spread + " of its doubt");
    assertTrue(spread >= 0.5, what + " is in needless doubt, " + spread);
  }
}
