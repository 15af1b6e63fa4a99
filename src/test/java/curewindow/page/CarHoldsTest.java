package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import curewindow.cure.Driver;
import curewindow.cure.HoldKind;
import curewindow.cure.HoldRule;
import curewindow.shop.Catalogue;
import curewindow.shop.RuleFor;
import curewindow.shop.SpotFact;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
                rule("wrap", "hand-wash", HoldKind.HOLD, null)),
            List.of()),
        view.place(),
        view.timeline(),
        view.visit(),
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

  @Test
  void whatEndsAtItsLimitBecomesGentle() {
    CarHolds.Line windows = new CarHolds(view(Demo.atLimit())).of(0).get(0);
    assertEquals("until Fri, Dec 4", windows.when());
    assertEquals("go gently", windows.then());
  }
}
