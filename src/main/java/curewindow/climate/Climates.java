package curewindow.climate;

import java.util.List;

/** Makes the weathers that a place may have from its monthly normals. */
public final class Climates {

  /**
   * How many years stand for a place's weather. Of 32 ordered ends the 29th is the first that nine
   * of ten keep. The judge's figures hardly change with 16 or 64 years (mean kept within a point,
   * wait within 0.02); fewer would leave the date to single years, more cost memory and time.
   */
  public static final int MEMBERS = 32;

  private Climates() {}

  /**
   * The weathers that dates are computed from, the same on every machine and run: the years of the
   * place's weather file, if it has {@link FileWeather#ENOUGH_YEARS}; else {@link #MEMBERS} equally
   * likely years made from the place's normals, and from its file's spread and persistence if it
   * has a file.
   *
   * @param place the place
   * @return the years
   * @throws IllegalArgumentException where {@link #impossible} finds something
   */
  public static Weathers weathers(Place place) {
    return place
        .fileWeather()
        .filter(FileWeather::hasEnoughYears)
        .map(w -> new Weathers(PlaceDays.standardOffset(place), w.years(), true))
        .orElseGet(() -> ensemble(place, MEMBERS));
  }

  /**
   * Many equally likely years, the same on every machine and run.
   *
   * @param place the place
   * @param members how many years, even, 2 to 512
   * @return the years
   * @throws IllegalArgumentException where the number is odd or out of range, or {@link
   *     #impossible} finds something
   */
  public static Weathers ensemble(Place place, int members) {
    return ensemble(place, members, DayRules.STANDARD);
  }

  static Weathers ensemble(Place place, int members, DayRules rules) {
    double lasts = place.fileWeather().map(FileWeather::persistence).orElse(Chances.WARMTH_LASTS);
    Chances chances = Chances.of(members, lasts);
    PlaceDays days = daysOf(place, rules);
    return new Weathers(
        days.standard(), Departures.of(days, chances).stream().map(days::year).toList());
  }

  /**
   * What no place on earth can have, such as more sun than a cloudless sky lets through.
   *
   * @param place the place
   * @return what is wrong, a sentence each; empty where the normals are possible
   */
  public static List<String> impossible(Place place) {
    return List.copyOf(PlaceDays.impossible(place, PlaceDays.clearSky(place)));
  }

  private static PlaceDays daysOf(Place place, DayRules rules) {
    double[] clearSky = PlaceDays.clearSky(place);
    List<String> wrong = PlaceDays.impossible(place, clearSky);
    if (!wrong.isEmpty()) {
      throw new IllegalArgumentException(place.id() + ": " + String.join("; ", wrong));
    }
    return new PlaceDays(place, rules, clearSky);
  }
}
