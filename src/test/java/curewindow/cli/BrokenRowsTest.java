package curewindow.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.site.PressedDemo;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No page or card is made as if rows that cannot be read were not there. */
class BrokenRowsTest {

  /** Q-3101 has left; its glass was fitted anew two days ago. Q-3103 is still in the shop. */
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-30T17:00:00Z"), ZoneOffset.UTC);

  private static final String HEADER = "job,day,what,result,finished,pickup,note\n";
  private static final String REFIT =
      "Q-3101,2026-11-28,tint,refitted,2026-11-28T11:00,2026-11-28T12:30,";

  @TempDir Path temp;
  private Path shop;
  private Path out;

  @BeforeEach
  void press() throws IOException {
    shop = temp.resolve("shop");
    out = temp.resolve("out");
    PressedDemo.layOutOpenPages(out);
    Files.createDirectories(shop.resolve("jobs"));
    for (String file :
        List.of(
            "shop.yaml", "logo.svg", "link-ledger.csv", "jobs/Q-3101.yaml", "jobs/Q-3103.yaml")) {
      Files.copy(Path.of("content/demo").resolve(file), shop.resolve(file));
    }
    Files.writeString(shop.resolve("visits.csv"), HEADER + REFIT + "\n");
    assertEquals(Exit.OK, run("press", "--out", out).code());
  }

  private Typed run(Object... line) {
    return Typed.run(
        CLOCK, Stream.concat(Stream.of(line), Stream.of("--shop", shop)).toArray(Object[]::new));
  }

  private byte[] page() throws IOException {
    return Files.readAllBytes(out.resolve("site/C/R4GQZPDPWRH26AZ8/index.html"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Q-3101,2026-11-28,tint,refitted,,,",
        "Q-3101,2026-11-28,tynt,refitted,2026-11-28T11:00,,",
        "Q-3101,2026-11-28,tint,refited,2026-11-28T11:00,,",
        "Q-3101,2026-11-28,tint,refitted,2026-11-28T11:00",
        "Q-3110,2026-11-28,tint,refitted,2026-11-28T11:00,,",
        "Q-3101,2026-11-28,tint,refitted,2026-11-28T11:00,,\"scratch",
      })
  void theCarThatMayHaveBeenFittedAnewKeepsItsPageAndTheOtherIsMade(String row) throws IOException {
    byte[] before = page();
    Files.writeString(shop.resolve("visits.csv"), HEADER + row + "\n");
    Typed press = run("press", "--out", out);
    assertEquals(Exit.PROBLEMS, press.code());
    assertTrue(press.said().contains("visits.csv:2:"), press.said());
    assertTrue(press.said().contains("Left out: Q-3101 (a page from before"), press.said());
    assertTrue(press.said().contains("1 job, none new or changed\n"), press.said());
    assertArrayEquals(before, page());
    Path cards = temp.resolve("cards.pdf");
    Typed card = run("card", "Q-3101", "--out", cards);
    assertEquals(Exit.PROBLEMS, card.code());
    assertTrue(card.said().startsWith("Job Q-3101 has to be mended first:\nvisits.csv:2:"));
    assertFalse(Files.exists(cards));
    assertEquals(Exit.OK, run("card", "Q-3103", "--out", cards).code());
  }

  /** A car that was taken away leaves its visits behind. */
  @Test
  void aVisitOfNoJobIsToldWhatToDo() throws IOException {
    Files.writeString(shop.resolve("visits.csv"), HEADER + "Q-1,2026-11-28,,fine,,,\n");
    Typed check = run("check");
    assertTrue(check.said().contains("; delete the row if its job was taken away"), check.said());
    assertTrue(check.said().contains("2 good jobs"), "without it no date comes sooner");
  }

  @Test
  void carsWhoseRowsAreLostKeepTheirPages() throws IOException {
    String columns =
        "job,body,paint,parking-day,parking-night,pickup,service,film,spots,finished\n";
    String row = "%s,suv,mid,outside,outside,2026-11-20T17:00,tint,harbor-35,%s,2026-11-20T15:00\n";
    String first = row.formatted("Q-1", "back-glass");
    Path file = shop.resolve("jobs.csv");
    Files.writeString(file, columns + first + row.formatted("Q-2", "back-glass"));
    run("press", "--out", out);
    assertEquals(4, pages());
    Files.writeString(file, columns + first + row.formatted("Q-2", "\"back-glass"));
    Typed cut = run("press", "--out", out);
    assertEquals(4, pages());
    assertTrue(cut.said().contains("Left out: Q-1, jobs.csv (pages from before"), cut.said());
    Files.writeString(file, columns + first + row.formatted("", "back-glass"));
    run("press", "--out", out);
    assertEquals(4, pages());
    Files.writeString(file, columns + first);
    run("press", "--out", out);
    assertEquals(3, pages(), "what is taken away is gone");
  }

  private long pages() throws IOException {
    try (Stream<Path> pages = Files.list(out.resolve("site/C"))) {
      return pages.filter(Files::isDirectory).count();
    }
  }
}
