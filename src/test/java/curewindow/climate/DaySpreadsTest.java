package curewindow.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * How days depart from the normals: the rules worked by hand, and what the ensembles make of it.
 */
class DaySpreadsTest {

  /** Six months of 0 C and six of 20 C, 4 K above the dew point, under a sky of 0.7. */
  private static DaySpreads twoSeasons() {
    List<MonthNormals> months = new ArrayList<>(Collections.nCopies(6, month(0, -4)));
    months.addAll(Collections.nCopies(6, month(20, 16)));
    double[] clearness = new double[365];
    Arrays.fill(clearness, 0.7);
    return DaySpreads.of(months, clearness, DayRules.STANDARD);
  }

  private static MonthNormals month(double mean, double dewPoint) {
    return new MonthNormals(mean - 5, mean + 5, dewPoint, 3);
  }

  @Test
  void rulesWorkedByHand() {
    DaySpreads spreads = twoSeasons();
    double cold = 0.6 + 0.128 * 20 + 0.84;
    double warm = 0.6 + 0.128 * 20 - 0.84;
    assertMonths(cold, warm, spreads.warmth());
    // 1.2 - 0.065 * 4, and 0.65 times half a year's range below or above the mean.
    assertMonths(0.94 + 0.325, 0.94 - 0.325, spreads.dewShare());
    assertMonths(0.6 + 0.4 * cold, 0.6 + 0.4 * warm, spreads.moisture());
    assertMonths(0.11 + 0.028 * cold, 0.11 + 0.028 * warm, spreads.brightness());
    // 0.13 less or more 1.4 * 0.5 * exp(-4 / 8)
    assertMonths(0.13 - 0.42457, 0.13 + 0.42457, spreads.brightInWarmth());
    assertMonths(0.58, 0.58 + 0.029 * 12, spreads.rangeInBrightness());
  }

  private static void assertMonths(double cold, double warm, double[] days) {
    double[] months = MonthCurve.means(days);
    assertEquals(cold, months[2], 1e-5);
    assertEquals(warm, months[8], 1e-5);
  }

  @Test
  void rulesStayWithinWhatDaysCanBe() {
    List<MonthNormals> months = new ArrayList<>(Collections.nCopies(6, month(-45, -46)));
    months.addAll(Collections.nCopies(6, month(35, -20)));
    double[] clearness = new double[365];
    Arrays.setAll(clearness, d -> d < 181 ? 0.1 : 1.1);
    DaySpreads spreads = DaySpreads.of(months, clearness, DayRules.STANDARD);
    assertMonths(1.4, -0.5, spreads.dewShare());
    assertEquals(
        0.13 - 0.7 * Math.exp(-0.125), MonthCurve.means(spreads.brightInWarmth())[2], 1e-5);
    assertEquals(0.04, MonthCurve.means(spreads.brightness())[2], 0.01);
    assertEquals(0, MonthCurve.means(spreads.rangeInBrightness())[2], 1e-9);
    for (double brightness : spreads.brightness()) {
      assertTrue(brightness > 0);
    }
  }

  /** Eleven months alike and a cold one, which lies 11/12 of the range below the mean. */
  @Test
  void correlationsStayWithinSixTenths() {
    List<MonthNormals> months = new ArrayList<>(Collections.nCopies(11, month(20, 20)));
    months.add(month(0, 0));
    double[] clearness = new double[365];
    Arrays.fill(clearness, 0.7);
    DaySpreads spreads = DaySpreads.of(months, clearness, DayRules.STANDARD);
    assertEquals(-0.6, MonthCurve.means(spreads.brightInWarmth())[11], 1e-5);
  }

  private static final int JANUARY = 15;
  private static final int JULY = 196;

  /** One day of all members; the sun comes as the daily sum, so the day must have some. */
  private static double[] ofDay(Weathers weathers, int day, String what) {
    return weathers.years().stream()
        .mapToDouble(
            year -> {
              double air = 0;
              double dew = 0;
              double sun = 0;
              double low = 99;
              double high = -99;
              for (int h = 24 * day; h < 24 * day + 24; h++) {
                air += year.temperature(h) / 24;
                dew += year.dewPoint(h) / 24;
                sun += year.irradiance(h) / 1000;
                low = Math.min(low, year.temperature(h));
                high = Math.max(high, year.temperature(h));
              }
              return switch (what) {
                case "air" -> air;
                case "dew" -> dew;
                case "sun" -> sun;
                default -> high - low;
              };
            })
        .toArray();
  }

  private static double mean(double[] values) {
    return Arrays.stream(values).average().orElseThrow();
  }

  private static double deviation(double[] values) {
    double mean = mean(values);
    return Math.sqrt(
        Arrays.stream(values).map(v -> (v - mean) * (v - mean)).average().orElseThrow());
  }

  /** Over a month's days, so that chance has little say. */
  private static double correlation(Weathers weathers, int middle, String one, String two) {
    double sum = 0;
    for (int day = middle - 12; day <= middle + 12; day++) {
      double[] a = ofDay(weathers, day, one);
      double[] b = ofDay(weathers, day, two);
      double product = 0;
      for (int i = 0; i < a.length; i++) {
        product += (a[i] - mean(a)) * (b[i] - mean(b)) / a.length;
      }
      sum += product / (deviation(a) * deviation(b)) / 25;
    }
    return sum;
  }

  /**
   * Signs as in the typical years (TMY3) of ten places: in a damp cold winter clear days are cold
   * ones, in summer warm ones; moist days are dull; clear days have a wide range.
   */
  @Test
  void weatherHangsTogether() {
    Weathers chicago = daysOnly("chicago");
    assertTrue(correlation(chicago, JANUARY, "air", "sun") < -0.1);
    assertTrue(correlation(chicago, JULY, "air", "sun") > 0.1);
    assertTrue(correlation(chicago, JANUARY, "air", "dew") > 0.8);
    assertTrue(correlation(chicago, JULY, "dew", "sun") < -0.1);
    assertTrue(correlation(chicago, JULY, "sun", "range") > 0.6);
    Weathers phoenix = daysOnly("phoenix");
    assertTrue(Math.abs(correlation(phoenix, JULY, "air", "dew")) < 0.5);
  }

  /** The southern hemisphere has its winter in July. */
  @Test
  void weatherHangsTogetherInTheSouth() {
    Weathers melbourne = daysOnly("melbourne");
    double winter = correlation(melbourne, JULY, "air", "sun");
    double summer = correlation(melbourne, JANUARY, "air", "sun");
    assertTrue(winter < summer - 0.3, winter + " and " + summer);
  }

  /** The weathers of a place whose normals are sure, so that years differ by their days alone. */
  private static Weathers daysOnly(String id) {
    return Climates.weathers(Places.builtIn().get(id).doubted(Doubt.NONE));
  }

  /** Means stay with the normals: sun and dew point are not lost at their limits. */
  @ParameterizedTest
  @ValueSource(strings = {"chicago", "phoenix", "seattle", "singapore", "yakutsk", "melbourne"})
  void meansStayWithTheNormals(String id) {
    Place place = Places.builtIn().get(id);
    Weathers weathers = Climates.weathers(place);
    double[] sun = new double[365];
    double[] dew = new double[365];
    for (int d = 0; d < 365; d++) {
      sun[d] = mean(ofDay(weathers, d, "sun"));
      dew[d] = mean(ofDay(weathers, d, "dew"));
    }
    for (int m = 0; m < 12; m++) {
      MonthNormals normals = place.normals().get(m);
      double sunny = normals.sun() < 0.25 ? 0.12 : 0.002 + 0.001 * normals.sun();
      assertEquals(normals.sun(), MonthCurve.means(sun)[m], sunny, id + " sun " + m);
      // Where the air is nearly saturated, moist days and years cannot be moister than their air.
      assertEquals(normals.dewPoint(), MonthCurve.means(dew)[m], 0.6, id + " dew " + m);
    }
  }

  /** Hours of a half-clouded day come and go, and leave the day its sum. */
  @Test
  void cloudsComeAndGoWithinTheDay() {
    Place place = Places.builtIn().get("seattle");
    WeatherYear smooth = MeanYear.of(place);
    double roughest = 0;
    for (WeatherYear year : Climates.weathers(place).years()) {
      int noon = JULY * 24 + 12;
      double[] share = new double[3];
      for (int i = 0; i < 3; i++) {
        share[i] = year.irradiance(noon - 1 + i) / smooth.irradiance(noon - 1 + i);
      }
      roughest = Math.max(roughest, Math.abs(share[2] - share[0]));
    }
    assertTrue(roughest > 0.3 && roughest < 1.5, "largest change in two hours " + roughest);
  }
}
