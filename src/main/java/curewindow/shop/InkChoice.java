package curewindow.shop;

import java.util.Objects;
import java.util.Optional;

/**
 * The inks of a shop's handouts, and what a print shop has to know of them.
 *
 * @param ink with which inks they are printed
 * @param spot the name of the ink of the shop's color, where it has one; always there for {@link
 *     Ink#SPOT}
 * @param condition what is printed to, where the shop names it
 */
public record InkChoice(Ink ink, Optional<String> spot, Optional<PrintingCondition> condition) {

  /** As screens and office printers take it. */
  public static final InkChoice USUAL =
      new InkChoice(Ink.SCREEN, Optional.empty(), Optional.empty());

  /** Refuses missing parts. */
  public InkChoice {
    Objects.requireNonNull(ink, "ink");
    Objects.requireNonNull(spot, "spot");
    Objects.requireNonNull(condition, "condition");
    if (ink == Ink.SPOT && spot.filter(name -> !name.isBlank()).isEmpty()) {
      throw new IllegalArgumentException("the ink of the shop's color has no name");
    }
  }

  /**
   * The same with other inks.
   *
   * @param other with which inks
   * @return the choice
   * @throws IllegalArgumentException where these need a name that there is not
   */
  public InkChoice with(Ink other) {
    return new InkChoice(other, spot, condition);
  }

  /**
   * The same with what is printed to, where the shop names nothing.
   *
   * @param units the shop's units
   * @return the choice
   */
  public InkChoice orUsual(Units units) {
    return new InkChoice(
        ink, spot, condition.or(() -> Optional.of(PrintingCondition.usual(units))));
  }
}
