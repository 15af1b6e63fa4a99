package curewindow.shop;

import curewindow.problem.Where;
import java.util.Objects;

/**
 * A text and where it stands.
 *
 * @param text the text
 * @param where file, line and column
 */
public record PlacedText(String text, Where where) {

  /** Refuses missing parts. */
  public PlacedText {
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(where, "where");
  }
}
