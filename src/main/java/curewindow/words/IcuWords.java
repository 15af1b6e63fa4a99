package curewindow.words;

import com.ibm.icu.text.AlphabeticIndex;
import curewindow.shop.Units;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** One language, with English behind it. Safe for use by several threads. */
final class IcuWords implements Words {

  private final LanguageFacts facts;
  private final Units units;
  private final LanguageReading own;
  private final Optional<LanguageReading> english;
  private final Dates dates;
  private final Numbers numbers;

  /** What has been asked for; a day has 1,440 minutes. */
  private final Map<LocalTime, String> times;

  IcuWords(LanguageReading own, Units units, Optional<LanguageReading> english) {
    this(
        own,
        units,
        english,
        new Dates(own.facts().locale()),
        new Numbers(own.facts().locale(), units),
        new ConcurrentHashMap<>());
  }

  private IcuWords(
      LanguageReading own,
      Units units,
      Optional<LanguageReading> english,
      Dates dates,
      Numbers numbers,
      Map<LocalTime, String> times) {
    this.facts = own.facts();
    this.units = units;
    this.own = own;
    this.english = english;
    this.dates = dates;
    this.numbers = numbers;
    this.times = times;
  }

  @Override
  public Words around(Instant time) {
    return new IcuWords(own, units, english, dates.around(time), numbers, times);
  }

  @Override
  public String language() {
    return facts.language();
  }

  @Override
  public boolean rightToLeft() {
    return facts.rightToLeft();
  }

  @Override
  public Units units() {
    return units;
  }

  @Override
  public String place(String name, ZoneId zone) {
    return new PlaceNames(facts.locale(), facts.cities()).of(name, zone);
  }

  @Override
  public String text(String key, Map<String, ?> values) {
    Objects.requireNonNull(key, "key");
    return message(key).map(m -> m.with(values, units)).orElseGet(() -> unnamed(key, values));
  }

  /** What stands for a text that no language has: the id in its name, in words. */
  private String unnamed(String key, Map<String, ?> values) {
    String[] parts = key.split("\\.");
    if (parts.length < 3 || !parts[0].equals("hold")) {
      return spaced(parts[parts.length - 1]);
    }
    String id = spaced(parts[1]);
    String what = id.substring(0, 1).toUpperCase(Locale.ROOT) + id.substring(1);
    Map<String, Object> all = new HashMap<>(values);
    all.put("what", what);
    return message("unnamed." + parts[2]).map(m -> m.with(all, units)).orElse(what);
  }

  private static String spaced(String id) {
    return id.replace('-', ' ');
  }

  private Optional<Message> message(String key) {
    Optional<Message> found = own.message(key);
    return found.isPresent() ? found : english.flatMap(e -> e.message(key));
  }

  @Override
  public boolean has(String key) {
    return message(key).isPresent();
  }

  @Override
  public String day(Instant at, ZoneId zone) {
    return own.message(LanguageFacts.DAY)
        .map(pattern -> pattern.with(pieces(at, zone), units))
        .orElseGet(() -> dates.day(at, zone));
  }

  private Map<String, String> pieces(Instant at, ZoneId zone) {
    Map<String, String> pieces = new HashMap<>(clock(at, zone));
    pieces.put("weekday", dates.fullWeekday(at, zone));
    pieces.put("date", dates.fullMonthDay(at, zone));
    pieces.put("time", time(at, zone));
    return pieces;
  }

  private Map<String, String> clock(Instant at, ZoneId zone) {
    LocalTime local = at.atZone(zone).toLocalTime();
    int minutes = 100 * local.getHour() + local.getMinute();
    return Map.of(
        "time", dates.time(at, zone),
        "hour", String.valueOf(local.getHour()),
        "clock", String.valueOf(10_000 + minutes).substring(1));
  }

  @Override
  public String fullWeekday(Instant at, ZoneId zone) {
    return dates.fullWeekday(at, zone);
  }

  @Override
  public String fullMonthDay(Instant at, ZoneId zone) {
    return dates.fullMonthDay(at, zone);
  }

  @Override
  public String month(Instant at, ZoneId zone) {
    return dates.month(at, zone);
  }

  @Override
  public String shortDay(Instant at, ZoneId zone) {
    return dates.shortDay(at, zone);
  }

  @Override
  public String weekday(Instant at, ZoneId zone) {
    return dates.weekday(at, zone);
  }

  @Override
  public String monthDay(Instant at, ZoneId zone) {
    return dates.monthDay(at, zone);
  }

  @Override
  public String time(Instant at, ZoneId zone) {
    LocalTime minute = at.atZone(zone).toLocalTime().truncatedTo(ChronoUnit.MINUTES);
    return times.computeIfAbsent(minute, m -> writtenTime(at, zone));
  }

  private String writtenTime(Instant at, ZoneId zone) {
    return own.message(LanguageFacts.TIME)
        .map(pattern -> pattern.with(clock(at, zone), units))
        .orElseGet(() -> dates.time(at, zone));
  }

  @Override
  public String dayAndTime(Instant at, ZoneId zone) {
    return own.message(LanguageFacts.DAY_AND_TIME)
        .map(pattern -> pattern.with(pieces(at, zone), units))
        .orElseGet(() -> dates.dayAndTime(at, zone));
  }

  @Override
  public String date(LocalDate date) {
    return dates.date(date);
  }

  @Override
  public String number(double value, int decimals) {
    return numbers.number(value, decimals);
  }

  @Override
  public String temperature(double celsius) {
    return numbers.temperature(celsius);
  }

  @Override
  public List<IndexGroup> byLetter(Collection<String> words) {
    AlphabeticIndex<String> index = new AlphabeticIndex<>(facts.locale());
    words.forEach(word -> index.addRecord(word, word));
    List<IndexGroup> groups = new ArrayList<>();
    for (AlphabeticIndex.Bucket<String> bucket : index) {
      List<String> under = new ArrayList<>();
      bucket.forEach(entry -> under.add(entry.getData()));
      if (!under.isEmpty()) {
        groups.add(new IndexGroup(bucket.getLabel(), under));
      }
    }
    return groups;
  }

  @Override
  public String quantity(Quantity quantity) {
    return numbers.quantity(quantity);
  }
}
