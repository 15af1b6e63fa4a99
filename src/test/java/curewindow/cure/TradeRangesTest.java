package curewindow.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What the trade tells its customers, held against the dates. Common practice, no source, except
 * where marked. The ranges are the trade's; a little is allowed on either side where a range is
 * given for "summer" or "cold" without degrees.
 */
class TradeRangesTest {

  /**
   * Windows up: 24 to 48 h, 24 to 30 h in summer, up to about 3 days in the winter of a mild
   * climate, 7 to 10 days in cold. Winters that mean well below freezing are off that range: there
   * the shop is asked.
   */
  @ParameterizedTest
  @CsvSource({
    "phoenix, 7, OUTSIDE, 24, 30",
    "miami, 7, OUTSIDE, 24, 30",
    "miami, 7, GARAGE, 24, 48",
    "minneapolis, 7, OUTSIDE, 24, 48",
    "seattle, 7, OUTSIDE, 24, 48",
    "miami, 1, OUTSIDE, 24, 72",
    "phoenix, 1, OUTSIDE, 48, 84",
    "minneapolis, 1, HEATED, 60, 84",
    "seattle, 1, OUTSIDE, 144, 240",
  })
  void windowsStayUp(String place, int month, Parking parking, double from, double to) {
    assertWithin(StartingHolds.WINDOWS_UP, place, month, parking, from, to);
  }

  /** Haze: up to 30 days, 60 to 90 in cold. */
  @ParameterizedTest
  @CsvSource({
    "phoenix, 7, OUTSIDE, 72, 240",
    "miami, 7, GARAGE, 120, 720",
    "miami, 1, OUTSIDE, 240, 720",
    "seattle, 7, OUTSIDE, 120, 720",
    "seattle, 1, OUTSIDE, 1200, 2160",
    "minneapolis, 1, OUTSIDE, 1440, 2160",
  })
  void hazeSettles(String place, int month, Parking parking, double from, double to) {
    assertWithin(StartingHolds.HAZE, place, month, parking, from, to);
  }

  /** Paint film, first wash: 48 to 72 h at least, 5 to 7 days preferred, 1 to 2 weeks in cold. */
  @ParameterizedTest
  @CsvSource({
    "phoenix, 7, OUTSIDE, 72, 120",
    "seattle, 7, OUTSIDE, 72, 168",
    "seattle, 7, GARAGE, 72, 168",
    "phoenix, 1, OUTSIDE, 120, 216",
    "miami, 1, GARAGE, 72, 168",
    "seattle, 1, OUTSIDE, 168, 336",
  })
  void filmIsWashed(String place, int month, Parking parking, double from, double to) {
    assertWithin(StartingHolds.FILM_WASH, place, month, parking, from, to);
  }

  /** Water pockets: days to weeks, 45 days and more in cold. */
  @ParameterizedTest
  @CsvSource({
    "phoenix, 7, OUTSIDE, 72, 168",
    "miami, 7, GARAGE, 120, 504",
    "seattle, 7, OUTSIDE, 72, 336",
    "phoenix, 1, OUTSIDE, 168, 504",
    "seattle, 1, OUTSIDE, 720, 1440",
  })
  void pocketsSettle(String place, int month, Parking parking, double from, double to) {
    assertWithin(StartingHolds.FILM_POCKETS, place, month, parking, from, to);
  }

  /** Coating: dry 4 to 24 h, first wash 5 to 7 days, full cure 3 to 30 days. */
  @ParameterizedTest
  @CsvSource({
    "COATING_DRY, phoenix, 7, OUTSIDE, 4, 24",
    "COATING_DRY, miami, 1, OUTSIDE, 4, 24",
    "COATING_DRY, seattle, 7, OUTSIDE, 4, 24",
    "COATING_WASH, miami, 7, OUTSIDE, 120, 168",
    "COATING_WASH, seattle, 7, OUTSIDE, 120, 168",
    "COATING_WASH, miami, 1, OUTSIDE, 120, 168",
    "COATING_FULL, phoenix, 7, OUTSIDE, 72, 720",
    "COATING_FULL, phoenix, 1, OUTSIDE, 72, 720",
    "COATING_FULL, minneapolis, 7, GARAGE, 72, 720",
  })
  void coatingsCure(
      StartingHolds hold, String place, int month, Parking parking, double from, double to) {
    assertWithin(hold, place, month, parking, from, to);
  }

  /** Inside of the glass: cleaned from a week to 30 days on. */
  @ParameterizedTest
  @CsvSource({"phoenix, 7", "miami, 7", "seattle, 7", "minneapolis, 7", "phoenix, 1", "seattle, 1"})
  void insideGlassIsCleaned(String place, int month) {
    assertWithin(StartingHolds.INSIDE_GLASS, place, month, Parking.OUTSIDE, 168, 720);
  }

  /** Holds end at their limit in hard frost; what is merely normal has none. */
  @ParameterizedTest
  @EnumSource(StartingHolds.class)
  void onlyTheColdEndsAtTheLimit(StartingHolds hold) {
    boolean settle = hold.rule().kind() == HoldKind.SETTLE;
    assertEquals(settle ? 0 : 1, TradeTable.wait(hold, "minneapolis", 1, Parking.OUTSIDE).limits());
    for (String place : TradeTable.PLACES) {
      assertEquals(0, TradeTable.wait(hold, place, 7, Parking.OUTSIDE).limits(), place);
      assertEquals(0, TradeTable.wait(hold, place, 7, Parking.GARAGE).limits(), place);
    }
  }

  @ParameterizedTest
  @EnumSource(StartingHolds.class)
  void lastsLongerInWinterThanInSummer(StartingHolds hold) {
    for (String place : TradeTable.PLACES) {
      for (Parking parking : List.of(Parking.OUTSIDE, Parking.SHADE, Parking.GARAGE)) {
        TradeTable.Wait winter = TradeTable.wait(hold, place, 1, parking);
        TradeTable.Wait summer = TradeTable.wait(hold, place, 7, parking);
        assertTrue(summer.likely() <= winter.likely(), place + " " + parking);
        assertTrue(summer.safe() <= winter.safe(), place + " " + parking);
        assertTrue(winter.likely() <= winter.safe(), place + " " + parking);
      }
    }
  }

  /** To the twentieth part, so that a better climate table need not touch the document. */
  @Test
  void documentsTheFiguresAsTheyAre() throws IOException {
    List<String> document = Files.readAllLines(Path.of("docs/judged.md"));
    for (Parking parking : List.of(Parking.OUTSIDE, Parking.GARAGE)) {
      List<String> lines = TradeTable.markdown(parking);
      int at = document.indexOf(lines.get(0));
      assertTrue(at >= 0, "docs/judged.md has no table for " + parking.id());
      for (int i = 1; i < lines.size(); i++) {
        assertSimilar(lines.get(i), document.get(at + i));
      }
    }
  }

  private static void assertSimilar(String line, String documented) {
    double[] now = hours(line);
    double[] then = hours(documented);
    assertEquals(now.length, then.length, documented);
    for (int i = 0; i < now.length; i++) {
      assertEquals(
          now[i],
          then[i],
          0.05 * now[i] + 1,
          "renew docs/judged.md as docs/cure.md tells: " + documented);
    }
  }

  private static double[] hours(String line) {
    return Pattern.compile("([0-9.]+) ([hd])")
        .matcher(line)
        .results()
        .mapToDouble(r -> Double.parseDouble(r.group(1)) * (r.group(2).equals("d") ? 24 : 1))
        .toArray();
  }

  private static void assertWithin(
      StartingHolds hold, String place, int month, Parking parking, double from, double to) {
    double likely = TradeTable.wait(hold, place, month, parking).likely();
    assertTrue(
        likely >= from - 1e-6 && likely <= to + 1e-6,
        "%s %s month %d: %.1f h is not within %.0f to %.0f h"
            .formatted(hold, place, month, likely, from, to));
  }
}
