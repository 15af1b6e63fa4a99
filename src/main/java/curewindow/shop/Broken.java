package curewindow.shop;

import java.util.Set;
import java.util.TreeSet;

/** What a file defines but cannot be used, because it has problems of its own. */
final class Broken {

  private final String file;
  private final Set<String> names = new TreeSet<>();
  private boolean whole;

  Broken(String file) {
    this.file = file;
  }

  /** Nothing is broken where nothing is read from a file. */
  static Broken none() {
    return new Broken("");
  }

  String file() {
    return file;
  }

  void add(String name) {
    names.add(name);
  }

  /** Marks the whole file as unusable. */
  void addAll() {
    whole = true;
  }

  boolean has(String name) {
    return whole || names.contains(name);
  }
}
