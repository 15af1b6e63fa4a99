package curewindow.calendar;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.handout.SampleJobs;
import curewindow.shop.Shop;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopFolder;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

final class ShopCardTest {

  /** The demo shop has hours, three closed days, and its address by parts. */
  private static List<String> demo() {
    Shop shop =
        ShopFolder.read(new ShopFiles(Path.of("content/demo")), Instant.EPOCH).shop().orElseThrow();
    String text =
        ShopCard.text(shop, SampleJobs.tinted().shippedWords().view().words()).replace("\r\n ", "");
    return text.lines().toList();
  }

  /**
   * RFC 6350 section 6.3.1: post office box; extended address; street; locality; region; postal
   * code; country name. The first two should be empty.
   */
  @Test
  void eachPartOfTheAddressStandsInItsField() {
    assertTrue(demo().contains("ADR:;;18 Tern Yard;Quillhaven;WA;98000;USA"), demo().toString());
  }

  @Test
  void whatIsKeptForYearsHasNoDates() {
    String note = demo().stream().filter(l -> l.startsWith("NOTE:")).findFirst().orElseThrow();
    assertTrue(note.startsWith("NOTE:Monday to Friday: 8:30"), note);
    for (String closed : List.of("2026", "2027", "Dec", "Closed on")) {
      assertFalse(note.contains(closed), note);
    }
  }
}
