package curewindow.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The daily cycle against NOAA's hourly normals 1981-2010 of Seattle (climate/README.md of the test
 * resources). Fed with the file's own mean daily extremes by month, the hours must come back.
 */
class SeattleTest {

  private final double[] normals = read();

  @Test
  void hoursComeBackFromMonthlyExtremes() {
    WeatherYear year = MeanYear.of(seattle());
    double squares = 0;
    double sum = 0;
    double worst = 0;
    for (int h = 1; h < WeatherYear.HOURS; h++) {
      // The file has moments on the hour, the year means over the hour.
      double ours = (year.temperature(h - 1) + year.temperature(h)) / 2;
      double error = ours - normals[h];
      squares += error * error;
      sum += error;
      worst = Math.max(worst, Math.abs(error));
    }
    double rmse = Math.sqrt(squares / (WeatherYear.HOURS - 1));
    System.out.printf(
        "Seattle hourly normals: RMSE %.2f K, largest %.2f K, bias %.2f K%n",
        rmse, worst, sum / (WeatherYear.HOURS - 1));
    assertTrue(rmse <= 0.6, "RMSE " + rmse);
    assertTrue(worst <= 2.5, "largest " + worst);
    assertEquals(0, sum / (WeatherYear.HOURS - 1), 0.35);
  }

  private Place seattle() {
    double[] low = new double[MonthCurve.DAYS];
    double[] high = new double[MonthCurve.DAYS];
    for (int d = 0; d < MonthCurve.DAYS; d++) {
      double[] day = Arrays.copyOfRange(normals, Math.max(1, 24 * d), 24 * d + 24);
      low[d] = Arrays.stream(day).min().orElseThrow();
      high[d] = Arrays.stream(day).max().orElseThrow();
    }
    double[] lows = MonthCurve.means(low);
    double[] highs = MonthCurve.means(high);
    List<MonthNormals> months = new ArrayList<>();
    for (int m = 0; m < MonthCurve.MONTHS; m++) {
      months.add(new MonthNormals(lows[m], highs[m], lows[m] - 1, 0.8));
    }
    return new Place(
        "noaa", "NOAA", 47.46, -122.31, 122, ZoneId.of("America/Los_Angeles"), months, "NOAA");
  }

  private static double[] read() {
    double[] hours = new double[WeatherYear.HOURS];
    Arrays.fill(hours, Double.NaN);
    try (CsvReader<NamedCsvRecord> rows =
        CsvReader.builder()
            .ofNamedCsvRecord(
                new InputStreamReader(
                    SeattleTest.class.getResourceAsStream(
                        "/climate/seattle-weather-hourly-normals.csv"),
                    StandardCharsets.UTF_8))) {
      for (NamedCsvRecord row : rows) {
        LocalDateTime at = LocalDateTime.parse(row.getField("date"));
        hours[24 * (at.getDayOfYear() - 1) + at.getHour()] =
            Double.parseDouble(row.getField("temperature"));
      }
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    return hours;
  }
}
