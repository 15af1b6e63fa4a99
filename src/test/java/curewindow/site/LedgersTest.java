package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What stands in the place of a ledger without being one is told, and stays as it is. */
class LedgersTest {

  @TempDir Path shop;

  private List<String> told() {
    Problems problems = new Problems();
    assertTrue(Ledgers.read(shop, problems).areBroken());
    return problems.all().stream().map(Problem::file).toList();
  }

  private String message() {
    Problems problems = new Problems();
    Ledgers.read(shop, problems);
    return problems.all().get(0).oneLine();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "link-ledger.csv",
        "printed-dates.csv",
        "calls.csv",
        "callbacks.csv",
        "calendar-dates.csv",
        "handed-over.csv"
      })
  void whatIsNoFileIsNoEmptyLedger(String name) throws IOException {
    Path file = shop.resolve(name);
    Files.createSymbolicLink(file, shop.resolve("gone.csv"));
    assertEquals(List.of(name), told());
    assertTrue(message().startsWith(name + "  this is a link that leads to no file  "), message());
    Files.delete(file);
    Files.createDirectory(file);
    assertEquals(List.of(name), told());
    assertTrue(message().startsWith(name + "  this is a folder, not a file  "), message());
    Files.delete(file);
    Files.createFile(file);
    assertTrue(told().contains(name), message());
  }

  /** A card took 34 s with 30,000 rows: each was compared with all before it. */
  @Test
  void manyAddressesAreReadAtOnce() throws IOException {
    StringBuilder rows = new StringBuilder("job,token,since\n");
    for (int i = 0; i < 100_000; i++) {
      rows.append("J-%d,%016d,2026-11-25\n".formatted(i, i));
    }
    Files.writeString(shop.resolve("link-ledger.csv"), rows);
    assertTimeoutPreemptively(
        Duration.ofSeconds(15),
        () -> assertTrue(LinkLedger.read(shop, new Problems()).isPresent()));
  }

  /** One took 240 s, or went wrong. */
  @ParameterizedTest
  @ValueSource(strings = {"+999999999-12-01T00:00Z", "-0001-12-01T00:00Z", "2200-01-01T00:00Z"})
  void aYearThatNobodyLivesToSeeIsTold(String date) throws IOException {
    Files.writeString(
        shop.resolve("printed-dates.csv"),
        "job,hold,state,date,printed\n"
            + "1,windows-up,safe-by,2199-12-31T00:00Z,2026-11-25T10:00\n"
            + "1,windows-up,safe-by,"
            + date
            + ",2026-11-25T10:00\n");
    Problems problems = new Problems();
    assertTrue(PrintedDates.read(shop, problems).isEmpty());
    assertEquals(1, problems.all().size(), problems.all()::toString);
    assertEquals(3, problems.all().get(0).line());
    assertTrue(problems.all().get(0).message().contains(date), problems.all()::toString);
  }
}
