package curewindow.intake;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;

/** The months by their names in some languages, as CLDR has them. */
final class MonthNames {

  private static final List<String> LANGUAGES =
      List.of("en", "es", "ar", "de", "fr", "it", "pt", "nl");
  private static final List<TextStyle> STYLES =
      List.of(
          TextStyle.FULL, TextStyle.FULL_STANDALONE, TextStyle.SHORT, TextStyle.SHORT_STANDALONE);

  /** By name; 0 where languages mean different months by it. */
  private static final Map<String, Integer> MONTHS = months();

  private MonthNames() {}

  private static Map<String, Integer> months() {
    Map<String, Integer> months = new HashMap<>();
    for (String language : LANGUAGES) {
      for (Month month : Month.values()) {
        for (TextStyle style : STYLES) {
          String name = month.getDisplayName(style, Locale.forLanguageTag(language));
          months.merge(key(name), month.getValue(), (a, b) -> a.equals(b) ? a : 0);
        }
      }
    }
    months.merge("sept", 9, (a, b) -> a.equals(b) ? a : 0);
    return months;
  }

  private static String key(String name) {
    return PlainCell.of(name).replace(".", "");
  }

  /** The month of a name, in plain characters; empty where it is none, or not in all languages. */
  static OptionalInt month(String name) {
    int month = MONTHS.getOrDefault(key(name), 0);
    return month == 0 ? OptionalInt.empty() : OptionalInt.of(month);
  }
}
