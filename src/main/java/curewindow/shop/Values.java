package curewindow.shop;

import curewindow.problem.Problem;
import curewindow.problem.Where;
import curewindow.shop.Node.Leaf;
import curewindow.shop.Node.Type;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** Takes single values as what they should be, or tells what is wrong with them. */
final class Values {

  /** How names in files look: lower case words with hyphens. */
  static final Pattern NAME = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

  private static final int NAME_LENGTH = 40;
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?[0-9]{1,12}([.][0-9]{1,12})?([eE][-+]?[0-9]{1,2})?");

  private Values() {}

  /** Text on one line. */
  static Optional<String> text(Leaf leaf, int longest, Source source) {
    return isText(leaf, source) ? plain(leaf, longest, false, source) : Optional.empty();
  }

  /** Text that may have line breaks. */
  static Optional<String> note(Leaf leaf, int longest, Source source) {
    return isText(leaf, source) ? plain(leaf, longest, true, source) : Optional.empty();
  }

  /** Text or a number, as a number on a form may be either. */
  static Optional<String> code(Leaf leaf, int longest, Source source) {
    return leaf.type() == Type.NUMBER || isText(leaf, source)
        ? plain(leaf, longest, false, source)
        : Optional.empty();
  }

  private static boolean isText(Leaf leaf, Source source) {
    if (leaf.type() == Type.TEXT || leaf.type() == Type.CELL) {
      return true;
    }
    String fix = leaf.type() == Type.EMPTY ? "write a text" : "put it in quotes if it is meant so";
    wrongType(leaf, "text", fix, source);
    return false;
  }

  static void wrongType(Node node, String wanted, String fix, Source source) {
    source.error(
        "wrong-type",
        node.where(),
        lastKey(node) + " should be " + wanted + ", not " + node.kind(),
        fix);
  }

  /** The key a value stands at, for messages. */
  static String lastKey(Node node) {
    String path = node.where().path();
    return path.isEmpty() ? "the file" : path.substring(path.lastIndexOf('.') + 1);
  }

  private static Optional<String> plain(Leaf leaf, int longest, boolean lines, Source source) {
    String text = leaf.text().strip();
    String flat = lines ? text.replaceAll("\\r?\\n", " ") : text;
    if (text.isEmpty()) {
      source.error(
          "no-value", leaf.where(), lastKey(leaf) + " is empty", "fill it in, or delete it");
    } else if (!flat.codePoints().allMatch(Source::isPlain)) {
      source.error(
          "control-character",
          leaf.where(),
          lastKey(leaf) + " has a line break or an invisible character: " + Source.shown(text),
          "write it as plain text" + (lines ? "" : " on one line"));
    } else if (text.codePointCount(0, text.length()) > longest) {
      source.error(
          Problem.error(
                  "too-long",
                  leaf.where(),
                  lastKey(leaf) + " is longer than " + longest + " characters",
                  "shorten it")
              .with("longest", Integer.toString(longest)));
    } else {
      return Optional.of(text);
    }
    return Optional.empty();
  }

  /** A number within a range, both ends included. */
  static Optional<Double> number(Leaf leaf, double low, double high, Source source) {
    String range = shortest(low) + " to " + shortest(high);
    if (leaf.type() != Type.NUMBER && !(leaf.type() == Type.CELL && isNumber(leaf))) {
      Problem problem =
          Problem.error(
              "not-a-number",
              leaf.where(),
              lastKey(leaf) + " should be a number from " + range + ", not " + leaf.kind(),
              "write digits, such as " + shortest(high));
      source.error(within(low, high, problem));
      return Optional.empty();
    }
    double value = isNumber(leaf) ? Double.parseDouble(leaf.text().strip()) : Double.NaN;
    if (value >= low && value <= high) {
      return Optional.of(value);
    }
    Problem problem =
        Problem.error(
            "out-of-range",
            leaf.where(),
            lastKey(leaf) + " is " + Source.shown(leaf.text()) + ", outside " + range,
            "write a number from " + range);
    source.error(within(low, high, problem));
    return Optional.empty();
  }

  private static Problem within(double low, double high, Problem problem) {
    return problem.with("low", shortest(low)).with("high", shortest(high));
  }

  private static boolean isNumber(Leaf leaf) {
    return NUMBER.matcher(leaf.text().strip()).matches();
  }

  /** A whole number within a range, both ends included. */
  static Optional<Integer> whole(Leaf leaf, int low, int high, Source source) {
    Optional<Double> value = number(leaf, low, high, source);
    if (value.isPresent() && value.get() != Math.rint(value.get())) {
      Problem problem =
          Problem.error(
              "not-whole",
              leaf.where(),
              lastKey(leaf) + " is " + Source.shown(leaf.text()) + ", which is not whole",
              "write a whole number from " + low + " to " + high);
      source.error(within(low, high, problem));
      return Optional.empty();
    }
    return value.map(Double::intValue);
  }

  /** True or false. */
  static Optional<Boolean> flag(Leaf leaf, Source source) {
    if (leaf.type() == Type.FLAG) {
      return Optional.of(leaf.text().equalsIgnoreCase("true"));
    }
    wrongType(leaf, "true or false", "write true or false without quotes", source);
    return Optional.empty();
  }

  /** Whether a name is fit to be an id of the catalogue or a place. */
  static boolean isName(String name) {
    return name.length() <= NAME_LENGTH && NAME.matcher(name).matches();
  }

  /** Tells that a name is not fit to be an id. */
  static void badName(Where where, String name, Source source) {
    source.error(
        "bad-id",
        where,
        "the name " + Source.shown(name) + " is not fit to be an id",
        "use up to 40 lower case letters and digits, words joined with hyphens");
  }

  /** A number without needless digits. */
  static String shortest(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
