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
 * @param gutter between two cuts
 * @param columns how many stand side by side
 * @param rows how many stand one above the other
 */
record SheetPlan(Size sheet, Size item, double gutter, int columns, int rows) {

  private static final Size A4 = new Size(210, 297);
  private static final Size LETTER = Size.inches(8.5, 11);

  /** Hundredths of a millimetre are no reason not to fit. */
  private static final double TOLERANCE = 0.01;

  /** The lower left corner of a place on the sheet. */
  record Corner(double x, double y) {}

  /**
   * The plan for a format.
   *
   * @throws IllegalArgumentException where the paper is none
   */
  static SheetPlan of(PaperFormat format, SheetPaper paper) {
    Size sheet =
        switch (paper) {
          case A4 -> A4;
          case LETTER -> LETTER;
          case NONE -> throw new IllegalArgumentException("no sheet is to be laid out");
        };
    SheetPlan upright = on(sheet, format);
    SheetPlan lying = on(sheet.turned(), format);
    return format.sides() == 1 && lying.places() > upright.places() ? lying : upright;
  }

  private static SheetPlan on(Size sheet, PaperFormat format) {
    double gutter = 2 * format.bleed();
    int columns = count(sheet.width() - 2 * format.margin(), format.cut().width(), gutter);
    int rows = count(sheet.height() - 2 * format.margin(), format.cut().height(), gutter);
    return new SheetPlan(sheet, format.cut(), gutter, columns, rows);
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
        start(sheet.width(), item.width(), columns) + column * (item.width() + gutter),
        start(sheet.height(), item.height(), rows) + (rows - 1 - row) * (item.height() + gutter));
  }

  private double start(double paper, double size, int count) {
    return (paper - count * size - (count - 1) * gutter) / 2;
  }

  /** Where the sheet is cut. */
  CutMarks.Lines cuts() {
    return new CutMarks.Lines(
        cuts(start(sheet.width(), item.width(), columns), item.width(), columns),
        cuts(start(sheet.height(), item.height(), rows), item.height(), rows),
        gutter / 2);
  }

  private List<Double> cuts(double start, double size, int count) {
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
