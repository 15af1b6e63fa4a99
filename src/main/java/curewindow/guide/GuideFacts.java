package curewindow.guide;

import java.time.Instant;
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

  /**
   * Whether the page's script is to find a value, as it says something else in other months or for
   * a car that it knows of.
   *
   * @param name the value's name
   * @return true where it is; {@link #value} was asked for it before
   */
  default boolean changes(String name) {
    return false;
  }

  /**
   * When a hold of the job is over, for the parts of a guide that change then.
   *
   * @param hold the hold's id
   * @return the instant, or empty where no passing of time ends the hold, or no job is known; then
   *     what is said before it stays
   */
  default Optional<Instant> over(String hold) {
    return Optional.empty();
  }

  /**
   * When what a hold of the job waits for is fully set, which is later than its end where that is
   * its limit.
   *
   * @param hold the hold's id
   * @return the instant, or empty where {@link #over} is
   */
  default Optional<Instant> set(String hold) {
    return over(hold);
  }

  /**
   * Until when the invitation to a visit stands.
   *
   * @return the instant, or empty where there is none, or no job is known
   */
  default Optional<Instant> invitedUntil() {
    return Optional.empty();
  }
}
