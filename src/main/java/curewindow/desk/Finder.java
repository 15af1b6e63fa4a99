package curewindow.desk;

import curewindow.problem.Nearest;
import curewindow.shop.Film;
import curewindow.shop.FittedItem;
import curewindow.shop.Job;
import curewindow.shop.Shop;
import curewindow.site.LoadedShop;
import curewindow.words.Words;
import curewindow.words.WordsLibrary;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Finds jobs by what people remember of them: number, first name, car, film, batch, date. Every
 * word that is typed has to be somewhere in the job; case and accents do not count.
 */
final class Finder {

  /** As forms of browsers write days, by the place where they are. */
  private static final DateTimeFormatter MONTH_FIRST = DateTimeFormatter.ofPattern("MM/dd/uuuu");

  private static final DateTimeFormatter DAY_FIRST = DateTimeFormatter.ofPattern("dd/MM/uuuu");

  /** A job and all that it is found by, as one text. */
  private record Line(Job job, String text) {}

  private final List<Line> lines;

  private Finder(List<Line> lines) {
    this.lines = lines;
  }

  /** Finds the jobs of a shop, the last picked up first. */
  static Finder of(LoadedShop shop) {
    return of(
        shop.jobs(),
        shop.read().catalogue().films(),
        shop.shop().map(Shop::zone).orElse(ZoneOffset.UTC),
        shop.words().of(WordsLibrary.FALLBACK));
  }

  /** Finds some jobs, with films by their ids and days by a clock. */
  static Finder of(List<Job> jobs, Map<String, Film> films, ZoneId zone, Words words) {
    return new Finder(
        jobs.stream()
            .sorted(Comparator.comparing(Job::pickup).reversed().thenComparing(Job::id))
            .map(job -> new Line(job, plain(text(job, films, zone, words))))
            .toList());
  }

  private static String text(Job job, Map<String, Film> films, ZoneId zone, Words words) {
    StringBuilder text = new StringBuilder(" ");
    add(text, job.id(), job.firstName(), job.car().text(), job.car().body().id());
    job.car().year().ifPresent(year -> add(text, String.valueOf(year)));
    LocalDate day = job.pickup().atZone(zone).toLocalDate();
    add(text, day.toString(), MONTH_FIRST.format(day), DAY_FIRST.format(day));
    add(text, words.shortDay(job.pickup(), zone));
    for (FittedItem item : job.items()) {
      Film film = films.get(item.film());
      add(text, item.service(), item.film(), film == null ? "" : film.name());
      item.batch().ifPresent(batch -> add(text, batch));
    }
    return text.toString();
  }

  private static void add(StringBuilder text, String... parts) {
    for (String part : parts) {
      text.append(part).append(' ');
    }
  }

  private static String plain(String text) {
    return Nearest.plain(text).replace('\u00A0', ' ');
  }

  /**
   * What was found.
   *
   * @param jobs some of them
   * @param all how many there are
   */
  record Found(List<Job> jobs, int all) {}

  /**
   * The jobs in which each word of a query begins a word, or stands inside one of its codes.
   *
   * @param from how many of them are left out first
   * @param most how many are given
   */
  Found find(String query, int from, int most) {
    List<String> needles = needles(query);
    List<Job> found = new ArrayList<>();
    int all = 0;
    for (Line line : lines) {
      if (has(line.text(), needles)) {
        all++;
        if (all > from && found.size() < most) {
          found.add(line.job());
        }
      }
    }
    return new Found(found, all);
  }

  /** Whether a number alone has all words of a query. */
  static boolean has(String id, String query) {
    return has(" " + plain(id) + " ", needles(query));
  }

  private static List<String> needles(String query) {
    return Stream.of(plain(query).strip().split("\\s+")).map(Finder::needle).toList();
  }

  private static boolean has(String text, List<String> needles) {
    for (String needle : needles) {
      if (!text.contains(needle)) {
        return false;
      }
    }
    return true;
  }

  /** Letters alone begin a word; a part of a number or code may stand anywhere in it. */
  private static String needle(String word) {
    return word.chars().allMatch(Character::isLetter) ? " " + word : word;
  }
}
