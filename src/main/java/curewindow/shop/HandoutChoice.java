package curewindow.shop;

import java.util.Objects;
import java.util.Optional;

/**
 * What a shop hands out unless told otherwise.
 *
 * @param as which handout
 * @param sheet the paper it is laid on; A4 or Letter, as the shop's units go, where none is named
 * @param start the first free place of the first sheet, counted row by row from 1
 * @param inks the inks it is printed with
 */
public record HandoutChoice(Handout as, Optional<SheetPaper> sheet, int start, InkChoice inks) {

  /** Wallet cards, on the paper that the shop's printer has. */
  public static final HandoutChoice USUAL =
      new HandoutChoice(Handout.WALLET, Optional.empty(), 1, InkChoice.USUAL);

  /** Refuses missing parts. */
  public HandoutChoice {
    Objects.requireNonNull(as, "as");
    Objects.requireNonNull(sheet, "sheet");
    Objects.requireNonNull(inks, "inks");
  }

  /**
   * Another handout on the same paper.
   *
   * @param other which one
   * @return the choice
   */
  public HandoutChoice as(Handout other) {
    return new HandoutChoice(other, sheet, start, inks);
  }
}
