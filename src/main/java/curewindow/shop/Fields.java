package curewindow.shop;

import curewindow.problem.Problem;
import curewindow.problem.Where;
import curewindow.shop.Node.Branch;
import curewindow.shop.Node.Entry;
import curewindow.shop.Node.Leaf;
import curewindow.shop.Node.Row;
import curewindow.shop.Node.Type;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The keys of one place of a file, taken one by one as what they should be. Missing, unknown and
 * wrong ones are told to the source; what is asked for is then empty.
 */
final class Fields {

  private final Branch branch;
  private final Source source;

  private Fields(Branch branch, Source source) {
    this.branch = branch;
    this.source = source;
  }

  /** The fields of a node, or empty after telling that it has none. */
  static Optional<Fields> of(Node node, Keys keys, Source source) {
    Optional<Fields> fields = anyKeys(node, source);
    fields.ifPresent(f -> f.compare(keys));
    return fields;
  }

  /** The same without a check of the keys, where they are names that the file makes up. */
  static Optional<Fields> anyKeys(Node node, Source source) {
    if (node instanceof Branch branch) {
      return Optional.of(new Fields(branch, source));
    }
    Values.wrongType(node, "keys with values", "write each as key: value", source);
    return Optional.empty();
  }

  private void compare(Keys keys) {
    List<String> all = keys.all();
    branch
        .entries()
        .forEach(
            (key, entry) -> {
              if (!all.contains(key) && !keys.former().contains(key)) {
                source.error(
                    "unknown-key",
                    entry.key(),
                    "the key " + Source.shown(key) + " is not known here",
                    source.suggestion(key, all));
              }
            });
    for (String key : keys.required()) {
      if (!branch.entries().containsKey(key)) {
        String label = branch.labels().getOrDefault(key, key);
        source.missing(where(), label, "add " + label);
      }
    }
  }

  Where where() {
    return branch.where();
  }

  Source source() {
    return source;
  }

  List<String> keys() {
    return List.copyOf(branch.entries().keySet());
  }

  /** Where a key stands, or where the fields begin if it does not. */
  Where where(String key) {
    Entry entry = branch.entries().get(key);
    return entry == null ? where() : entry.value().where();
  }

  boolean has(String key) {
    return branch.entries().containsKey(key);
  }

  /** Whether a key stands there without a value. */
  boolean isEmpty(String key) {
    Entry entry = branch.entries().get(key);
    return entry != null && entry.value() instanceof Leaf leaf && leaf.type() == Type.EMPTY;
  }

  Optional<Node> node(String key) {
    Entry entry = branch.entries().get(key);
    if (entry == null) {
      return Optional.empty();
    }
    if (entry.value() instanceof Leaf leaf && leaf.type() == Type.EMPTY) {
      source.error(
          "no-value",
          entry.key(),
          Source.shown(key) + " has no value",
          "write one after the colon, or delete the line");
      return Optional.empty();
    }
    return Optional.of(entry.value());
  }

  /** The value of a key where it has keys of its own, without telling where it has none. */
  Optional<Branch> branch(String key) {
    return Optional.ofNullable(branch.entries().get(key))
        .map(Entry::value)
        .flatMap(value -> value instanceof Branch inner ? Optional.of(inner) : Optional.empty());
  }

  Optional<Leaf> leaf(String key) {
    return node(key).flatMap(this::single);
  }

  private Optional<Leaf> single(Node node) {
    if (node instanceof Leaf leaf) {
      return Optional.of(leaf);
    }
    Values.wrongType(node, "a single value", "write it after the colon", source);
    return Optional.empty();
  }

  Optional<String> text(String key, int longest) {
    return leaf(key).flatMap(l -> Values.text(l, longest, source));
  }

  Optional<String> note(String key, int longest) {
    return leaf(key).flatMap(l -> Values.note(l, longest, source));
  }

  Optional<String> code(String key, int longest) {
    return leaf(key).flatMap(l -> Values.code(l, longest, source));
  }

  Optional<Double> number(String key, double low, double high) {
    return leaf(key).flatMap(l -> Values.number(l, low, high, source));
  }

  Optional<Integer> whole(String key, int low, int high) {
    return leaf(key).flatMap(l -> Values.whole(l, low, high, source));
  }

  Optional<Boolean> flag(String key) {
    return leaf(key).flatMap(l -> Values.flag(l, source));
  }

  Optional<String> name(String key, Names names) {
    return leaf(key).filter(this::isWord).flatMap(l -> names.check(l, source));
  }

  Optional<Fields> fields(String key, Keys keys) {
    return node(key).flatMap(n -> of(n, keys, source));
  }

  /** The items of a list; none where the key is missing. */
  List<Node> items(String key) {
    Optional<Node> node = node(key);
    if (node.isPresent() && node.get() instanceof Row row) {
      return row.items();
    }
    node.ifPresent(
        n -> Values.wrongType(n, "a list", "write it in brackets: " + key + ": [...]", source));
    return List.of();
  }

  /** The known names of a list, each once. */
  List<String> names(String key, Names names) {
    Map<String, Leaf> found = new LinkedHashMap<>();
    for (Node item : items(key)) {
      Optional<Leaf> leaf = single(item).filter(this::isWord);
      Optional<String> name = leaf.flatMap(l -> names.check(l, source));
      if (name.isPresent() && found.putIfAbsent(name.get(), leaf.get()) != null) {
        source.error(
            "named-twice",
            leaf.get().where(),
            "the " + names.what() + " " + name.get() + " is named twice",
            "name it once");
      }
    }
    return new ArrayList<>(found.keySet());
  }

  /** The words of a list that the file makes up itself, fit to be ids. */
  List<String> words(String key) {
    List<String> words = new ArrayList<>();
    for (Node item : items(key)) {
      single(item)
          .filter(this::isWord)
          .ifPresent(
              leaf -> {
                String word = leaf.text().strip();
                if (!Values.isName(word)) {
                  Values.badName(leaf.where(), word, source);
                }
                words.add(word);
              });
    }
    return words;
  }

  private boolean isWord(Leaf leaf) {
    boolean word = leaf.type() == Type.TEXT || leaf.type() == Type.CELL;
    if (!word) {
      source.error(
          Problem.error(
                  "unknown-name",
                  leaf.where(),
                  Values.lastKey(leaf) + " should be a name, not " + leaf.kind(),
                  "write the name as text")
              .with(Names.NAME, Source.shown(leaf.text())));
    }
    return word;
  }
}
