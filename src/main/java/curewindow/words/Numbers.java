package curewindow.words;

import com.ibm.icu.number.LocalizedNumberFormatter;
import com.ibm.icu.number.NumberFormatter;
import com.ibm.icu.number.NumberFormatter.SignDisplay;
import com.ibm.icu.number.NumberFormatter.UnitWidth;
import com.ibm.icu.number.NumberRangeFormatter;
import com.ibm.icu.number.Precision;
import com.ibm.icu.number.UnlocalizedNumberFormatter;
import com.ibm.icu.util.MeasureUnit;
import com.ibm.icu.util.ULocale;
import curewindow.shop.Units;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;

/** Numbers and units by CLDR. Safe for use by several threads. */
final class Numbers {

  private static final int MOST_DECIMALS = 6;

  private final ULocale locale;
  private final List<LocalizedNumberFormatter> rounded;
  private final LocalizedNumberFormatter warmth;
  private final boolean customary;
  private final Map<List<Object>, String> quantities = new ConcurrentHashMap<>();

  Numbers(ULocale locale, Units units) {
    this.locale = locale;
    LocalizedNumberFormatter plain =
        NumberFormatter.withLocale(locale)
            .sign(SignDisplay.NEGATIVE)
            .roundingMode(RoundingMode.HALF_UP);
    rounded =
        IntStream.rangeClosed(0, MOST_DECIMALS)
            .mapToObj(d -> plain.precision(Precision.maxFraction(d)))
            .toList();
    customary = units == Units.US;
    warmth =
        plain
            .precision(Precision.integer())
            .unit(customary ? MeasureUnit.FAHRENHEIT : MeasureUnit.CELSIUS)
            .unitWidth(UnitWidth.SHORT);
  }

  String number(double value, int decimals) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("value " + value + " is not a finite number");
    }
    if (decimals < 0 || decimals > MOST_DECIMALS) {
      throw new IllegalArgumentException("there are no " + decimals + " decimals");
    }
    return Spaces.common(rounded.get(decimals).format(value).toString());
  }

  String temperature(double celsius) {
    if (!Double.isFinite(celsius)) {
      throw new IllegalArgumentException("celsius " + celsius + " is not a finite number");
    }
    double shown = customary ? celsius * 1.8 + 32 : celsius;
    return Spaces.common(warmth.format(shown).toString()).replace(' ', '\u00A0');
  }

  /** Guides say the same few quantities to every job, and each takes ICU a while. */
  String quantity(Quantity quantity) {
    return quantities.computeIfAbsent(
        List.of(quantity.measure(), quantity.from(), quantity.to()), key -> written(quantity));
  }

  private String written(Quantity quantity) {
    Measure measure = quantity.measure();
    Optional<String> fractions = fractions(quantity);
    if (fractions.isPresent()) {
      return fractions.get();
    }
    UnlocalizedNumberFormatter format =
        NumberFormatter.with()
            .precision(Precision.maxFraction(3))
            .unit(customary ? measure.customary() : measure.metric())
            .unitWidth(measure.width());
    double from = shown(measure, quantity.from());
    double to = shown(measure, quantity.to());
    String text =
        from == to
            ? format.locale(locale).format(from).toString()
            : NumberRangeFormatter.withLocale(locale)
                .numberFormatterBoth(format)
                .formatRange(from, to)
                .toString();
    return Spaces.common(text).replace(' ', '\u00A0');
  }

  /** Parts of an inch, as a tape measure has them. */
  private Optional<String> fractions(Quantity quantity) {
    Measure measure = quantity.measure();
    if (!customary || measure.customary() != MeasureUnit.INCH) {
      return Optional.empty();
    }
    Optional<String> from = Fraction.near(measure.exact(quantity.from()));
    Optional<String> to = Fraction.near(measure.exact(quantity.to()));
    if (from.isEmpty() || to.isEmpty()) {
      return Optional.empty();
    }
    String one =
        NumberFormatter.withLocale(locale)
            .unit(MeasureUnit.INCH)
            .unitWidth(UnitWidth.FULL_NAME)
            .format(1)
            .toString();
    String parts = from.equals(to) ? from.get() : from.get() + "\u2013" + to.get();
    return Optional.of(parts + "\u00A0" + one.replaceAll("[\\p{N}\\p{Z}]", ""));
  }

  private double shown(Measure measure, double metric) {
    return customary ? measure.inCustomary(metric) : metric;
  }
}
