package curewindow.cli;

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

/** {@code press --plan} says what the next press does, and does nothing. */
class PressPlanTest {

  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-30T12:00:00Z"), ZoneOffset.UTC);

  @TempDir Path temp;
  private Path shop;
  private Path out;

  @BeforeEach
  void layOut() throws IOException {
    shop = temp.resolve("shop");
    out = temp.resolve("out");
    PressedDemo.layOutShop(shop, "Q-3101", "Q-3102", "Q-3114");
  }

  private List<String> plan(int code) throws IOException {
    var shopBefore = Typed.contents(shop).keySet();
    Typed typed = press(code, "--plan");
    assertEquals(shopBefore, Typed.contents(shop).keySet(), "nothing is written");
    return typed.said().lines().toList();
  }

  private Typed press(int code, Object... more) {
    Object[] words = {"press", "--shop", shop, "--out", out};
    Typed typed =
        Typed.run(CLOCK, Stream.concat(List.of(words).stream(), List.of(more).stream()).toArray());
    assertEquals(code, typed.code(), typed::said);
    return typed;
  }

  private void edit(String file, String from, String to) throws IOException {
    String text = Files.readString(shop.resolve(file));
    assertTrue(text.contains(from), text);
    Files.writeString(shop.resolve(file), text.replace(from, to));
  }

  @Test
  void aFirstPressMakesAll() throws IOException {
    assertEquals(
        List.of(
            "make       3 pages, new: Q-3101, Q-3102, Q-3114",
            "make       the pages for anyone: new"),
        plan(Exit.OK));
    assertFalse(Files.exists(out), "no folder is made");
    press(Exit.OK);
    assertEquals(List.of("leave      3 pages as they stand"), plan(Exit.OK));
  }

  @Test
  void everyReasonIsToldAndThePressDoesAsPlanned() throws IOException {
    press(Exit.OK);
    edit("jobs/Q-3101.yaml", "first-name: Mara", "first-name: Nora");
    Path guide = Files.createDirectories(shop.resolve("content/guides/es")).resolve("tint.md");
    String spanish = Files.readString(Path.of("content/guides/es/tint.md"));
    Files.writeString(guide, spanish + "\nGracias.\n");
    Files.copy(Path.of("content/demo/jobs/Q-3103.yaml"), shop.resolve("jobs/Q-3103.yaml"));
    Files.delete(shop.resolve("jobs/Q-3102.yaml"));
    assertEquals(
        List.of(
            "make       1 page, new: Q-3103",
            "make       1 page, a guide on it has changed: Q-3114",
            "make       1 page, its job, visits or card have changed: Q-3101",
            "make       the pages for anyone: a guide on them has changed",
            "take down  1 page, its job is gone or its time is over: Q-3102"),
        plan(Exit.OK));
    assertTrue(press(Exit.OK).said().contains(": 3 jobs\n"), "all three are made");
    edit("shop.yaml", "Quillhaven Film", "Quillhaven Window Film");
    assertEquals(
        List.of(
            "make       3 pages, what they share with other pages has changed: Q-3101, Q-3103, Q-3114",
            "make       the pages for anyone: what they share with other pages has changed"),
        plan(Exit.OK));
  }

  @Test
  void whatIsWrongIsToldToo() throws IOException {
    press(Exit.OK);
    edit("jobs/Q-3101.yaml", "harbor-35", "harbour-35");
    List<String> lines = plan(Exit.PROBLEMS);
    assertTrue(
        lines.contains("leave out  1 page, a page from before stays as it is: Q-3101"),
        lines.toString());
    assertTrue(lines.stream().anyMatch(l -> l.contains("harbour-35")), lines.toString());
  }
}
