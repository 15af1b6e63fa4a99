package curewindow.search;

import java.util.Objects;

/**
 * A section or question that can be looked up.
 *
 * @param title its heading, plain text
 * @param text its text, plain
 */
public record Entry(String title, String text) {

  /** Refuses missing parts. */
  public Entry {
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(text, "text");
  }
}
