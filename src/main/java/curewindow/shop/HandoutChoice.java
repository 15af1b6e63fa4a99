package curewindow.shop;

import java.util.Objects;

/**
 * What a shop hands out unless told otherwise.
 *
 * @param as which handout
 * @param sheet the paper it is laid on
 * @param inks the inks it is printed with
 */
public record HandoutChoice(Handout as, SheetPaper sheet, InkChoice inks) {

  /** Wallet cards, each on a page of its own. */
  public static final HandoutChoice USUAL = new HandoutChoice(Handout.WALLET, SheetPaper.NONE);

  /** Refuses missing parts. */
  public HandoutChoice {
    Objects.requireNonNull(as, "as");
    Objects.requireNonNull(sheet, "sheet");
    Objects.requireNonNull(inks, "inks");
  }

  /**
   * A choice for screens and office printers.
   *
   * @param as which handout
   * @param sheet the paper it is laid on
   */
  public HandoutChoice(Handout as, SheetPaper sheet) {
    this(as, sheet, InkChoice.USUAL);
  }
}
