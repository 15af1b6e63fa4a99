package curewindow.cure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;

/**
 * When one hold of one job ends, in each of the weathers. Times are seconds of local standard time.
 *
 * <p>In each weather the hold ends with the last of its items, and each item at its limit if it
 * does not have what it needs before.
 *
 * <p>Only two of the ends are asked for, the median and the ninth tenth. So they are not computed
 * one by one: how many weathers are done is counted at whole hours, all weathers at once, and a
 * search from a guess finds the hour in which the asked one ends; only ends within that hour are
 * computed. The guess is where the weathers' mean dose is enough. It decides nothing but the speed.
 */
final class HoldEnds {

  /** Hardly any need lasts longer: four hundred days, in seconds. */
  private static final long FAR = 400L * 86_400;

  /** Hours of the first step away from a guess. */
  private static final int STEP = 2;

  private final JobDoses doses;
  private final List<ItemNeed> itemNeeds;

  /** What is still wanted and decides whether a weather is done. */
  private final List<RemainingNeed> deciding = new ArrayList<>(4);

  private final int members;

  /** No end is earlier: the latest of floors, ends in the bay, and pickups if it takes longer. */
  private long least = Long.MIN_VALUE;

  private long latest = Long.MIN_VALUE;
  private final int number;

  /** The shares asked for last, as they are asked for again and again at the limit. */
  private Shares known = new Shares(Long.MIN_VALUE, new double[0], new double[0]);

  /** The weathers done by the hour asked for last. */
  private WeatherSet done;

  private int doneAt;

  private final Decision median;
  private final Decision safe;

  /**
   * An end of the hold in one weather.
   *
   * @param itemNeed the deciding item
   * @param member the weather
   * @param at when it ends
   * @param past whether the limit of the item came first
   */
  record Decision(ItemNeed itemNeed, int member, long at, boolean past) {}

  /** Which share of all needs is met at a time, in each weather, and the same, least first. */
  private record Shares(long at, double[] each, double[] sorted) {}

  /**
   * How far a hold is when it ends at the limit.
   *
   * @param share of the need of the item that has least, in the median weather, 0 to below 1
   * @param full when all needs are met by the mean dose of the weathers, up to the hour; not before
   *     the end
   */
  record Late(double share, long full) {}

  /**
   * Finds the ends.
   *
   * @param doses the job's doses
   * @param itemNeeds the items with this hold, at least one
   * @param members how many weathers there are
   * @param safeRank the number, from 1, of the end that nine of ten weathers keep
   */
  HoldEnds(JobDoses doses, List<ItemNeed> itemNeeds, int members, int safeRank) {
    this.doses = doses;
    this.itemNeeds = itemNeeds;
    this.members = members;
    for (ItemNeed itemNeed : itemNeeds) {
      add(itemNeed);
    }
    this.number = safeRank;
    int half = (members + 1) / 2;
    this.median = ranked(end(half), half);
    this.safe = safeRank == half ? median : ranked(later(safeRank), safeRank);
  }

  private void add(ItemNeed itemNeed) {
    least = Math.max(least, itemNeed.floor());
    for (Driver driver : itemNeed.drivers()) {
      long inBay = doses.metInBay(itemNeed, driver);
      if (inBay != DoseTable.NEVER) {
        least = Math.max(least, inBay);
      } else {
        least = Math.max(least, itemNeed.pickup());
        latest = Math.max(latest, itemNeed.limit());
        add(doses.remaining(itemNeed, driver));
      }
    }
  }

  private void add(RemainingNeed more) {
    for (RemainingNeed other : deciding) {
      if (more.isOverWith(other)) {
        return;
      }
    }
    deciding.removeIf(other -> other.isOverWith(more));
    deciding.add(more);
  }

  /** The end that half of the weathers keep. */
  Decision median() {
    return median;
  }

  /** The end that nine of ten weathers keep. */
  Decision safe() {
    return safe;
  }

  /**
   * All weathers that are not enough end at the same limit; the one shown stands in their order by
   * how far they are by then, unless items with other limits make that one end at another time.
   */
  private Decision ranked(Decision end, int number) {
    if (!end.past()) {
      return end;
    }
    Shares shares = shares(end.at());
    double remaining = shares.sorted()[members - number];
    int member = 0;
    while (shares.each()[member] != remaining) {
      member++;
    }
    return endIn(member) == end.at() ? decision(member, end.at()) : end;
  }

  private long end(ItemNeed itemNeed, int member) {
    return Math.min(itemNeed.limit(), met(itemNeed, member));
  }

  /** The end in one weather. */
  private long endIn(int member) {
    long end = Long.MIN_VALUE;
    for (ItemNeed itemNeed : itemNeeds) {
      end = Math.max(end, end(itemNeed, member));
    }
    return end;
  }

  private Shares shares(long at) {
    if (at != known.at()) {
      double[] each = new double[members];
      Arrays.fill(each, 1);
      deciding.forEach(one -> one.shares(at, each));
      double[] sorted = each.clone();
      Arrays.sort(sorted);
      known = new Shares(at, each, sorted);
    }
    return known;
  }

  /** The end of a number in the order of ends, from 1. */
  private Decision end(int number) {
    if (deciding.isEmpty()) {
      return decision(0, least);
    }
    int first = hours().hour(least);
    return from(first, number, one -> one.doses().guess(one.dose(), last()));
  }

  /** The end of a number that is not before the median's. */
  private Decision later(int number) {
    if (median.at() == least) {
      return end(number);
    }
    if (median.at() == latest && isLate(number)) {
      return limited();
    }
    int further = members - number;
    int first = hours().hour(median.at());
    return from(first, number, one -> one.doses().guess(one.dose(), further, first, last()));
  }

  /**
   * The end of a number.
   *
   * @param first none is done before the start of this hour, or as many only by the least end
   * @param number the number
   * @param guesses about the hour by which a need is met
   */
  private Decision from(int first, int number, ToIntFunction<RemainingNeed> guesses) {
    int hour = first;
    for (int i = 0; i < deciding.size(); i++) {
      int guess = guesses.applyAsInt(deciding.get(i));
      if (guess == last() && isLate(number)) {
        return limited();
      }
      hour = search(deciding.get(i), hour, guess, number);
    }
    hour = searchAll(hour, number);
    return hour == hours().hour(least)
        ? decision(metAt(hour).next(0), least)
        : within(hour, number);
  }

  /** Whether all items have one limit, and it comes before the end that a number had without it. */
  private boolean isLate(int number) {
    for (RemainingNeed one : deciding) {
      if (one.itemNeed().limit() != latest) {
        return false;
      }
    }
    return latest >= least && shares(latest).sorted()[members - number] < 1;
  }

  /** The end at the one limit; which weather and item are shown is decided by their shares. */
  private Decision limited() {
    return new Decision(itemNeeds.get(0), 0, latest, true);
  }

  private PickupDoses hours() {
    return deciding.get(0).doses();
  }

  /** By the start of this hour all is over. */
  private int last() {
    return hours().hour(latest - 1) + 1;
  }

  /** The first hour, not before a given one, by whose start a need is met in so many weathers. */
  private int search(RemainingNeed one, int first, int guess, int number) {
    return Search.first(first, last(), guess, STEP, hour -> one.count(hour, members) >= number);
  }

  /**
   * The first hour by whose start so many weathers are done.
   *
   * @param first none is done before: the hour by which each need is met in as many
   * @param number how many
   */
  private int searchAll(int first, int number) {
    return deciding.size() == 1
        ? first
        : Search.first(first, last(), first, STEP, hour -> metAt(hour).count() >= number);
  }

  /**
   * The end of a number among those within the hour that ends with an hour's start.
   *
   * @param hour an hour by which it is reached, and not by the hour before
   * @param number the number
   */
  private Decision within(int hour, int number) {
    WeatherSet met = metAt(hour).copy();
    WeatherSet early = metAt(hour - 1);
    met.removeAll(early);
    int found = met.count();
    long[] ends = new long[found];
    int[] whose = new int[found];
    int count = 0;
    for (int m = met.next(0); m >= 0; m = met.next(m + 1)) {
      insert(exact(m, hour), m, ends, whose, count++);
    }
    int at = number - early.count() - 1;
    while (at > 0 && ends[at - 1] == ends[at]) {
      at--;
    }
    return decision(whose[at], ends[at]);
  }

  /** Puts an end where it belongs among so many in order, after those at the same time. */
  private static void insert(long end, int member, long[] ends, int[] whose, int count) {
    int at = count;
    while (at > 0 && ends[at - 1] > end) {
      ends[at] = ends[at - 1];
      whose[at] = whose[at - 1];
      at--;
    }
    ends[at] = end;
    whose[at] = member;
  }

  private long exact(int member, int hour) {
    long end = least;
    for (int i = 0; i < deciding.size(); i++) {
      if (deciding.get(i).matters(hour - 1)) {
        end = Math.max(end, deciding.get(i).overInHour(member, hour));
      }
    }
    return end;
  }

  /** The end that is so many seconds, decided by the first of the items that end last. */
  private Decision decision(int member, long end) {
    ItemNeed last = itemNeeds.get(0);
    long lastEnd = Long.MIN_VALUE;
    boolean past = false;
    for (int i = 0; i < itemNeeds.size() && lastEnd < end; i++) {
      ItemNeed itemNeed = itemNeeds.get(i);
      long met = met(itemNeed, member);
      long ends = Math.min(itemNeed.limit(), met);
      if (ends > lastEnd) {
        lastEnd = ends;
        last = itemNeed;
        past = met == DoseTable.NEVER;
      }
    }
    return new Decision(last, member, end, past);
  }

  private long met(ItemNeed itemNeed, int member) {
    long end = itemNeed.floor();
    for (Driver driver : itemNeed.drivers()) {
      end = Math.max(end, doses.met(itemNeed, driver, member));
    }
    return end;
  }

  /** How far the hold is at the end that nine of ten weathers keep; empty where all is met. */
  Optional<Late> late() {
    long at = safe.at();
    if (itemNeeds.stream().noneMatch(itemNeed -> itemNeed.limit() <= at)) {
      return Optional.empty();
    }
    double[] shares = shares(at).sorted();
    if (shares[members - number] >= 1) {
      return Optional.empty();
    }
    long full = at;
    for (RemainingNeed one : deciding) {
      full = Math.max(full, one.metOnTheMean(at + FAR));
    }
    return Optional.of(new Late(shares[members - (members + 1) / 2], full));
  }

  /** Which weathers are done by the start of an hour; not to be changed. */
  private WeatherSet metAt(int hour) {
    if (done == null || hour != doneAt) {
      doneAt = hour;
      done = WeatherSet.all(members);
      for (int i = 0; i < deciding.size(); i++) {
        RemainingNeed one = deciding.get(i);
        if (one.matters(hour)) {
          one.doses().keep(hour, one.dose(), done);
        }
      }
    }
    return done;
  }
}
