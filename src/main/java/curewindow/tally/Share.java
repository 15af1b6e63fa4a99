package curewindow.tally;

/**
 * How many of some things are of one kind. All figures are whole numbers of 100, as no more is
 * known.
 *
 * @param part how many are, 0 or more
 * @param of how many there are, as many or more
 */
public record Share(int part, int of) {

  private static final double HUNDRED = 100;

  /** Refuses what is no share. */
  public Share {
    if (part < 0 || of < part) {
      throw new IllegalArgumentException(part + " of " + of);
    }
  }

  /**
   * Whether there is enough to tell the share.
   *
   * @return true from {@link Rate#ENOUGH} things on
   */
  public boolean isEnough() {
    return of >= Rate.ENOUGH;
  }

  /**
   * The share.
   *
   * @return of 100, rounded; 0 where there is nothing
   */
  public int of100() {
    return of == 0 ? 0 : (int) Math.round(HUNDRED * part / of);
  }

  /**
   * The lower end of the exact interval (Clopper and Pearson), 19 times in 20.
   *
   * @return of 100, rounded down
   */
  public int low() {
    return (int) Math.floor(HUNDRED * Exact.shareLow(part, of));
  }

  /**
   * The upper end of the exact interval (Clopper and Pearson), 19 times in 20.
   *
   * @return of 100, rounded up
   */
  public int high() {
    return (int) Math.ceil(HUNDRED * Exact.shareHigh(part, of));
  }
}
