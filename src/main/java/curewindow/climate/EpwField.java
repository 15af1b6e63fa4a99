package curewindow.climate;

import java.math.BigDecimal;
import java.util.List;

/**
 * A measured value of the rows of a weather file.
 *
 * @param index its place in the row, from 0
 * @param name what it is, for messages
 * @param low the lowest value that can be, in the field's unit
 * @param high the highest
 * @param missing the format's code for a missing value; higher numbers mean the same
 */
record EpwField(int index, String name, double low, double high, double missing) {

  /** The value in a row, or not a number where it is missing or left blank. */
  double value(List<String> row, int line) throws EpwFault {
    String field = row.get(index);
    if (field.isEmpty()) {
      return Double.NaN;
    }
    double value = EpwNumbers.isNumber(field) ? Double.parseDouble(field) : Double.NaN;
    if (value >= missing) {
      return Double.NaN;
    }
    if (value >= low && value <= high) {
      return value;
    }
    String range = plain(low) + " to " + plain(high);
    boolean number = !Double.isNaN(value);
    throw new EpwFault(
        number ? "epw-out-of-range" : "epw-bad-number",
        line,
        name
            + (number ? " is " : " is not a number: ")
            + EpwFault.shown(field)
            + (number ? ", outside " + range : ""),
        "write a number from " + range + ", or " + plain(missing) + " where it is missing");
  }

  private static String plain(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
