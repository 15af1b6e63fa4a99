package curewindow.told;

import curewindow.shop.Film;
import curewindow.shop.FittedItem;
import curewindow.shop.OpenDays;
import curewindow.shop.Service;
import curewindow.words.Words;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BinaryOperator;
import java.util.function.Predicate;

/**
 * Something that is due months or years after the pickup: a yearly check, a top-up of a coating, or
 * new film. The terms come from the shop's catalogue; those that it starts with are common
 * practice, no source.
 *
 * @param kind what is due
 * @param name a name that stays the same for a job, such as {@code later.check}
 * @param of ids of the services it is for, or of the film that is due for replacement
 * @param day the first day, by the shop's clock; the shop is open on it
 * @param months after how many months it is due, and due again, at least 1
 * @param times how often in all, at least 1
 */
public record LaterCare(
    Kind kind, String name, List<String> of, LocalDate day, int months, int times) {

  /** What is due. */
  public enum Kind {
    /** The shop wants to look at the work. */
    CHECK("check"),
    /** A coating is topped up. */
    TOP_UP("top-up"),
    /** A film has served its time. */
    REPLACE("replace");

    private final String id;

    Kind(String id) {
      this.id = id;
    }
  }

  /** Yearly visits for work that nobody gave a term. */
  private static final int YEARS_WITHOUT_A_TERM = 5;

  private static final int MONTHS = 12;

  /** Refuses missing parts. */
  public LaterCare {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(day, "day");
    of = List.copyOf(of);
    if (months < 1 || times < 1) {
      throw new IllegalArgumentException("months and times are at least 1");
    }
  }

  /**
   * What is due later on a job's car.
   *
   * @param view the job
   * @return what is due, by its first day
   */
  public static List<LaterCare> of(JobView view) {
    List<LaterCare> all = new ArrayList<>();
    checks(view).ifPresent(all::add);
    all.addAll(topUps(view));
    all.addAll(replacements(view));
    all.sort(Comparator.comparing(LaterCare::day).thenComparing(LaterCare::name));
    return List.copyOf(all);
  }

  private static Optional<LaterCare> checks(JobView view) {
    List<FittedItem> checked = items(view, s -> s.upkeep().yearlyCheck());
    if (checked.isEmpty()) {
      return Optional.empty();
    }
    int times = Math.max(1, years(view, checked) - 1);
    return Optional.of(
        new LaterCare(
            Kind.CHECK,
            "later.check",
            services(checked),
            after(view, checked, MONTHS),
            MONTHS,
            times));
  }

  private static List<LaterCare> topUps(JobView view) {
    Map<Integer, List<FittedItem>> byMonths = new TreeMap<>();
    for (FittedItem item : items(view, s -> s.upkeep().topUpMonths().isPresent())) {
      int months = service(view, item).upkeep().topUpMonths().getAsInt();
      byMonths.computeIfAbsent(months, m -> new ArrayList<>()).add(item);
    }
    List<LaterCare> all = new ArrayList<>();
    byMonths.forEach(
        (months, items) -> {
          int times = Math.max(1, (years(view, items) * MONTHS - 1) / months);
          String name = "later.top-up-" + months;
          List<String> services = services(items);
          all.add(
              new LaterCare(
                  Kind.TOP_UP, name, services, after(view, items, months), months, times));
        });
    return all;
  }

  private static List<LaterCare> replacements(JobView view) {
    Map<String, LaterCare> byFilm = new TreeMap<>();
    for (FittedItem item : items(view, s -> s.upkeep().replaceYears().isPresent())) {
      byFilm.merge(
          item.film(),
          replacement(view, item),
          BinaryOperator.minBy(Comparator.comparing(LaterCare::day)));
    }
    return List.copyOf(byFilm.values());
  }

  private static LaterCare replacement(JobView view, FittedItem item) {
    int years = years(view, List.of(item));
    LocalDate finished = item.finished().atZone(view.timeline().zone()).toLocalDate();
    return new LaterCare(
        Kind.REPLACE,
        "later.replace-" + item.film(),
        List.of(item.film()),
        finished.plusYears(years),
        years * MONTHS,
        1);
  }

  /** The longest term of some items: of each its warranty or its service life, what is more. */
  private static int years(JobView view, List<FittedItem> items) {
    int longest = 0;
    for (FittedItem item : items) {
      int life = service(view, item).upkeep().replaceYears().orElse(0);
      longest = Math.max(longest, Math.max(life, item.warrantyYears().orElse(0)));
    }
    return longest == 0 ? YEARS_WITHOUT_A_TERM : longest;
  }

  private static List<FittedItem> items(JobView view, Predicate<Service> wanted) {
    return view.job().items().stream()
        .filter(i -> view.catalogue().services().containsKey(i.service()))
        .filter(i -> wanted.test(service(view, i)))
        .toList();
  }

  private static Service service(JobView view, FittedItem item) {
    return view.catalogue().services().get(item.service());
  }

  private static List<String> services(List<FittedItem> items) {
    return items.stream().map(FittedItem::service).distinct().toList();
  }

  /** So many months after the car left with the last of some work. */
  private static LocalDate after(JobView view, List<FittedItem> items, int months) {
    Instant left =
        items.stream().map(view.job()::pickupAfter).max(Comparator.naturalOrder()).orElseThrow();
    return open(view, date(left, view).plusMonths(months));
  }

  private static LocalDate open(JobView view, LocalDate day) {
    return new OpenDays(view.shop()).firstOpen(day).orElse(day);
  }

  private static LocalDate date(Instant at, JobView view) {
    return at.atZone(view.shop().zone()).toLocalDate();
  }

  /**
   * What is due, in words.
   *
   * @param view the job
   * @param words the words of any language
   * @return such as {@code Yearly check}
   */
  public String title(JobView view, Words words) {
    return words.text("later." + kind.id, Map.of("what", what(view, words)));
  }

  private String what(JobView view, Words words) {
    if (kind == Kind.REPLACE) {
      Film film = view.catalogue().films().get(of.get(0));
      return film == null ? of.get(0) : film.name();
    }
    return Listing.of(of.stream().map(s -> words.text("service." + s)).toList(), words);
  }

  /**
   * When it is due again, or why it is due, in words.
   *
   * @param words the words of any language
   * @return such as {@code , then every year}, to follow the date, or nothing where it is due once
   */
  public String more(Words words) {
    if (kind == Kind.REPLACE) {
      return words.text("later.worn", Map.of("years", months / MONTHS));
    }
    return times == 1 ? "" : words.text("later.again", Map.of("months", months));
  }
}
