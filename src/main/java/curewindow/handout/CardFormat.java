package curewindow.handout;

/**
 * The measures of a card on its sheet, in millimetres.
 *
 * @param width of the card when cut
 * @param height of the card when cut
 * @param bleed how far colour runs over the cut on each side
 * @param margin from the cut to the edge of the sheet, with the crop marks in it
 * @param code the side of the square for the QR code with its quiet zone
 */
record CardFormat(double width, double height, double bleed, double margin, double code) {

  /** The wallet card, 85 by 55 mm. */
  static final CardFormat WALLET = new CardFormat(85, 55, 3, 10, 24);

  private static final double POINTS_PER_MILLIMETRE = 72 / 25.4;

  double sheetWidth() {
    return width + 2 * margin;
  }

  double sheetHeight() {
    return height + 2 * margin;
  }

  static float points(double millimetres) {
    return (float) (millimetres * POINTS_PER_MILLIMETRE);
  }
}
