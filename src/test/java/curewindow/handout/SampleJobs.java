package curewindow.handout;

import curewindow.climate.MonthNormals;
import curewindow.climate.Place;
import curewindow.cure.Bay;
import curewindow.cure.Driver;
import curewindow.cure.ExplanationCause;
import curewindow.cure.HoldKind;
import curewindow.cure.PaintTone;
import curewindow.cure.Parking;
import curewindow.cure.ParkingPlan;
import curewindow.cure.Release;
import curewindow.cure.Stay;
import curewindow.cure.Timeline;
import curewindow.problem.Where;
import curewindow.shop.BodyType;
import curewindow.shop.Car;
import curewindow.shop.Catalogue;
import curewindow.shop.FittedItem;
import curewindow.shop.Job;
import curewindow.shop.Shop;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopFolder;
import curewindow.shop.ShopLook;
import curewindow.told.JobView;
import curewindow.told.Visit;
import curewindow.words.WordsLibrary;
import java.net.URI;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/** Builds jobs by hand, for tests of what the customer carries away. */
public final class SampleJobs {

  public static final Path FOLDER = Path.of("src/test/resources/curewindow/handout/sample-shop");

  private static final WordsLibrary WORDS = WordsLibrary.open(new ShopFiles(FOLDER));

  private static final WordsLibrary SHIPPED =
      WordsLibrary.open(new ShopFiles(Path.of("no-such-shop")));

  private static final String LONG_CAR =
      "Nachtschattenblaue viertürige Großraumlimousine mit Dachträger";

  private WordsLibrary words = WORDS;
  private final List<Release> releases = new ArrayList<>();
  private String firstName = "Maribel";
  private String carText = "Dark blue four-door";
  private String shopName = "Halyard Street Film & Glass";
  private String phone = "(503) 555-0142";
  private String language = "en";
  private String address = "https://care.example/C/";
  private String token = "7K3MPQ9W2XHTR4VBD6NC";
  private ZoneId zone = ZoneId.of("America/Los_Angeles");
  private Optional<Visit> visit = Optional.empty();
  private ShopLook look = ShopLook.NONE;

  /** A tinted car in Portland with the holds most tinted cars have. */
  public static SampleJobs tinted() {
    return new SampleJobs()
        .hold("windows-up", HoldKind.HOLD, "2026-12-03T14:00")
        .hold("hand-wash", HoldKind.HOLD, "2026-12-02T09:00")
        .hold("defroster", HoldKind.HOLD, "2026-12-19T10:00")
        .hold("haze", HoldKind.SETTLE, "2026-12-28T08:00")
        .visit("2026-12-28");
  }

  /** Eight dates and the longest texts that a shop is likely to have, in English, es or ar. */
  static SampleJobs longest(String language) {
    return SampleJobs.tinted()
        .hold("pressure-wash", HoldKind.HOLD, "2026-12-09T10:00")
        .atLimit("machine-wash", HoldKind.HOLD, "2026-12-30T10:00")
        .hold("inside-glass", HoldKind.HOLD, "2026-12-23T10:00")
        .shippedWords()
        .language(language)
        .longTexts()
        .firstName(
            switch (language) {
              case "es" -> "";
              case "ar" -> "عبدالرحمن المستنصر بالله عبدالمحسن";
              default -> "Maria-Guadalupe Alexandrina Konstantinopolitanska";
            })
        .car(
            language.equals("ar")
                ? "سيارة عائلية زرقاء داكنة بأربعة أبواب مع خيوط فضية على الجانبين"
                : LONG_CAR);
  }

  /** The longest texts that a shop is likely to have, but for the customer's name. */
  SampleJobs longTexts() {
    return shopName("Wolfeschlegelsteinhausen & Daughters Window Film and Coatings")
        .car(LONG_CAR)
        .phone("+49 (0)7531 555-0142 ext 4711")
        .site("https://aftercare.wolfeschlegelsteinhausen-and-daughters.example/customers/C/");
  }

  /** A shop with a logo, a color or both. */
  SampleJobs look(ShopLook own) {
    look = own;
    return this;
  }

  /** A job without dates. */
  public static SampleJobs bare() {
    return new SampleJobs();
  }

  public SampleJobs hold(String hold, HoldKind kind, String local) {
    return release(hold, kind, new Release.SafeBy(at(local)));
  }

  /** A hold that ends at its limit, 60 % set, and fully so 30 days later. */
  public SampleJobs atLimit(String hold, HoldKind kind, String local) {
    Instant full = at(local).plus(Duration.ofDays(30));
    return release(hold, kind, new Release.AtLimit(at(local), 0.6, full));
  }

  /** The day on which the shop would like to see the car. */
  public SampleJobs visit(String day) {
    visit = Optional.of(new Visit(LocalDate.parse(day), List.of("tint"), false));
    return this;
  }

  private Instant at(String local) {
    return LocalDateTime.parse(local).atZone(zone).toInstant();
  }

  private SampleJobs release(String hold, HoldKind kind, Release.End end) {
    ExplanationCause because =
        new ExplanationCause(
            0, "front-door-glass", Optional.of(Driver.BOND), 48, 0, 70, 2, 8, 9, 4, 0.6);
    releases.add(new Release(hold, kind, end, end.at(), because, because, Optional.empty()));
    return this;
  }

  public SampleJobs firstName(String value) {
    firstName = value;
    return this;
  }

  public SampleJobs car(String value) {
    carText = value;
    return this;
  }

  public SampleJobs shopName(String value) {
    shopName = value;
    return this;
  }

  public SampleJobs phone(String value) {
    phone = value;
    return this;
  }

  public SampleJobs language(String value) {
    language = value;
    return this;
  }

  /** With the words that come with the program instead of a few for tests. */
  public SampleJobs shippedWords() {
    words = SHIPPED;
    return this;
  }

  public SampleJobs zone(String value) {
    zone = ZoneId.of(value);
    return this;
  }

  public SampleJobs site(String value) {
    address = value;
    return this;
  }

  public SampleJobs token(String value) {
    token = value;
    return this;
  }

  public JobView view() {
    Instant pickup = Instant.parse("2026-12-01T00:30:00Z");
    return new JobView(
        job(pickup),
        shop(),
        CATALOGUE,
        place(),
        new Timeline(pickup, zone, releases),
        visit,
        words.of(language),
        URI.create(address + token + "/"),
        token);
  }

  private Job job(Instant pickup) {
    return new Job(
        "H-1042",
        firstName,
        language,
        new Car(
            OptionalInt.of(2021),
            BodyType.SEDAN,
            PaintTone.DARK,
            Optional.empty(),
            carText,
            Set.of()),
        "portland",
        new ParkingPlan(Parking.OUTSIDE, Parking.OUTSIDE),
        List.of(new Stay(pickup.minusSeconds(3600), pickup)),
        List.of(
            new FittedItem(
                "tint",
                "harbor-35",
                List.of("front-door-glass"),
                pickup.minusSeconds(3600),
                OptionalDouble.of(33),
                Optional.of("B-77"),
                OptionalInt.of(5))),
        List.of(),
        List.of(),
        Where.file("jobs/H-1042.yaml"));
  }

  private Shop shop() {
    Shop plain = plainShop();
    return new Shop(
        plain.name(),
        plain.phone(),
        plain.textNumber(),
        plain.email(),
        plain.street(),
        plain.addressParts(),
        plain.address(),
        plain.zone(),
        plain.language(),
        plain.locale(),
        plain.units(),
        plain.place(),
        plain.bay(),
        plain.bondEnergy(),
        plain.opening(),
        plain.closed(),
        plain.visitWithin(),
        look,
        plain.handout(),
        plain.keepPages(),
        plain.send());
  }

  private Shop plainShop() {
    return new Shop(
        shopName,
        phone,
        Optional.empty(),
        Optional.empty(),
        List.of("12 Halyard Street", "Portland, OR 97201"),
        URI.create(address.replaceAll("/C/$", "/")),
        zone,
        "en",
        Optional.empty(),
        "portland",
        new Bay(21, 45),
        50_000,
        Map.of(),
        List.of());
  }

  private static final Catalogue CATALOGUE =
      ShopFolder.read(new ShopFiles(Path.of("no-such-shop")), Instant.EPOCH).catalogue();

  private Place place() {
    MonthNormals month = new MonthNormals(3, 9, 4, 1.5);
    return new Place(
        "portland",
        "Portland, Oregon",
        45.5,
        -122.7,
        15,
        zone,
        Collections.nCopies(12, month),
        "for tests");
  }
}
