package curewindow.words;

import com.ibm.icu.text.MessageFormat;
import com.ibm.icu.util.ULocale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** One text of a language, ready to have values put in. Safe for use by several threads. */
final class Message {

  /** Where a value such as "7 p.m." ends the sentence that it stands in; not an ellipsis. */
  private static final Pattern DOUBLE_STOP = Pattern.compile("(?<![.])[.]{2}(?![.])");

  private final String plain;
  private final MessageFormat format;

  private Message(String plain, MessageFormat format) {
    this.plain = plain;
    this.format = format;
  }

  /**
   * Compiles a pattern.
   *
   * @throws IllegalArgumentException where the pattern is malformed, with the reason
   */
  static Message of(String pattern, ULocale locale) {
    MessageFormat format = new MessageFormat(pattern, locale);
    if (format.getArgumentNames().isEmpty()) {
      return new Message(format.format(Map.of()), null);
    }
    return new Message(null, format);
  }

  /** The names of the values that the text uses. */
  Set<String> values() {
    return format == null ? Set.of() : new TreeSet<>(format.getArgumentNames());
  }

  String with(Map<String, ?> values) {
    if (format == null) {
      return plain;
    }
    synchronized (format) {
      return DOUBLE_STOP.matcher(format.format(values)).replaceAll(".");
    }
  }
}
