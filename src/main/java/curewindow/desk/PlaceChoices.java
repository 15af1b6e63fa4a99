package curewindow.desk;

import curewindow.climate.MonthNormals;
import curewindow.climate.Place;
import curewindow.climate.Places;
import curewindow.climate.Psychrometrics;
import curewindow.problem.Nearest;
import curewindow.shop.Units;
import curewindow.words.PlaceFinder;
import curewindow.words.Words;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The places to choose the shop's from, each with its climate in a line. */
final class PlaceChoices {

  private static final int SHOWN = 8;
  private static final int NEAREST = 3;

  /** Fewer letters are in most names. */
  private static final int LEAST = 2;

  /** Latitude and longitude as maps give them: 47.61, -122.33. */
  private static final Pattern POINT =
      Pattern.compile("(-?[0-9]{1,2}(?:[.][0-9]+)?)[,; ]+(-?[0-9]{1,3}(?:[.][0-9]+)?)");

  private static final Instant JANUARY = Instant.parse("2027-01-15T12:00:00Z");
  private static final Instant JULY = Instant.parse("2027-07-15T12:00:00Z");
  private static final int JULY_INDEX = 6;

  /** Kilometres; the international mile of 1959. */
  private static final double MILE = 1.609344;

  /**
   * A place.
   *
   * @param english whether the source is noted in English, as ours are; a shop notes that of its
   *     own places in whatever language it likes
   * @param away how far it is from the point that was typed; empty where a name was
   */
  record Match(
      String id,
      String name,
      String climate,
      String source,
      boolean english,
      String away,
      boolean chosen) {}

  /** The places, and whether something was typed that none is called by. */
  record Found(List<Match> matches, boolean none) {}

  private PlaceChoices() {}

  /** The place that was chosen, or the only one that is called as was typed; else empty. */
  static String chosen(String id, String typed, Map<String, Place> places, Words words) {
    if (!id.isEmpty() || typed.length() < LEAST || point(typed).isPresent()) {
      return id;
    }
    List<Place> found = called(typed, places.values(), words);
    return found.size() == 1 ? found.get(0).id() : "";
  }

  /** What there is to choose: the chosen place, and what is called as was typed or is near it. */
  static Found of(String id, String typed, Map<String, Place> places, Words words) {
    List<Match> matches = new ArrayList<>();
    Optional.ofNullable(places.get(id)).ifPresent(p -> matches.add(match(p, "", true, words)));
    List<Match> found = typed.length() < LEAST ? List.of() : found(typed, places.values(), words);
    found.stream().filter(m -> !m.id().equals(id)).forEach(matches::add);
    boolean none = typed.length() >= LEAST && found.isEmpty();
    if (none) {
      PlaceFinder.meant(typed, places.values())
          .filter(p -> !p.id().equals(id))
          .ifPresent(p -> matches.add(match(p, "", false, words)));
    }
    return new Found(matches, none);
  }

  private static List<Match> found(String typed, Collection<Place> places, Words words) {
    Optional<double[]> point = point(typed);
    if (point.isPresent()) {
      return Places.nearest(point.get()[0], point.get()[1], NEAREST).stream()
          .map(n -> match(n.place(), away(n.distanceKm(), words), false, words))
          .toList();
    }
    return called(typed, places, words).stream()
        .limit(SHOWN)
        .map(p -> match(p, "", false, words))
        .toList();
  }

  /** By the names that the desk shows, or in any other language. */
  private static List<Place> called(String typed, Collection<Place> places, Words words) {
    String part = Nearest.fold(typed.strip());
    List<Place> shown =
        places.stream()
            .filter(p -> Nearest.fold(words.place(p.name(), p.zone())).contains(part))
            .toList();
    return shown.isEmpty() ? PlaceFinder.called(typed, places) : shown;
  }

  private static Optional<double[]> point(String typed) {
    Matcher form = POINT.matcher(typed.strip());
    if (!form.matches()) {
      return Optional.empty();
    }
    double north = Double.parseDouble(form.group(1));
    double east = Double.parseDouble(form.group(2));
    boolean onGlobe = Math.abs(north) <= 90 && Math.abs(east) <= 180;
    return onGlobe ? Optional.of(new double[] {north, east}) : Optional.empty();
  }

  private static String away(double km, Words words) {
    return words.units() == Units.US
        ? words.text("desk.shop.away-miles", Map.of("miles", words.number(Math.rint(km / MILE), 0)))
        : words.text("desk.shop.away", Map.of("km", words.number(Math.rint(km), 0)));
  }

  private static Match match(Place place, String away, boolean chosen, Words words) {
    return new Match(
        place.id(),
        words.place(place.name(), place.zone()),
        climate(place, words),
        place.source(),
        Places.builtIn().containsKey(place.id()),
        away,
        chosen);
  }

  private static String climate(Place place, Words words) {
    return month(place.normals().get(0), JANUARY, words)
        + "; "
        + month(place.normals().get(JULY_INDEX), JULY, words);
  }

  private static String month(MonthNormals normals, Instant in, Words words) {
    double mean = (normals.dailyMin() + normals.dailyMax()) / 2;
    double damp = Psychrometrics.relativeHumidity(mean, Math.min(mean, normals.dewPoint()));
    return words.text(
        "desk.shop.climate",
        Map.of(
            "month", words.month(in, ZoneOffset.UTC),
            "temperature", words.temperature(mean),
            "humidity", String.format(Locale.ROOT, "%.0f", damp)));
  }
}
