package curewindow.desk;

import curewindow.problem.Problem;
import curewindow.shop.Shop;
import curewindow.shop.TypedNumber;
import curewindow.shop.Units;
import curewindow.site.LoadedShop;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Temperatures as a form asks for them, in the units of the shop; files have degrees Celsius.
 *
 * @param units those in which they are asked for
 */
record Degrees(Units units) {

  /** A hidden field that says in which units the temperatures of a form were typed. */
  static final String FIELD = "degrees";

  private static final Pattern TEMPERATURE =
      Pattern.compile("bay[.](temperature|lamp)|items\\[\\d+][.]lamp[.]surface");

  private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9]{1,6}([.][0-9]{1,6})?");

  private static final BigDecimal ZERO = new BigDecimal(32);
  private static final BigDecimal STEP = new BigDecimal("1.8");

  /** Hundredths of a degree Celsius tell any two tenths of a degree Fahrenheit apart. */
  private static final int DIGITS = 2;

  /** Those of the shop, whatever language the desk speaks. */
  static Degrees of(LoadedShop shop) {
    return of(shop, shop.shop().map(Shop::language).orElse("en"), "");
  }

  /**
   * Those of a shop that somebody is just filling in.
   *
   * @param language its language; one that is not known tells nothing
   * @param chosen the units by name; empty for what is usual
   */
  static Degrees of(LoadedShop shop, String language, String chosen) {
    String known = shop.read().languages().contains(language) ? language : "en";
    return new Degrees(Units.of(chosen).orElseGet(() -> shop.words().of(known).units()));
  }

  /** Those in which a form was typed. */
  static Degrees of(Request.Values form) {
    return new Degrees(Units.of(form.one(FIELD)).orElse(Units.METRIC));
  }

  /** The sign of the unit. */
  String sign() {
    return isFahrenheit() ? "\u00B0F" : "\u00B0C";
  }

  private boolean isFahrenheit() {
    return units == Units.US;
  }

  /**
   * A temperature of a file, with as few digits as lead back to it.
   *
   * @param celsius degrees Celsius as they are written; what is no number is shown as it is
   */
  String shown(String celsius) {
    if (!isFahrenheit() || !NUMBER.matcher(celsius).matches()) {
      return celsius;
    }
    BigDecimal value = new BigDecimal(celsius);
    BigDecimal exact = value.multiply(STEP).add(ZERO);
    int digits = 0;
    while (digits < DIGITS && celsius(rounded(exact, digits)).compareTo(value) != 0) {
      digits++;
    }
    return plain(rounded(exact, digits));
  }

  /** What was typed, in degrees Celsius; what is no number stays as it is. */
  String celsius(String typed) {
    String number = TypedNumber.plain(typed);
    return isFahrenheit() && NUMBER.matcher(number).matches()
        ? plain(celsius(new BigDecimal(number)))
        : number;
  }

  private static BigDecimal celsius(BigDecimal fahrenheit) {
    return fahrenheit.subtract(ZERO).divide(STEP, DIGITS, RoundingMode.HALF_UP);
  }

  private static BigDecimal rounded(BigDecimal value, int digits) {
    return value.setScale(digits, RoundingMode.HALF_UP);
  }

  private static String plain(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }

  /** Problems that name a lowest and a highest temperature, in these units. */
  List<Problem> told(List<Problem> problems) {
    return problems.stream().map(this::told).toList();
  }

  private Problem told(Problem problem) {
    Problem told = problem;
    if (TEMPERATURE.matcher(problem.path()).matches()) {
      for (String bound : List.of("low", "high")) {
        Optional<String> value = Optional.ofNullable(problem.facts().get(bound));
        told = value.isPresent() ? told.with(bound, shown(value.get())) : told;
      }
    }
    return told;
  }
}
