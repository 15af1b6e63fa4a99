package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
      strings = {"link-ledger.csv", "printed-dates.csv", "calls.csv", "calendar-dates.csv"})
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
}
