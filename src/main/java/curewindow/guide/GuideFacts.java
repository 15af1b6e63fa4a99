package curewindow.guide;

import java.util.Optional;

/** What a guide needs to know of the job it is shown for. */
public interface GuideFacts {

  /**
   * Whether a term of a clause is true of the job.
   *
   * @param kind the kind of fact, such as {@code service}
   * @param name the fact's name, such as {@code tint}
   * @return true where it is
   */
  boolean has(String kind, String name);

  /**
   * A value as text in the page's language, not yet escaped for HTML.
   *
   * @param name the value's name, such as {@code hold.windows-up.until}
   * @return the text, or empty where the job has no such value
   */
  Optional<String> value(String name);
}
