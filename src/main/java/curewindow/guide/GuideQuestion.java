package curewindow.guide;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A question of a guide with its answer for one job.
 *
 * @param id its name, the same in every language
 * @param later whether it can wait: it comes up long after the work, or hangs on no date
 * @param group the heading that it stands under; plain text, may be empty
 * @param heading the question; plain text
 * @param html the answer as safe HTML blocks, one a line
 * @param photo what a photo for the shop should show; plain text, empty where none is asked for
 * @param standing how the matter stands by date, where the guide says so and the job has the hold
 * @param holds ids of the job's holds on whose end the answer depends, each once
 */
public record GuideQuestion(
    String id,
    boolean later,
    String group,
    String heading,
    String html,
    String photo,
    Optional<Standing> standing,
    List<String> holds) {

  /** Copies the list and refuses missing parts. */
  public GuideQuestion {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(group, "group");
    Objects.requireNonNull(heading, "heading");
    Objects.requireNonNull(html, "html");
    Objects.requireNonNull(photo, "photo");
    Objects.requireNonNull(standing, "standing");
    holds = List.copyOf(holds);
  }

  /**
   * The answer as it is to be given at a time.
   *
   * @param at the time
   * @return plain text on one line; what holds only before or after the time is left out
   */
  public String answer(Instant at) {
    return SafeHtml.text(html, at);
  }

  /**
   * How the matter of a question stands.
   *
   * @param normal whether it is normal until the hold's end and a matter for the shop after it;
   *     else the customer waits until then and may go ahead after it
   * @param hold the hold's id
   */
  public record Standing(boolean normal, String hold) {}
}
