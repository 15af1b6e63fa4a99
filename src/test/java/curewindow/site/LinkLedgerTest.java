package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LinkLedgerTest {

  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String A = "0123456789ABCDEF";
  private static final String B = "GHJKMNPQRSTVWXYZ";

  @TempDir Path shop;

  @Test
  void aTokenStaysWithItsJobForGood() throws IOException {
    LinkLedger first = read().orElseThrow();
    String token = first.tokenOf("K-7", Tokens.secure(), DAY);
    first.save(DAY);
    LinkLedger second = read().orElseThrow();
    assertEquals(token, second.tokenOf("K-7", Tokens.secure(), DAY.plusDays(9)));
    byte[] before = Files.readAllBytes(shop.resolve(LinkLedger.FILE));
    second.save(DAY);
    assertEquals(new String(before), Files.readString(shop.resolve(LinkLedger.FILE)));
  }

  /** As of a disk that is not there today; a new ledger would lose the addresses on it. */
  @Test
  void aLinkToNothingIsNoEmptyLedger() throws IOException {
    Files.createSymbolicLink(shop.resolve(LinkLedger.FILE), shop.resolve("gone.csv"));
    assertTrue(read().isEmpty());
  }

  @Test
  void anAddressThatWasTakenAwayIsNobodysForGood() throws IOException {
    LinkLedger ledger = read().orElseThrow();
    ledger.tokenOf("1", () -> A, DAY);
    ledger.save(DAY);
    assertTrue(ledger.close("1"));
    assertFalse(ledger.close("1"));
    ledger.save(DAY);
    assertEquals(
        "job,token,since\n," + A + ",2026-11-25\n",
        Files.readString(shop.resolve(LinkLedger.FILE)));
    LinkLedger again = read().orElseThrow();
    assertEquals(List.of(A), again.closed());
    Iterator<String> tokens = List.of(A, B).iterator();
    assertEquals(B, again.tokenOf("1", tokens::next, DAY));
  }

  @Test
  void theNewestCopiesAreKept() throws IOException {
    LinkLedger ledger = read().orElseThrow();
    for (int day = 0; day < 9; day++) {
      ledger.tokenOf("J-" + day, Tokens.secure(), DAY);
      ledger.save(DAY.plusDays(day));
    }
    List<String> copies = LedgerCopies.of(shop);
    assertEquals(7, copies.size());
    assertEquals("ledger-copies/link-ledger-2026-12-03.csv", copies.get(0));
    assertEquals(
        Files.readString(shop.resolve(LinkLedger.FILE)),
        Files.readString(shop.resolve(copies.get(0))));
    ledger.close("J-0");
    ledger.save(DAY.plusDays(9));
    assertEquals(List.of("ledger-copies/link-ledger-2026-12-04.csv"), LedgerCopies.of(shop));
  }

  @Test
  void aLedgerThatWasNotNeededIsNotWritten() throws IOException {
    read().orElseThrow().save(DAY);
    assertFalse(Files.exists(shop.resolve(LinkLedger.FILE)));
  }

  @Test
  void aTokenThatIsTakenIsNotGivenAgain() {
    Iterator<String> tokens = List.of(A, A, B).iterator();
    Supplier<String> maker = tokens::next;
    LinkLedger ledger = read().orElseThrow();
    assertEquals(A, ledger.tokenOf("1", maker, DAY));
    assertEquals(B, ledger.tokenOf("2", maker, DAY));
  }

  @Test
  void tokensHaveNoPatternAndNoLettersThatAreMistaken() {
    Supplier<String> maker = Tokens.secure();
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < 5000; i++) {
      String token = maker.get();
      assertTrue(token.matches("[0-9A-HJKMNP-TV-Z]{20}"), token);
      assertTrue(seen.add(token));
    }
    assertNotEquals(A, maker.get());
  }

  /** A card with a shorter address of an earlier version still leads to its page. */
  @Test
  void addressesOfEarlierVersionsStay() throws IOException {
    String old = "job,token,since\nX," + A + ",2026-11-25\n";
    Files.writeString(shop.resolve(LinkLedger.FILE), old);
    LinkLedger ledger = read().orElseThrow();
    assertEquals(A, ledger.tokenOf("X", Tokens.secure(), DAY.plusDays(9)));
    String longer = ledger.tokenOf("Y", Tokens.secure(), DAY);
    ledger.save(DAY);
    assertTrue(Files.readString(shop.resolve(LinkLedger.FILE)).startsWith(old));
    assertEquals(Optional.of(longer), read().orElseThrow().known("Y"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          job,token                        | 1 | the first line
          X,0123456789ABCDEF,2026-11-25    | 1 | the first line
          job,token,since~X,short,2026-11-25 | 2 | not a token
          job,token,since~X,0123456789ABCDEFG,2026-11-25 | 2 | not a token
          job,token,since~X,0123456789ABCDEF | 2 | 2 fields
          job,token,since~X,0123456789ABCDEF,yesterday | 2 | not a date
          job,token,since~X,0123456789ABCDEF,2026-11-25~X,GHJKMNPQRSTVWXYZ,2026-11-25 | 3 | stands twice
          job,token,since~X,0123456789ABCDEF,2026-11-25~Y,0123456789ABCDEF,2026-11-25 | 3 | share a page
          job,token,since~"X,0123 | 2 | 1 fields
          """)
  void aBrokenLedgerIsSaidAndNotUsed(String text, int line, String said) throws IOException {
    String broken = text.replace('~', '\n');
    Files.writeString(shop.resolve(LinkLedger.FILE), broken);
    Problems problems = new Problems();
    assertEquals(Optional.empty(), LinkLedger.read(shop, problems));
    assertTrue(problems.all().get(0).message().contains(said), problems.all()::toString);
    assertEquals(line, problems.all().get(0).line());
    assertEquals(broken, Files.readString(shop.resolve(LinkLedger.FILE)));
  }

  private Optional<LinkLedger> read() {
    return LinkLedger.read(shop, new Problems());
  }
}
