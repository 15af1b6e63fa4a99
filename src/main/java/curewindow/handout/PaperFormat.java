package curewindow.handout;

import curewindow.shop.Handout;
import java.util.List;

/**
 * The measures of a handout, in millimetres, and where its template is.
 *
 * @param cut its size when cut
 * @param edge what lies round the cut
 * @param code the side of the square for the QR code with its quiet zone
 * @param smallest the least size of any text, points
 * @param template its template
 */
record PaperFormat(Size cut, Edge edge, double code, double smallest, TemplateFiles template) {

  /** From the bleed to the outer end of a crop mark. */
  private static final double ROOM_FOR_MARKS = 7;

  /** What a carrier's text needs more. */
  private static final double ROOM_FOR_CARRIER = 1.5;

  /** What is read in the hand, close by. */
  private static final double CARD = 7.5;

  /** What is read at a table. */
  private static final double SHEET = 10;

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
   * What lies round the cut.
   *
   * @param bleed how far colour runs over the cut on each side; 0 where it is not cut
   * @param carrier the strip below the cut that stays behind when a sticker is taken off
   * @param roll whether it comes off a roll, cut already, and is printed in black alone
   */
  record Edge(double bleed, double carrier, boolean roll) {

    static final Edge CUT = new Edge(3, 0, false);
    static final Edge STICKER = new Edge(3, 9, false);
    static final Edge PAGE = new Edge(0, 0, false);
    static final Edge ROLL = new Edge(0, 0, true);
  }

  /**
   * The files of a template, without folder and ending.
   *
   * @param page the template itself
   * @param styles its style sheets, in their order
   */
  record TemplateFiles(String page, List<String> styles) {

    /** A template with its style sheets; without any it has one of its own name. */
    static TemplateFiles of(String page, String... styles) {
      return new TemplateFiles(page, styles.length == 0 ? List.of(page) : List.of(styles));
    }
  }

  /** The format of a handout. */
  static PaperFormat of(Handout kind) {
    return switch (kind) {
      case WALLET ->
          new PaperFormat(new Size(85, 55), Edge.CUT, 24, CARD, TemplateFiles.of("card"));
      case WALLET_INCH ->
          new PaperFormat(
              Size.inches(3.5, 2),
              Edge.CUT,
              23,
              CARD,
              TemplateFiles.of("card", "card", "card-inch"));
      case HANG_TAG ->
          new PaperFormat(new Size(70, 125), Edge.CUT, 30, CARD, TemplateFiles.of("hang-tag"));
      case WINDOW_UP ->
          new PaperFormat(new Size(64, 42), Edge.STICKER, 18, CARD, TemplateFiles.of("window-up"));
      case CARE_A5 ->
          new PaperFormat(new Size(148, 210), Edge.PAGE, 32, SHEET, TemplateFiles.of("care-sheet"));
      case CARE_LETTER ->
          new PaperFormat(
              Size.inches(5.5, 8.5),
              Edge.PAGE,
              32,
              SHEET,
              TemplateFiles.of("care-sheet", "care-sheet", "care-sheet-letter"));
      case LABEL_62 -> roll(new Size(62, 100), 30, TemplateFiles.of("label-62"));
      case LABEL_4X6 -> roll(Size.inches(4, 6), 38, TemplateFiles.of("label-4x6"));
      case LABEL_SMALL -> roll(Size.inches(2.25, 1.25), 18, TemplateFiles.of("label-small"));
    };
  }

  private static PaperFormat roll(Size size, double code, TemplateFiles template) {
    return new PaperFormat(size, Edge.ROLL, code, CARD, template);
  }

  double bleed() {
    return edge.bleed();
  }

  /** From the cut to the edge of the page, with the crop marks in it. */
  double margin() {
    double carrier = edge.carrier() > 0 ? ROOM_FOR_CARRIER : 0;
    return edge.bleed() > 0 ? edge.bleed() + ROOM_FOR_MARKS + carrier : 0;
  }

  /** The page that the template fills. */
  Size page() {
    return new Size(cut.width() + 2 * margin(), cut.height() + 2 * margin());
  }

  static float points(double millimetres) {
    return (float) (millimetres * POINTS_PER_MILLIMETRE);
  }
}
