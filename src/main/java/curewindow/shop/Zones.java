package curewindow.shop;

import java.time.ZoneId;
import java.util.Optional;
import java.util.TreeSet;

/** Reads time zones by their names in the IANA time zone database. */
final class Zones {

  private static final Names NAMES =
      Names.of(Names.ZONE, new TreeSet<>(ZoneId.getAvailableZoneIds()));

  private Zones() {}

  /** The zone of a key, or empty where it is missing or, after telling so, unknown. */
  static Optional<ZoneId> of(Fields fields, String key) {
    return fields.name(key, NAMES).map(ZoneId::of);
  }
}
