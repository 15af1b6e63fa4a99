package curewindow.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** No command makes anything of a job whose dates would lack a hold. */
class BrokenRuleTest {

  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T17:00:00Z"), ZoneOffset.UTC);

  private static final String HOLDS = "content/catalogue/holds.yaml";

  private static final String JOB =
      """
      id: %s
      car: {body: suv, paint: mid}
      parking: outside
      pickup: 2026-11-2%dT17:00
      items:
        - {service: %s, film: %s, spots: [%s], finished: 2026-11-25T15:00}
      """;

  @TempDir Path temp;

  private Path shop;
  private Path out;

  @BeforeEach
  void layOut() throws IOException {
    shop = temp.resolve("shop");
    out = temp.resolve("out");
    assertEquals(Exit.OK, Typed.run("new-shop", shop).code());
    assertEquals(Exit.OK, Typed.run("edit", HOLDS, "--shop", shop).code());
    Files.writeString(
        shop.resolve("jobs/COAT.yaml"),
        JOB.formatted("COAT", 5, "paint-coating", "tidewater-paint", "hood"));
    Files.writeString(
        shop.resolve("jobs/TINT.yaml"),
        JOB.formatted("TINT", 6, "tint", "harbor-35", "front-door-glass"));
    String text = Files.readString(shop.resolve(HOLDS));
    String rule = "paint-coating, hold: hand-wash, need: {crosslink: 96}, floor: 120";
    assertTrue(text.contains(rule));
    Files.writeString(shop.resolve(HOLDS), text.replace(rule, rule.replace("120", "1200")));
  }

  private Typed run(int code, Object... line) {
    Object[] all = new Object[line.length + 2];
    System.arraycopy(line, 0, all, 0, line.length);
    all[line.length] = "--shop";
    all[line.length + 1] = shop;
    Typed typed = Typed.run(CLOCK, all);
    assertEquals(code, typed.code(), typed::said);
    return typed;
  }

  private static void tells(String text) {
    assertTrue(text.contains("limit comes before floor"), text);
    assertTrue(text.contains(HOLDS + ":"), text);
    assertTrue(text.contains("leaves out 1 job, whose dates would not be sure: COAT"), text);
  }

  @Test
  void checkCountsItAsNotGood() throws IOException {
    int good = goodJobs(run(Exit.PROBLEMS, "check"));
    tells(run(Exit.PROBLEMS, "check").said());
    assertTrue(run(Exit.PROBLEMS, "check").said().startsWith(HOLDS), "nothing else to mend");
    String holds = Files.readString(shop.resolve(HOLDS));
    Files.writeString(shop.resolve(HOLDS), holds.replace("floor: 1200", "floor: 120"));
    assertEquals(good + 1, goodJobs(run(Exit.OK, "check")));
  }

  @Test
  void aLookByIsToldToBeALimit() throws IOException {
    String holds = Files.readString(shop.resolve(HOLDS));
    String rule = "floor: 1200, limit:";
    assertTrue(holds.contains(rule));
    Files.writeString(shop.resolve(HOLDS), holds.replace(rule, "floor: 120, look-by:"));
    String said = run(Exit.PROBLEMS, "check").said();
    assertTrue(said.contains("look-by is not used any more  write limit: with days"), said);
    assertFalse(said.contains("is missing"), said);
    assertFalse(said.contains("not known here"), said);
  }

  private static int goodJobs(Typed check) {
    return Integer.parseInt(check.said().replaceAll("(?s).*?(\\d+) good jobs;.*", "$1"));
  }

  @Test
  void pressLeavesItOutAndMakesTheOthers() throws Exception {
    Typed press = run(Exit.PROBLEMS, "press", "--out", out);
    tells(press.said());
    assertTrue(press.said().contains("Left out: COAT (a page from before stays as it was)"));
    String pages = Files.readString(out.resolve("office/pages.csv"));
    assertTrue(pages.contains("TINT,"), pages);
    assertFalse(pages.contains("COAT,"), pages);
  }

  @Test
  void cardMakesNone() {
    Path pdf = temp.resolve("c.pdf");
    tells(run(Exit.PROBLEMS, "card", "COAT", "--out", pdf).said());
    assertFalse(Files.exists(pdf));
    Typed day = run(Exit.PROBLEMS, "card", "--pickup", "2026-11-25", "--out", pdf);
    tells(day.said());
    assertTrue(day.said().startsWith("Without COAT:"), day::said);
    run(Exit.OK, "card", "TINT", "--out", pdf);
    assertTrue(Files.exists(pdf));
    tells(run(Exit.PROBLEMS, "card", "--pickup", "2026-11-26", "--out", pdf).said());
  }

  @Test
  void whyAndDatesTellWhy() {
    tells(run(Exit.PROBLEMS, "why", "COAT").said());
    tells(run(Exit.PROBLEMS, "dates", "COAT").said());
    tells(run(Exit.PROBLEMS, "dates").said());
    run(Exit.OK, "why", "TINT");
    run(Exit.OK, "dates", "TINT");
  }

  @Test
  void dueTellsThatItIsWithoutIt() {
    Typed due = run(Exit.PROBLEMS, "due");
    tells(due.said());
    assertTrue(due.said().startsWith("Without COAT:"), due::said);
    tells(run(Exit.PROBLEMS, "due", "--out", temp.resolve("day.pdf")).said());
  }
}
