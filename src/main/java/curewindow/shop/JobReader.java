package curewindow.shop;

import curewindow.cure.PaintTone;
import curewindow.cure.Parking;
import curewindow.cure.ParkingPlan;
import curewindow.cure.Stay;
import curewindow.problem.Where;
import curewindow.shop.Node.Leaf;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;

/** Reads one job. */
final class JobReader {

  static final Keys JOB =
      Keys.needs("id", "car", "parking", "items")
          .allows("first-name", "language", "place", "zone", "pickup", "stays", "found");
  static final Keys STAY = Keys.needs("in", "pickup");
  static final Keys CAR = Keys.needs("body", "paint").allows("year", "finish", "text", "lacks");
  static final List<String> PAINT_FINISHES = List.of("gloss", "matte");

  private static final Optional<ZoneId> UTC = Optional.of(ZoneId.of("UTC"));
  private static final Keys PARKING = Keys.needs("day", "night");
  private static final Pattern ID = Pattern.compile("[A-Za-z0-9][A-Za-z0-9-]{0,39}");
  private static final Pattern RESERVED = Pattern.compile("con|prn|aux|nul|(com|lpt)[0-9]");

  private final Known known;
  private final Source source;

  JobReader(Known known, Source source) {
    this.known = known;
    this.source = source;
  }

  /**
   * A job as far as it could be read: its id, where it stands, itself if it is good, and where the
   * errors of the catalogue stand that leave it out.
   */
  record Read(Optional<String> id, Where where, Optional<Job> job, List<Where> causes) {

    /** The same without the job, because of a problem elsewhere in its file. */
    Read without() {
      return new Read(id, where, Optional.empty(), causes);
    }
  }

  Read read(Node node) {
    int before = source.errors();
    Optional<Fields> fields = Fields.of(node, JOB, source);
    if (fields.isEmpty()) {
      return new Read(Optional.empty(), node.where(), Optional.empty(), List.of());
    }
    Fields f = fields.get();
    Optional<String> id = f.code("id", 200).flatMap(text -> id(text, f.where("id")));
    Optional<Job> job = job(f, id);
    job.map(known::doubts).ifPresent(doubts -> doubts.forEach(source::follows));
    Where where = f.where("id");
    Optional<Job> good = source.errors() == before ? job : Optional.empty();
    good.ifPresent(j -> HardlyMeant.note(known, source, j, f, clock(f).orElse(ZoneOffset.UTC)));
    return new Read(id, where, good, source.elsewhereAfter(before));
  }

  private Optional<Job> job(Fields f, Optional<String> id) {
    Optional<String> firstName = f.text("first-name", 60);
    Optional<String> language = given(f, "language", languages(), known.language());
    Optional<String> place = given(f, "place", known.places(), known.place());
    Optional<Car> car = f.fields("car", CAR).flatMap(this::car);
    Optional<ParkingPlan> parking = parking(f);
    Optional<ZoneId> clock = clock(f);
    List<Stay> stays = stays(f, clock);
    ItemReader items = new ItemReader(known, clock, stays, source);
    List<FittedItem> fitted = f.has("items") ? items.items(f) : List.of();
    List<Finding> found =
        f.items("found").stream().flatMap(n -> items.finding(n).stream()).toList();
    if (id.isEmpty()
        || language.isEmpty()
        || place.isEmpty()
        || car.isEmpty()
        || parking.isEmpty()
        || stays.isEmpty()
        || fitted.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Job(
            id.get(),
            firstName.orElse(""),
            language.get(),
            car.get(),
            place.get(),
            parking.get(),
            f.has("stays") ? stays : List.of(shortStay(stays.get(0).pickup(), fitted)),
            fitted,
            found,
            List.of(),
            f.where("id")));
  }

  /** All stays, none where one is wrong; where only the pickup is given, one that ends then. */
  private List<Stay> stays(Fields f, Optional<ZoneId> clock) {
    if (f.has("pickup") == f.has("stays")) {
      boolean both = f.has("pickup");
      if (both) {
        source.error(
            "both-given",
            f.where("stays"),
            "pickup and stays are both given",
            "keep one of the two; each of the stays has its own pickup");
      } else {
        source.missing(f.where(), "pickup", "add pickup");
      }
      return List.of();
    }
    if (f.has("pickup")) {
      return moment(f, "pickup", clock).map(at -> new Stay(Instant.MIN, at)).stream().toList();
    }
    List<Stay> stays = new ArrayList<>();
    for (Node node : f.items("stays")) {
      Optional<Fields> fields = Fields.of(node, STAY, source);
      Optional<Stay> stay = fields.flatMap(s -> stay(s, clock));
      if (stay.isPresent() && !stays.isEmpty() && overlaps(stays, stay.get())) {
        source.error(
            "stays-out-of-order",
            fields.get().where("in"),
            "the car comes before it left from the stay before",
            "list the stays by time, and check in and pickup");
        return List.of();
      }
      stay.ifPresent(stays::add);
    }
    if (stays.size() < f.items("stays").size()) {
      return List.of();
    }
    if (stays.isEmpty()
        && f.node("stays").orElse(null) instanceof Node.Row row
        && row.items().isEmpty()) {
      source.error("no-stays", f.where("stays"), "no stay is listed", "list at least one stay");
    }
    return stays;
  }

  private static boolean overlaps(List<Stay> before, Stay stay) {
    return stay.in().isBefore(before.get(before.size() - 1).pickup());
  }

  private Optional<Stay> stay(Fields f, Optional<ZoneId> clock) {
    Optional<Instant> in = moment(f, "in", clock);
    Optional<Instant> pickup = moment(f, "pickup", clock);
    if (in.isPresent() && pickup.isPresent() && pickup.get().isBefore(in.get())) {
      source.error(
          "pickup-before-in",
          f.where("pickup"),
          "the pickup is before the car comes in",
          "check in and pickup");
      return Optional.empty();
    }
    return in.flatMap(i -> pickup.map(p -> new Stay(i, p)));
  }

  private Optional<Instant> moment(Fields f, String key, Optional<ZoneId> clock) {
    return f.leaf(key).flatMap(l -> Times.moment(l, clock, source));
  }

  /** One stay in short: the car is in the shop from its first finished work on. */
  private static Stay shortStay(Instant pickup, List<FittedItem> items) {
    return new Stay(
        items.stream().map(FittedItem::finished).min(Instant::compareTo).orElse(pickup), pickup);
  }

  /** The zone of the job's times; after a wrong one was told, UTC, so that the rest is checked. */
  private Optional<ZoneId> clock(Fields f) {
    return f.has("zone") ? Zones.of(f, "zone").or(() -> UTC) : known.zone();
  }

  private static Optional<String> given(
      Fields f, String key, Names names, Optional<String> otherwise) {
    return f.has(key) ? f.name(key, names) : otherwise;
  }

  private Names languages() {
    return Names.of("language", known.languages());
  }

  private Optional<String> id(String text, Where where) {
    if (!ID.matcher(text).matches()) {
      source.error(
          "bad-id",
          where,
          "the id " + Source.shown(text) + " cannot name a page",
          "use up to 40 letters A to Z, digits and hyphens, beginning with a letter or digit");
      return Optional.empty();
    }
    if (RESERVED.matcher(text.toLowerCase(Locale.ROOT)).matches()) {
      source.error(
          "bad-id",
          where,
          "the id " + text + " is a name that Windows keeps for itself",
          "add to it, such as " + text + "-1");
      return Optional.empty();
    }
    return Optional.of(text);
  }

  private Optional<Car> car(Fields f) {
    Optional<Integer> year = f.whole("year", 1886, 2100);
    Optional<BodyType> body =
        f.name("body", Names.of("body type", BodyType.ids())).flatMap(BodyType::of);
    Optional<PaintTone> paint =
        f.name("paint", Names.of("paint tone", PaintTone.ids())).flatMap(PaintTone::of);
    Optional<String> finish = f.name("finish", Names.of("paint finish", PAINT_FINISHES));
    String text = f.text("text", 120).orElse("");
    Set<SpotFact> lacks = EnumSet.noneOf(SpotFact.class);
    f.names("lacks", Names.of("spot fact", SpotFact.ids()))
        .forEach(id -> SpotFact.of(id).ifPresent(lacks::add));
    if (body.isEmpty() || paint.isEmpty()) {
      return Optional.empty();
    }
    OptionalInt model = year.map(OptionalInt::of).orElse(OptionalInt.empty());
    return Optional.of(new Car(model, body.get(), paint.get(), finish, text, lacks));
  }

  private Optional<ParkingPlan> parking(Fields f) {
    Names names = Names.of("parking", Parking.ids());
    if (f.node("parking").orElse(null) instanceof Leaf) {
      return f.name("parking", names).flatMap(Parking::of).map(p -> new ParkingPlan(p, p));
    }
    Optional<Fields> plan = f.has("parking") ? f.fields("parking", PARKING) : Optional.empty();
    Optional<Parking> day = plan.flatMap(p -> p.name("day", names)).flatMap(Parking::of);
    Optional<Parking> night = plan.flatMap(p -> p.name("night", names)).flatMap(Parking::of);
    return day.flatMap(d -> night.map(n -> new ParkingPlan(d, n)));
  }
}
