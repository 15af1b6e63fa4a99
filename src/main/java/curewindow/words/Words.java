package curewindow.words;

import curewindow.shop.Units;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import java.util.Map;

/**
 * The words, dates and numbers of one language. Texts are ICU message patterns, read from the files
 * in {@code content/words/<language>}; dates and numbers follow CLDR, as ICU4J carries it, so that
 * they do not change with the Java that runs the program.
 */
public interface Words {

  /**
   * The language.
   *
   * @return a BCP 47 tag, such as {@code en}
   */
  String language();

  /**
   * Whether the language is written from right to left.
   *
   * @return true for right to left
   */
  boolean rightToLeft();

  /**
   * The units that quantities are shown in.
   *
   * @return those of the shop, or else those its readers think in
   */
  Units units();

  /**
   * A place as the language names it, where CLDR knows it: the city that a time zone is named
   * after.
   *
   * @param name its English name, such as {@code Cairo, Egypt}
   * @param zone its time zone
   * @return the name, or the English one
   */
  String place(String name, ZoneId zone);

  /**
   * A text.
   *
   * @param key its name, such as {@code hold.windows-up.label}
   * @return the text; in English where the language lacks it; where no language has it, the id in
   *     its name in readable form, never the name itself
   */
  default String text(String key) {
    return text(key, Map.of());
  }

  /**
   * A text with values put in.
   *
   * @param key its name
   * @param values values by name: strings and numbers
   * @return the text
   */
  String text(String key, Map<String, ?> values);

  /**
   * Whether the language has a text.
   *
   * @param key its name
   * @return true where it has
   */
  boolean has(String key);

  /**
   * The same words for who reads dates about a time: a day or month that is more than six months
   * before it, or more than nine months after it, has its year.
   *
   * @param time such as a pickup
   * @return the words
   */
  Words around(Instant time);

  /**
   * A day with its weekday as running text has it, such as {@code Thursday, December 3}.
   *
   * @param at the instant
   * @param zone the zone whose calendar is shown
   * @return the text
   */
  String day(Instant at, ZoneId zone);

  /**
   * A day in few letters, such as {@code Thu, Dec 3}.
   *
   * @param at the instant
   * @param zone the zone whose calendar is shown
   * @return the text
   */
  String shortDay(Instant at, ZoneId zone);

  /**
   * The day of the week in few letters, such as {@code Thu}.
   *
   * @param at the instant
   * @param zone the zone whose calendar is shown
   * @return the text
   */
  String weekday(Instant at, ZoneId zone);

  /**
   * A day of a month in few letters, such as {@code Dec 3}.
   *
   * @param at the instant
   * @param zone the zone whose calendar is shown
   * @return the text
   */
  String monthDay(Instant at, ZoneId zone);

  /**
   * The day of the week in full, such as {@code Thursday}.
   *
   * @param at the instant
   * @param zone the zone whose calendar is shown
   * @return the text
   */
  String fullWeekday(Instant at, ZoneId zone);

  /**
   * A day of a month in full, such as {@code December 3}.
   *
   * @param at the instant
   * @param zone the zone whose calendar is shown
   * @return the text
   */
  String fullMonthDay(Instant at, ZoneId zone);

  /**
   * A month by itself, such as {@code December}.
   *
   * @param at the instant
   * @param zone the zone whose calendar is shown
   * @return the text
   */
  String month(Instant at, ZoneId zone);

  /**
   * An hour of the day, such as {@code 2 PM}.
   *
   * @param at the instant
   * @param zone the zone whose clock is shown
   * @return the text
   */
  String time(Instant at, ZoneId zone);

  /**
   * A day with its weekday and hour as running text has them, such as {@code Thursday, December 3,
   * 2 PM}.
   *
   * @param at the instant
   * @param zone the zone whose calendar and clock are shown
   * @return the text
   */
  String dayAndTime(Instant at, ZoneId zone);

  /**
   * A date with its year, such as {@code December 3, 2026}.
   *
   * @param date the date
   * @return the text
   */
  String date(LocalDate date);

  /**
   * A number.
   *
   * @param value the number
   * @param decimals how many decimals at most, 0 to 6
   * @return the text
   */
  String number(double value, int decimals);

  /**
   * A temperature in the unit the language's readers use.
   *
   * @param celsius degrees Celsius
   * @return the text with its unit
   */
  String temperature(double celsius);

  /**
   * Words in the order of the language, under their first letters, as in a printed index.
   *
   * @param words the words, in any order
   * @return the letters that have words
   */
  List<IndexGroup> byLetter(Collection<String> words);

  /**
   * A quantity in the units the reader uses, such as {@code 3 feet} or {@code 0.9 meters}.
   *
   * @param quantity the quantity
   * @return the text with its unit
   */
  String quantity(Quantity quantity);
}
