package curewindow.shop;

import curewindow.cure.Driver;
import curewindow.shop.Node.Branch;
import curewindow.shop.Node.Entry;
import curewindow.shop.Node.Leaf;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The numbers of the rules in holds.yaml: read for a form, and changed where they stand. */
public final class RuleText {

  /** The file, relative to the shop folder. */
  public static final String FILE = CatalogueReader.HOLDS;

  private static final String RULES = "rules";
  private static final String NEED = "need";
  private static final List<String> TIMES = List.of("floor", "limit", "horizon");

  private RuleText() {}

  /**
   * A rule as it is written.
   *
   * @param service id of the service
   * @param hold id of the hold
   * @param where id of the fact of the spots it is for; empty where it names none
   * @param spots ids of the spots it is for; none for all
   * @param except ids of the spots it is not for
   * @param numbers its numbers
   */
  public record Written(
      String service,
      String hold,
      String where,
      List<String> spots,
      List<String> except,
      List<Value> numbers) {

    /** Copies the lists. */
    public Written {
      spots = List.copyOf(spots);
      except = List.copyOf(except);
      numbers = List.copyOf(numbers);
    }
  }

  /**
   * A number of a rule.
   *
   * @param path its place in the file, such as {@code rules[3].need.bond}
   * @param key what it is: id of a driver, {@code floor}, {@code limit} or {@code horizon}
   * @param text as it is written
   */
  public record Value(String path, String key, String text) {}

  /**
   * The rules of a file.
   *
   * @param text the file's text
   * @return the rules in their order; none where the text is not YAML with keys
   */
  public static List<Written> read(String text) {
    return Typed.root(text).map(root -> Typed.branches(root, RULES)).orElse(List.of()).stream()
        .map(RuleText::rule)
        .toList();
  }

  private static Written rule(Branch rule) {
    List<Value> numbers = new ArrayList<>();
    leaves(rule).forEach((key, leaf) -> numbers.add(value(key, leaf)));
    return new Written(
        Typed.text(rule, "service"),
        Typed.text(rule, "hold"),
        Typed.text(rule, "where"),
        Typed.texts(rule, "spots"),
        Typed.texts(rule, "except"),
        numbers);
  }

  private static Value value(String key, Leaf leaf) {
    return new Value(leaf.where().path(), key, leaf.text());
  }

  /** The numbers of a rule where they stand, what it needs first. */
  private static Map<String, Leaf> leaves(Branch rule) {
    Map<String, Leaf> leaves = new LinkedHashMap<>();
    Typed.branch(rule, NEED).ifPresent(need -> take(need, Driver.ids(), leaves));
    take(rule, TIMES, leaves);
    return leaves;
  }

  private static void take(Branch branch, Iterable<String> keys, Map<String, Leaf> into) {
    for (String key : keys) {
      Entry entry = branch.entries().get(key);
      if (entry != null && entry.value() instanceof Leaf leaf) {
        into.put(key, leaf);
      }
    }
  }

  /**
   * The text of the file with other numbers. All else stays to the letter.
   *
   * @param text the file as it stands
   * @param numbers the numbers as they were typed, by their paths; those that are not named stay
   * @return the new text; empty where a number is not written plainly, so that somebody has to
   *     change it by hand
   */
  public static Optional<String> changed(String text, Map<String, String> numbers) {
    List<Leaf> other =
        Typed.root(text).map(root -> Typed.branches(root, RULES)).orElse(List.of()).stream()
            .flatMap(rule -> leaves(rule).values().stream())
            .filter(leaf -> !numbers.getOrDefault(path(leaf), leaf.text()).equals(leaf.text()))
            .sorted(Comparator.comparingInt((Leaf leaf) -> leaf.where().column()).reversed())
            .toList();
    List<String> lines = new ArrayList<>(List.of(text.split("(?<=\n)")));
    for (Leaf leaf : other) {
      int line = leaf.where().line() - 1;
      int from = leaf.where().column() - 1;
      String old = lines.get(line);
      if (leaf.text().isEmpty() || !old.startsWith(leaf.text(), from)) {
        return Optional.empty();
      }
      String typed = numbers.get(path(leaf));
      lines.set(
          line,
          old.substring(0, from)
              + (typed.isEmpty() ? "" : YamlWriting.inline(typed))
              + old.substring(from + leaf.text().length()));
    }
    String now = String.join("", lines);
    return Optional.of(now).filter(n -> says(n, numbers));
  }

  private static boolean says(String text, Map<String, String> numbers) {
    return read(text).stream()
        .flatMap(rule -> rule.numbers().stream())
        .allMatch(v -> Objects.equals(numbers.getOrDefault(v.path(), v.text()), v.text()));
  }

  private static String path(Leaf leaf) {
    return leaf.where().path();
  }
}
