package curewindow.shop;

import curewindow.problem.Problems;
import curewindow.shop.Node.Branch;
import curewindow.shop.Node.Entry;
import curewindow.shop.Node.Leaf;
import curewindow.shop.Node.Type;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Reads files of texts, such as the words of a language. */
public final class YamlTexts {

  /** The most texts a file may have, some times as many as the program's largest. */
  static final int MAX_TEXTS = 5_000;

  private YamlTexts() {}

  /**
   * The texts of a YAML file by key; nested keys are joined with dots, so that {@code hold:
   * {windows-up: {label: ..}}} becomes {@code hold.windows-up.label}.
   *
   * @param files the files of the shop folder
   * @param file the file, relative to the shop folder, with forward slashes
   * @param problems where problems of the file are added; a text that is not text is one, and is
   *     left out
   * @return the texts in the order of the file, or empty where the file as a whole cannot be read
   */
  public static Optional<Map<String, String>> read(
      ShopFiles files, String file, Problems problems) {
    return readPlaced(files, file, problems)
        .map(
            placed -> {
              Map<String, String> texts = new LinkedHashMap<>();
              placed.forEach((key, text) -> texts.put(key, text.text()));
              return texts;
            });
  }

  /**
   * The texts of a YAML file by key, with their lines, for those who check the texts further.
   *
   * @param files the files of the shop folder
   * @param file the file, relative to the shop folder, with forward slashes
   * @param problems where problems of the file are added
   * @return the texts in the order of the file, or empty where the file as a whole cannot be read
   */
  public static Optional<Map<String, PlacedText>> readPlaced(
      ShopFiles files, String file, Problems problems) {
    Source source = new Source(file, problems);
    Optional<Node> node = files.text(file, problems).flatMap(t -> YamlTree.read(t, source));
    if (node.isEmpty()) {
      return Optional.empty();
    }
    if (!(node.get() instanceof Branch branch)) {
      source.error(
          "wrong-type",
          node.get().where(),
          "the file holds " + node.get().kind() + " instead of keys with texts",
          "write one key and its text on each line");
      return Optional.empty();
    }
    Map<String, PlacedText> texts = new LinkedHashMap<>();
    collect(branch, "", texts, source);
    return texts.size() > MAX_TEXTS ? Optional.empty() : Optional.of(texts);
  }

  private static void collect(
      Branch branch, String prefix, Map<String, PlacedText> texts, Source source) {
    for (Map.Entry<String, Entry> e : branch.entries().entrySet()) {
      if (texts.size() > MAX_TEXTS) {
        return;
      }
      String key = prefix + e.getKey();
      Node value = e.getValue().value();
      if (value instanceof Branch inner) {
        collect(inner, key + ".", texts, source);
      } else if (value instanceof Leaf leaf && leaf.type() != Type.EMPTY) {
        put(key, leaf, texts, source);
      } else {
        source.error(
            "wrong-type",
            value.where(),
            "the key " + Source.shown(key) + " holds " + value.kind() + " instead of a text",
            "write a text in quotes");
      }
    }
  }

  private static void put(String key, Leaf leaf, Map<String, PlacedText> texts, Source source) {
    if (TurningSigns.first(leaf.text()).isPresent()) {
      source.error(
          "turning-sign",
          leaf.where(),
          "the text "
              + Source.shown(key)
              + " has an invisible sign that turns its direction: "
              + Source.shown(leaf.text()),
          TurningSigns.FIX);
      return;
    }
    if (texts.size() == MAX_TEXTS) {
      source.error(
          "too-many-texts",
          leaf.where(),
          "the file has more than " + MAX_TEXTS + " texts and is not used",
          "check that it is the file you meant; delete the texts that nothing shows");
    }
    if (texts.putIfAbsent(key, new PlacedText(leaf.text(), leaf.where())) != null) {
      source.error(
          "duplicate-key",
          leaf.where(),
          "the key " + Source.shown(key) + " stands in the file twice",
          "keep one of the two");
    }
  }
}
