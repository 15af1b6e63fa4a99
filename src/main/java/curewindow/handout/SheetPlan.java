package curewindow.handout;

import curewindow.handout.PaperFormat.Size;
import curewindow.shop.SheetPaper;
import java.util.ArrayList;
import java.util.List;

/**
 * Where handouts stand on a larger sheet. As many as fit, in rows and columns in the middle, with
 * gutters in which the bleeds of neighbours meet. The sheet stands upright or lies, whichever holds
 * more; with two sides it stands, so that turned on its long edge every back is behind its front.
 *
 * @param sheet the sheet, lying where that holds more
 * @param item a handout when cut
 * @param gap between two cuts, side by side and one above the other
 * @param columns how many stand side by side
 * @param rows how many stand one above the other
 */
record SheetPlan(Size sheet, Size item, Size gap, int columns, int rows) {

  private static final Size A4 = new Size(210, 297);
  private static final Size LETTER = Size.inches(8.5, 11);

  /** Hundredths of a millimetre are no reason not to fit. */
  private static final double TOLERANCE = 0.01;

  /** The lower left corner of a place on the sheet. */
  record Corner(double x, double y) {}

  /**
   * The plan for a format.
   *
   * @param sides how many pages each handout has, 1 or 2
   * @throws IllegalArgumentException where the paper is none
   */
  static SheetPlan of(PaperFormat format, int sides, SheetPaper paper) {
    Size sheet =
        switch (paper) {
          case A4 -> A4;
          case LETTER -> LETTER;
          case NONE -> throw new IllegalArgumentException("no sheet is to be laid out");
        };
    SheetPlan upright = on(sheet, format);
    SheetPlan lying = on(sheet.turned(), format);
    return sides == 1 && lying.places() > upright.places() ? lying : upright;
  }

  private static SheetPlan on(Size sheet, PaperFormat format) {
    double gutter = 2 * format.bleed();
    Size gap = new Size(gutter, gutter + format.edge().carrier());
    int columns = count(sheet.width() - 2 * format.margin(), format.cut().width(), gap.width());
    int rows = count(sheet.height() - 2 * format.margin(), format.cut().height(), gap.height());
    return new SheetPlan(sheet, format.cut(), gap, columns, rows);
  }

  private static int count(double room, double item, double gutter) {
    return (int) Math.floor((room + gutter + TOLERANCE) / (item + gutter));
  }

  int places() {
    return columns * rows;
  }

  /** The place of a front, row by row from the upper left. */
  Corner front(int place) {
    return corner(place % columns, place / columns);
  }

  /** The place of the same handout's back, once the sheet was turned on its long edge. */
  Corner back(int place) {
    return corner(columns - 1 - place % columns, place / columns);
  }

  private Corner corner(int column, int row) {
    return new Corner(
        left() + column * (item.width() + gap.width()),
        bottom() + (rows - 1 - row) * (item.height() + gap.height()));
  }

  private double left() {
    return start(sheet.width(), item.width(), gap.width(), columns);
  }

  private double bottom() {
    return start(sheet.height(), item.height(), gap.height(), rows);
  }

  private static double start(double paper, double size, double gap, int count) {
    return (paper - count * size - (count - 1) * gap) / 2;
  }

  /** Where the sheet is cut. */
  CutMarks.Lines cuts() {
    return new CutMarks.Lines(
        cuts(left(), item.width(), gap.width(), columns),
        cuts(bottom(), item.height(), gap.height(), rows),
        gap.width() / 2);
  }

  private static List<Double> cuts(double start, double size, double gutter, int count) {
    List<Double> cuts = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double from = start + i * (size + gutter);
      if (i == 0 || gutter > 0) {
        cuts.add(from);
      }
      cuts.add(from + size);
    }
    return cuts;
  }
}
