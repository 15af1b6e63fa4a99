package curewindow.site;

/** Is told how far a press is. Safe for use by several threads. */
public interface Progress {

  /** Tells nobody. */
  Progress NONE = (made, all) -> {};

  /**
   * So many pages are made.
   *
   * @param made how many, 1 or more
   * @param all how many there are to make
   */
  void made(int made, int all);
}
