package curewindow.shop;

import curewindow.cure.Lamp;
import curewindow.problem.Where;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Notes what a good job hardly means: slips of the pen that break no rule. All bounds are our own
 * estimates, common practice without a source. A note changes no date and leaves out no job.
 */
final class HardlyMeant {

  private static final LocalTime NIGHT = LocalTime.of(23, 0);
  private static final LocalTime MORNING = LocalTime.of(5, 0);

  /** What meters and films are off by, percent of light. */
  private static final double LIGHT_ERROR = 5;

  /** The same where glass and film are both known, and as a part of their light. */
  private static final double NET_ERROR = 8;

  private static final double NET_PART = 0.3;

  /** The darkest glass that cars are sold with lets a bit more than this part through. */
  private static final double DARK_GLASS = 0.1;

  /** Work that lies under a film for longer has set before, days. */
  private static final long UNDER_FILM = 14;

  /** Hotter hardly any film or coating may get under a lamp, degrees Celsius. */
  private static final double HOT_LAMP = 80;

  private final Known known;
  private final Source source;
  private final Job job;
  private final ZoneId zone;

  private HardlyMeant(Known known, Source source, Job job, ZoneId zone) {
    this.known = known;
    this.source = source;
    this.job = job;
    this.zone = zone;
  }

  /** An item and where its keys stand. */
  private record Placed(FittedItem item, Fields fields) {}

  /**
   * Notes what a job hardly means.
   *
   * @param job a good job
   * @param f what it was read from
   * @param zone the zone of its times
   */
  static void note(Known known, Source source, Job job, Fields f, ZoneId zone) {
    HardlyMeant notes = new HardlyMeant(known, source, job, zone);
    List<Placed> items = notes.placed(f);
    PickupSlips.note(known, source, job, f, zone);
    items.forEach(notes::night);
    items.forEach(notes::light);
    items.forEach(notes::body);
    items.forEach(notes::lamp);
    items.forEach(upper -> items.forEach(lower -> notes.layers(lower, upper)));
  }

  private List<Placed> placed(Fields f) {
    List<Placed> placed = new ArrayList<>();
    List<Node> nodes = f.items("items");
    for (int i = 0; i < nodes.size(); i++) {
      FittedItem item = job.items().get(i);
      Fields.of(nodes.get(i), ItemReader.ITEM, source)
          .ifPresent(fields -> placed.add(new Placed(item, fields)));
    }
    return placed;
  }

  private void night(Placed placed) {
    Instant finished = placed.item().finished();
    // The hours of a car that goes far away are another clock's than those of the work.
    if (isNight(finished, known.zone().orElse(zone))) {
      night(finished, zone, placed.fields().where("finished"), source);
    }
  }

  /** Notes work that was finished at night, by the clocks of a zone. */
  static void night(Instant finished, ZoneId zone, Where where, Source source) {
    if (isNight(finished, zone)) {
      LocalTime time = finished.atZone(zone).toLocalTime();
      LocalTime day = time.plusHours(12);
      source.notice(
          "finished-at-night",
          where,
          "the work was finished at night, at " + time,
          "check the hour; " + hour12(day) + " is " + day);
    }
  }

  private static boolean isNight(Instant at, ZoneId zone) {
    LocalTime time = at.atZone(zone).toLocalTime();
    return !time.isBefore(NIGHT) || time.isBefore(MORNING);
  }

  private static String hour12(LocalTime time) {
    int hour = time.getHour() % 12 == 0 ? 12 : time.getHour() % 12;
    return String.format(
        Locale.ROOT, "%d:%02d %s", hour, time.getMinute(), time.getHour() < 12 ? "am" : "pm");
  }

  private void light(Placed placed) {
    FittedItem item = placed.item();
    Film film = known.catalogue().films().get(item.film());
    if (item.vlt().isEmpty() || film.vlt().isEmpty()) {
      return;
    }
    double measured = item.vlt().getAsDouble();
    NetLight expected = NetLight.unmeasured(item, film);
    boolean alone = expected.how() == NetLight.How.FILM;
    double off = alone ? LIGHT_ERROR : Math.max(NET_ERROR, NET_PART * expected.percent());
    double least = alone ? DARK_GLASS * expected.percent() : expected.percent() - off;
    if (measured > expected.percent() + off || measured < least) {
      String by = alone ? film.name() + " alone" : film.name() + " on this glass";
      source.notice(
          "light-unlike-film",
          placed.fields().where("vlt"),
          String.format(
              Locale.ROOT,
              "vlt is %s, but %s lets %.0f percent through",
              Values.shortest(measured),
              by,
              expected.percent()),
          alone && measured < least
              ? "check film and vlt, which is percent; add glass-vlt where the glass is dark"
              : "check film and vlt; measure the light again where film and glass are together");
    }
  }

  private void body(Placed placed) {
    for (Node node : placed.fields().items("spots")) {
      if (node instanceof Node.Leaf leaf) {
        Spot spot = known.catalogue().spots().get(leaf.text().strip());
        BodyType body = job.car().body();
        if (spot.notOn().contains(body)) {
          source.notice(
              "spot-not-on-body",
              leaf.where(),
              "a car with the body " + body.id() + " usually has no " + spot.id(),
              "check body and spots; leave it where this car has one");
        }
      }
    }
  }

  private void lamp(Placed placed) {
    FittedItem item = placed.item();
    if (item.lamp().isEmpty()) {
      return;
    }
    Lamp lamp = item.lamp().get();
    long stay = Duration.between(item.finished(), job.pickupAfter(item)).toMinutes();
    Where where = placed.fields().where("lamp");
    hot(lamp.surface(), "surface", where, source);
    if (lamp.minutes() > stay) {
      source.notice(
          "long-lamp",
          where,
          String.format(
              Locale.ROOT,
              "the lamp shone for %s minutes, but the car left %d minutes after the work was"
                  + " finished",
              Values.shortest(lamp.minutes()),
              stay),
          "check minutes, finished and pickup");
    }
  }

  /** Notes a lamp that makes the work hotter than it can hardly stand, degrees Celsius. */
  static void hot(double surface, String key, Where where, Source source) {
    if (surface > HOT_LAMP) {
      source.notice(
          "hot-lamp",
          where,
          "the lamp makes the work " + Values.shortest(surface) + " C hot",
          "check " + key + ", which is in degrees Celsius, against what the maker allows");
    }
  }

  private void layers(Placed lower, Placed upper) {
    FittedItem under = lower.item();
    FittedItem over = upper.item();
    Service below = known.catalogue().services().get(under.service());
    Service above = known.catalogue().services().get(over.service());
    Optional<String> spot = over.spots().stream().filter(under.spots()::contains).findFirst();
    boolean covers = above.film() && below.inside() == above.inside() && !above.equals(below);
    if (!covers || spot.isEmpty() || !isJustBefore(lower, upper, below)) {
      return;
    }
    source.notice(
        "film-over-fresh-work",
        where(upper, spot.get()),
        over.film() + " lies over " + under.film() + " on " + spot.get() + ", which is fresh",
        "check the spots and the times of finish; work under a film sets more slowly than its dates"
            + " say");
  }

  /**
   * Of two films that were finished at the same time, the one written later lies over the other.
   */
  private boolean isJustBefore(Placed lower, Placed upper, Service below) {
    Instant first = lower.item().finished();
    Instant then = upper.item().finished();
    boolean written = job.items().indexOf(lower.item()) < job.items().indexOf(upper.item());
    return first.equals(then)
        ? below.film() && written
        : then.isAfter(first) && PickupSlips.days(first, then) <= UNDER_FILM;
  }

  private static Where where(Placed placed, String spot) {
    return placed.fields().items("spots").stream()
        .filter(n -> n instanceof Node.Leaf leaf && leaf.text().strip().equals(spot))
        .findFirst()
        .map(Node::where)
        .orElse(placed.fields().where("spots"));
  }
}
