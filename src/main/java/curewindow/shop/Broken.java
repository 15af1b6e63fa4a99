package curewindow.shop;

import curewindow.problem.Where;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** What a file defines but cannot be used, because it has problems of its own. */
final class Broken {

  private final String file;
  private final Map<String, Optional<Where>> names = new TreeMap<>();
  private Optional<Where> whole = Optional.empty();

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

  /** Adds a name; whoever uses it is told to mend the file. */
  void add(String name) {
    names.put(name, Optional.empty());
  }

  /** Adds a name whose error is told already; whoever uses it is left out without more words. */
  void add(String name, Where cause) {
    names.put(name, Optional.of(cause));
  }

  /** Marks the whole file as unusable, because of an error that is told already. */
  void addAll(Where cause) {
    whole = Optional.of(cause);
  }

  boolean has(String name) {
    return isWhole() || names.containsKey(name);
  }

  /** Whether nothing of the file can be used, so that nobody knows what it defines. */
  boolean isWhole() {
    return whole.isPresent();
  }

  /** What it is known to define. */
  Set<String> names() {
    return names.keySet();
  }

  /** The error by which a name cannot be used, if it is told already. */
  Optional<Where> cause(String name) {
    return names.getOrDefault(name, whole);
  }
}
