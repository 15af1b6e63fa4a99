package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.climate.MonthNormals;
import curewindow.climate.Place;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Places that point to a weather file. */
class WeatherFilesTest {

  private static final String PLACE =
      """
      name: Own File
      zone: America/Los_Angeles
      weather-file: weather/own.epw
      """;

  @TempDir Path dir;

  @BeforeEach
  void baseShop() throws IOException {
    TestShops.base(dir);
    write("weather/own.epw", epw(2023));
  }

  private void write(String name, String text) throws IOException {
    Files.createDirectories(dir.resolve(name).getParent());
    Files.writeString(dir.resolve(name), text);
  }

  /** Hours at the equator's day length, 10 C at hour 1 to 21.5 C at hour 24, in three fields. */
  private static String epw(int... years) {
    StringBuilder text = new StringBuilder();
    text.append("LOCATION,Example Harbor,EX,USA,Made up,000000,10.0,-120.0,-8.0,40.0\r\n");
    text.append("DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31\r\n");
    for (int year : years) {
      LocalDate day = LocalDate.of(year, 1, 1);
      for (; day.getYear() == year; day = day.plusDays(1)) {
        for (int hour = 1; hour <= 24; hour++) {
          text.append(
              String.format(
                  Locale.ROOT,
                  "%d,%d,%d,%d,60,?9,%.1f,7.5,60,101300,0,0,300,%d\r\n",
                  year,
                  day.getMonthValue(),
                  day.getDayOfMonth(),
                  hour,
                  9.5 + hour / 2.0,
                  hour > 8 && hour <= 16 ? 500 : 0));
        }
      }
    }
    return text.toString();
  }

  private Place place(String text) throws IOException {
    ShopRead read = read(text);
    assertEquals(List.of(), TestShops.lines(read));
    return read.places().get("own");
  }

  private ShopRead read(String text) throws IOException {
    write("content/places/own.yaml", text);
    return TestShops.read(dir);
  }

  @Test
  void coordinatesAndNormalsComeFromTheFile() throws IOException {
    Place place = place(PLACE);
    assertEquals(10, place.latitude());
    assertEquals(-120, place.longitude());
    assertEquals(40, place.height());
    assertEquals("Own File", place.name());
    for (MonthNormals month : place.normals()) {
      assertEquals(10, month.dailyMin(), 1e-9);
      assertEquals(21.5, month.dailyMax(), 1e-9);
      assertEquals(7.5, month.dewPoint(), 1e-9);
      assertEquals(4, month.sun(), 1e-9);
    }
    assertEquals(
        "weather file weather/own.epw: Example Harbor, EX, USA (Made up), normals, spread and"
            + " persistence of one year",
        place.source());
    assertEquals(1, place.fileWeather().orElseThrow().years().size());
  }

  @Test
  void whatIsTypedCounts() throws IOException {
    Place place =
        place(PLACE + "latitude: 10.2\nlongitude: -120.1\nheight: 60\nsource: our own station\n");
    assertEquals(10.2, place.latitude());
    assertEquals(-120.1, place.longitude());
    assertEquals(60, place.height());
    assertEquals("our own station", place.source());
  }

  @Test
  void aSiteFarAwayIsNoted() throws IOException {
    ShopRead read = read(PLACE + "latitude: 12\nlongitude: -120\nheight: 1040\n");
    assertEquals(1, read.problems().size());
    String line = TestShops.lines(read).get(0);
    assertTrue(line.startsWith("content/places/own.yaml:3:15"), line);
    assertTrue(line.contains("lies 222 km away and 1000 m lower"), line);
    assertEquals(12, read.places().get("own").latitude());
    assertEquals(10, read.places().get("own").normals().get(0).dailyMin(), 1e-9);
  }

  @Test
  void yearsEnoughAreTakenAsTheyAre() throws IOException {
    write("weather/own.epw", epw(2016, 2017, 2018, 2019, 2020, 2021, 2022, 2023, 2024));
    Place place = place(PLACE);
    assertTrue(place.fileWeather().orElseThrow().hasEnoughYears());
    assertTrue(place.source().endsWith("(Made up), 9 years, taken as they are"), place.source());
    write("weather/own.epw", epw(2020, 2021));
    assertTrue(place(PLACE).source().endsWith("spread and persistence of 2 years"));
  }

  @Test
  void theZipIsReadToo() throws IOException {
    try (ZipOutputStream zip =
        new ZipOutputStream(Files.newOutputStream(dir.resolve("weather/Own.ZIP")))) {
      zip.putNextEntry(new ZipEntry("own.epw"));
      zip.write(epw(2023).getBytes(StandardCharsets.ISO_8859_1));
    }
    assertEquals(40, place(PLACE.replace("own.epw", "Own.ZIP")).height());
  }

  @Test
  void theZoneMustKeepTheFilesTime() throws IOException {
    ShopRead read = read(PLACE.replace("Los_Angeles", "Denver"));
    assertEquals(
        List.of(
            "content/places/own.yaml:2:7  the standard time of America/Denver is UTC-07:00, but the"
                + " weather file's is UTC-08:00  write the zone in which the weather file's site"
                + " lies, or use another file"),
        TestShops.lines(read));
    ShopRead utc = read(PLACE.replace("America/Los_Angeles", "Etc/UTC"));
    assertTrue(TestShops.lines(utc).get(0).contains("of Etc/UTC is UTC+00:00, but"));
  }

  @Test
  void aBrokenFileIsOneProblemAndOtherJobsAreGood() throws IOException {
    write("weather/own.epw", epw(2023).replaceFirst(",10.5,", ",1O.5,"));
    ShopRead read = read(PLACE);
    assertEquals(1, read.problems().size());
    assertEquals("weather/own.epw", read.problems().get(0).file());
    assertEquals(4, read.problems().get(0).line());
    assertEquals(List.of("1"), read.jobs().stream().map(Job::id).toList());
  }

  @Test
  void gapsAreNoted() throws IOException {
    write("weather/own.epw", epw(2023).replaceFirst(",10.5,", ",99.9,"));
    ShopRead read = read(PLACE);
    assertEquals(1, read.problems().size());
    assertTrue(TestShops.lines(read).get(0).startsWith("weather/own.epw:4:1  the dry bulb"));
    assertTrue(read.places().containsKey("own"));
  }

  @Test
  void linksMustNotLeadOut() throws IOException {
    Path outside = Files.createTempDirectory("outside");
    Files.writeString(outside.resolve("far.epw"), epw(2023));
    Path link = dir.resolve("weather/link.epw");
    try {
      Files.createSymbolicLink(link, outside.resolve("far.epw"));
    } catch (IOException | UnsupportedOperationException e) {
      Assumptions.abort("skipped: no links can be made here");
    }
    String line = TestShops.lines(read(PLACE.replace("own.epw", "link.epw"))).get(0);
    assertTrue(line.contains("leads out of the shop folder"), line);
    Files.delete(link);
    Files.delete(outside.resolve("far.epw"));
    Files.delete(outside);
  }

  @Test
  void pathsThatPointElsewhereAreRefused() throws IOException {
    List<String> bad =
        List.of(
            "/etc/own.epw",
            "weather/../../own.epw",
            "weather//own.epw",
            "./own.epw",
            "C:/own.epw",
            "weather\\\\own.epw",
            "~/.own.epw");
    for (String path : bad) {
      ShopRead read = read(PLACE.replace("weather/own.epw", '"' + path + '"'));
      assertEquals("bad-path", read.problems().get(0).code(), path);
      assertEquals(1, read.problems().size(), path);
    }
    write("weather/folder.epw/x", "");
    assertEquals(
        "missing-file", read(PLACE.replace("own.epw", "folder.epw")).problems().get(0).code());
  }

  @Test
  void whatIsNoNameOfAFileIsRefused() throws IOException {
    for (String value : List.of("[a.epw]", "{a: b}", "", "7", "true", "\"\"", "a".repeat(201))) {
      ShopRead read = read(PLACE.replace("weather/own.epw", value));
      assertEquals(1, read.problems().size(), value);
      String line = TestShops.lines(read).get(0);
      assertTrue(line.startsWith("content/places/own.yaml:3:"), line);
    }
    ShopRead read = read("weather-file: weather/own.epw\n");
    assertEquals(
        List.of("name is missing", "zone is missing"),
        read.problems().stream().map(p -> p.message()).toList());
  }
}
