package curewindow.tally;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.tally.RateRatio.Verdict;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Rates and their ratios, rounded so that nobody takes them for more than they are. */
class RateTest {

  /** By hand from Garwood's interval of 10, 4.795 to 18.39, of 40 things: 11.99 to 45.98. */
  @Test
  void aRateIsAWholeNumberAndItsEndsAreRoundedOutwards() {
    Rate rate = new Rate(10, 40);
    assertEquals(25, rate.per100());
    assertEquals(11, rate.low());
    assertEquals(46, rate.high());
    assertEquals(3, new Rate(3, 120).per100(), "2.5");
  }

  @Test
  void twentyAreEnoughAndNothingHasNoRate() {
    assertTrue(new Rate(0, 20).isEnough());
    assertFalse(new Rate(19, 19).isEnough());
    assertThrows(IllegalStateException.class, () -> new Rate(0, 0).per100());
    assertThrows(IllegalArgumentException.class, () -> new Rate(-1, 5));
    assertThrows(IllegalArgumentException.class, () -> new Rate(1, -5));
  }

  /** More events than things are no mistake: one customer may call twice. */
  @Test
  void aThingMayBringSeveral() {
    assertEquals(200, new Rate(60, 30).per100());
  }

  /** 4 of 20 is 5.73 % to 43.66 % (Clopper and Pearson's table, from memory). */
  @Test
  void aShareIsRoundedOutwardsToo() {
    Share share = new Share(4, 20);
    assertEquals(20, share.of100());
    assertEquals(5, share.low());
    assertEquals(44, share.high());
    assertTrue(share.isEnough());
    assertFalse(new Share(4, 19).isEnough());
    assertEquals(0, new Share(0, 0).of100());
    assertThrows(IllegalArgumentException.class, () -> new Share(3, 2));
  }

  @Test
  void oftenIsByTheRateAndNotByTheCount() {
    assertTrue(new Rate(5, 20).compareOften(new Rate(10, 50)) > 0);
    assertEquals(0, new Rate(5, 20).compareOften(new Rate(10, 40)));
  }

  /**
   * Stata, Incidence-rate ratio calculator ({@code iri 41 15 28010 19017}): 1.855759, 1.005684 to
   * 3.6093 (exact). M. P. Fay, Testing the ratio of two Poisson rates (R package rateratio.test,
   * 2022): 2 in 17877 and 9 in 16660, 0.2070941557, 0.02177406 to 1.00054910.
   */
  @Test
  void aRatioIsAsPublished() {
    RateRatio stata = new RateRatio(new Rate(15, 19_017), new Rate(41, 28_010));
    assertEquals(1.005684, stata.exactLow(), 6e-7);
    assertEquals(3.6093, stata.exactHigh(), 6e-5);
    assertEquals(OptionalInt.of(186), stata.percent());
    assertEquals(OptionalInt.of(100), stata.low());
    assertEquals(OptionalInt.of(361), stata.high());
    assertEquals(Verdict.MORE, stata.verdict());
    RateRatio fay = new RateRatio(new Rate(9, 16_660), new Rate(2, 17_877));
    assertEquals(0.02177406, fay.exactLow(), 6e-9);
    assertEquals(1.00054910, fay.exactHigh(), 6e-9);
    assertEquals(OptionalInt.of(21), fay.percent());
    assertEquals(Verdict.UNSURE, fay.verdict(), "barely");
    RateRatio turned = new RateRatio(new Rate(41, 28_010), new Rate(15, 19_017));
    assertEquals(1 / 1.005684, turned.exactHigh(), 6e-7);
    assertEquals(Verdict.FEWER, turned.verdict());
  }

  @Test
  void whatHasNoEndHasNone() {
    RateRatio noneBefore = new RateRatio(new Rate(0, 30), new Rate(4, 30));
    assertEquals(OptionalInt.empty(), noneBefore.percent());
    assertEquals(OptionalInt.empty(), noneBefore.high());
    assertEquals(Verdict.UNSURE, noneBefore.verdict());
    RateRatio never = new RateRatio(new Rate(0, 30), new Rate(0, 30));
    assertEquals(OptionalInt.of(0), never.low());
    assertEquals(OptionalInt.empty(), never.high());
    assertEquals(Verdict.UNSURE, never.verdict());
    RateRatio nothing = new RateRatio(new Rate(3, 30), new Rate(0, 0));
    assertEquals(OptionalInt.empty(), nothing.percent());
    assertEquals(Verdict.TOO_FEW, nothing.verdict());
  }
}
