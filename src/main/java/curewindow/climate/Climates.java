package curewindow.climate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Makes the weathers that a place may have from its monthly normals. */
public final class Climates {

  /** The tenth part of a normal distribution lies below its mean by this many spreads. */
  private static final double POOR_TENTH = 1.28;

  /**
   * Cloudiness hardly lasts from day to day, so no wait of some days is dull throughout: the poor
   * tenth of the means of three days, the usual length of the first holds.
   */
  private static final double POOR_TENTH_OF_THREE_DAYS = POOR_TENTH / 1.7320508075688772;

  private Climates() {}

  /**
   * The years of the place's weather file, if it has enough of them. Else two years: the first
   * typical, the second on the cold side, with days colder by 1.28 spreads all year, a lower dew
   * point and duller skies. One day in ten is colder than those of the second.
   *
   * @param place the place
   * @return the years of the file, or two
   * @throws IllegalArgumentException where {@link #impossible} finds something
   */
  public static Weathers of(Place place) {
    if (hasOwnYears(place)) {
      return ownYears(place);
    }
    PlaceDays days = daysOf(place);
    WeatherYear typical = days.year(Departures.inSpreads(days, always(0), always(0)));
    Departures cold =
        Departures.inSpreads(days, always(-POOR_TENTH), always(-POOR_TENTH_OF_THREE_DAYS));
    return new Weathers(days.standard(), List.of(typical, days.year(cold)));
  }

  /**
   * The years of the place's weather file, if it has {@link FileWeather#ENOUGH_YEARS}. Else many
   * equally likely years made from the normals, and from the file's spread and persistence if it
   * has a file; the same on every machine and run.
   *
   * @param place the place
   * @param members how many years, even, 2 to 512
   * @return the years
   * @throws IllegalArgumentException where the number is odd or out of range, or {@link
   *     #impossible} finds something
   */
  public static Weathers ensemble(Place place, int members) {
    if (hasOwnYears(place)) {
      return ownYears(place);
    }
    List<double[]> warmth =
        Chances.warmth(
            members, place.fileWeather().map(FileWeather::persistence).orElse(Chances.PERSISTENCE));
    List<double[]> brightness = Chances.brightness(members);
    PlaceDays days = daysOf(place);
    List<WeatherYear> years = new ArrayList<>();
    for (int i = 0; i < members; i++) {
      years.add(days.year(Departures.inSpreads(days, warmth.get(i), brightness.get(i))));
    }
    return new Weathers(days.standard(), years);
  }

  /**
   * What no place on earth can have, such as more sun than a cloudless sky lets through.
   *
   * @param place the place
   * @return what is wrong, a sentence each; empty where the normals are possible
   */
  public static List<String> impossible(Place place) {
    return List.copyOf(PlaceDays.impossible(place));
  }

  private static boolean hasOwnYears(Place place) {
    return place.fileWeather().filter(FileWeather::hasEnoughYears).isPresent();
  }

  /** The years of the place's weather file, which then are its weathers. */
  private static Weathers ownYears(Place place) {
    return new Weathers(PlaceDays.standardOffset(place), place.fileWeather().orElseThrow().years());
  }

  private static PlaceDays daysOf(Place place) {
    List<String> wrong = PlaceDays.impossible(place);
    if (!wrong.isEmpty()) {
      throw new IllegalArgumentException(place.id() + ": " + String.join("; ", wrong));
    }
    return new PlaceDays(place);
  }

  private static double[] always(double value) {
    double[] days = new double[MonthCurve.DAYS];
    Arrays.fill(days, value);
    return days;
  }
}
