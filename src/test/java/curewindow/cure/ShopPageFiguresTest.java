package curewindow.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What docs/dates-for-shops.md says in plain words is what the model reckons. */
class ShopPageFiguresTest {

  @Test
  void anHourCountsForTheAdhesiveAsThePageSays() throws IOException {
    String page = Files.readString(Path.of("docs/dates-for-shops.md")).replaceAll("\\s+", " ");
    String said =
        "an hour at 95 \u00b0F counts for a good two, at 41 \u00b0F for about a quarter, at freezing"
            + " for less than a fifth";
    assertTrue(page.contains(said), "the sentence this test checks has changed");
    assertEquals(2.2, Rates.bond(celsius(95), 50_000), 0.1);
    assertEquals(0.25, Rates.bond(celsius(41), 50_000), 0.03);
    assertEquals(0.18, Rates.bond(celsius(32), 50_000), 0.02);
    assertEquals(Rates.REFERENCE, celsius(73), 0.5);
  }

  private static double celsius(double fahrenheit) {
    return (fahrenheit - 32) / 1.8;
  }
}
