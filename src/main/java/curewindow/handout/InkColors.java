package curewindow.handout;

import curewindow.shop.Ink;

/**
 * Chooses the inks for a color. Small type and what is close to gray is black alone, as several
 * inks never meet exactly; it is a tint only where it is large enough for the dots of one.
 */
final class InkColors {

  /** What is painted. */
  enum Use {
    /** Type under 12 points. */
    SMALL_TYPE,
    /** A line thinner than a point. */
    LINE,
    /** What is large and of one color. */
    AREA,
    /** A dot of a picture, whose tones run into each other. */
    PICTURE
  }

  /** A light tint would show as single dots: such a color is left to the paper. */
  private static final float PAPER = 0.93f;

  /** A dark tint would have ragged edges and gains nothing. */
  private static final float DEEP = 0.25f;

  /** Small type that is lighter stands on something dark and is left out of it. */
  private static final float LIGHT_TYPE = 0.6f;

  /** What has less color is taken for gray. */
  private static final float NEARLY_GRAY = 0.15f;

  /** How far a tint of the accent may be off, for rounding. */
  private static final float SAME = 0.012f;

  /** A tint with less of the accent cannot be told from gray. */
  private static final float LEAST = 0.04f;

  private final Ink ink;
  private final Rgb accent;
  private final Paint accentPaint;

  /**
   * Inks for colors.
   *
   * @param ink which inks there are; not those of a screen
   * @param accent the shop's color
   */
  InkColors(Ink ink, Rgb accent) {
    this.ink = ink;
    this.accent = accent;
    this.accentPaint =
        switch (ink) {
          case BLACK -> Paint.black(1);
          case SPOT -> Paint.of(Paint.Plates.SPOT, 1);
          case PROCESS -> ProcessColors.of(accent);
          case SCREEN -> throw new IllegalArgumentException("a screen has no inks");
        };
  }

  Ink ink() {
    return ink;
  }

  /** The accent as process colors, which stand in where there is no ink of its own for it. */
  Paint instead() {
    return ProcessColors.of(accent);
  }

  /** The inks for a color. */
  Paint of(Rgb color, Use use) {
    if (use == Use.SMALL_TYPE) {
      return Paint.black(color.light() > LIGHT_TYPE ? 0 : 1);
    }
    if (use != Use.PICTURE && color.light() >= PAPER) {
      return Paint.black(0);
    }
    double share = share(color);
    if (share > 0) {
      return use == Use.LINE ? accentPaint : accentPaint.times(share);
    }
    if (use == Use.PICTURE) {
      return ink == Ink.PROCESS ? ProcessColors.of(color) : Paint.black(1 - color.light());
    }
    boolean gray = color.color() <= NEARLY_GRAY || ink != Ink.PROCESS;
    return gray ? gray(color, use) : ProcessColors.of(color);
  }

  private static Paint gray(Rgb color, Use use) {
    boolean solid = use == Use.LINE || color.light() < DEEP;
    return Paint.black(solid ? 1 : 1 - color.light());
  }

  /** How much of the accent makes this color on white, or 0 where it is of another kind. */
  private double share(Rgb color) {
    if (accent.color() <= NEARLY_GRAY) {
      return 0;
    }
    double[] full = {1 - accent.red(), 1 - accent.green(), 1 - accent.blue()};
    double[] has = {1 - color.red(), 1 - color.green(), 1 - color.blue()};
    double along = 0;
    double length = 0;
    for (int i = 0; i < full.length; i++) {
      along += has[i] * full[i];
      length += full[i] * full[i];
    }
    double share = along / length;
    for (int i = 0; i < full.length; i++) {
      if (Math.abs(has[i] - share * full[i]) > SAME) {
        return 0;
      }
    }
    return share > 1 + SAME || share < LEAST ? 0 : Math.min(1, share);
  }
}
