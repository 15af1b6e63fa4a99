package curewindow.climate;

import java.util.function.ToDoubleBiFunction;

/** What a place's weathers have in common: the mean of all of them in each hour. */
final class MeanYear {

  private MeanYear() {}

  /** The mean year of a place, of the weathers that its dates are computed from. */
  static WeatherYear of(Place place) {
    Weathers weathers = Climates.weathers(place);
    return WeatherYear.of(
        mean(weathers, WeatherYear::temperature),
        mean(weathers, WeatherYear::dewPoint),
        mean(weathers, WeatherYear::irradiance));
  }

  private static double[] mean(Weathers weathers, ToDoubleBiFunction<WeatherYear, Integer> part) {
    double[] mean = new double[WeatherYear.HOURS];
    for (WeatherYear year : weathers.years()) {
      for (int h = 0; h < mean.length; h++) {
        mean[h] += part.applyAsDouble(year, h) / weathers.years().size();
      }
    }
    return mean;
  }
}
