package curewindow.climate;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.GZIPInputStream;

/**
 * A station whose twelve months are known from a public weather file, with the built-in place next
 * to it. The files are not part of the project.
 *
 * <p>Stations are either for fitting or held out for judging. All stations next to one built-in
 * place are on one side, so that the side that is judged knows nothing of that place's own error
 * either: held out are the places whose id has an odd CRC-32, and those next to the whole weather
 * years of {@code CureJudgeTest}.
 *
 * @param place the station, with the file's months
 * @param near the nearest built-in place
 * @param usa whether it lies in the United States
 * @param heldOut whether it is kept for judging
 */
public record Station(Place place, Places.Near near, boolean usa, boolean heldOut) {

  private static final Path FOLDER = Path.of("../shared/climate");
  private static final Path WHOLE_YEARS = FOLDER.resolve("epw");

  /** How many made years to draw a truth from; the first 16 pairs are much like the promise's. */
  private static final int MADE_YEARS = 128;

  /** The columns of a file that are needed, and whose stations are taken. */
  private record Columns(
      Path file, List<String> id, String height, String zone, List<String> months) {

    static final Columns USA =
        new Columns(
            FOLDER.resolve("tmy3-monthly.csv.gz"),
            List.of("file"),
            "elev_m",
            "tz",
            List.of("t_daily_min_c", "t_daily_max_c", "dewpoint_c", "ghi_kwh_m2_d"));

    /** Its stations of the USA have older files beside those of the other. */
    static final Columns ELSEWHERE =
        new Columns(
            FOLDER.resolve("world-monthly.csv.gz"),
            List.of("set", "name", "country", "lat", "lon"),
            "height_m",
            "utc_offset",
            List.of("mean_daily_min_c", "mean_daily_max_c", "dew_c", "ghi_kwh_m2_d"));
  }

  /** Whether the files are there. */
  public static boolean areThere() {
    return Stream.of(Columns.USA.file(), Columns.ELSEWHERE.file(), WHOLE_YEARS)
        .allMatch(Files::exists);
  }

  /** All stations, those of the USA first. */
  public static List<Station> all() throws IOException {
    List<Place> usa = read(Columns.USA);
    Set<String> wholeYears =
        usa.stream()
            .filter(p -> Files.exists(WHOLE_YEARS.resolve(p.name() + ".zip")))
            .map(p -> nearest(p).place().id())
            .collect(Collectors.toSet());
    return Stream.concat(
            usa.stream().map(p -> of(p, true, wholeYears)),
            read(Columns.ELSEWHERE).stream().map(p -> of(p, false, wholeYears)))
        .toList();
  }

  private static Station of(Place place, boolean usa, Set<String> wholeYears) {
    Places.Near near = nearest(place);
    String id = near.place().id();
    return new Station(place, near, usa, wholeYears.contains(id) || crc(id) % 2 == 1);
  }

  private static Places.Near nearest(Place place) {
    return Places.nearest(place.latitude(), place.longitude());
  }

  private static long crc(String text) {
    CRC32 crc = new CRC32();
    crc.update(text.getBytes(StandardCharsets.UTF_8));
    return crc.getValue();
  }

  /** A number that tells stations apart and says nothing of their weather. */
  public long lot() {
    return crc(place.name());
  }

  /** A year that the station's months may bring, made with other chances than any promise. */
  public WeatherYear madeYear() {
    List<WeatherYear> years = Climates.ensemble(place.doubted(Doubt.NONE), MADE_YEARS).years();
    int promised = Climates.MEMBERS / 2;
    return years.get(promised + (int) (lot() % (MADE_YEARS / 2 - promised)));
  }

  private static List<Place> read(Columns columns) throws IOException {
    try (CsvReader<NamedCsvRecord> rows =
        CsvReader.builder()
            .ofNamedCsvRecord(
                new InputStreamReader(
                    new GZIPInputStream(Files.newInputStream(columns.file())),
                    StandardCharsets.UTF_8))) {
      Map<String, List<NamedCsvRecord>> stations =
          rows.stream()
              .filter(r -> columns == Columns.USA || !r.getField("country").equals("USA"))
              .collect(
                  Collectors.groupingBy(
                      r -> columns.id().stream().map(r::getField).collect(Collectors.joining(" ")),
                      LinkedHashMap::new,
                      Collectors.toList()));
      return stations.entrySet().stream()
          .map(s -> place(s.getKey(), s.getValue(), columns))
          .toList();
    }
  }

  private static Place place(String name, List<NamedCsvRecord> months, Columns columns) {
    NamedCsvRecord first = months.get(0);
    double hours = number(first, columns.zone());
    return new Place(
        "station",
        name,
        number(first, "lat"),
        number(first, "lon"),
        number(first, columns.height()),
        ZoneOffset.ofTotalSeconds((int) Math.round(3600 * hours)),
        months.stream().map(m -> normals(m, columns.months())).toList(),
        "a public weather file");
  }

  private static MonthNormals normals(NamedCsvRecord month, List<String> of) {
    return new MonthNormals(
        number(month, of.get(0)),
        number(month, of.get(1)),
        number(month, of.get(2)),
        number(month, of.get(3)));
  }

  private static double number(NamedCsvRecord row, String field) {
    return Double.parseDouble(row.getField(field));
  }
}
