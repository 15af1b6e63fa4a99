package curewindow.words;

import com.ibm.icu.number.NumberFormatter.UnitWidth;
import com.ibm.icu.util.MeasureUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A unit in which guides and words give a quantity, and the one that stands for it in the United
 * States. Factors after NIST Special Publication 811, appendix B.
 */
enum Measure {
  MILLIMETRE("mm", MeasureUnit.MILLIMETER, MeasureUnit.INCH, 1 / 25.4),
  CENTIMETRE("cm", MeasureUnit.CENTIMETER, MeasureUnit.INCH, 1 / 2.54),
  METRE("m", MeasureUnit.METER, MeasureUnit.FOOT, 1 / 0.3048),
  BAR("bar", MeasureUnit.BAR, MeasureUnit.POUND_PER_SQUARE_INCH, 1e5 / 6894.757),
  CELSIUS("C", MeasureUnit.CELSIUS, MeasureUnit.FAHRENHEIT, 1.8);

  private static final double NEAR = 0.1;

  private final String id;
  private final MeasureUnit metric;
  private final MeasureUnit customary;
  private final double factor;

  Measure(String id, MeasureUnit metric, MeasureUnit customary, double factor) {
    this.id = id;
    this.metric = metric;
    this.customary = customary;
    this.factor = factor;
  }

  static Optional<Measure> of(String id) {
    return Arrays.stream(values()).filter(m -> m.id.equals(id)).findFirst();
  }

  static List<String> ids() {
    return Arrays.stream(values()).map(m -> m.id).toList();
  }

  MeasureUnit metric() {
    return metric;
  }

  MeasureUnit customary() {
    return customary;
  }

  /** Lengths are written out, as a sentence has them; the others have their sign. */
  UnitWidth width() {
    return this == BAR || this == CELSIUS ? UnitWidth.SHORT : UnitWidth.FULL_NAME;
  }

  /**
   * A figure in the United States' unit, as round as it was meant: whole degrees, else one digit
   * where that is within a tenth of the true figure, else two.
   */
  double inCustomary(double value) {
    if (this == CELSIUS) {
      return Math.round(value * factor + 32);
    }
    double exact = value * factor;
    double one = digits(exact, 1);
    return Math.abs(one - exact) <= NEAR * Math.abs(exact) ? one : digits(exact, 2);
  }

  /** A figure in the United States' unit, not rounded; not for temperatures. */
  double exact(double value) {
    return value * factor;
  }

  private static double digits(double value, int digits) {
    return BigDecimal.valueOf(value)
        .round(new MathContext(digits, RoundingMode.HALF_UP))
        .doubleValue();
  }
}
