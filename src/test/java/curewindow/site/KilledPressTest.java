package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Presses are killed at random moments: each file stays whole, and the next press heals all. */
class KilledPressTest {

  /** The first half of them in a first press; more with {@code -Dkills=200}. */
  private static final int KILLS = Integer.getInteger("kills", 3);

  /** How each kind of file ends, however long it is. */
  private static final Map<String, String> ENDS =
      Map.of(".html", "</html>", ".ics", "END:VCALENDAR", ".webmanifest", "}", ".svg", "</svg>");

  @TempDir Path temp;
  private final Random random = new Random(11);
  private Path shop;
  private Path out;

  @BeforeEach
  void layOut() throws IOException {
    shop = temp.resolve("shop");
    out = temp.resolve("out");
    PressedDemo.layOutShop(shop, "Q-3101");
  }

  @Test
  void nothingIsTornOrLostAndTheNextPressHeals() throws Exception {
    Map<String, String> addresses = Map.of();
    for (int i = 0; i < KILLS; i++) {
      if (i == KILLS / 2) {
        press(out);
      }
      changeAllPages(i);
      List<Path> before =
          files(out.resolve("site")).stream().filter(f -> !AtomicFiles.isHalf(f)).toList();
      killOne(i % 2 == 1);
      assertAllIsWhole();
      before.forEach(file -> assertTrue(Files.exists(file), file.toString()));
      Map<String, String> now = addresses();
      assertTrue(now.entrySet().containsAll(addresses.entrySet()), now + " " + addresses);
      addresses = now;
    }
    press(out);
    assertEquals(addresses, addresses());
    assertFalse(files(temp).stream().anyMatch(AtomicFiles::isHalf));
    press(temp.resolve("fresh"));
    assertEquals(contents(temp.resolve("fresh/site")), contents(out.resolve("site")));
  }

  /** Kills a press soon after it began, or soon after it began to write pages. */
  private void killOne(boolean atOnce) throws Exception {
    FileTime begin = newest();
    Process press = SecondProgram.start("press", shop, out);
    Path lock = out.resolve("office").resolve(FolderLock.FILE);
    while (press.isAlive() && (atOnce ? Files.notExists(lock) : newest().equals(begin))) {
      Thread.sleep(1);
    }
    press.waitFor(random.nextInt(atOnce ? 500 : 120), TimeUnit.MILLISECONDS);
    press.destroyForcibly().waitFor();
  }

  private FileTime newest() throws IOException {
    FileTime newest = FileTime.fromMillis(0);
    for (String name : List.of("office/today.html", "site/404.html")) {
      Path file = out.resolve(name);
      if (Files.exists(file) && Files.getLastModifiedTime(file).compareTo(newest) > 0) {
        newest = Files.getLastModifiedTime(file);
      }
    }
    return newest;
  }

  private void changeAllPages(int kill) throws IOException {
    Path yaml = shop.resolve("shop.yaml");
    Files.writeString(
        yaml, Files.readString(yaml).replaceFirst("(?m)^name: .*$", "name: Shop " + kill));
  }

  private void press(Path to) throws IOException {
    PressReport report =
        Press.run(LoadedShop.load(shop, PressedDemo.CLOCK), to, PressedDemo.CLOCK, Tokens.secure());
    assertEquals(1, report.jobs());
    assertFalse(report.hasErrors(), () -> report.problems().toString());
  }

  private void assertAllIsWhole() throws IOException {
    Problems problems = new Problems();
    assertFalse(Ledgers.read(shop, problems).areBroken(), () -> problems.all().toString());
    for (Path file : files(out.resolve("site"))) {
      String name = file.getFileName().toString();
      for (Map.Entry<String, String> end : ENDS.entrySet()) {
        assertTrue(
            !name.endsWith(end.getKey()) || Files.readString(file).strip().endsWith(end.getValue()),
            file.toString());
      }
    }
  }

  private Map<String, String> addresses() throws IOException {
    Map<String, String> all = new TreeMap<>();
    Path ledger = shop.resolve(LinkLedger.FILE);
    if (Files.exists(ledger)) {
      Files.readAllLines(ledger).forEach(row -> all.put(row.split(",")[0], row));
    }
    return all;
  }

  private static Map<String, String> contents(Path folder) throws IOException {
    Map<String, String> all = new TreeMap<>();
    for (Path file : files(folder)) {
      all.put(folder.relativize(file).toString(), MadeBefore.print(Files.readAllBytes(file)));
    }
    return all;
  }

  private static List<Path> files(Path folder) throws IOException {
    if (Files.notExists(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).toList();
    }
  }
}
