package curewindow.climate;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Statistics of hours whose statistics are known, and the weathers made from them. */
class WeatherStatisticsTest {

  /** A year of days that depart from 10 C by a made first-order autoregressive process. */
  private static WeatherYear year(double spread, double persistence, SplittableRandom random) {
    double[] air = new double[WeatherYear.HOURS];
    double departure = spread * gauss(random);
    for (int day = 0; day < 365; day++) {
      double noise = gauss(random) * spread * Math.sqrt(1 - persistence * persistence);
      departure = persistence * departure + noise;
      for (int hour = 0; hour < 24; hour++) {
        // From 4 K below to 4 K above the day's mean; the mean of the day is exactly its middle.
        air[24 * day + hour] = 10 + departure + 8 * (hour / 23.0 - 0.5);
      }
    }
    double[] dew = new double[WeatherYear.HOURS];
    Arrays.fill(dew, -20);
    double[] sun = new double[WeatherYear.HOURS];
    for (int hour = 0; hour < sun.length; hour++) {
      sun[hour] = hour % 24 >= 8 && hour % 24 < 16 ? 250 : 0;
    }
    return WeatherYear.of(air, dew, sun);
  }

  private static double gauss(SplittableRandom random) {
    return random.nextGaussian();
  }

  private static List<WeatherYear> years(int count, double spread, double persistence) {
    SplittableRandom random = new SplittableRandom(4);
    List<WeatherYear> years = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      years.add(year(spread, persistence, random));
    }
    return years;
  }

  @Test
  void normalsAreMeansOfTheDays() {
    for (MonthStatistics month : WeatherStatistics.of(years(30, 3, 0.6))) {
      assertEquals(10, month.mean(), 0.5);
      assertEquals(month.mean() - 4, month.normals().dailyMin(), 1e-9);
      assertEquals(month.mean() + 4, month.normals().dailyMax(), 1e-9);
      assertEquals(-20, month.normals().dewPoint(), 1e-9);
      assertEquals(2, month.normals().sun(), 1e-9);
    }
  }

  @Test
  void spreadAndPersistenceOfManyYearsComeBack() {
    for (MonthStatistics month : WeatherStatistics.of(years(60, 3, 0.6))) {
      assertEquals(3, month.spread(), 0.2);
      assertEquals(0.6, month.persistence(), 0.05);
    }
  }

  /** A year's own months hide part of the spread; on the mean the correction gives it back. */
  @Test
  void spreadAndPersistenceOfSingleYearsAreRightOnTheMean() {
    double squares = 0;
    double persistence = 0;
    List<WeatherYear> years = years(100, 3, 0.7);
    for (WeatherYear year : years) {
      FileWeather weather = FileWeather.of(List.of(year));
      for (double spread : weather.spreads()) {
        squares += spread * spread / 12 / years.size();
      }
      persistence += weather.persistence() / years.size();
    }
    assertEquals(3, Math.sqrt(squares), 0.12);
    assertEquals(0.7, persistence, 0.04);
  }

  @Test
  void calmAndConstantYearsHaveStatisticsToo() {
    List<MonthStatistics> calm = WeatherStatistics.of(years(1, 0, 0));
    assertEquals(0.3, calm.get(0).spread());
    assertEquals(12, calm.size());
    List<WeatherYear> none = List.of();
    assertThrows(IllegalArgumentException.class, () -> new FileWeather(calm, none));
    List<MonthStatistics> eleven = calm.subList(0, 11);
    List<WeatherYear> one = years(1, 1, 0);
    assertThrows(IllegalArgumentException.class, () -> new FileWeather(eleven, one));
    MonthNormals normals = calm.get(0).normals();
    assertThrows(
        IllegalArgumentException.class, () -> new MonthStatistics(normals, 0, Double.NaN, 0));
    assertThrows(IllegalArgumentException.class, () -> new MonthStatistics(normals, 0, 1, 0.96));
  }

  private static Place place(Optional<FileWeather> weather) {
    List<MonthNormals> normals = Collections.nCopies(12, new MonthNormals(6, 14, -20, 2));
    return new Place(
        "x", "X", 40, 0, 0, ZoneOffset.UTC, normals, "made up", weather, Doubt.OF_FILE);
  }

  @Test
  void aFileOfEnoughYearsIsTheEnsemble() {
    List<WeatherYear> years = years(FileWeather.ENOUGH_YEARS, 3, 0.6);
    Place place = place(Optional.of(FileWeather.of(years)));
    assertEquals(years, Climates.weathers(place).years());
    assertEquals(ZoneOffset.UTC, Climates.weathers(place).standardOffset());
    assertTrue(Climates.weathers(place).real());
    assertFalse(Climates.weathers(place(Optional.empty())).real());
  }

  /** The ensemble made from a file's statistics has the file's spread and persistence. */
  @Test
  void aFileOfFewYearsLendsItsSpreadAndPersistence() {
    for (double spread : new double[] {1.5, 5}) {
      FileWeather weather = FileWeather.of(years(FileWeather.ENOUGH_YEARS - 1, spread, 0.85));
      List<WeatherYear> made = Climates.ensemble(place(Optional.of(weather)), 64).years();
      assertEquals(64, made.size());
      FileWeather again = FileWeather.of(made);
      assertArrayEquals(weather.spreads(), again.spreads(), 0.15 * spread);
      assertEquals(weather.persistence(), again.persistence(), 0.08);
    }
    Place plain = place(Optional.empty());
    FileWeather rule = FileWeather.of(Climates.ensemble(plain, 64).years());
    assertTrue(rule.spreads()[0] < 1.4, "the rule's spread of a year without seasons");
  }
}
