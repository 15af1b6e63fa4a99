package curewindow.shop;

import java.util.Objects;

/**
 * What a shop hands out unless told otherwise.
 *
 * @param as which handout
 * @param sheet the paper it is laid on
 */
public record HandoutChoice(Handout as, SheetPaper sheet) {

  /** Wallet cards, each on a page of its own. */
  public static final HandoutChoice USUAL = new HandoutChoice(Handout.WALLET, SheetPaper.NONE);

  /** Refuses missing parts. */
  public HandoutChoice {
    Objects.requireNonNull(as, "as");
    Objects.requireNonNull(sheet, "sheet");
  }
}
