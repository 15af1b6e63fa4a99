package curewindow.shop;

import curewindow.climate.ObservedHour;
import curewindow.climate.ObservedHours;
import curewindow.climate.Place;
import curewindow.climate.Psychrometrics;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.Node.Leaf;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Reads weather/observed.csv: weather that was measured, a row an hour. A row with a problem is
 * left out and told; all others are used.
 */
final class ObservedReader {

  static final String FILE = "weather/observed.csv";

  private static final List<String> REQUIRED = List.of("time", "air");
  private static final List<String> COLUMNS =
      List.of("place", "time", "air", "dew-point", "humidity", "irradiance");

  /** A dew point may lie this far above the air, K, as instruments differ; it then counts as it. */
  private static final double INSTRUMENTS = 1;

  /** No air outside was ever damper than some 36 C; degrees Celsius. */
  private static final double MOST_DEW_POINT = 45;

  private final Source source;
  private final Known known;
  private final Map<String, Place> places;
  private final Instant now;
  private final Map<String, List<ObservedHour>> hours = new TreeMap<>();
  private final Map<String, Integer> lines = new HashMap<>();

  /** The rows of hours that are not over. */
  private final List<Where> early = new ArrayList<>();

  private ObservedReader(Source source, Known known, Map<String, Place> places, Instant now) {
    this.source = source;
    this.known = known;
    this.places = places;
    this.now = now;
  }

  /** All columns that the file may have. */
  static List<String> columns() {
    return COLUMNS;
  }

  /**
   * The measured weather of a shop folder; nothing where it has no such file.
   *
   * @param files the shop folder
   * @param known the names of places, and the place of rows that name none
   * @param places the places by name
   * @param now hours that are not over by then cannot have been measured; they are left out
   * @param problems where it is told what is wrong
   * @return the hours by the place's id
   */
  static Map<String, ObservedHours> read(
      ShopFiles files, Known known, Map<String, Place> places, Instant now, Problems problems) {
    ObservedReader reader = new ObservedReader(new Source(FILE, problems), known, places, now);
    if (files.has(FILE)) {
      files.text(FILE, problems).ifPresent(reader::rows);
      reader.early(problems);
    }
    Map<String, ObservedHours> read = new TreeMap<>();
    reader.hours.forEach((place, list) -> read.put(place, new ObservedHours(list)));
    return read;
  }

  private void rows(String text) {
    CsvTable.read(text, REQUIRED, COLUMNS, source)
        .ifPresent(rows -> rows.lines().stream().filter(CsvTable.Line::whole).forEach(this::row));
  }

  private void row(CsvTable.Line line) {
    Optional<Place> place = place(line);
    Optional<Instant> start = place.flatMap(p -> start(line, p));
    Optional<Double> air = number(line, "air", -60, 60);
    if (air.isEmpty() && !line.cells().containsKey("air")) {
      missing(line, "air");
    }
    Optional<Double> dewPoint = dewPoint(line, air);
    Optional<Double> sun = number(line, "irradiance", 0, 1500);
    boolean sunIsWrong = line.cells().containsKey("irradiance") && sun.isEmpty();
    if (start.isPresent() && air.isPresent() && dewPoint.isPresent() && !sunIsWrong) {
      OptionalDouble g = sun.isPresent() ? OptionalDouble.of(sun.get()) : OptionalDouble.empty();
      add(line, place.get(), new ObservedHour(start.get(), air.get(), dewPoint.get(), g));
    }
  }

  private void add(CsvTable.Line line, Place place, ObservedHour hour) {
    Integer before = lines.putIfAbsent(place.id() + " " + hour.start(), line.where().line());
    if (before != null) {
      source.error(
          "named-twice",
          line.where(),
          "the hour stands in line " + before + " already",
          "delete one of the two rows; the first is used");
      return;
    }
    if (hour.start().plus(Duration.ofHours(1)).isAfter(now)) {
      early.add(line.where());
    } else {
      hours.computeIfAbsent(place.id(), id -> new ArrayList<>()).add(hour);
    }
  }

  /** Tells once of all hours that are not over, as a whole forecast may have been put in. */
  private void early(Problems problems) {
    if (early.isEmpty()) {
      return;
    }
    String message =
        early.size() == 1
            ? "this hour is not over yet, so its row is left out"
            : "this hour is not over yet, and " + early.size() + " rows of such hours are left out";
    problems.add(
        Problem.notice(
            "not-over",
            early.get(0),
            message,
            "put in what was measured, not a forecast; a row counts once its hour is over"));
  }

  private Optional<Place> place(CsvTable.Line line) {
    Leaf cell = line.cells().get("place");
    if (cell == null && known.place().isEmpty()) {
      missing(line, "place");
    }
    return (cell == null ? known.place() : known.places().check(cell, source)).map(places::get);
  }

  private Optional<Instant> start(CsvTable.Line line, Place place) {
    Leaf cell = line.cells().get("time");
    if (cell == null) {
      missing(line, "time");
      return Optional.empty();
    }
    Optional<Instant> start = Times.moment(cell, Optional.of(place.zone()), source);
    if (start.isPresent() && !isFullHour(start.get(), place)) {
      source.error(
          "not-an-hour",
          cell.where(),
          "time is not the start of an hour by the clock of "
              + place.id()
              + ": "
              + Source.shown(cell.text()),
          "write the start of the hour, such as 2026-11-25T14:00");
      return Optional.empty();
    }
    return start;
  }

  private static boolean isFullHour(Instant at, Place place) {
    int offset = place.zone().getRules().getStandardOffset(at).getTotalSeconds();
    return Math.floorMod(at.getEpochSecond() + offset, 3600) == 0;
  }

  private Optional<Double> dewPoint(CsvTable.Line line, Optional<Double> air) {
    boolean dew = line.cells().containsKey("dew-point");
    boolean humid = line.cells().containsKey("humidity");
    if (dew == humid) {
      source.error(
          dew
              ? Problem.error(
                  "both-given",
                  line.where(),
                  "dew-point and humidity are both given",
                  "leave one of the two empty")
              : Problem.missing(
                  line.where(),
                  "dew-point",
                  "neither dew-point nor humidity is given",
                  "write one of the two"));
      return Optional.empty();
    }
    if (humid) {
      Optional<Double> humidity = number(line, "humidity", 1, 100);
      return air.flatMap(a -> humidity.map(h -> Psychrometrics.dewPoint(a, h)))
          .filter(d -> d <= MOST_DEW_POINT || tooHumid(line, d));
    }
    return number(line, "dew-point", -80, MOST_DEW_POINT)
        .filter(d -> air.isEmpty() || d <= air.get() + INSTRUMENTS || tooDamp(line));
  }

  private boolean tooHumid(CsvTable.Line line, double dewPoint) {
    source.error(
        "out-of-range",
        line.cells().get("humidity").where(),
        String.format(
            Locale.ROOT,
            "air and humidity make a dew point of %.1f C, above %.0f, which no air outside has",
            dewPoint,
            MOST_DEW_POINT),
        "check both values; air is degrees Celsius, humidity percent");
    return false;
  }

  private boolean tooDamp(CsvTable.Line line) {
    source.error(
        "out-of-range",
        line.cells().get("dew-point").where(),
        "dew-point is above air, which cannot be",
        "check both values; they are degrees Celsius");
    return false;
  }

  private Optional<Double> number(CsvTable.Line line, String column, double low, double high) {
    return Optional.ofNullable(line.cells().get(column))
        .flatMap(cell -> Values.number(cell, low, high, source));
  }

  private void missing(CsvTable.Line line, String column) {
    source.missing(line.where(), column, "fill in " + column);
  }
}
