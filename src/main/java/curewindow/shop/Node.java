package curewindow.shop;

import curewindow.problem.Where;
import java.util.List;
import java.util.Map;

/** A value read from a file, with the place it stands at. */
sealed interface Node {

  /** The place of the value in its file. */
  Where where();

  /** What it is, in words for a message. */
  String kind();

  /**
   * Keys with values.
   *
   * @param where the place of the first key
   * @param entries by key, in the order of the file
   * @param labels what the user calls a key, where that is something else than the key itself
   */
  record Branch(Where where, Map<String, Entry> entries, Map<String, String> labels)
      implements Node {
    @Override
    public String kind() {
      return "keys with values";
    }
  }

  /**
   * A key and its value.
   *
   * @param key the place of the key
   * @param value the value
   */
  record Entry(Where key, Node value) {}

  /**
   * A list.
   *
   * @param where the place of its start
   * @param items the items in their order
   */
  record Row(Where where, List<Node> items) implements Node {
    @Override
    public String kind() {
      return "a list";
    }
  }

  /**
   * A single value.
   *
   * @param where its place
   * @param type how it was written
   * @param text as it was written, without quotes
   */
  record Leaf(Where where, Type type, String text) implements Node {
    @Override
    public String kind() {
      return type.words;
    }
  }

  /** How a single value was written. */
  enum Type {
    TEXT("text"),
    NUMBER("a number"),
    FLAG("true or false"),
    EMPTY("nothing"),
    /** A field of a CSV file, which may be taken as text or as a number. */
    CELL("text");

    private final String words;

    Type(String words) {
      this.words = words;
    }
  }
}
