package curewindow.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

/**
 * Typical meteorological years (TMY3, National Renewable Energy Laboratory 2008) as downloaded,
 * against monthly figures of the same files that were computed elsewhere, with another program.
 * Neither is part of the project.
 */
class EpwStationsTest {

  private static final Path FOLDER = Path.of("../shared/climate/epw");
  private static final Path MONTHLY = Path.of("../shared/climate/tmy3-monthly.csv.gz");

  /** The figures have two digits; means of hours may fall on either side of a half. */
  private static final double ROUNDING = 0.02;

  private static List<Path> files() throws IOException {
    Assumptions.assumeTrue(
        Files.isDirectory(FOLDER) && Files.exists(MONTHLY),
        "skipped: no " + FOLDER + " or no " + MONTHLY + ", so no weather files to read");
    try (Stream<Path> all = Files.list(FOLDER)) {
      return all.filter(f -> f.toString().matches(".*[.](zip|epw)")).sorted().toList();
    }
  }

  private static EpwFile read(Path file) throws IOException {
    return EpwSample.good(EpwReader.read(file.getFileName().toString(), Files.readAllBytes(file)));
  }

  @Test
  void monthlyFiguresAreThoseComputedElsewhere() throws IOException {
    List<Path> files = files();
    assertTrue(files.size() >= 5, "only " + files.size() + " files");
    Map<String, List<NamedCsvRecord>> monthly = monthly();
    for (Path path : files) {
      String name = path.getFileName().toString().replaceAll("[.](zip|epw)$", "");
      EpwFile file = read(path);
      assertEquals(List.of(), file.notices(), name);
      List<NamedCsvRecord> rows = monthly.get(name);
      assertEquals(12, rows.size(), name);
      for (int m = 0; m < 12; m++) {
        compare(name, file, rows.get(m), file.weather().months().get(m));
      }
    }
  }

  private static void compare(String name, EpwFile file, NamedCsvRecord row, MonthStatistics ours) {
    String where = name + " month " + row.getField("month");
    assertEquals(number(row, "lat"), file.latitude(), 0.005, where);
    assertEquals(number(row, "lon"), file.longitude(), 0.005, where);
    assertEquals(number(row, "elev_m"), file.height(), 0.5, where);
    assertEquals(number(row, "tz"), file.offset().getTotalSeconds() / 3600.0, where);
    assertEquals(number(row, "t_mean_c"), ours.mean(), ROUNDING, where);
    assertEquals(number(row, "t_daily_min_c"), ours.normals().dailyMin(), ROUNDING, where);
    assertEquals(number(row, "t_daily_max_c"), ours.normals().dailyMax(), ROUNDING, where);
    assertEquals(number(row, "dewpoint_c"), ours.normals().dewPoint(), ROUNDING, where);
    assertEquals(number(row, "ghi_kwh_m2_d"), ours.normals().sun(), ROUNDING, where);
  }

  private static double number(NamedCsvRecord row, String field) {
    return Double.parseDouble(row.getField(field));
  }

  private static Map<String, List<NamedCsvRecord>> monthly() throws IOException {
    Map<String, List<NamedCsvRecord>> stations = new TreeMap<>();
    try (CsvReader<NamedCsvRecord> rows =
        CsvReader.builder()
            .ofNamedCsvRecord(
                new InputStreamReader(
                    new GZIPInputStream(Files.newInputStream(MONTHLY)), StandardCharsets.UTF_8))) {
      rows.forEach(
          r -> stations.computeIfAbsent(r.getField("file"), f -> new ArrayList<>()).add(r));
    }
    return stations;
  }

  /** The files' own spread and persistence are near the rules that were fitted to many stations. */
  @Test
  void spreadAndPersistenceAreNearTheRule() throws IOException {
    double squares = 0;
    double persistence = 0;
    List<Path> files = files();
    for (Path path : files) {
      FileWeather weather = read(path).weather();
      double[] rule = Spread.byMonth(weather.normals());
      for (int m = 0; m < 12; m++) {
        double share = weather.spreads()[m] / rule[m];
        squares += Math.pow(Math.log(share), 2) / 12 / files.size();
      }
      persistence += weather.persistence() / files.size();
    }
    System.out.printf(
        "Spread of %d weather files against the rule: a factor of %.2f; persistence %.2f%n",
        files.size(), Math.exp(Math.sqrt(squares)), persistence);
    assertTrue(Math.exp(Math.sqrt(squares)) < 1.5);
    assertEquals(0.7, persistence, 0.15);
  }
}
