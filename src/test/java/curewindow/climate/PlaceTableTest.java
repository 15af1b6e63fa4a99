package curewindow.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlaceTableTest {

  private static final String HEADER =
      "id,name,country,latitude,longitude,height_m,zone,daily_min_c,daily_max_c,dew_point_c,"
          + "sun_kwh_m2_day,source\n";
  private static final String ROW =
      "a,A,FI,60,25,10,Europe/Helsinki,1 2 3 4 5 6 7 8 9 10 11 12,"
          + "11 12 13 14 15 16 17 18 19 20 21 22,0 1 2 3 4 5 6 7 8 9 10 11,"
          + "1 1 1 1 1 1 1 1 1 1 1 1,invented\n";

  @Test
  void readsTwelveMonthsInOrder() throws IOException {
    PlaceTable table = read(HEADER + ROW);
    Place place = table.places().get("a");
    assertEquals(new MonthNormals(1, 11, 0, 1), place.normals().get(0));
    assertEquals(new MonthNormals(12, 22, 11, 1), place.normals().get(11));
    assertEquals("FI", table.countries().get("a"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 2 3 4 5 6 7 8 9 10 11 12|1 2 3|daily_min_c has 3 numbers",
        "Europe/Helsinki|Europe/Nowhere|Nowhere",
        ",60,|,160,|latitude 160",
        ",25,|,x,|x",
        ",10,Europe|,9999,Europe|height 9999",
        "11 12 13|-11 12 13|dailyMax -11"
      })
  void namesTheLineThatCannotBeUsed(String from, String to, String said) {
    check(HEADER + ROW.replace("a,A", "b,B") + ROW.replace(from, to), "line 3: ", said);
  }

  @Test
  void namesAMissingColumn() {
    check(HEADER.replace("zone", "clock") + ROW, "line 2: ", "zone");
  }

  @Test
  void refusesTheSameIdTwice() {
    check(HEADER + ROW + ROW, "line 3: ", "a is there twice");
  }

  private static void check(String text, String line, String said) {
    String message = assertThrows(IllegalArgumentException.class, () -> read(text)).getMessage();
    assertTrue(message.startsWith(line), message);
    assertTrue(message.contains(said), message);
  }

  private static PlaceTable read(String text) throws IOException {
    return PlaceTable.read(new StringReader(text));
  }
}
