package curewindow.tally;

/**
 * How many events came of how many things; one thing may bring several. All figures are whole
 * numbers per 100, as no more is known.
 *
 * @param events how many events were counted, 0 or more
 * @param of how many things could have brought some, 0 or more
 */
public record Rate(int events, int of) {

  /** Of fewer it is too little to tell; our own choice. */
  public static final int ENOUGH = 20;

  private static final double HUNDRED = 100;

  /** Refuses what cannot be counted. */
  public Rate {
    if (events < 0 || of < 0) {
      throw new IllegalArgumentException(events + " events of " + of);
    }
  }

  /**
   * Whether there is enough to tell how often it is.
   *
   * @return true from {@link #ENOUGH} things on
   */
  public boolean isEnough() {
    return of >= ENOUGH;
  }

  /**
   * How often it is.
   *
   * @return events per 100, rounded
   * @throws IllegalStateException where nothing could have brought any
   */
  public int per100() {
    return (int) Math.round(per100(events));
  }

  /**
   * How seldom it may really be: the lower end of the exact Poisson interval, 19 times in 20.
   *
   * @return events per 100, rounded down
   * @throws IllegalStateException where nothing could have brought any
   */
  public int low() {
    return (int) Math.floor(per100(Exact.poissonLow(events)));
  }

  /**
   * How often it may really be: the upper end of the exact Poisson interval, 19 times in 20.
   *
   * @return events per 100, rounded up
   * @throws IllegalStateException where nothing could have brought any
   */
  public int high() {
    return (int) Math.ceil(per100(Exact.poissonHigh(events)));
  }

  private double per100(double some) {
    if (of == 0) {
      throw new IllegalStateException("nothing could have brought an event");
    }
    return some * HUNDRED / of;
  }

  /**
   * Which of two is more often.
   *
   * @param other the other
   * @return below 0 where this is less often, above 0 where it is more, 0 where both are alike
   */
  public int compareOften(Rate other) {
    return Long.compare((long) events * other.of, (long) other.events * of);
  }
}
