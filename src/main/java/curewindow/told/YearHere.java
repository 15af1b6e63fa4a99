package curewindow.told;

import curewindow.climate.MonthNormals;
import curewindow.climate.Place;
import curewindow.cure.Curing;
import curewindow.cure.HoldKind;
import curewindow.shop.Catalogue;
import curewindow.shop.Hold;
import curewindow.shop.Service;
import curewindow.shop.Shop;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.Month;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * How long each hold lasts at the shop's own place in each month of a usual year, for somebody of
 * whose car nothing is known yet. It does not depend on the day on which it is asked for, nor on
 * weather that was measured.
 *
 * @param place the shop's place
 * @param services the services that have holds, in the order of the catalogue
 */
public record YearHere(Place place, List<Work> services) {

  /** Any year of 365 days with the clocks of today. */
  private static final int YEAR = 2027;

  private static final int DAY = 15;
  private static final int HOUR = 14;

  /**
   * A service.
   *
   * @param service its id
   * @param guide id of its care guide
   * @param courses its holds, what matters most first
   */
  public record Work(String service, String guide, List<Course> courses) {

    /** Copies the list. */
    public Work {
      courses = List.copyOf(courses);
    }
  }

  /**
   * A hold through the year.
   *
   * @param hold its id
   * @param shown whether people plan by it or wonder about it: the catalogue calls it main, or it
   *     is normal for a while
   * @param months January first
   */
  public record Course(String hold, boolean shown, List<InMonth> months) {

    /** Refuses anything but twelve months. */
    public Course {
      months = List.copyOf(months);
      if (months.size() != 12) {
        throw new IllegalArgumentException("a year has 12 months, not " + months.size());
      }
    }
  }

  /**
   * A hold in a month.
   *
   * @param outside where the car stands outside
   * @param garage where it stands in an unheated garage
   */
  public record InMonth(Days outside, Days garage) {}

  /**
   * Days from the finish of the work, rounded up to whole ones.
   *
   * @param likely after which it is over in half of all weathers, 1 or more
   * @param safe after which it is over as told, not below {@code likely}
   * @param full after which nothing is left to be careful with, not below {@code safe}
   */
  public record Days(int likely, int safe, int full) {

    /** Refuses days out of order. */
    public Days {
      if (!(likely >= 1 && safe >= likely && full >= safe)) {
        throw new IllegalArgumentException(likely + ", " + safe + " and " + full + " days");
      }
    }
  }

  /**
   * Whether any work is what a guide is about.
   *
   * @param guide a guide's id
   * @return true where a service has that guide
   */
  public boolean isOfWork(String guide) {
    return services.stream().anyMatch(s -> s.guide().equals(guide));
  }

  /**
   * A hold's shortest and longest months where the car stands outside.
   *
   * @param months all months, January first
   * @param shortest the month of the fewest days; of several the warmest
   * @param longest the month of the most; of several the coldest
   */
  public record Range(List<Days> months, Month shortest, Month longest) {

    /** Copies the list. */
    public Range {
      months = List.copyOf(months);
    }

    /** The fewest days. */
    public Days least() {
      return months.get(shortest.ordinal());
    }

    /** The most days. */
    public Days most() {
      return months.get(longest.ordinal());
    }
  }

  /** Copies the list. */
  public YearHere {
    Objects.requireNonNull(place, "place");
    services = List.copyOf(services);
  }

  /**
   * The year at the shop's place.
   *
   * @param shop the shop
   * @param catalogue its catalogue
   * @param place its place
   * @param curing the model, without measured weather
   * @return the year; services without films or holds are left out
   */
  public static YearHere of(Shop shop, Catalogue catalogue, Place place, Curing curing) {
    UsualJobs jobs = new UsualJobs(shop, catalogue, place, curing);
    List<Work> services =
        catalogue.services().values().stream()
            .map(service -> work(service, jobs, catalogue.holds().values()))
            .filter(work -> !work.courses().isEmpty())
            .toList();
    return new YearHere(place, services);
  }

  /**
   * When the work of a month is finished: at two in the afternoon in its middle.
   *
   * @param place whose clocks are meant
   * @param month the month
   * @return the instant
   */
  public static Instant start(Place place, Month month) {
    return LocalDateTime.of(YEAR, month, DAY, HOUR, 0).atZone(place.zone()).toInstant();
  }

  private static Work work(Service service, UsualJobs jobs, Collection<Hold> holds) {
    List<Map<String, InMonth>> months =
        Arrays.stream(Month.values()).parallel().map(m -> jobs.in(m, service)).toList();
    List<Course> courses =
        holds.stream()
            .filter(hold -> months.stream().allMatch(month -> month.containsKey(hold.id())))
            .sorted(Comparator.comparingInt(Hold::rank))
            .map(hold -> course(hold, months))
            .toList();
    return new Work(service.id(), service.guide(), courses);
  }

  private static Course course(Hold hold, List<Map<String, InMonth>> months) {
    return new Course(
        hold.id(),
        hold.kind() == HoldKind.SETTLE || hold.is(Hold.Mark.MAIN),
        months.stream().map(month -> month.get(hold.id())).toList());
  }

  /**
   * How long a hold lasts through the year after any work that a guide is about.
   *
   * @param guide a guide's id
   * @param hold a hold's id
   * @return the longest of the services of that guide that have the hold; of all services where
   *     none of them has; empty where no service has it
   */
  public Optional<Range> of(String guide, String hold) {
    List<Course> all = courses(services, hold);
    List<Course> own =
        courses(services.stream().filter(s -> s.guide().equals(guide)).toList(), hold);
    return range(own.isEmpty() ? all : own);
  }

  /**
   * A hold's shortest and longest months where the car stands outside.
   *
   * @param course the hold through the year
   * @return the range
   */
  public Range range(Course course) {
    return range(List.of(course)).orElseThrow();
  }

  private static List<Course> courses(List<Work> services, String hold) {
    return services.stream()
        .flatMap(s -> s.courses().stream())
        .filter(c -> c.hold().equals(hold))
        .toList();
  }

  private Optional<Range> range(List<Course> courses) {
    if (courses.isEmpty()) {
      return Optional.empty();
    }
    List<Days> longest =
        IntStream.range(0, 12)
            .mapToObj(
                m ->
                    courses.stream()
                        .map(c -> c.months().get(m).outside())
                        .max(Comparator.comparingInt(Days::safe))
                        .orElseThrow())
            .toList();
    Comparator<Integer> byDays =
        Comparator.<Integer>comparingInt(m -> longest.get(m).safe())
            .thenComparing(m -> -warmth(m))
            .thenComparing(Comparator.naturalOrder());
    List<Integer> order = IntStream.range(0, 12).boxed().sorted(byDays).toList();
    return Optional.of(new Range(longest, Month.of(order.get(0) + 1), Month.of(order.get(11) + 1)));
  }

  private double warmth(int month) {
    MonthNormals normals = place.normals().get(month);
    return normals.dailyMin() + normals.dailyMax();
  }
}
