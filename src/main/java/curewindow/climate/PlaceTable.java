package curewindow.climate;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.TreeMap;

/**
 * A table of places: one row each, whose columns of monthly figures hold twelve numbers with spaces
 * between them.
 *
 * @param places the places by id
 * @param countries the ISO 3166 code of each place's country, by the place's id
 */
record PlaceTable(Map<String, Place> places, Map<String, String> countries) {

  private static final String RESOURCE = "places.csv";

  static PlaceTable builtIn() {
    try (Reader reader =
        new InputStreamReader(
            PlaceTable.class.getResourceAsStream(RESOURCE), StandardCharsets.UTF_8)) {
      return read(reader);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Reads a table.
   *
   * @throws IllegalArgumentException naming the line, where a row cannot be used
   */
  static PlaceTable read(Reader reader) throws IOException {
    Map<String, Place> places = new TreeMap<>();
    Map<String, String> countries = new TreeMap<>();
    try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(reader)) {
      for (NamedCsvRecord row : rows) {
        Place place = placeOf(row);
        if (places.put(place.id(), place) != null) {
          throw new IllegalArgumentException(
              "line " + row.getStartingLineNumber() + ": " + place.id() + " is there twice");
        }
        countries.put(place.id(), row.getField("country"));
      }
    }
    return new PlaceTable(
        Collections.unmodifiableMap(places), Collections.unmodifiableMap(countries));
  }

  private static Place placeOf(NamedCsvRecord row) {
    try {
      return new Place(
              row.getField("id"),
              row.getField("name"),
              Double.parseDouble(row.getField("latitude")),
              Double.parseDouble(row.getField("longitude")),
              Double.parseDouble(row.getField("height_m")),
              ZoneId.of(row.getField("zone")),
              normals(row),
              row.getField("source"))
          .doubted(Doubt.OF_BUILT_IN);
    } catch (NoSuchElementException | IllegalArgumentException | DateTimeException e) {
      throw new IllegalArgumentException(
          "line " + row.getStartingLineNumber() + ": " + e.getMessage(), e);
    }
  }

  private static List<MonthNormals> normals(NamedCsvRecord row) {
    double[] low = twelve(row, "daily_min_c");
    double[] high = twelve(row, "daily_max_c");
    double[] dew = twelve(row, "dew_point_c");
    double[] sun = twelve(row, "sun_kwh_m2_day");
    List<MonthNormals> normals = new ArrayList<>();
    for (int m = 0; m < MonthCurve.MONTHS; m++) {
      normals.add(new MonthNormals(low[m], high[m], dew[m], sun[m]));
    }
    return normals;
  }

  private static double[] twelve(NamedCsvRecord row, String column) {
    String[] numbers = row.getField(column).trim().split(" ");
    if (numbers.length != MonthCurve.MONTHS) {
      throw new IllegalArgumentException(column + " has " + numbers.length + " numbers, not 12");
    }
    double[] values = new double[numbers.length];
    for (int m = 0; m < values.length; m++) {
      values[m] = Double.parseDouble(numbers[m]);
    }
    return values;
  }
}
