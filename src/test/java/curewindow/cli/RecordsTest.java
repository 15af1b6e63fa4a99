package curewindow.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.site.PressedDemo;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A card never leads nowhere, nor to another's page, and people can be forgotten. */
class RecordsTest {

  private static final String CLOSED = "This page is no longer here";
  private static final String MARA = "Q-3101";
  private static final String IVO = "Q-3102";

  @TempDir Path temp;
  private Path shop;
  private Path out;
  private Clock clock = at("2026-11-25T20:00:00Z");

  @BeforeEach
  void layOut() throws IOException {
    shop = temp.resolve("shop");
    out = temp.resolve("out");
    PressedDemo.layOutOpenPages(out);
    PressedDemo.layOutShop(shop, "Q-3101", "Q-3102");
  }

  @Test
  void aWithdrawnPageTellsNothingAndTheJobHasANewOne() throws IOException {
    run(Exit.OK, "press", "--out", out);
    String old = address(MARA);
    card(MARA);
    run(Exit.OK, "withdraw", MARA);
    run(Exit.OK, "press", "--out", out);
    closed(old);
    assertNotEquals(old, address(MARA));
    assertTrue(page(address(MARA)).contains("Mara"));
    assertTrue(text("printed-dates.csv").contains(MARA + ","), "what was promised still counts");
    run(Exit.OK, "press", "--out", out);
    closed(old);
    Files.delete(shop.resolve("jobs/Q-3102.yaml"));
    run(Exit.OK, "press", "--out", temp.resolve("fresh"));
    assertTrue(
        Files.readString(temp.resolve("fresh/site").resolve(old + "index.html")).contains(CLOSED));
  }

  @Test
  void aJobThatIsGoneKeepsThePageOfItsCard() throws IOException {
    run(Exit.OK, "press", "--out", out);
    String page = address(MARA);
    String other = address(IVO);
    card(MARA);
    Files.delete(shop.resolve("jobs/Q-3101.yaml"));
    assertTrue(run(Exit.PROBLEMS, "press", "--out", out).contains("run withdraw Q-3101"));
    assertTrue(page(page).contains("Mara"));
    run(Exit.OK, "withdraw", MARA);
    run(Exit.OK, "press", "--out", out);
    closed(page);
    assertFalse(text("printed-dates.csv").contains(MARA));
    assertFalse(text("handed-over.csv").contains("Mara"));
    assertEquals(other, address(IVO));
  }

  @Test
  void whoLetsJobsGoLeavesNoDeadCard() throws IOException {
    run(Exit.OK, "press", "--out", out);
    String page = address(MARA);
    card(MARA);
    Files.delete(shop.resolve("jobs/Q-3101.yaml"));
    run(Exit.OK, "press", "--out", out, "--let-go");
    closed(page);
    Files.copy(Path.of("content/demo/jobs/Q-3101.yaml"), shop.resolve("jobs/Q-3101.yaml"));
    run(Exit.OK, "press", "--out", out);
    assertEquals(page, address(MARA), "it may come back");
    assertTrue(page(page).contains("Mara"));
  }

  @Test
  void aRenamedJobKeepsItsAddress() throws IOException {
    run(Exit.OK, "press", "--out", out);
    String page = address(MARA);
    card(MARA);
    String promised = text("printed-dates.csv");
    replace("jobs/Q-3101.yaml", "id: Q-3101", "id: q-3101");
    String said = run(Exit.PROBLEMS, "press", "--out", out);
    assertTrue(said.contains("run rename Q-3101 q-3101"), said);
    assertTrue(page(page).contains("Mara"));
    String own = address("q-3101");
    run(Exit.OK, "rename", MARA, "q-3101");
    run(Exit.OK, "press", "--out", out);
    assertEquals(page, address("q-3101"));
    closed(own);
    assertEquals(promised.replace("Q-3101", "q-3101"), text("printed-dates.csv"));
    assertTrue(run(Exit.PROBLEMS, "rename", MARA, "q-3101").contains("did you mean q-3101?"));
  }

  @Test
  void theOnlyJobMayBeRenamed() throws IOException {
    Files.delete(shop.resolve("jobs/Q-3102.yaml"));
    run(Exit.OK, "press", "--out", out);
    String page = address(MARA);
    card(MARA);
    replace("jobs/Q-3101.yaml", "id: Q-3101", "id: Q-1");
    run(Exit.OK, "rename", MARA, "Q-1");
    run(Exit.OK, "press", "--out", out);
    assertEquals(Map.of("Q-1", page), pages());
  }

  @Test
  void renamingIsRefusedWhereItWouldMixUpTwoJobs() throws IOException {
    card(MARA);
    card(IVO);
    assertTrue(run(Exit.PROBLEMS, "rename", MARA, IVO).contains("still a job Q-3101"));
    assertTrue(run(Exit.PROBLEMS, "rename", "Q-1", "Q-3109").contains("There is no job Q-3109"));
    Files.delete(shop.resolve("jobs/Q-3101.yaml"));
    assertTrue(run(Exit.PROBLEMS, "rename", MARA, IVO).contains("run withdraw Q-3101"));
    assertTrue(run(Exit.PROBLEMS, "withdraw", "Q-9").contains("There is no job Q-9"));
  }

  @Test
  void aStrangerDoesNotGetThePageOfACard() throws IOException {
    run(Exit.OK, "press", "--out", out);
    String page = address(MARA);
    card(MARA);
    replace("jobs/Q-3101.yaml", "first-name: Mara", "first-name: Mira");
    run(Exit.OK, "press", "--out", out);
    assertTrue(page(page).contains("Mira"), "a name may be put right");
    replace("jobs/Q-3101.yaml", "first-name: Mira", "first-name: Berit");
    replace("jobs/Q-3101.yaml", "body: sedan", "body: van");
    String said = run(Exit.PROBLEMS, "press", "--out", out);
    assertTrue(said.contains("was for someone else (Mira, ") && said.contains("now Berit, "), said);
    assertTrue(page(page).contains("Mira"));
    assertTrue(run(Exit.PROBLEMS, "check").contains("was for someone else"));
    assertTrue(
        run(Exit.PROBLEMS, "card", MARA, "--out", temp.resolve("c.pdf")).contains("someone"));
    run(Exit.OK, "withdraw", MARA);
    assertFalse(text("printed-dates.csv").contains(MARA), "promised to somebody else");
    run(Exit.OK, "press", "--out", out);
    closed(page);
    assertTrue(page(address(MARA)).contains("Berit"));
  }

  @Test
  void whatLooksLikeAStrangerMayBeTheSame() throws IOException {
    run(Exit.OK, "press", "--out", out);
    String page = address(MARA);
    card(MARA);
    replace("jobs/Q-3101.yaml", "first-name: Mara", "first-name: Marja");
    replace("jobs/Q-3101.yaml", "body: sedan", "body: wagon");
    run(Exit.OK, "press", "--out", out, "--same", MARA);
    assertTrue(page(page).contains("Marja"));
    run(Exit.OK, "press", "--out", out);
    assertEquals(page, address(MARA));
  }

  @Test
  void aForgottenPersonStandsNowhere() throws IOException {
    Files.writeString(
        shop.resolve("visits.csv"),
        "job,day,what,result\nQ-3101,2026-11-27,,fine\nQ-3102,2026-11-28,,fine\n");
    clock = at("2026-12-10T20:00:00Z");
    run(Exit.OK, "press", "--out", out);
    String page = address(MARA);
    card(MARA);
    card(IVO);
    run(Exit.OK, "press", "--out", out);
    clock = at("2026-12-11T20:00:00Z");
    String said = run(Exit.OK, "forget", MARA);
    assertTrue(said.contains("jobs/Q-3101.yaml") && said.contains("1 row of visits.csv"), said);
    assertTrue(said.contains("Left for you to delete: backups"), said);
    run(Exit.OK, "press", "--out", out);
    closed(page);
    for (Path folder : List.of(shop, out.resolve("office"), out.resolve("site/C"))) {
      for (Map.Entry<String, byte[]> file : Typed.contents(folder).entrySet()) {
        String text = new String(file.getValue());
        assertFalse(text.contains(MARA) || text.contains("Mara"), file.getKey());
      }
    }
    assertTrue(text("visits.csv").equals("job,day,what,result\nQ-3102,2026-11-28,,fine\n"));
    assertTrue(text("handed-over.csv").contains(IVO));
    assertTrue(run(Exit.PROBLEMS, "forget", MARA).contains("There is no job Q-3101"));
  }

  @Test
  void aJobOfTheTableIsForgottenToTheByte() throws IOException {
    List<String> demo = Files.readAllLines(Path.of("content/demo/jobs.csv"));
    String table = String.join("\r\n", demo.get(0), demo.get(2), demo.get(1), demo.get(3), "");
    Files.writeString(shop.resolve("jobs.csv"), "\uFEFF" + table);
    String said = run(Exit.OK, "forget", "Q-3116");
    assertTrue(said.contains("2 rows of jobs.csv") && said.contains("program that writes"), said);
    assertEquals("\uFEFF" + demo.get(0) + "\r\n" + demo.get(1) + "\r\n", text("jobs.csv"));
  }

  @Test
  void whatCannotBeReadIsNotForgottenByHalves() throws IOException {
    Files.writeString(shop.resolve("visits.csv"), "job,day,what,result\n\"Q-3101,2026-11-27");
    run(Exit.PROBLEMS, "forget", MARA);
    Files.writeString(shop.resolve("visits.csv"), "job;day;what;result\n");
    assertTrue(run(Exit.PROBLEMS, "press", "--out", out, "--same", "Q-9").contains("no job Q-9"));
    replace("jobs/Q-3101.yaml", "body: sedan", "body: boat");
    assertTrue(run(Exit.PROBLEMS, "forget", MARA).contains("delete it by hand"));
    assertTrue(Files.exists(shop.resolve("jobs/Q-3101.yaml")));
  }

  @Test
  void pagesPastTheirTimeComeDownWhenTheShopSaysSo() throws IOException {
    assertTrue(run(Exit.PROBLEMS, "expire").contains("keep-pages: 2 years"));
    Files.writeString(shop.resolve("shop.yaml"), text("shop.yaml") + "keep-pages: 2 years\n");
    run(Exit.OK, "press", "--out", out);
    card(MARA);
    String page = address(MARA);
    assertTrue(run(Exit.OK, "expire", "--let-go").contains("No page is older"));
    clock = at("2028-11-30T20:00:00Z");
    replace("jobs/Q-3102.yaml", "pickup: 2026", "pickup: 2027");
    assertTrue(run(Exit.OK, "expire").contains("To take down 1 page: expire --let-go"));
    run(Exit.OK, "press", "--out", out);
    assertTrue(page(page).contains("Mara"), "not unless it was said");
    assertTrue(run(Exit.OK, "expire", "--let-go").contains("Q-3101  last here 2026-11-2"));
    run(Exit.OK, "press", "--out", out);
    closed(page);
    assertEquals(1, pages().size());
    assertTrue(Files.exists(shop.resolve("jobs/Q-3101.yaml")), "the job stays");
    assertTrue(
        run(Exit.PROBLEMS, "card", MARA, "--out", temp.resolve("c.pdf")).contains("not kept"));
    assertFalse(text("handed-over.csv").contains("Mara"));
  }

  @Test
  void aLostLedgerComesBackFromItsCopy() throws IOException {
    run(Exit.OK, "press", "--out", out);
    card(MARA);
    Map<String, String> before = pages();
    String ledger = text("link-ledger.csv");
    Files.delete(shop.resolve("link-ledger.csv"));
    assertTrue(run(Exit.PROBLEMS, "press", "--out", out).contains("run restore --out"));
    String said = run(Exit.OK, "restore", "--out", temp.resolve("none"));
    assertTrue(said.contains("2 addresses from ledger-copies/link-ledger-2026-11-25.csv"), said);
    assertEquals(ledger, text("link-ledger.csv"));
    run(Exit.OK, "press", "--out", out);
    assertEquals(before, pages());
    assertTrue(run(Exit.OK, "restore", "--out", out).contains("nothing was found that it lacks"));
  }

  @Test
  void aLostLedgerComesBackFromTheLastPress() throws IOException {
    run(Exit.OK, "press", "--out", out);
    card(MARA);
    Map<String, String> before = pages();
    Files.writeString(shop.resolve("link-ledger.csv"), "job,tok");
    for (Path copy : copies()) {
      Files.delete(copy);
    }
    assertTrue(
        run(Exit.PROBLEMS, "restore", "--out", temp.resolve("none"))
            .contains("Nothing to restore"));
    assertEquals("job,tok", text("link-ledger.csv"));
    String said = run(Exit.OK, "restore", "--out", out);
    assertTrue(said.contains("2 addresses from") && said.contains("pages.csv"), said);
    assertEquals("job,tok", text("link-ledger-broken.csv"));
    run(Exit.OK, "press", "--out", out);
    assertEquals(before, pages());
  }

  /** As after an older ledger was brought back, and the output folder is gone too. */
  @Test
  void aCardWithoutAnAddressStopsThePress() throws IOException {
    card(MARA);
    Files.writeString(shop.resolve("link-ledger.csv"), "job,token,since\n");
    assertTrue(run(Exit.PROBLEMS, "press", "--out", out).contains("the ledger lost its address"));
    assertTrue(run(Exit.PROBLEMS, "card", MARA, "--out", temp.resolve("c.pdf")).contains("lost"));
    run(Exit.OK, "restore", "--out", out);
    run(Exit.OK, "press", "--out", out);
  }

  @Test
  void whatIsForgottenIsInNoCopy() throws IOException {
    run(Exit.OK, "press", "--out", out);
    clock = at("2026-11-26T20:00:00Z");
    run(Exit.OK, "withdraw", IVO);
    clock = at("2026-11-27T20:00:00Z");
    run(Exit.OK, "forget", MARA);
    assertEquals(1, copies().size());
    assertFalse(Files.readString(copies().get(0)).contains(MARA));
  }

  private List<Path> copies() throws IOException {
    try (Stream<Path> all = Files.list(shop.resolve("ledger-copies"))) {
      return all.toList();
    }
  }

  private void card(String job) {
    run(Exit.OK, "card", job, "--out", temp.resolve(job + ".pdf"));
  }

  private String run(int code, Object... words) {
    Typed typed =
        Typed.run(clock, Stream.concat(Stream.of(words), Stream.of("--shop", shop)).toArray());
    assertEquals(code, typed.code(), typed.said());
    return typed.said();
  }

  private Map<String, String> pages() throws IOException {
    Map<String, String> pages = new TreeMap<>();
    List<String> rows = Files.readAllLines(out.resolve("office/pages.csv"));
    rows.subList(1, rows.size()).forEach(r -> pages.put(r.split(",")[0], r.split(",")[2]));
    return pages;
  }

  private String address(String job) throws IOException {
    return pages().get(job);
  }

  private String page(String folder) throws IOException {
    return Files.readString(out.resolve("site").resolve(folder + "index.html"));
  }

  private void closed(String folder) throws IOException {
    String page = page(folder);
    assertTrue(page.contains(CLOSED) && page.contains("206 555 0142"), page);
    assertTrue(page.contains("noindex"));
    try (Stream<Path> files = Files.list(out.resolve("site").resolve(folder))) {
      assertEquals(1, files.count());
    }
  }

  private String text(String file) throws IOException {
    return Files.readString(shop.resolve(file));
  }

  private void replace(String file, String old, String by) throws IOException {
    String text = text(file);
    assertTrue(text.contains(old), file + ": " + old);
    Files.writeString(shop.resolve(file), text.replace(old, by));
  }

  private static Clock at(String time) {
    return Clock.fixed(Instant.parse(time), ZoneOffset.UTC);
  }
}
