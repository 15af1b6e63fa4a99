package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.shop.Catalogue;
import curewindow.shop.Service;
import curewindow.shop.Upkeep;
import curewindow.told.JobView;
import curewindow.told.LaterCare;
import curewindow.words.Words;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What is due later: terms are common practice, no source; dates are counted by hand. */
class LaterCareTest {

  private static JobView view(Demo demo, String service, Upkeep upkeep) {
    JobView view = demo.view();
    Catalogue had = view.catalogue();
    Map<String, Service> services = new LinkedHashMap<>(had.services());
    Service s = services.get(service);
    services.put(
        service,
        new Service(
            s.id(), s.inside(), s.film(), s.referencePermeance(), s.spots(), s.guide(), upkeep));
    Catalogue catalogue =
        new Catalogue(services, had.films(), had.spots(), had.holds(), had.rules(), had.visits());
    return new JobView(
        view.job(),
        view.shop(),
        catalogue,
        view.place(),
        view.timeline(),
        view.visit(),
        view.words(),
        view.address(),
        view.token());
  }

  private static Demo film() {
    Demo demo = new Demo();
    demo.fit("paint-film", "fieldcoat-gloss", "2026-12-01T12:00", -1, "hood");
    return demo;
  }

  @Test
  void aYearlyCheckIsOnAnOpenDayAndEndsBeforeTheFilmDoes() {
    // 2027-12-01 is a Wednesday; the warranty of 10 years is more than a life of 7.
    Upkeep upkeep = new Upkeep(true, OptionalInt.empty(), OptionalInt.of(7));
    List<LaterCare> due = LaterCare.of(view(film(), "paint-film", upkeep));
    assertEquals(2, due.size());
    LaterCare check = due.get(0);
    assertEquals(LocalDate.of(2027, 12, 1), check.day());
    assertEquals(12, check.months());
    assertEquals(9, check.times());
    // 2036-12-01 is a Monday.
    assertEquals(LocalDate.of(2036, 12, 1), due.get(1).day());
    assertEquals("later.replace-fieldcoat-gloss", due.get(1).name());
    Words english = film().view().words();
    assertEquals(
        ", after 10 years of sun and wear; sooner in strong sun", due.get(1).more(english));
    assertEquals(", then every year", check.more(english));
  }

  @Test
  void aClosedDayGivesWayToTheNextOpenOne() {
    Demo demo = new Demo();
    demo.fit("paint-coating", "tidewater-paint", "2026-12-01T12:00", -1, "hood");
    // 2027-08-01 is a Sunday, on which the shop is closed.
    Upkeep upkeep = new Upkeep(false, OptionalInt.of(8), OptionalInt.empty());
    LaterCare due = LaterCare.of(view(demo, "paint-coating", upkeep)).get(0);
    assertEquals(LocalDate.of(2027, 8, 2), due.day());
    // Every 8 months within 120: at 8, 16 ... 112.
    assertEquals(14, due.times());
  }

  @Test
  void nothingIsDueWhereTheCatalogueSaysNothing() {
    assertTrue(LaterCare.of(film().view()).isEmpty());
  }
}
