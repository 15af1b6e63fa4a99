package curewindow.why;

import curewindow.cure.AtPickup;
import curewindow.cure.Bay;
import curewindow.cure.Lamp;
import curewindow.shop.Catalogue;
import curewindow.shop.FittedItem;
import curewindow.shop.Job;
import curewindow.shop.SpotFact;
import curewindow.told.BeforePickup;
import curewindow.words.Words;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts the advice to the shop before a pickup into words. */
final class PickupWords {

  private final BeforePickup before;
  private final Job job;
  private final Catalogue catalogue;

  PickupWords(BeforePickup before, Job job, Catalogue catalogue) {
    this.before = before;
    this.job = job;
    this.catalogue = catalogue;
  }

  /** What is set at pickup, a clause for each hold. */
  List<String> facts(Words english) {
    Map<String, String> films = new LinkedHashMap<>();
    for (AtPickup need : before.lacking()) {
      films.merge(need.hold(), film(need), (a, b) -> a + ", " + b);
    }
    return films.entrySet().stream()
        .map(e -> english.text("hold." + e.getKey() + ".label") + ": at pickup " + e.getValue())
        .toList();
  }

  /** Hours that are had are rounded down, so that nothing looks ready that is not. */
  private String film(AtPickup need) {
    String name = catalogue.films().get(item(need).film()).name();
    long has = (long) Math.floor(need.hasHours() + 1e-6);
    return has < need.needHours()
        ? said("%s has %d of its %s hours", name, has, number(need.needHours())) + own(need)
        : name + " has all its hours, but is too fresh";
  }

  /** How much longer a need alone takes in the bay, where others take longer. */
  private String own(AtPickup need) {
    long hours = before.bayHours(need);
    return before.bayHours().filter(all -> hours < all).isPresent()
        ? " (" + hours(hours) + " longer would do)"
        : "";
  }

  private FittedItem item(AtPickup need) {
    return job.items().get(need.item());
  }

  /** What would let the car leave in any weather. */
  String advice(Bay bay) {
    Optional<String> stay = stay(bay);
    if (stay.isEmpty() && before.lamp().isEmpty()) {
      return "the bay's air hardly sets it: keep the car in where it is warmer or drier";
    }
    String ways =
        Stream.of(stay, before.lamp().map(this::underLamp))
            .flatMap(Optional::stream)
            .collect(Collectors.joining(", or "));
    return (stay.isEmpty() ? "the bay's air hardly sets it: " : "")
        + ways
        + ", and the way home does no harm in any weather"
        + (before.lamp().isPresent() ? caution(before.lacking(), job, catalogue) : "");
  }

  /** How long in the bay, as it is or heated. */
  private Optional<String> stay(Bay bay) {
    String now = number(bay.temperature());
    return before
        .bayHours()
        .map(h -> said("keep the car in %s longer (bay at %s C)", hours(h), now))
        .or(
            () ->
                before
                    .warmBay()
                    .map(
                        warm ->
                            said(
                                "the bay is too cold at %s C: warm it to %s C and keep the car in"
                                    + " %s longer",
                                now, number(warm.temperature()), hours(warm.hours()))));
  }

  private String underLamp(Lamp lamp) {
    Map<Double, Set<String>> parts = new TreeMap<>(Comparator.reverseOrder());
    for (AtPickup need : before.lacking()) {
      parts
          .computeIfAbsent(before.lampMinutes(need), m -> new LinkedHashSet<>())
          .add(catalogue.films().get(item(need).film()).name());
    }
    Set<String> all = parts.values().stream().flatMap(Set::stream).collect(Collectors.toSet());
    parts.remove(0.0);
    boolean again = before.lacking().stream().anyMatch(n -> item(n).lamp().isPresent());
    String minutes =
        parts.entrySet().stream()
            .map(
                e ->
                    said(
                        "%s %s%s minutes",
                        parts.size() == 1 && e.getValue().equals(all)
                            ? "each part"
                            : String.join(" and ", e.getValue()),
                        again ? "another " : "",
                        number(e.getKey())))
            .collect(Collectors.joining(", "));
    String text = said("give %s of lamp at %s C in the bay", minutes, number(lamp.surface()));
    return before.lampStayHours() == 0
        ? text
        : text + " and keep the car in " + hours(before.lampStayHours()) + " longer";
  }

  /** What to mind with a lamp on what is not set yet. */
  static String caution(List<AtPickup> needs, Job job, Catalogue catalogue) {
    boolean glass =
        needs.stream()
            .flatMap(need -> job.items().get(need.item()).spots().stream())
            .anyMatch(spot -> catalogue.is(spot, SpotFact.GLASS));
    return "; never more heat than its maker allows"
        + (glass ? ", glass slowly, and none on chipped glass" : "");
  }

  private static String hours(long number) {
    return number + (number == 1 ? " hour" : " hours");
  }

  /** A number without needless digits. */
  private static String number(double value) {
    return said(value == Math.rint(value) ? "%.0f" : "%.1f", value);
  }

  private static String said(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
