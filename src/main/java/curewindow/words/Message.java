package curewindow.words;

import com.ibm.icu.text.MessageFormat;
import com.ibm.icu.util.ULocale;
import curewindow.shop.Units;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One text of a language, ready to have values put in. Safe for use by several threads. */
final class Message {

  /** Where a value such as "7 p.m." ends the sentence that it stands in; not an ellipsis. */
  private static final Pattern DOUBLE_STOP = Pattern.compile("(?<![.])[.]{2}(?![.])");

  private static final Pattern QUANTITY = Pattern.compile("\\(=[ \\t]*(.{0,60}?)[ \\t]*=\\)");

  /** How many braces may stand inside each other; a text of three plurals needs six. */
  private static final int DEEPEST = 40;

  private final Map<Units, String> plain = new EnumMap<>(Units.class);
  private final Map<Units, MessageFormat> formats = new EnumMap<>(Units.class);

  private Message() {}

  /**
   * Compiles a pattern.
   *
   * @throws IllegalArgumentException where the pattern is malformed, with the reason
   */
  static Message of(String pattern, ULocale locale) {
    checkDepth(pattern);
    Message message = new Message();
    if (!pattern.contains("(=")) {
      message.add(new MessageFormat(pattern, locale), Units.values());
      return message;
    }
    for (Units units : Units.values()) {
      message.add(new MessageFormat(measured(pattern, locale, units), locale), units);
    }
    return message;
  }

  /** The library calls itself for each form inside another, and would run out of stack. */
  private static void checkDepth(String pattern) {
    int depth = 0;
    for (int i = 0; i < pattern.length(); i++) {
      char c = pattern.charAt(i);
      depth += c == '{' ? 1 : c == '}' ? -1 : 0;
      if (depth > DEEPEST) {
        throw new IllegalArgumentException("more than " + DEEPEST + " { stand inside each other");
      }
    }
  }

  private void add(MessageFormat format, Units... shownIn) {
    boolean fixed = format.getArgumentNames().isEmpty();
    for (Units units : shownIn) {
      if (fixed) {
        plain.put(units, format.format(Map.of()));
      } else {
        formats.put(units, format);
      }
    }
  }

  /** The pattern with its quantities in some units. */
  private static String measured(String pattern, ULocale locale, Units units) {
    Numbers numbers = new Numbers(locale, units);
    return QUANTITY
        .matcher(pattern)
        .replaceAll(found -> Matcher.quoteReplacement(quantity(found, numbers)));
  }

  private static String quantity(MatchResult found, Numbers numbers) {
    Quantity quantity =
        Quantity.of(found.group(1))
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "\"" + found.group() + "\" is no quantity such as (= 0.9 m =)"));
    return numbers.quantity(quantity).replace("'", "''");
  }

  /** The names of the values that the text uses. */
  Set<String> values() {
    return formats.isEmpty()
        ? Set.of()
        : new TreeSet<>(formats.get(Units.METRIC).getArgumentNames());
  }

  String with(Map<String, ?> values, Units units) {
    MessageFormat format = formats.get(units);
    if (format == null) {
      return plain.get(units);
    }
    String text;
    synchronized (format) {
      text = format.format(values);
    }
    return text.contains("..") ? DOUBLE_STOP.matcher(text).replaceAll(".") : text;
  }
}
