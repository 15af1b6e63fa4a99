package curewindow.desk;

import curewindow.shop.BrokenJob;
import curewindow.shop.Job;
import curewindow.site.LoadedShop;
import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The number of the next job: one more than the highest, written as the shop writes them. */
final class NextNumber {

  private static final Pattern NUMBER = Pattern.compile("(.*?)([0-9]{1,9})");

  private NextNumber() {}

  private record Numbered(String before, String digits) {

    long number() {
      return Long.parseLong(digits);
    }
  }

  /**
   * The number.
   *
   * @param taken numbers that are found to be taken
   */
  static String of(LoadedShop shop, Set<String> taken) {
    Optional<Numbered> last =
        Stream.concat(
                shop.jobs().stream().map(Job::id),
                shop.brokenJobs().stream().map(BrokenJob::likelyId))
            .flatMap(id -> read(id).stream())
            .max(Comparator.comparingLong(Numbered::number).thenComparing(Numbered::before));
    String before = last.map(Numbered::before).orElse("");
    int digits = last.map(l -> l.digits().length()).orElse(1);
    long next = last.map(Numbered::number).orElse(1000L) + 1;
    while (isTaken(shop, id(before, digits, next), taken)) {
      next++;
    }
    return id(before, digits, next);
  }

  private static boolean isTaken(LoadedShop shop, String id, Set<String> taken) {
    return taken.contains(id) || shop.job(id).isPresent() || shop.knownToken(id).isPresent();
  }

  private static Optional<Numbered> read(String id) {
    Matcher form = NUMBER.matcher(id);
    return form.matches()
        ? Optional.of(new Numbered(form.group(1), form.group(2)))
        : Optional.empty();
  }

  private static String id(String before, int digits, long number) {
    String text = String.valueOf(number);
    return before + "0".repeat(Math.max(0, digits - text.length())) + text;
  }
}
