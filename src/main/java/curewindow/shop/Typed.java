package curewindow.shop;

import curewindow.problem.Problems;
import curewindow.shop.Node.Branch;
import curewindow.shop.Node.Entry;
import curewindow.shop.Node.Leaf;
import curewindow.shop.Node.Row;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The values of a file as they were typed, before anybody asks whether they are right: what is
 * missing, or is something else than was looked for, is empty.
 */
final class Typed {

  private Typed() {}

  /** The keys of a text; empty where it is not YAML with keys. */
  static Optional<Branch> root(String text) {
    return YamlTree.read(text, new Source("", new Problems()))
        .flatMap(node -> node instanceof Branch branch ? Optional.of(branch) : Optional.empty());
  }

  private static Optional<Node> value(Branch branch, String key) {
    return Optional.ofNullable(branch.entries().get(key)).map(Entry::value);
  }

  static Optional<Branch> branch(Branch branch, String key) {
    return value(branch, key)
        .flatMap(node -> node instanceof Branch inner ? Optional.of(inner) : Optional.empty());
  }

  static List<Branch> branches(Branch branch, String key) {
    return items(branch, key).stream()
        .filter(Branch.class::isInstance)
        .map(Branch.class::cast)
        .toList();
  }

  static String text(Branch branch, String key) {
    return value(branch, key).map(node -> node instanceof Leaf leaf ? leaf.text() : "").orElse("");
  }

  static List<String> texts(Branch branch, String key) {
    return items(branch, key).stream()
        .filter(Leaf.class::isInstance)
        .map(leaf -> ((Leaf) leaf).text())
        .toList();
  }

  private static List<Node> items(Branch branch, String key) {
    return value(branch, key)
        .map(node -> node instanceof Row row ? row.items() : List.<Node>of())
        .orElse(List.of());
  }

  /** Puts a value into a tree to be written, unless there is nothing in it. */
  static void put(Map<String, Object> tree, String key, Object value) {
    boolean nothing =
        value instanceof String text
            ? text.isEmpty()
            : value instanceof List<?> list
                ? list.isEmpty()
                : value instanceof Map<?, ?> map && map.isEmpty();
    if (!nothing) {
      tree.put(key, value);
    }
  }
}
