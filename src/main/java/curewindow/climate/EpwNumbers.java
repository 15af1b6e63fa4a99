package curewindow.climate;

import java.util.regex.Pattern;

/** Numbers as weather files write them. */
final class EpwNumbers {

  private static final Pattern NUMBER =
      Pattern.compile("[-+]?([0-9]{1,9}[.]?[0-9]{0,9}|[.][0-9]{1,9})([eE][-+]?[0-9]{1,2})?");

  private EpwNumbers() {}

  /** Whether a field holds a number; {@code NaN} and {@code Infinity} are none. */
  static boolean isNumber(String field) {
    return NUMBER.matcher(field).matches();
  }

  /**
   * A number within a range, both ends included.
   *
   * @param name what it is, for the message
   * @param field the field
   * @param low the lowest, in the field's unit
   * @param high the highest
   * @param line where it stands
   */
  static double within(String name, String field, double low, double high, int line)
      throws EpwFault {
    if (!isNumber(field)) {
      throw new EpwFault(
          "epw-bad-number",
          line,
          name + (field.isEmpty() ? " is empty" : " is not a number: " + EpwFault.shown(field)),
          "write a number from " + plain(low) + " to " + plain(high));
    }
    double value = Double.parseDouble(field);
    if (!(value >= low && value <= high)) {
      throw new EpwFault(
          "epw-out-of-range",
          line,
          name + " is " + EpwFault.shown(field) + ", outside " + plain(low) + " to " + plain(high),
          "correct it, or get the file again from where it came");
    }
    return value;
  }

  /** A whole number within a range, both ends included. */
  static int whole(String name, String field, int low, int high, int line) throws EpwFault {
    double value = within(name, field, low, high, line);
    if (value != Math.rint(value)) {
      throw new EpwFault(
          "epw-bad-number",
          line,
          name + " is " + EpwFault.shown(field) + ", which is not whole",
          "write a whole number from " + low + " to " + high);
    }
    return (int) value;
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }
}
