package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.Driver;
import curewindow.cure.HoldKind;
import curewindow.cure.HoldRule;
import curewindow.shop.Catalogue;
import curewindow.shop.RuleFor;
import curewindow.shop.SpotFact;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The holds of each fitted item: those of its service on its spots, with the job's dates. */
class CarHoldsTest {

  private static RuleFor rule(String service, String hold, HoldKind kind, SpotFact where) {
    return new RuleFor(
        service,
        Optional.ofNullable(where),
        List.of(),
        List.of(),
        new HoldRule(hold, kind, Map.of(Driver.BOND, 48.0), 24, 336));
  }

  private static JobView view(Demo demo) {
    JobView view = demo.view();
    Catalogue all = view.catalogue();
    return new JobView(
        view.job(),
        view.shop(),
        new Catalogue(
            all.services(),
            all.films(),
            all.spots(),
            all.holds(),
            List.of(
                rule("tint", "windows-up", HoldKind.HOLD, SpotFact.ROLLS),
                rule("tint", "defroster", HoldKind.HOLD, SpotFact.DEFROSTER),
                rule("tint", "pressure-wash", HoldKind.HOLD, null),
                rule("tint", "machine-wash", HoldKind.HOLD, null),
                rule("tint", "haze", HoldKind.SETTLE, null),
                rule("wrap", "hand-wash", HoldKind.HOLD, null))),
        view.place(),
        view.timeline(),
        view.words(),
        view.address(),
        view.token());
  }

  private static List<String> lines(CarHolds holds, int item) {
    return holds.of(item).stream().map(l -> l.when() + ": " + l.names()).toList();
  }

  @Test
  void eachItemHasTheHoldsOfItsSpots() {
    CarHolds holds = new CarHolds(view(Demo.tint()));
    assertEquals(
        List.of(
            "until Fri, Dec 4: Windows stay up",
            "until Wed, Dec 9: Automatic wash · Pressure washer"),
        lines(holds, 0));
    assertEquals(
        List.of(
            "until Wed, Dec 9: Automatic wash · Pressure washer",
            "until Sat, Dec 19: Rear defroster stays off"),
        lines(holds, 1));
    CarHolds.Line windows = holds.of(0).get(0);
    assertEquals(Optional.of(Demo.at("2026-12-04T14:00").getEpochSecond()), windows.to());
    assertEquals("go ahead", windows.then());
  }

  /**
   * Where the shop must be asked, time alone frees nothing: after its day the page says to call.
   */
  @Test
  void askUsNeverTurnsIntoGoAhead() {
    CarHolds.Line windows = new CarHolds(view(Demo.askUs())).of(0).get(1);
    assertEquals("ask us on Tue, Dec 15", windows.when());
    assertEquals(Optional.of(Demo.at("2026-12-16T00:00").getEpochSecond()), windows.to());
    assertEquals("call us", windows.then());
  }

  @Test
  void whatAStricterHoldForbidsPointsToIt() {
    Demo demo = Demo.tint();
    demo.safe("hand-wash", HoldKind.HOLD, "2026-12-20T15:00", "2026-12-18T20:10");
    demo.releases.remove(1);
    List<CarHolds.Line> lines = new CarHolds(view(demo)).of(0);
    assertTrue(
        Stream.of("wait: see “First wash by hand”")
            .allMatch(t -> lines.stream().anyMatch(l -> l.when().equals(t))),
        lines.toString());
    assertEquals(Optional.of(Demo.at("2026-12-20T15:00").getEpochSecond()), lines.get(1).to());
  }
}
