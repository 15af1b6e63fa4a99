package curewindow.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.shop.Job;
import curewindow.site.LoadedShop;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Cars are found by what people remember of them, at once. */
class FinderTest {

  private static final LoadedShop SHOP =
      LoadedShop.load(Path.of("content/demo"), DeskClient.clock(DeskClient.NOW));

  private static List<String> found(Finder finder, String query) {
    return finder.find(query, 0, 50).jobs().stream().map(Job::id).toList();
  }

  @Test
  void everyWordHasToBeThere() {
    Finder finder = Finder.of(SHOP);
    assertEquals(List.of("Q-3101"), found(finder, "Mara black"));
    assertEquals(List.of(), found(finder, "Mara green"));
    assertEquals(List.of("Q-3101"), found(finder, "h35-0611"));
    assertEquals(List.of("Q-3108"), found(finder, "ana midnight"));
    assertEquals(List.of(), found(finder, "ara"), "letters begin a word");
    assertEquals(17, finder.find("", 0, 50).jobs().size());
    assertEquals(17, finder.find("", 0, 5).all());
    assertEquals(2, finder.find("", 15, 5).jobs().size());
  }

  /**
   * What is searched through is one text of words; a search never reaches from one into the next.
   */
  @Test
  void aPartOfACodeIsFoundInOneWordOnly() {
    Finder finder = Finder.of(SHOP);
    assertEquals(List.of("Q-3101"), found(finder, "35-0611"));
    assertEquals(List.of("Q-3101"), found(finder, "11/24/2026 mara"));
    assertEquals(found(finder, "2026-11-24"), found(finder, "24/11/2026"));
    assertEquals(List.of(), found(finder, "3101mara"));
    assertEquals(17, finder.find(" \n ", 0, 50).all());
    assertTrue(Finder.has("Q-3101", "q-31 01"));
    assertFalse(Finder.has("Q-3101", "q-32"));
  }

  /** Days are typed as the screens write them, in either language of the desk. */
  @Test
  void aDayIsFoundAsTheScreensSayIt() {
    Finder finder = Finder.of(SHOP);
    List<String> cars = found(finder, "2026-11-24");
    assertTrue(cars.contains("Q-3101"), cars::toString);
    for (String day :
        List.of("November 24, 2026", "24 de noviembre de 2026", "Nov 24 2026", "24 nov 2026")) {
      assertTrue(found(finder, day).contains("Q-3101"), day);
    }
    assertEquals(found(finder, "December"), found(finder, "diciembre"));
    assertEquals(found(finder, "December"), found(finder, "dic"));
    assertFalse(found(finder, "December").contains("Q-3101"));
  }

  @Test
  void accentsAndCaseDoNotCount() {
    Finder finder = Finder.of(SHOP);
    assertEquals(found(finder, "MÁRA"), found(finder, "mara"));
  }

  /**
   * The aim is 200 ms on a machine that is busy with other work; our own. Alone it is about one.
   */
  @Test
  void aHundredThousandCarsAreLookedThroughAtOnce() {
    List<Job> jobs = new ArrayList<>();
    for (int i = 0; i < 100_000; i++) {
      Job job = SHOP.jobs().get(i % SHOP.jobs().size());
      jobs.add(
          new Job(
              "N-" + i,
              job.firstName(),
              job.language(),
              job.car(),
              job.place(),
              job.parking(),
              job.stays(),
              job.items(),
              job.found(),
              job.seen(),
              job.where()));
    }
    Finder finder =
        Finder.of(
            jobs,
            SHOP.read().catalogue().films(),
            SHOP.shop().orElseThrow().zone(),
            Frame.LANGUAGES.stream().map(SHOP.words()::of).toList());
    long best = Long.MAX_VALUE;
    for (int i = 0; i < 10; i++) {
      long begin = System.nanoTime();
      assertEquals(List.of("N-77777"), found(finder, "n-77777"));
      finder.find("harbor black H35", 0, 40);
      best = Math.min(best, (System.nanoTime() - begin) / 2);
    }
    assertTrue(best < 200_000_000, "one search took " + best / 1_000_000 + " ms");
  }
}
