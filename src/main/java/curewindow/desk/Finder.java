package curewindow.desk;

import curewindow.problem.Nearest;
import curewindow.shop.Film;
import curewindow.shop.FittedItem;
import curewindow.shop.Job;
import curewindow.shop.Shop;
import curewindow.site.LoadedShop;
import curewindow.words.Words;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Finds jobs by what people remember of them: number, first name, car, film, batch, date. Every
 * word that is typed has to be somewhere in the job; case and accents do not count.
 */
final class Finder {

  /** As forms of browsers write days, by the place where they are. */
  private static final DateTimeFormatter MONTH_FIRST = DateTimeFormatter.ofPattern("MM/dd/uuuu");

  private static final DateTimeFormatter DAY_FIRST = DateTimeFormatter.ofPattern("dd/MM/uuuu");

  /** Before each word; no word has it, and nobody can type it. */
  private static final char BEFORE = '\n';

  /** In the order in which they are found. */
  private final List<Job> jobs;

  /** All words by which they are found, each once, however many jobs have it. */
  private final String text;

  /** Where each word begins in that text, and one more where it ends. */
  private final int[] begins;

  /** For each word the jobs that have it, by their places in the list. */
  private final int[][] having;

  private Finder(List<Job> jobs, Collection<Word> words) {
    StringBuilder all = new StringBuilder();
    this.jobs = jobs;
    this.begins = new int[words.size() + 1];
    this.having = new int[words.size()][];
    int at = 0;
    for (Word word : words) {
      begins[at] = all.length();
      having[at++] = word.jobs();
      all.append(BEFORE).append(word.text);
    }
    begins[at] = all.length();
    this.text = all.toString();
  }

  /** A word, and the jobs that have it. */
  private static final class Word {

    private final String text;
    private int[] jobs = new int[1];
    private int count;

    Word(String text) {
      this.text = text;
    }

    /** Jobs come in their order, a word perhaps more than once in one. */
    void add(int job) {
      if (count > 0 && jobs[count - 1] == job) {
        return;
      }
      if (count == jobs.length) {
        jobs = Arrays.copyOf(jobs, 2 * count);
      }
      jobs[count++] = job;
    }

    int[] jobs() {
      return Arrays.copyOf(jobs, count);
    }
  }

  /** Finds the jobs of a shop, the last picked up first. */
  static Finder of(LoadedShop shop) {
    return of(
        shop.jobs(),
        shop.read().catalogue().films(),
        shop.shop().map(Shop::zone).orElse(ZoneOffset.UTC),
        Frame.LANGUAGES.stream().map(shop.words()::of).toList());
  }

  /**
   * Finds some jobs, with films by their ids and days by a clock.
   *
   * @param spoken words of the languages in which screens tell days
   */
  static Finder of(List<Job> jobs, Map<String, Film> films, ZoneId zone, List<Words> spoken) {
    List<Job> sorted =
        jobs.stream()
            .sorted(Comparator.comparing(Job::pickup).reversed().thenComparing(Job::id))
            .toList();
    Map<String, Word> all = new LinkedHashMap<>();
    // Most of what jobs say, others said before: it is taken apart once.
    Map<String, List<Word>> known = new HashMap<>();
    Map<LocalDate, String> days = new HashMap<>();
    for (int i = 0; i < sorted.size(); i++) {
      Instant pickup = sorted.get(i).pickup();
      LocalDate on = pickup.atZone(zone).toLocalDate();
      String day = days.computeIfAbsent(on, d -> day(d, spoken));
      for (String part : parts(sorted.get(i), day, films)) {
        for (Word word : known.computeIfAbsent(part, p -> words(p, all))) {
          word.add(i);
        }
      }
    }
    return new Finder(sorted, all.values());
  }

  private static List<Word> words(String part, Map<String, Word> all) {
    return split(part).map(text -> all.computeIfAbsent(text, Word::new)).toList();
  }

  private static String day(LocalDate day, List<Words> spoken) {
    Instant noon = day.atTime(LocalTime.NOON).toInstant(ZoneOffset.UTC);
    return Stream.concat(
            Stream.of(day.toString(), MONTH_FIRST.format(day), DAY_FIRST.format(day)),
            spoken.stream().flatMap(w -> Stream.of(w.shortDay(noon, ZoneOffset.UTC), w.date(day))))
        .collect(Collectors.joining(" "));
  }

  private static List<String> parts(Job job, String day, Map<String, Film> films) {
    List<String> parts = new ArrayList<>();
    parts.addAll(List.of(job.id(), job.firstName(), job.car().text(), job.car().body().id(), day));
    job.car().year().ifPresent(year -> parts.add(String.valueOf(year)));
    for (FittedItem item : job.items()) {
      Film film = films.get(item.film());
      parts.addAll(List.of(item.service(), item.film(), film == null ? "" : film.name()));
      item.batch().ifPresent(parts::add);
    }
    return parts;
  }

  /** The words of a text without accents and capitals. */
  private static Stream<String> split(String text) {
    return Stream.of(Nearest.plain(text).replace('\u00A0', ' ').split("\\s+"))
        .filter(word -> !word.isEmpty());
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
    BitSet found = new BitSet(jobs.size());
    found.set(0, jobs.size());
    needles(query).forEach(needle -> found.and(having(needle)));
    return new Found(
        found.stream().skip(from).limit(most).mapToObj(jobs::get).toList(), found.cardinality());
  }

  /** The jobs that have a word in which something stands. */
  private BitSet having(String needle) {
    BitSet some = new BitSet(jobs.size());
    int at = text.indexOf(needle);
    while (at >= 0) {
      int found = Arrays.binarySearch(begins, at);
      int word = found < 0 ? -found - 2 : found;
      for (int job : having[word]) {
        some.set(job);
      }
      at = text.indexOf(needle, begins[word + 1]);
    }
    return some;
  }

  /** Whether a number alone has all words of a query. */
  static boolean has(String id, String query) {
    String text = split(id).map(word -> BEFORE + word).collect(Collectors.joining());
    return needles(query).allMatch(text::contains);
  }

  private static Stream<String> needles(String query) {
    return split(query).map(Finder::needle);
  }

  /** Letters alone begin a word; a part of a number or code may stand anywhere in it. */
  private static String needle(String word) {
    return word.chars().allMatch(Character::isLetter) ? BEFORE + word : word;
  }
}
