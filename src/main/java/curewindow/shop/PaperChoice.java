package curewindow.shop;

import java.util.Objects;

/**
 * How handouts are laid and printed on paper.
 *
 * @param sheet the paper; labels from a roll are never laid on any
 * @param start the first free place of the first sheet, counted row by row from 1
 * @param inks the inks; labels from a roll are always black alone
 */
public record PaperChoice(SheetPaper sheet, int start, InkChoice inks) {

  /** The most places that a number of one can name. */
  public static final int MOST = 99;

  /** Refuses missing parts and places that no sheet has. */
  public PaperChoice {
    Objects.requireNonNull(sheet, "sheet");
    Objects.requireNonNull(inks, "inks");
    if (start < 1 || start > MOST) {
      throw new IllegalArgumentException("no sheet has a place " + start);
    }
  }

  /**
   * Whole sheets, for a screen or an office printer.
   *
   * @param sheet the paper
   * @return the choice
   */
  public static PaperChoice on(SheetPaper sheet) {
    return new PaperChoice(sheet, 1, InkChoice.USUAL);
  }
}
