package curewindow.page;

import curewindow.climate.Climates;
import curewindow.climate.MonthNormals;
import curewindow.climate.Place;
import curewindow.climate.Places;
import curewindow.cure.Bay;
import curewindow.cure.Curing;
import curewindow.cure.Driver;
import curewindow.cure.ExplanationCause;
import curewindow.cure.HoldKind;
import curewindow.cure.PaintTone;
import curewindow.cure.Parking;
import curewindow.cure.ParkingPlan;
import curewindow.cure.Release;
import curewindow.cure.Stay;
import curewindow.cure.Timeline;
import curewindow.guide.GuideLibrary;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.BodyType;
import curewindow.shop.Car;
import curewindow.shop.Catalogue;
import curewindow.shop.Film;
import curewindow.shop.Finding;
import curewindow.shop.FindingKind;
import curewindow.shop.FittedItem;
import curewindow.shop.Job;
import curewindow.shop.OpenHours;
import curewindow.shop.PastVisit;
import curewindow.shop.Service;
import curewindow.shop.Shop;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopFolder;
import curewindow.shop.ShopLook;
import curewindow.told.JobView;
import curewindow.told.Visit;
import curewindow.told.YearHere;
import curewindow.words.WordsLibrary;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** An invented shop and its jobs, built by hand, with dates that no model had to compute. */
final class Demo {

  static final ZoneId DENVER = ZoneId.of("America/Denver");
  static final ShopFiles FILES = new ShopFiles(Path.of("no-such-shop"));
  static final Catalogue CATALOGUE = catalogue();
  static final WordsLibrary WORDS = WordsLibrary.open(FILES);
  static final GuideLibrary GUIDES =
      GuideLibrary.read(
          FILES, WordsLibrary.open(FILES), CATALOGUE, List.of("en", "es", "ar"), new Problems());
  static final Pages PAGES = Pages.read(FILES, ShopLook.NONE, GUIDES, new Problems());

  String language = "en";
  String firstName = "Ana";
  String car = "the blue four-door";
  BodyType body = BodyType.SEDAN;
  ZoneId zone = DENVER;
  Optional<Visit> visit = Optional.empty();
  Instant pickup = at("2026-12-01T16:00");
  Shop shop = shop("Longs Peak Film & Coat");
  String placeName = "Denver, Colorado";
  final List<FittedItem> items = new ArrayList<>();
  final List<Finding> found = new ArrayList<>();
  List<PastVisit> seen = List.of();
  List<Stay> before = List.of();
  final List<Release> releases = new ArrayList<>();

  static Instant at(String local) {
    return java.time.LocalDateTime.parse(local).atZone(DENVER).toInstant();
  }

  /** All side windows and the back glass, with old film taken off before. */
  static Demo tint() {
    Demo demo = new Demo();
    demo.fit("tint", "harbor-35", "2026-12-01T14:00", 31, "front-door-glass", "rear-door-glass");
    demo.fit("tint", "harbor-20", "2026-12-01T15:00", -1, "back-glass");
    demo.found.add(
        new Finding(
            FindingKind.OLD_FILM,
            List.of("back-glass"),
            OptionalInt.of(2017),
            "two heating lines were already broken"));
    demo.safe("windows-up", HoldKind.HOLD, "2026-12-04T14:00", "2026-12-03T18:20");
    demo.safe("hand-wash", HoldKind.HOLD, "2026-12-04T15:00", "2026-12-03T20:10");
    demo.safe("pressure-wash", HoldKind.HOLD, "2026-12-09T11:00", "2026-12-07T22:40");
    demo.safe("machine-wash", HoldKind.HOLD, "2026-12-09T11:00", "2026-12-07T22:40");
    demo.safe("defroster", HoldKind.HOLD, "2026-12-19T10:00", "2026-12-15T13:00");
    demo.safe("inside-glass", HoldKind.HOLD, "2026-12-25T09:00", "2026-12-20T13:00");
    demo.safe("haze", HoldKind.SETTLE, "2027-01-03T16:00", "2026-12-27T12:00");
    demo.safe("water-pockets", HoldKind.SETTLE, "2027-01-03T16:00", "2026-12-27T12:00");
    demo.visit = visit("2027-01-04", "tint");
    return demo;
  }

  /** A coating over fresh paint film, in Spanish. */
  static Demo coatedFilm() {
    Demo demo = new Demo();
    demo.language = "es";
    demo.firstName = "Lucía";
    demo.car = "la camioneta negra";
    demo.body = BodyType.SUV;
    demo.fit("paint-film", "fieldcoat-gloss", "2026-11-30T18:00", -1, "hood", "fender", "mirror");
    demo.fit("paint-coating", "tidewater-paint", "2026-12-01T12:00", -1, "whole-body");
    demo.safe("keep-dry", HoldKind.HOLD, "2026-12-02T16:00", "2026-12-02T11:00");
    demo.safe("rain", HoldKind.HOLD, "2026-12-02T18:00", "2026-12-02T12:00");
    demo.safe("hand-wash", HoldKind.HOLD, "2026-12-12T10:00", "2026-12-10T09:00");
    demo.safe("pressure-wash", HoldKind.HOLD, "2026-12-17T10:00", "2026-12-14T09:00");
    demo.safe("machine-wash", HoldKind.HOLD, "2026-12-22T10:00", "2026-12-18T09:00");
    demo.safe("topper", HoldKind.HOLD, "2026-12-24T10:00", "2026-12-20T09:00");
    demo.safe("full-cure", HoldKind.HOLD, "2026-12-26T10:00", "2026-12-21T09:00");
    demo.safe("water-pockets", HoldKind.SETTLE, "2026-12-28T10:00", "2026-12-22T09:00");
    demo.visit = visit("2026-12-17", "paint-film");
    return demo;
  }

  /** Deep frost: the windows end at their limit, 60 % set. */
  static Demo atLimit() {
    Demo demo = tint();
    demo.limit("windows-up", 0.6, "2026-12-22T03:00");
    return demo;
  }

  private static Optional<Visit> visit(String day, String service) {
    return Optional.of(new Visit(LocalDate.parse(day), List.of(service), false));
  }

  /** Only something that is normal for a while. */
  static Demo nothingToHold() {
    Demo demo = new Demo();
    demo.fit("tint", "harbor-70", "2026-12-01T14:00", -1, "quarter-glass");
    demo.safe("haze", HoldKind.SETTLE, "2027-01-03T16:00", "2026-12-27T12:00");
    return demo;
  }

  /** A hold ends at its limit on the day on which it would have ended. */
  void limit(String hold, double share, String full) {
    releases.replaceAll(
        r ->
            r.hold().equals(hold)
                ? release(
                    hold,
                    r.kind(),
                    new Release.AtLimit(r.end().at(), share, at(full)),
                    r.end().at())
                : r);
  }

  /** The shop has looked at a hold in the morning of the day after the pickup. */
  void seenOver(String hold) {
    releases.replaceAll(r -> r.hold().equals(hold) ? r.overAt(pickup.plusSeconds(16 * 3600)) : r);
  }

  /** Those before, and the last one, that begins on the day of its pickup. */
  private List<Stay> stays() {
    Instant in = before.isEmpty() ? Instant.EPOCH : pickup.minusSeconds(8 * 3600);
    return Stream.concat(before.stream(), Stream.of(new Stay(in, pickup))).toList();
  }

  JobView view() {
    Job job =
        new Job(
            "J-1042",
            firstName,
            language,
            new Car(OptionalInt.of(2021), body, PaintTone.DARK, Optional.empty(), car, Set.of()),
            "denver",
            new ParkingPlan(Parking.OUTSIDE, Parking.GARAGE),
            stays(),
            items,
            found,
            seen,
            Where.file("jobs/J-1042.yaml"));
    return new JobView(
        job,
        shop,
        stocked(),
        place(placeName, zone),
        new Timeline(pickup, zone, releases),
        visit,
        WORDS.of(language),
        URI.create("https://care.example/C/7F3K9QX2M4TB/"),
        "7F3K9QX2M4TB");
  }

  /** The catalogue with any film of the job that it lacks, named by its id. */
  private Catalogue stocked() {
    Map<String, Film> films = new LinkedHashMap<>(CATALOGUE.films());
    for (FittedItem item : items) {
      String id = item.film();
      films.computeIfAbsent(
          id,
          i ->
              new Film(
                  i,
                  item.service(),
                  i,
                  "PET",
                  OptionalDouble.empty(),
                  13.6,
                  OptionalDouble.empty(),
                  OptionalDouble.empty(),
                  false,
                  Optional.empty()));
    }
    return new Catalogue(
        CATALOGUE.services(), films, CATALOGUE.spots(), CATALOGUE.holds(), List.of(), List.of());
  }

  /** A page where it comes to stand in a site, with what all pages share. */
  static Path onDisk(Path site, String html) throws IOException {
    Problems problems = new Problems();
    for (SharedFile file : SharedFile.read(FILES, problems).files()) {
      Files.writeString(site.resolve(file.name()), file.text());
    }
    Files.write(
        site.resolve("icon.svg"), FILES.bytes("site-templates/icon.svg", problems).orElseThrow());
    Path folder = Files.createDirectories(site.resolve("C/X"));
    return Files.writeString(folder.resolve("index.html"), html);
  }

  String html() {
    return html(view());
  }

  /** The page of a job in all cases of parking, the noted one first. */
  static String html(JobView... cases) {
    Problems problems = new Problems();
    return page(PAGES, problems, cases)
        .orElseThrow(() -> new AssertionError(problems.all().toString()));
  }

  /** The same by other pages; the calendar of each other case has a line of its own. */
  static Optional<String> page(Pages pages, Problems problems, JobView... cases) {
    List<String> calendars =
        IntStream.range(1, cases.length).mapToObj(i -> "BEGIN\r\n" + i + "\r\n").toList();
    return pages.customer(List.of(cases), calendars, problems);
  }

  void fit(String service, String film, String finished, double vlt, String... spots) {
    items.add(
        new FittedItem(
            service,
            film,
            List.of(spots),
            at(finished),
            vlt < 0 ? OptionalDouble.empty() : OptionalDouble.of(vlt),
            Optional.of("B-77310"),
            OptionalInt.of(10)));
  }

  void safe(String hold, HoldKind kind, String safe, String likely) {
    releases.add(release(hold, kind, new Release.SafeBy(at(safe)), at(likely)));
  }

  Release release(String hold, HoldKind kind, Release.End end, Instant likely) {
    ExplanationCause because =
        new ExplanationCause(
            0, "front-door-glass", Optional.of(Driver.BOND), 48, 0, 70, 2, 1, 6, -6, 0.7);
    return new Release(hold, kind, end, likely, because, because, Optional.empty());
  }

  static Shop shop(String name) {
    return shopAt("https://care.example/", name);
  }

  static Shop shopAt(String address, String name) {
    OpenHours day = new OpenHours(LocalTime.of(8, 0), LocalTime.of(18, 0));
    Map<DayOfWeek, List<OpenHours>> opening = new LinkedHashMap<>();
    for (DayOfWeek d : DayOfWeek.values()) {
      if (d.getValue() <= 5) {
        opening.put(d, List.of(day));
      }
    }
    opening.put(
        DayOfWeek.SATURDAY, List.of(new OpenHours(LocalTime.of(9, 0), LocalTime.of(13, 30))));
    return new Shop(
        name,
        "+1 303 555 0142",
        Optional.of("+1 303 555 0143"),
        Optional.of("hello@care.example"),
        List.of("1180 Quarry Street", "Denver, CO 80204"),
        URI.create(address),
        DENVER,
        "en",
        Optional.empty(),
        "denver",
        new Bay(20, 40),
        50_000,
        opening,
        List.of(LocalDate.of(2026, 12, 25)));
  }

  /** The year in Denver with the catalogue that comes with the program. */
  static YearHere year() {
    Catalogue shipped = ShopFolder.read(FILES, Instant.EPOCH).catalogue();
    Place denver = Places.builtIn().get("denver");
    return YearHere.of(shop("S"), shipped, denver, Curing.with(Climates::weathers));
  }

  private static Place place(String name, ZoneId zone) {
    MonthNormals month = new MonthNormals(-8, 8, -9, 4);
    return new Place(
        "denver", name, 39.74, -104.99, 1609, zone, Collections.nCopies(12, month), "from memory");
  }

  private static Catalogue catalogue() {
    Map<String, Service> services = new LinkedHashMap<>();
    service(services, "tint", true, true, "tint");
    service(services, "paint-film", false, true, "paint-film");
    service(services, "wrap", false, true, "wrap");
    service(services, "windshield-film", false, true, "windshield-film");
    service(services, "headlight-film", false, true, "headlight-film");
    service(services, "paint-coating", false, false, "coating");
    service(services, "glass-coating", false, false, "coating");
    service(services, "wheel-coating", false, false, "coating");
    service(services, "fabric-coating", true, false, "coating");
    Map<String, Film> films = new LinkedHashMap<>();
    film(films, "harbor-70", "tint", "Harbor 70", "PET", 70, null);
    film(films, "harbor-35", "tint", "Harbor 35", "PET", 35, null);
    film(films, "harbor-20", "tint", "Harbor 20", "PET", 20, null);
    film(films, "fieldcoat-gloss", "paint-film", "Fieldcoat Gloss", "TPU", -1, "gloss");
    film(films, "tidewater-paint", "paint-coating", "Tidewater Paint", "silica", -1, "gloss");
    Catalogue shipped =
        ShopFolder.read(new ShopFiles(Path.of("no-such-shop")), Instant.EPOCH).catalogue();
    return new Catalogue(services, films, shipped.spots(), shipped.holds(), List.of(), List.of());
  }

  private static void service(
      Map<String, Service> services, String id, boolean inside, boolean film, String guide) {
    services.put(id, new Service(id, inside, film, film ? 13.6 : 1, List.of(), guide));
  }

  private static void film(
      Map<String, Film> films,
      String id,
      String service,
      String name,
      String material,
      double vlt,
      String finish) {
    films.put(
        id,
        new Film(
            id,
            service,
            name,
            material,
            OptionalDouble.of(50),
            13.6,
            vlt < 0 ? OptionalDouble.empty() : OptionalDouble.of(vlt),
            false,
            Optional.ofNullable(finish)));
  }

  Demo() {}
}
