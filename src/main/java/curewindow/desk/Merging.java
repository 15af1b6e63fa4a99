package curewindow.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Values that two people changed at once: what only one of them changed is theirs, and what both
 * changed otherwise stays as this one typed it, and is told.
 */
final class Merging {

  /** The same thing as it was, as this one and as the other one have it. */
  record Three<T>(T base, T mine, T theirs) {

    <V> Three<V> of(Function<T, V> part) {
      return new Three<>(part.apply(base), part.apply(mine), part.apply(theirs));
    }
  }

  /**
   * A value that both changed, each in another way.
   *
   * @param name its name
   * @param theirs what the other one made of it
   */
  record Clash(String name, Object theirs) {}

  private final List<Clash> clashes = new ArrayList<>();

  /** What becomes of a part. */
  <T, V> V one(String name, Three<T> all, Function<T, V> part) {
    Three<V> three = all.of(part);
    if (three.mine().equals(three.base())) {
      return three.theirs();
    }
    if (!three.theirs().equals(three.base()) && !three.theirs().equals(three.mine())) {
      clashes.add(new Clash(name, three.theirs()));
    }
    return three.mine();
  }

  List<Clash> clashes() {
    return List.copyOf(clashes);
  }
}
