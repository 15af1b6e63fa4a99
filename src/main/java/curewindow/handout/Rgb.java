package curewindow.handout;

/**
 * A color as pages are set in it: sRGB, each part from 0 to 1.
 *
 * @param red of red
 * @param green of green
 * @param blue of blue
 */
record Rgb(float red, float green, float blue) {

  static final Rgb BLACK = new Rgb(0, 0, 0);

  /** The lowest eight bits of an integer are blue, then come green and red. */
  static Rgb of(int bits) {
    return new Rgb((bits >> 16 & 255) / 255f, (bits >> 8 & 255) / 255f, (bits & 255) / 255f);
  }

  /** Inks laid on each other, without a profile (PDF Reference 1.4, 6.2.4). */
  static Rgb ofProcess(float cyan, float magenta, float yellow, float black) {
    return new Rgb(left(cyan, black), left(magenta, black), left(yellow, black));
  }

  private static float left(float color, float black) {
    return 1 - Math.min(1, color + black);
  }

  /** How light it looks, from 0 to 1 (PDF Reference 1.4, 6.2.1; from the NTSC). */
  float light() {
    return 0.3f * red + 0.59f * green + 0.11f * blue;
  }

  /** From 0 for a gray to 1 for a pure color. */
  float color() {
    float most = Math.max(red, Math.max(green, blue));
    return most - Math.min(red, Math.min(green, blue));
  }
}
