package curewindow.handout;

/**
 * What is done to a code before it is read, and the share of its pictures that each reader has to
 * read at least. The floors lie under what both readers manage; where they are 0, it is only told.
 */
enum Harm {
  NONE("as printed", 1, 1),
  TURNED("turned by up to 45 degrees", 0.9, 0.9),
  TILTED("seen from 30 degrees beside", 0.9, 0.7),
  BLURRED("blurred, deviation 0.35 module", 0.9, 0.9),
  BLURRED_MUCH("blurred, deviation 0.5 module", 0, 0),
  FAINT("a fifth of the contrast", 0.9, 0.9),
  NOISY("20 % noise", 0.85, 0.75),
  SPECKLED("20 % of all dots black or white", 0.45, 0.25),
  STAINED_BESIDE("10 % stain beside the corner marks", 0.65, 0.65),
  STAINED("10 % stain anywhere", 0.55, 0.65),
  MANY("tilted, turned, blurred, faint and noisy at once", 0.8, 0.4);

  private final String title;
  private final double usual;
  private final double smallest;

  Harm(String title, double usual, double smallest) {
    this.title = title;
    this.usual = usual;
    this.smallest = smallest;
  }

  /** For the report. */
  String title() {
    return title;
  }

  /** The least share that is read, for a usual address or for the smallest code of all. */
  double floor(boolean ofSmallest) {
    return ofSmallest ? smallest : usual;
  }
}
