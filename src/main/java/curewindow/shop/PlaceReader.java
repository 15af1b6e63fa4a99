package curewindow.shop;

import curewindow.climate.MonthNormals;
import curewindow.climate.Place;
import curewindow.climate.Places;
import curewindow.climate.Psychrometrics;
import curewindow.problem.Problems;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a place of the shop's own. */
final class PlaceReader {

  private static final Keys PLACE =
      Keys.needs("name", "latitude", "longitude", "height", "zone").allows("source", "normals");
  private static final Keys MONTH = Keys.needs("min", "max", "sun").allows("dew-point", "humidity");
  private static final int MONTHS = 12;

  private final ShopFiles files;
  private final Problems problems;

  PlaceReader(ShopFiles files, Problems problems) {
    this.files = files;
    this.problems = problems;
  }

  /** The place of a file, whose name without its ending is the place's id. */
  Optional<Place> read(String file) {
    Source source = new Source(file, problems);
    String id = id(file);
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
            .flatMap(n -> Fields.of(n, PLACE, source));
    Optional<Place> place = fields.flatMap(f -> place(id, f));
    return source.errors() == 0 ? place : Optional.empty();
  }

  /** The id of the place of a file. */
  static String id(String file) {
    return file.substring(file.lastIndexOf('/') + 1, file.length() - ".yaml".length());
  }

  private Optional<Place> place(String id, Fields f) {
    Optional<String> name = f.text("name", 80);
    Optional<Double> latitude = f.number("latitude", -90, 90);
    Optional<Double> longitude = f.number("longitude", -180, 180);
    Optional<Double> height = f.number("height", -450, 6000);
    Optional<ZoneId> zone = Zones.of(f, "zone");
    Optional<String> from = f.note("source", 300);
    List<MonthNormals> normals = f.has("normals") ? normals(f) : List.of();
    if (f.source().errors() > 0) {
      return Optional.empty();
    }
    double lat = latitude.orElseThrow();
    double lon = longitude.orElseThrow();
    if (normals.isEmpty()) {
      return Optional.of(
          Places.at(id, name.orElseThrow(), lat, lon, height.orElseThrow(), zone.orElseThrow()));
    }
    return Optional.of(
        new Place(
            id,
            name.orElseThrow(),
            lat,
            lon,
            height.orElseThrow(),
            zone.orElseThrow(),
            normals,
            from.orElse("the shop's own figures")));
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
    Optional<Double> dewPoint = f.number("dew-point", -90, 40);
    Optional<Double> humidity = f.number("humidity", 1, 100);
    if (min.isEmpty() || max.isEmpty() || sun.isEmpty()) {
      return Optional.empty();
    }
    if (f.has("dew-point") == f.has("humidity")) {
      f.source()
          .error(
              "missing-key",
              f.where(),
              f.has("humidity") ? "both dew-point and humidity are given" : "dew-point is missing",
              "write either dew-point or humidity");
      return Optional.empty();
    }
    Optional<Double> dew =
        dewPoint.or(
            () -> humidity.map(h -> Psychrometrics.dewPoint((min.get() + max.get()) / 2, h)));
    if (dew.isEmpty() || outOfOrder(f, min.get(), max.get(), dew.get())) {
      return Optional.empty();
    }
    return Optional.of(new MonthNormals(min.get(), max.get(), dew.get(), sun.get()));
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
