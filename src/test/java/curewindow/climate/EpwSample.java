package curewindow.climate;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A made-up weather file: days get warmer towards the middle of the year, and every day from 1:00
 * to 24:00 by a sixth of a degree an hour; the sky lets 0.6 of the cloudless sun through.
 */
final class EpwSample {

  static final int HEADER = 8;

  final List<String> lines = new ArrayList<>();
  private final double[] clearSky;

  private EpwSample(String location, double latitude, double longitude, ZoneOffset offset) {
    clearSky = Sun.over(latitude, longitude).clearSkyHours(offset);
    lines.add(location);
    lines.add("DESIGN CONDITIONS,0");
    lines.add("TYPICAL/EXTREME PERIODS,0");
    lines.add("GROUND TEMPERATURES,0");
    lines.add("HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0");
    lines.add("COMMENTS 1,made up for a test");
    lines.add("COMMENTS 2,");
    lines.add("DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31");
  }

  /** A year in a zone of whole hours. */
  static EpwSample year(int... years) {
    EpwSample sample =
        new EpwSample(
            "LOCATION,Example Harbor,EX,USA,Made up,000000,47.5,-122.3,-8.0,120.0",
            47.5,
            -122.3,
            ZoneOffset.ofHours(-8));
    for (int year : years) {
      sample.add(year);
    }
    return sample;
  }

  /** A year in a zone of half hours. */
  static EpwSample halfHours() {
    EpwSample sample =
        new EpwSample(
            "LOCATION,Example Fort,-,IND,Made up,000000,28.6,77.2,5.5,216",
            28.6,
            77.2,
            ZoneOffset.ofHoursMinutes(5, 30));
    sample.add(2023);
    return sample;
  }

  private void add(int year) {
    LocalDate day = LocalDate.of(year, 1, 1);
    for (int d = 0; day.getYear() == year; day = day.plusDays(1)) {
      boolean leap = day.getMonthValue() == 2 && day.getDayOfMonth() == 29;
      for (int hour = 1; hour <= 24; hour++) {
        double air = air(d, hour);
        double sun = leap ? 0 : 0.6 * clearSky[24 * d + hour - 1];
        lines.add(
            String.format(
                Locale.ROOT,
                "%d,%d,%d,%d,0,?9?9,%.1f,%.1f,60,101300,0,0,300,%.0f,0,0,0,0,0,0,0,2.0",
                year,
                day.getMonthValue(),
                day.getDayOfMonth(),
                hour,
                leap ? 50 : air,
                leap ? 20 : air - 5,
                sun));
      }
      d += leap ? 0 : 1;
    }
  }

  /** Air temperature by the day of the year from 0 and the hour from 1. */
  static double air(int day, int hour) {
    return Math.rint(10 * (20 - Math.abs(day - 182) / 10.0 + hour / 6.0)) / 10;
  }

  /** The line number of a row, by the day from 0 and the hour from 1. */
  static int line(int day, int hour) {
    return HEADER + 24 * day + hour;
  }

  /** Puts a value into a row. */
  EpwSample set(int day, int hour, int field, String value) {
    return setLine(line(day, hour), field, value);
  }

  EpwSample setLine(int line, int field, String value) {
    String[] fields = lines.get(line - 1).split(",", -1);
    fields[field] = value;
    lines.set(line - 1, String.join(",", fields));
    return this;
  }

  /** Puts a value into all rows. */
  EpwSample setAll(int field, String value) {
    for (int line = HEADER + 1; line <= lines.size(); line++) {
      setLine(line, field, value);
    }
    return this;
  }

  byte[] bytes() {
    return bytes("\n");
  }

  byte[] bytes(String lineEnd) {
    return (String.join(lineEnd, lines) + lineEnd).getBytes(StandardCharsets.ISO_8859_1);
  }

  EpwReader.Result read() {
    return EpwReader.read("weather/sample.epw", bytes());
  }

  static EpwFile good(EpwReader.Result result) {
    if (result instanceof EpwReader.Broken broken) {
      throw new AssertionError(broken.problem().oneLine());
    }
    return ((EpwReader.Good) result).file();
  }

  /** A zip of entries, names and contents in turn. */
  static byte[] zip(Object... namesAndContents) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (int i = 0; i < namesAndContents.length; i += 2) {
        zip.putNextEntry(new ZipEntry((String) namesAndContents[i]));
        zip.write((byte[]) namesAndContents[i + 1]);
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }
}
