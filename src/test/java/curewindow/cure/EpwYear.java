package curewindow.cure;

import curewindow.climate.MonthNormals;
import curewindow.climate.Place;
import curewindow.climate.WeatherYear;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipInputStream;

/**
 * Reads real hourly years, EnergyPlus weather files, as far as the judge needs them; not a reader
 * for users' files.
 */
final class EpwYear {

  private static final int DRY_BULB = 6;
  private static final int DEW_POINT = 7;
  private static final int GLOBAL_HORIZONTAL = 13;
  private static final int HEADER_LINES = 8;
  private static final int[] DAYS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

  private EpwYear() {}

  /** Reads the file in a zip; the site has normals from the file alone. */
  static TrueYear read(Path zip) throws IOException {
    String text;
    try (InputStream in = Files.newInputStream(zip);
        ZipInputStream unzipped = new ZipInputStream(in)) {
      unzipped.getNextEntry();
      text = new String(unzipped.readAllBytes(), StandardCharsets.ISO_8859_1);
    }
    List<String[]> lines = text.lines().map(line -> line.split(",", -1)).toList();
    double[] air = column(lines, DRY_BULB);
    double[] dew = column(lines, DEW_POINT);
    double[] sun = column(lines, GLOBAL_HORIZONTAL);
    return new TrueYear(place(lines.get(0), air, dew, sun), WeatherYear.of(air, dew, sun));
  }

  private static double[] column(List<String[]> lines, int column) {
    double[] values = new double[WeatherYear.HOURS];
    for (int i = 0; i < values.length; i++) {
      values[i] = Double.parseDouble(lines.get(HEADER_LINES + i)[column]);
    }
    return values;
  }

  private static Place place(String[] location, double[] air, double[] dew, double[] sun) {
    List<MonthNormals> normals = new ArrayList<>();
    int start = 0;
    for (int days : DAYS) {
      normals.add(month(start, days, air, dew, sun));
      start += 24 * days;
    }
    return new Place(
        "site",
        location[1],
        Double.parseDouble(location[6]),
        Double.parseDouble(location[7]),
        Double.parseDouble(location[9]),
        ZoneOffset.ofTotalSeconds((int) Math.round(3600 * Double.parseDouble(location[8]))),
        normals,
        "TMY3 of " + location[1]);
  }

  private static MonthNormals month(int start, int days, double[] air, double[] dew, double[] sun) {
    double low = 0;
    double high = 0;
    double dewSum = 0;
    double sunSum = 0;
    for (int day = 0; day < days; day++) {
      double least = Double.POSITIVE_INFINITY;
      double most = Double.NEGATIVE_INFINITY;
      for (int hour = start + 24 * day; hour < start + 24 * day + 24; hour++) {
        least = Math.min(least, air[hour]);
        most = Math.max(most, air[hour]);
        dewSum += Math.min(dew[hour], air[hour]) / 24;
        sunSum += sun[hour] / 1000;
      }
      low += least;
      high += most;
    }
    return new MonthNormals(low / days, high / days, dewSum / days, sunSum / days);
  }
}
