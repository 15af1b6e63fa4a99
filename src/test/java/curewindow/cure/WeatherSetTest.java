package curewindow.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import curewindow.climate.Trials;
import java.util.BitSet;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Sets of any number of weathers against the Java library's own bit sets. */
class WeatherSetTest {

  private record Drawn(int members, long seed) {
    static Drawn draw(SplittableRandom random) {
      return new Drawn(1 + random.nextInt(200), random.nextLong());
    }
  }

  @TestFactory
  Stream<DynamicTest> holdsWhatABitSetHolds() {
    return Trials.of(200, Drawn::draw, WeatherSetTest::check);
  }

  private static void check(Drawn drawn) {
    SplittableRandom random = new SplittableRandom(drawn.seed());
    WeatherSet set = WeatherSet.all(drawn.members());
    BitSet expected = new BitSet();
    expected.set(0, drawn.members());
    assertSame(expected, set);
    for (int from = 0; from < drawn.members(); from += WeatherSet.BITS) {
      long bits = random.nextLong() | random.nextLong();
      set.keep(from, bits);
      for (int m = from; m < Math.min(drawn.members(), from + WeatherSet.BITS); m++) {
        expected.set(m, (bits >>> m - from & 1) == 1);
      }
    }
    assertSame(expected, set);
    WeatherSet fewer = set.copy();
    BitSet fewerExpected = (BitSet) expected.clone();
    for (int i = 0; i < 5; i++) {
      int member = random.nextInt(drawn.members());
      fewer.remove(member);
      fewerExpected.clear(member);
    }
    assertSame(fewerExpected, fewer);
    assertSame(expected, set);
    set.removeAll(fewer);
    expected.andNot(fewerExpected);
    assertSame(expected, set);
  }

  private static void assertSame(BitSet expected, WeatherSet set) {
    assertEquals(expected.cardinality(), set.count());
    BitSet found = new BitSet();
    for (int m = set.next(0); m >= 0; m = set.next(m + 1)) {
      found.set(m);
    }
    assertEquals(expected, found);
  }
}
