package curewindow.handout;

import java.util.List;

/**
 * What is put on paper: how much of each ink, from 0 to 1, in whole hundredths.
 *
 * @param plates which inks
 * @param tints as many as there are of these inks
 */
record Paint(Plates plates, List<Float> tints) {

  /** The inks of a color. */
  enum Plates {
    /** Black alone. */
    BLACK(1),
    /** Cyan, magenta, yellow and black. */
    PROCESS(4),
    /** The ink of the shop's color. */
    SPOT(1);

    private final int inks;

    Plates(int inks) {
      this.inks = inks;
    }
  }

  Paint {
    tints = List.copyOf(tints);
    if (tints.size() != plates.inks) {
      throw new IllegalArgumentException(plates + " has not " + tints.size() + " inks");
    }
  }

  static Paint of(Plates plates, double... tints) {
    List<Float> rounded = new java.util.ArrayList<>();
    for (double tint : tints) {
      rounded.add(Math.round(Math.max(0, Math.min(1, tint)) * 100) / 100f);
    }
    return new Paint(plates, rounded);
  }

  static Paint black(double tint) {
    return of(Plates.BLACK, tint);
  }

  float tint(int ink) {
    return tints.get(ink);
  }

  /** The same inks, but so much less of each. */
  Paint times(double share) {
    return of(plates, tints.stream().mapToDouble(t -> t * share).toArray());
  }
}
