package curewindow.shop;

import curewindow.cure.Bay;
import java.net.URI;
import java.net.URISyntaxException;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Period;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads shop.yaml. */
final class ShopReader {

  static final String FILE = "shop.yaml";
  static final List<String> DAYS = List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");

  private static final Keys SHOP =
      Keys.needs("name", "phone", "address", "zone", "language", "place")
          .allows(
              "text-number",
              "email",
              "street",
              "city",
              "region",
              "postal-code",
              "country",
              "locale",
              "units",
              "bay",
              "bond-energy",
              "opening",
              "closed",
              "visit-within",
              "logo",
              "color",
              "handout",
              "keep-pages",
              "send");
  private static final Keys BAY = Keys.needs("temperature", "humidity").allows("lamp");
  private static final Keys OPENING = Keys.needs().allows(DAYS.toArray(String[]::new));
  private static final Bay USUAL_BAY = new Bay(Bay.USUAL_TEMPERATURE, 50);
  private static final double USUAL_BOND_ENERGY = 50_000;
  private static final Set<String> LANGUAGES = Set.of(Locale.getISOLanguages());
  private static final Set<String> COUNTRIES = Set.of(Locale.getISOCountries());
  private static final Form PHONE =
      new Form(
          Pattern.compile("(?=(.*[0-9]){3})[+0-9() ./-]{3,30}"),
          "bad-phone",
          "write digits, such as +1 206 555 0100");
  private static final Form EMAIL =
      new Form(
          Pattern.compile("[^@\\s]+@[^@\\s.]+([.][^@\\s.]+)+"),
          "bad-email",
          "write one address, such as desk@shop.example");
  private static final Pattern KEEP = Pattern.compile("([0-9]{1,3}) (years?|months?)");

  /** Months; holds and what is normal for a while last so long in the cold. */
  private static final int LEAST_KEPT = 6;

  private static final int MOST_KEPT = 600;
  private static final Pattern HOURS =
      Pattern.compile("([0-9]{1,2}:[0-9]{2}) ?- ?([0-9]{1,2}:[0-9]{2})");

  private final Source source;
  private final Names languages;
  private final Names places;
  private final LookReader looks;

  ShopReader(Source source, Names languages, Names places, LookReader looks) {
    this.source = source;
    this.languages = languages;
    this.places = places;
    this.looks = looks;
  }

  /** What a value looks like, and what is told of one that does not. */
  private record Form(Pattern pattern, String code, String fix) {}

  /** The shop, and those of its values that jobs fall back to even where the shop is unusable. */
  record Read(
      Optional<Shop> shop,
      Optional<ZoneId> zone,
      Optional<String> language,
      Optional<String> place) {}

  Read read(Optional<Node> node) {
    Optional<Fields> fields = node.flatMap(n -> Fields.of(n, SHOP, source));
    if (fields.isEmpty()) {
      return new Read(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }
    Fields f = fields.get();
    Optional<ZoneId> zone = Zones.of(f, "zone");
    Optional<String> language = f.name("language", languages);
    Optional<String> place = f.name("place", places);
    Optional<Shop> shop = shop(f, new Read(Optional.empty(), zone, language, place));
    return new Read(source.errors() == 0 ? shop : Optional.empty(), zone, language, place);
  }

  private Optional<Shop> shop(Fields f, Read read) {
    Optional<String> name = f.text("name", 80);
    Optional<String> phone = formed(f, "phone", PHONE);
    Optional<String> text = formed(f, "text-number", PHONE);
    Optional<String> email = formed(f, "email", EMAIL);
    AddressReader reader = new AddressReader(f, source);
    List<String> street = reader.lines();
    AddressParts parts = reader.parts(street);
    Optional<URI> address = f.text("address", 200).flatMap(a -> address(f, a));
    Optional<String> locale = f.code("locale", 40).flatMap(l -> locale(f, l));
    Optional<Units> units =
        f.name("units", Names.of("system of units", Units.ids())).flatMap(Units::of);
    Bay bay = f.has("bay") ? bay(f) : USUAL_BAY;
    double energy = f.number("bond-energy", 30_000, 80_000).orElse(USUAL_BOND_ENERGY);
    Map<DayOfWeek, List<OpenHours>> opening = opening(f);
    List<LocalDate> closed = closed(f);
    double visitWithin = f.number("visit-within", 0, 20_000).orElse(Shop.VISIT_WITHIN);
    ShopLook look = looks.read(f);
    HandoutChoice handout = new HandoutReader(source).read(f);
    Optional<Period> keepPages = f.text("keep-pages", 40).flatMap(k -> keepPages(f, k));
    Optional<SendTo> send =
        f.fields("send", SendToReader.KEYS).flatMap(new SendToReader(source)::read);
    if (source.errors() > 0) {
      return Optional.empty();
    }
    return Optional.of(
        new Shop(
            name.orElseThrow(),
            phone.orElseThrow(),
            text,
            email,
            street,
            parts,
            address.orElseThrow(),
            read.zone().orElseThrow(),
            read.language().orElseThrow(),
            locale,
            units,
            read.place().orElseThrow(),
            bay,
            energy,
            opening,
            closed,
            visitWithin,
            look,
            handout,
            keepPages,
            send));
  }

  private Optional<Period> keepPages(Fields f, String text) {
    Matcher form = KEEP.matcher(text);
    if (form.matches()) {
      int count = Integer.parseInt(form.group(1));
      Period time =
          form.group(2).startsWith("year") ? Period.ofYears(count) : Period.ofMonths(count);
      if (time.toTotalMonths() >= LEAST_KEPT && time.toTotalMonths() <= MOST_KEPT) {
        return Optional.of(time);
      }
    }
    source.error(
        "bad-time-span",
        f.where("keep-pages"),
        "keep-pages cannot be used: " + Source.shown(text),
        "write years or months, such as 2 years or 18 months; 6 months to 50 years");
    return Optional.empty();
  }

  private Optional<String> locale(Fields f, String text) {
    String[] parts = text.split("-", -1);
    if (parts.length == 2 && LANGUAGES.contains(parts[0]) && COUNTRIES.contains(parts[1])) {
      return Optional.of(text);
    }
    source.error(
        "bad-locale",
        f.where("locale"),
        "locale is not a language and a country: " + Source.shown(text),
        "write them as in en-GB, by ISO 639 and ISO 3166; Britain is GB");
    return Optional.empty();
  }

  private Optional<String> formed(Fields f, String key, Form form) {
    Optional<String> value = f.code(key, 100);
    if (value.isPresent() && !form.pattern().matcher(value.get()).matches()) {
      source.error(
          form.code(),
          f.where(key),
          key + " cannot be used: " + Source.shown(value.get()),
          form.fix());
      return Optional.empty();
    }
    return value;
  }

  private Optional<URI> address(Fields f, String text) {
    try {
      URI uri = new URI(text.endsWith("/") ? text : text + "/");
      boolean web = "https".equals(uri.getScheme()) || "http".equals(uri.getScheme());
      boolean whole = uri.getHost() != null && uri.getUserInfo() == null;
      if (web && whole && uri.getQuery() == null && uri.getFragment() == null) {
        return Optional.of(uri);
      }
    } catch (URISyntaxException e) {
      // told below, together with the other ways in which an address is unusable
    }
    source.error(
        "bad-address",
        f.where("address"),
        "address is not the address of a web site: " + Source.shown(text),
        "write it whole, such as https://care.shop.example/");
    return Optional.empty();
  }

  private Bay bay(Fields f) {
    Optional<Fields> bay = f.fields("bay", BAY);
    Optional<Double> temperature = bay.flatMap(b -> b.number("temperature", -10, 50));
    Optional<Double> humidity = bay.flatMap(b -> b.number("humidity", 1, 100));
    double lamp =
        bay.flatMap(b -> b.number("lamp", Bay.COOLEST_LAMP, Bay.HOTTEST_LAMP))
            .orElse(Bay.USUAL_LAMP);
    bay.ifPresent(b -> HardlyMeant.hot(lamp, "lamp", b.where("lamp"), source));
    return temperature.flatMap(t -> humidity.map(h -> new Bay(t, h, lamp))).orElse(USUAL_BAY);
  }

  private Map<DayOfWeek, List<OpenHours>> opening(Fields f) {
    Map<DayOfWeek, List<OpenHours>> opening = new EnumMap<>(DayOfWeek.class);
    Optional<Fields> days = f.fields("opening", OPENING);
    for (DayOfWeek day : DayOfWeek.values()) {
      String key = DAYS.get(day.ordinal());
      Optional<String> text = days.flatMap(d -> d.text(key, 100));
      text.flatMap(t -> hours(t, days.get(), key)).ifPresent(h -> opening.put(day, h));
    }
    return opening;
  }

  private Optional<List<OpenHours>> hours(String text, Fields days, String key) {
    List<OpenHours> hours = new ArrayList<>();
    for (String part : text.split(",", -1)) {
      var form = HOURS.matcher(part.strip());
      try {
        LocalTime after = hours.isEmpty() ? null : hours.get(hours.size() - 1).to();
        if (form.matches() && (after == null || time(form.group(1)).isAfter(after))) {
          hours.add(new OpenHours(time(form.group(1)), time(form.group(2))));
          continue;
        }
      } catch (DateTimeException | IllegalArgumentException e) {
        // told below, together with the other ways in which hours are unusable
      }
      source.error(
          "bad-hours",
          days.where(key),
          "the hours of " + key + " cannot be read: " + Source.shown(text),
          "write them in order, such as 9:00-12:30, 13:30-18:00");
      return Optional.empty();
    }
    return Optional.of(hours);
  }

  private static LocalTime time(String text) {
    return LocalTime.parse(text.length() == 4 ? "0" + text : text);
  }

  private List<LocalDate> closed(Fields f) {
    List<LocalDate> closed = new ArrayList<>();
    for (Node item : f.items("closed")) {
      if (item instanceof Node.Leaf leaf) {
        Times.day(leaf, source).ifPresent(closed::add);
      } else {
        Values.wrongType(item, "a day", "write it as 2026-12-25", source);
      }
    }
    return closed;
  }
}
