package curewindow.words;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A quantity with its unit, as guides and words give it: {@code 0.9 m}, {@code 1 to 4 mm} or {@code
 * -5 C}. A guide gives it once, and every reader has it in their own units. Immutable.
 */
public final class Quantity {

  private static final String NUMBER = "(-?[0-9]{1,5}(?:[.][0-9]{1,3})?)";
  private static final Pattern FORM =
      Pattern.compile(NUMBER + "(?: to " + NUMBER + ")? ([A-Za-z]+)");

  private final double from;
  private final double to;
  private final Measure measure;

  private Quantity(double from, double to, Measure measure) {
    this.from = from;
    this.to = to;
    this.measure = measure;
  }

  /**
   * Reads a quantity.
   *
   * @param text a number, or two with {@code to} between them and the lower one first, and one of
   *     {@link #units}
   * @return the quantity, or empty where the text is none
   */
  public static Optional<Quantity> of(String text) {
    Matcher form = FORM.matcher(text);
    if (!form.matches()) {
      return Optional.empty();
    }
    double from = Double.parseDouble(form.group(1));
    double to = form.group(2) == null ? from : Double.parseDouble(form.group(2));
    return from > to
        ? Optional.empty()
        : Measure.of(form.group(3)).map(measure -> new Quantity(from, to, measure));
  }

  /**
   * Whether a text is meant as a quantity, rightly written or not.
   *
   * @param text the text
   * @return true where it begins as a number does
   */
  public static boolean isMeant(String text) {
    return !text.isEmpty() && (Character.isDigit(text.charAt(0)) || text.charAt(0) == '-');
  }

  /**
   * The units that can be written.
   *
   * @return their signs, in the order of the documents
   */
  public static List<String> units() {
    return Measure.ids();
  }

  double from() {
    return from;
  }

  double to() {
    return to;
  }

  Measure measure() {
    return measure;
  }
}
