package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Copies of the program's texts that a shop takes to change them. */
class OwnCopiesTest {

  private static final String TINT = "content/guides/en/tint.md";
  private static final String NOTES = "content/copies.sha256";

  @TempDir Path temp;
  private Path shop;

  @BeforeEach
  void newShop() {
    shop = temp.resolve("shop");
    NewShop.write(shop);
  }

  private List<Problem> problems() {
    return TestShops.read(shop).problems();
  }

  @Test
  void aCopyIsTheProgramsTextAndNothingIsToldOfIt() throws IOException {
    assertTrue(OwnCopies.texts().contains(TINT));
    assertTrue(OwnCopies.texts().contains("site-templates/customer.html"));
    assertInstanceOf(OwnCopies.Made.class, OwnCopies.make(shop, TINT));
    assertArrayEquals(Files.readAllBytes(Path.of(TINT)), Files.readAllBytes(shop.resolve(TINT)));
    assertEquals(List.of(), problems());
  }

  @Test
  void whatIsThereAlreadyAndWhatIsNotThereAreRefused() throws IOException {
    OwnCopies.make(shop, TINT);
    Files.writeString(shop.resolve(TINT), "# Ours");
    OwnCopies.Refused there = assertInstanceOf(OwnCopies.Refused.class, OwnCopies.make(shop, TINT));
    assertEquals(TINT + " is in the shop folder already: change it there", there.message());
    assertEquals("# Ours", Files.readString(shop.resolve(TINT)));
    OwnCopies.Refused slip =
        assertInstanceOf(OwnCopies.Refused.class, OwnCopies.make(shop, "content/guides/en/tnt.md"));
    assertTrue(slip.message().endsWith("did you mean " + TINT + "?"), slip.message());
    for (String no : List.of("../shop.yaml", "jobs/1001.yaml", "/etc/passwd", "")) {
      assertInstanceOf(OwnCopies.Refused.class, OwnCopies.make(shop, no), no);
    }
  }

  /** As if the copy had been made with an older program, whose text had another sum. */
  private void noteAnOlderText(String file, String sum) throws IOException {
    String notes = Files.readString(shop.resolve(NOTES));
    Files.writeString(
        shop.resolve(NOTES), notes.replaceAll("(?m)^\\w+  " + file + "$", sum + "  " + file));
  }

  @Test
  void aNewerTextOfTheProgramIsToldOnceAndStopsNothing() throws IOException {
    OwnCopies.make(shop, TINT);
    Files.writeString(shop.resolve(TINT), "# Ours\n");
    assertEquals(List.of(), problems(), "changed here, not there");
    noteAnOlderText(TINT, "00");
    Problem told = problems().get(0);
    assertEquals(1, problems().size());
    assertTrue(!told.isError());
    assertEquals(TINT, told.file());
    assertTrue(told.fix().contains("edit --print " + TINT), told.fix());
    // The sum of "# Ours\n", by sha256sum: a copy that was never changed.
    noteAnOlderText(TINT, "d11bfa3f42fdc879a44df2ca9f933fe813b3296912745f569c595d466e0d4435");
    assertEquals("delete the file, as you changed nothing in it", problems().get(0).fix());
    Files.delete(shop.resolve(TINT));
    assertEquals(List.of(), problems(), "it follows the program again");
  }
}
