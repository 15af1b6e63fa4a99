package curewindow.shop;

import curewindow.climate.Climates;
import curewindow.climate.EpwFile;
import curewindow.climate.MonthNormals;
import curewindow.climate.Place;
import curewindow.climate.Places;
import curewindow.climate.Psychrometrics;
import curewindow.problem.Problems;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads a place of the shop's own. */
final class PlaceReader {

  private static final Keys PLACE =
      Keys.needs("name", "latitude", "longitude", "height", "zone").allows("source", "normals");
  private static final Keys WITH_WEATHER_FILE =
      Keys.needs("name", "zone", "weather-file")
          .allows("latitude", "longitude", "height", "source", "normals");
  private static final Keys MONTH = Keys.needs("min", "max", "sun").allows("dew-point", "humidity");
  private static final int MONTHS = 12;

  /** No zone's clocks are farther off the sun's time, hours; in the west of China it is three. */
  private static final double FARTHEST_CLOCKS = 3.2;

  /** Dew points of months, degrees Celsius. */
  private static final double LEAST_DEW_POINT = -90;

  private static final double MOST_DEW_POINT = 40;

  private final ShopFiles files;
  private final Problems problems;

  PlaceReader(ShopFiles files, Problems problems) {
    this.files = files;
    this.problems = problems;
  }

  /**
   * Reads the place of a file, whose name without its ending is the place's id.
   *
   * @param file the file
   * @param into the places by id; a good one is put there, else none is left of that id
   * @param broken gets its id where it has an error
   */
  void read(String file, Map<String, Place> into, Broken broken) {
    Source source = new Source(file, problems);
    String id = file.substring(file.lastIndexOf('/') + 1, file.length() - ".yaml".length());
    if (!Values.isName(id)) {
      source.error(
          "bad-id",
          "the file name " + Source.shown(id) + " is not fit to be a place's id",
          "use up to 40 lower case letters and digits, words joined with hyphens");
    }
    Optional<Fields> fields =
        files
            .text(file, problems)
            .flatMap(t -> YamlTree.read(t, source))
            .flatMap(n -> Fields.of(n, keys(n), source));
    Optional<Place> place = fields.flatMap(f -> place(id, f));
    place
        .filter(p -> source.errors() == 0)
        .ifPresentOrElse(
            p -> into.put(id, p),
            () -> {
              into.remove(id);
              broken.add(id, source.firstAfter(0));
            });
  }

  private static Keys keys(Node node) {
    boolean weather =
        node instanceof Node.Branch branch && branch.entries().containsKey("weather-file");
    return weather ? WITH_WEATHER_FILE : PLACE;
  }

  /** What a place file says of itself, as far as it could be read. */
  private record Typed(
      Optional<String> name,
      Optional<Double> latitude,
      Optional<Double> longitude,
      Optional<Double> height,
      Optional<ZoneId> zone,
      Optional<String> source) {

    static Typed of(Fields f) {
      return new Typed(
          f.text("name", 80),
          f.number("latitude", -90, 90),
          f.number("longitude", -180, 180),
          f.number("height", -450, 6000),
          Zones.of(f, "zone"),
          f.note("source", 300));
    }
  }

  private Optional<Place> place(String id, Fields f) {
    Typed typed = Typed.of(f);
    typed.longitude().ifPresent(l -> typed.zone().ifPresent(z -> tellWrongSide(f, l, z)));
    if (f.has("weather-file")) {
      return withWeatherFile(id, f, typed);
    }
    List<MonthNormals> normals = f.has("normals") ? normals(f) : List.of();
    if (f.source().errors() > 0) {
      return Optional.empty();
    }
    double latitude = typed.latitude().orElseThrow();
    double longitude = typed.longitude().orElseThrow();
    double height = typed.height().orElseThrow();
    ZoneId zone = typed.zone().orElseThrow();
    String name = typed.name().orElseThrow();
    if (normals.isEmpty()) {
      return Optional.of(Places.at(id, name, latitude, longitude, height, zone));
    }
    String from = typed.source().orElse("the shop's own figures");
    return possible(
        new Place(id, name, latitude, longitude, height, zone, normals, from), f, "normals");
  }

  /** Where the clocks are those of the other side of Greenwich, the sign is hardly meant. */
  private static void tellWrongSide(Fields f, double longitude, ZoneId zone) {
    double standard = EpwFile.standardOffset(zone).getTotalSeconds() / 3600.0;
    if (hoursOff(standard, longitude) > FARTHEST_CLOCKS
        && hoursOff(standard, -longitude) < FARTHEST_CLOCKS) {
      f.source()
          .notice(
              "longitude-wrong-side",
              f.where("longitude"),
              String.format(
                  Locale.ROOT,
                  "the clocks of %s are %.0f hours off the sun's time at that longitude",
                  zone,
                  hoursOff(standard, longitude)),
              "write longitude: "
                  + Values.shortest(-longitude)
                  + " if you mean that; west is negative");
    }
  }

  /** Hours between a zone's time and the sun's, at most 12. */
  private static double hoursOff(double standard, double longitude) {
    double off = Math.abs(standard - longitude / 15) % 24;
    return Math.min(off, 24 - off);
  }

  private Optional<Place> withWeatherFile(String id, Fields f, Typed typed) {
    if (f.has("normals")) {
      f.source()
          .error(
              "two-weathers",
              f.where("normals"),
              "both normals and weather-file are given",
              "delete one of them; normals are computed from the weather file");
    }
    Optional<EpwFile> read =
        f.source().errors() > 0 ? Optional.empty() : new WeatherFiles(files, problems).read(f);
    if (read.isEmpty() || !sameTime(f, read.get(), typed.zone().orElseThrow())) {
      return Optional.empty();
    }
    EpwFile file = read.get();
    double latitude = typed.latitude().orElse(file.latitude());
    double longitude = typed.longitude().orElse(file.longitude());
    double height = typed.height().orElse(file.height());
    WeatherFiles.tellIfFar(f, problems, file, latitude, longitude, height);
    return possible(
        new Place(
            id,
            typed.name().orElseThrow(),
            latitude,
            longitude,
            height,
            typed.zone().orElseThrow(),
            file.weather().normals(),
            typed.source().orElse(WeatherFiles.source(f, file)),
            Optional.of(file.weather()),
            file.doubtAt(latitude, longitude, height)),
        f,
        "weather-file");
  }

  private static boolean sameTime(Fields f, EpwFile file, ZoneId zone) {
    if (file.keepsTimeOf(zone)) {
      return true;
    }
    f.source()
        .error(
            "zone-of-weather-file",
            f.where("zone"),
            "the standard time of "
                + zone
                + " is UTC"
                + hours(EpwFile.standardOffset(zone))
                + ", but the weather file's is UTC"
                + hours(file.offset()),
            "write the zone in which the weather file's site lies, or use another file");
    return false;
  }

  private static String hours(ZoneOffset offset) {
    return offset.equals(ZoneOffset.UTC) ? "+00:00" : offset.getId();
  }

  private static Optional<Place> possible(Place place, Fields f, String key) {
    List<String> wrong = Climates.impossible(place);
    if (wrong.isEmpty()) {
      return Optional.of(place);
    }
    f.source()
        .error(
            "too-much-sun",
            f.where(key),
            wrong.get(0),
            "check latitude, the order of the months, and that sun is kWh/m2 a day");
    return Optional.empty();
  }

  private static List<MonthNormals> normals(Fields f) {
    List<Node> months = f.items("normals");
    if (f.source().errors() == 0 && months.size() != MONTHS) {
      f.source()
          .error(
              "wrong-months",
              f.where("normals"),
              "the number of months in normals is " + months.size() + ", not " + MONTHS,
              "write one line for each month, January first");
    }
    List<MonthNormals> normals = new ArrayList<>();
    for (Node month : months) {
      Fields.of(month, MONTH, f.source()).flatMap(PlaceReader::month).ifPresent(normals::add);
    }
    return normals;
  }

  private static Optional<MonthNormals> month(Fields f) {
    Optional<Double> min = f.number("min", -80, 60);
    Optional<Double> max = f.number("max", -80, 65);
    Optional<Double> sun = f.number("sun", 0, 12);
    Optional<Double> dewPoint = f.number("dew-point", LEAST_DEW_POINT, MOST_DEW_POINT);
    Optional<Double> humidity = f.number("humidity", 1, 100);
    if (min.isEmpty() || max.isEmpty() || sun.isEmpty()) {
      return Optional.empty();
    }
    if (f.has("dew-point") == f.has("humidity")) {
      String fix = "write either dew-point or humidity";
      if (f.has("humidity")) {
        f.source().error("both-given", f.where(), "both dew-point and humidity are given", fix);
      } else {
        f.source().missing(f.where(), "dew-point", fix);
      }
      return Optional.empty();
    }
    Optional<Double> dew =
        dewPoint.or(
            () ->
                humidity
                    .map(h -> Psychrometrics.dewPoint((min.get() + max.get()) / 2, h))
                    .filter(d -> isPossible(f, d)));
    if (dew.isEmpty() || outOfOrder(f, min.get(), max.get(), dew.get())) {
      return Optional.empty();
    }
    return Optional.of(new MonthNormals(min.get(), max.get(), dew.get(), sun.get()));
  }

  private static boolean isPossible(Fields f, double dewPoint) {
    if (dewPoint >= LEAST_DEW_POINT && dewPoint <= MOST_DEW_POINT) {
      return true;
    }
    f.source()
        .error(
            "out-of-range",
            f.where("humidity"),
            String.format(
                Locale.ROOT,
                "min, max and humidity make a dew point of %.1f C, outside %.0f to %.0f",
                dewPoint,
                LEAST_DEW_POINT,
                MOST_DEW_POINT),
            "check the three numbers of the month; humidity is percent");
    return false;
  }

  private static boolean outOfOrder(Fields f, double min, double max, double dewPoint) {
    if (min <= max && dewPoint <= max) {
      return false;
    }
    f.source()
        .error(
            "out-of-order",
            f.where(),
            (min > max ? "min" : "dew-point") + " is above max",
            "check the three numbers of the month");
    return true;
  }
}
