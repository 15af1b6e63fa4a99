package curewindow.handout;

/** Mixes a color from cyan, magenta, yellow and black. */
final class ProcessColors {

  private ProcessColors() {}

  /** The inks of a color: what the three colors have in common is black. */
  static Paint of(Rgb color) {
    float most = Math.max(color.red(), Math.max(color.green(), color.blue()));
    if (most <= 0) {
      return Paint.of(Paint.Plates.PROCESS, 0, 0, 0, 1);
    }
    return Paint.of(
        Paint.Plates.PROCESS,
        1 - color.red() / most,
        1 - color.green() / most,
        1 - color.blue() / most,
        1 - most);
  }
}
