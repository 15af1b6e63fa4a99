package curewindow.handout;

import curewindow.shop.Handout;
import java.util.List;

/**
 * The measures of a handout, in millimetres, and where its template is.
 *
 * @param cut its size when cut
 * @param bleed how far colour runs over the cut on each side; 0 where it is not cut
 * @param code the side of the square for the QR code with its quiet zone
 * @param sides how many pages it has, 1 or 2
 * @param template its template
 */
record PaperFormat(Size cut, double bleed, double code, int sides, TemplateFiles template) {

  /** From the bleed to the outer end of a crop mark. */
  private static final double ROOM_FOR_MARKS = 7;

  private static final double MILLIMETRES_PER_INCH = 25.4;
  private static final double POINTS_PER_MILLIMETRE = 72 / MILLIMETRES_PER_INCH;

  /**
   * Width and height in millimetres.
   *
   * @param width from left to right
   * @param height from top to bottom
   */
  record Size(double width, double height) {

    Size turned() {
      return new Size(height, width);
    }

    static Size inches(double width, double height) {
      return new Size(width * MILLIMETRES_PER_INCH, height * MILLIMETRES_PER_INCH);
    }
  }

  /**
   * The files of a template, without folder and ending.
   *
   * @param page the template itself
   * @param styles its style sheets, in their order
   */
  record TemplateFiles(String page, List<String> styles) {

    /** A template with one style sheet of the same name. */
    static TemplateFiles of(String name) {
      return new TemplateFiles(name, List.of(name));
    }
  }

  /** The format of a handout. */
  static PaperFormat of(Handout kind) {
    return switch (kind) {
      case WALLET -> new PaperFormat(new Size(85, 55), 3, 24, 1, TemplateFiles.of("card"));
      case WALLET_INCH ->
          new PaperFormat(
              Size.inches(3.5, 2),
              3,
              24,
              1,
              new TemplateFiles("card-inch", List.of("card", "card-inch")));
      case HANG_TAG -> new PaperFormat(new Size(70, 125), 3, 34, 2, TemplateFiles.of("hang-tag"));
      case WINDOW_UP -> new PaperFormat(new Size(90, 60), 3, 22, 1, TemplateFiles.of("window-up"));
      case CARE_A5 -> new PaperFormat(new Size(148, 210), 0, 36, 1, TemplateFiles.of("care-sheet"));
      case CARE_LETTER ->
          new PaperFormat(
              Size.inches(5.5, 8.5),
              0,
              36,
              1,
              new TemplateFiles("care-sheet", List.of("care-sheet", "care-sheet-letter")));
    };
  }

  /** From the cut to the edge of the page, with the crop marks in it. */
  double margin() {
    return bleed > 0 ? bleed + ROOM_FOR_MARKS : 0;
  }

  /** The page that the template fills. */
  Size page() {
    return new Size(cut.width() + 2 * margin(), cut.height() + 2 * margin());
  }

  static float points(double millimetres) {
    return (float) (millimetres * POINTS_PER_MILLIMETRE);
  }
}
