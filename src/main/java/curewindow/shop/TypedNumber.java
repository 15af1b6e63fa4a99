package curewindow.shop;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A number as people type it, in the way in which files have it. */
public final class TypedNumber {

  private static final Pattern TYPED = Pattern.compile("([-+]?[0-9]+)(?:([.,])([0-9]+))?\\s*%?");

  /** Here a comma may as well stand between thousands. */
  private static final Pattern UNSURE = Pattern.compile("[-+]?[1-9][0-9]{0,2},[0-9]{3}\\s*%?");

  private TypedNumber() {}

  /**
   * A number with a decimal point.
   *
   * @param text what was typed: perhaps with a decimal comma, or a percent sign
   * @return such as {@code 0.5} for {@code 0,5}; what can be read in two ways, as {@code 2,000}
   *     can, and what is no number at all as it was, so that its reader asks for another
   */
  public static String plain(String text) {
    Matcher typed = TYPED.matcher(text.strip());
    if (!typed.matches() || UNSURE.matcher(text.strip()).matches()) {
      return text;
    }
    return typed.group(3) == null ? typed.group(1) : typed.group(1) + "." + typed.group(3);
  }
}
