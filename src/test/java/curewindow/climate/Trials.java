package curewindow.climate;

import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;

/** Many random cases for a property, the same in every run; each is a test named after its case. */
public final class Trials {

  private Trials() {}

  /**
   * Tests of a property.
   *
   * @param <C> a record, so that a failing case shows what it is
   * @param count how many cases
   * @param draw draws a case
   * @param check fails where the property does not hold
   * @return the tests
   */
  public static <C> Stream<DynamicTest> of(
      int count, Function<SplittableRandom, C> draw, Consumer<C> check) {
    return IntStream.range(0, count)
        .mapToObj(
            i -> {
              C drawn = draw.apply(new SplittableRandom(i));
              return DynamicTest.dynamicTest(i + " " + drawn, () -> check.accept(drawn));
            });
  }
}
