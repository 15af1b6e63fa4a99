package curewindow.words;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;

/** The parts of an inch that people read off a tape measure. */
enum Fraction {
  SIXTEENTH("1/16", 1 / 16.0),
  EIGHTH("1/8", 1 / 8.0),
  QUARTER("1/4", 1 / 4.0),
  HALF("1/2", 1 / 2.0);

  private static final double LEAST = 1 / 32.0;
  private static final double MOST = 0.6;

  private final String text;
  private final double part;

  Fraction(String text, double part) {
    this.text = text;
    this.part = part;
  }

  /** The nearest fraction to some inches, or empty below 1/32 and above 0.6 inches. */
  static Optional<String> near(double inches) {
    return inches < LEAST || inches > MOST
        ? Optional.empty()
        : Arrays.stream(values())
            .min(Comparator.comparingDouble(f -> Math.abs(f.part - inches)))
            .map(f -> f.text);
  }
}
