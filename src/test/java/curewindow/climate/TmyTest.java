package curewindow.climate;

import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * The built-in places of the United States against typical meteorological years (TMY3, National
 * Renewable Energy Laboratory 2008) of stations within 60 km. The file is not part of the project.
 */
class TmyTest {

  private static final Path FILE = Path.of("../shared/climate/tmy3-monthly.csv.gz");
  private static final double NEAR_KM = 60;

  private record Pair(Place place, int month, Map<String, String> station) {}

  private final List<Pair> pairs = new ArrayList<>();

  @BeforeEach
  void pairUp() throws IOException {
    Assumptions.assumeTrue(
        Files.exists(FILE), "skipped: no " + FILE + ", so no weather years to compare with");
    Map<String, List<Map<String, String>>> stations = stations();
    List<Place> places = new ArrayList<>(Places.byCountry().get("US"));
    places.addAll(Places.byCountry().get("PR"));
    for (Place place : places) {
      stations.values().stream()
          .min((a, b) -> Double.compare(distance(place, a), distance(place, b)))
          .filter(s -> distance(place, s) <= NEAR_KM)
          .ifPresent(
              s -> s.forEach(r -> pairs.add(new Pair(place, Integer.parseInt(r.get("month")), r))));
    }
  }

  @Test
  void normalsAreNearTheWeatherYears() {
    assertTrue(pairs.size() >= 12 * 45, "only " + pairs.size() / 12 + " places have a station");
    near("daily min", MonthNormals::dailyMin, "t_daily_min_c", 2.0);
    near("daily max", MonthNormals::dailyMax, "t_daily_max_c", 2.0);
    near("dew point", MonthNormals::dewPoint, "dewpoint_c", 2.5);
    near("sun", MonthNormals::sun, "ghi_kwh_m2_d", 0.5);
  }

  /**
   * The mean of all days from their extremes, at all stations and months: the daily cycle must not
   * make the year colder or warmer than it is.
   */
  @Test
  void meanTemperatureFollowsFromTheExtremes() throws IOException {
    double sum = 0;
    double squares = 0;
    int count = 0;
    for (List<Map<String, String>> station : stations().values()) {
      for (Map<String, String> month : station) {
        double low = Double.parseDouble(month.get("t_daily_min_c"));
        double high = Double.parseDouble(month.get("t_daily_max_c"));
        double middle = (low + high) / 2;
        double sun = Double.parseDouble(month.get("ghi_kwh_m2_d"));
        double mean = middle - DailyCycle.belowMiddle(middle, sun);
        double error = mean - Double.parseDouble(month.get("t_mean_c"));
        sum += error;
        squares += error * error;
        count++;
      }
    }
    System.out.printf(
        "Mean temperature from extremes, %d months: bias %.2f K, RMSE %.2f K%n",
        count, sum / count, Math.sqrt(squares / count));
    assertTrue(Math.abs(sum / count) < 0.05, "bias " + sum / count);
    assertTrue(Math.sqrt(squares / count) < 0.35, "RMSE " + Math.sqrt(squares / count));
  }

  private void near(
      String what, ToDoubleFunction<MonthNormals> ours, String theirs, double allowed) {
    double squares = 0;
    for (Pair pair : pairs) {
      double mine = ours.applyAsDouble(pair.place().normals().get(pair.month() - 1));
      double error = mine - Double.parseDouble(pair.station().get(theirs));
      squares += error * error;
    }
    double rmse = Math.sqrt(squares / pairs.size());
    System.out.printf(
        "Built-in normals against %d TMY3 stations: %s RMSE %.2f%n", pairs.size() / 12, what, rmse);
    assertTrue(rmse <= allowed, what + " RMSE " + rmse);
  }

  private static double distance(Place place, List<Map<String, String>> station) {
    Map<String, String> row = station.get(0);
    return Places.distanceKm(
        place.latitude(),
        place.longitude(),
        Double.parseDouble(row.get("lat")),
        Double.parseDouble(row.get("lon")));
  }

  private static Map<String, List<Map<String, String>>> stations() throws IOException {
    Map<String, List<Map<String, String>>> stations = new TreeMap<>();
    try (CsvReader<NamedCsvRecord> rows =
        CsvReader.builder()
            .ofNamedCsvRecord(
                new InputStreamReader(
                    new GZIPInputStream(Files.newInputStream(FILE)), StandardCharsets.UTF_8))) {
      for (NamedCsvRecord row : rows) {
        stations
            .computeIfAbsent(row.getField("file"), f -> new ArrayList<>())
            .add(row.getFieldsAsMap());
      }
    }
    return stations;
  }
}
