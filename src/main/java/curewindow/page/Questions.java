package curewindow.page;

import curewindow.cure.Release;
import curewindow.guide.Guide;
import curewindow.guide.GuideLibrary;
import curewindow.guide.GuideQuestion;
import curewindow.words.WordsLibrary;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** The questions that the customer of a job is likely to ask: those of the guide {@code normal}. */
public final class Questions {

  private static final String GUIDE = "normal";

  /**
   * A question.
   *
   * @param id its name, the same in every language
   * @param text the question in the job's language
   * @param releases the releases on whose end the answer depends; may be empty
   */
  public record Question(String id, String text, List<Release> releases) {

    /** Copies the list and refuses missing parts. */
    public Question {
      Objects.requireNonNull(id, "id");
      Objects.requireNonNull(text, "text");
      releases = List.copyOf(releases);
    }
  }

  private Questions() {}

  /**
   * The questions that apply to a job.
   *
   * @param view the job
   * @param guides the care texts
   * @return the questions in the order of the page; empty where there is no guide
   */
  public static List<Question> of(JobView view, GuideLibrary guides) {
    return answered(view, guides).stream()
        .map(
            q ->
                new Question(
                    q.id(),
                    q.heading(),
                    q.holds().stream().flatMap(h -> view.timeline().of(h).stream()).toList()))
        .toList();
  }

  /** The questions with their answers. */
  static List<GuideQuestion> answered(JobView view, GuideLibrary guides) {
    JobFacts facts = new JobFacts(view);
    return guide(view, guides).map(g -> g.questions(facts)).orElse(List.of());
  }

  /** The language of the questions where it is not the page's. */
  static Optional<String> language(JobView view, GuideLibrary guides) {
    return guide(view, guides).map(Guide::language).filter(l -> !l.equals(view.words().language()));
  }

  private static Optional<Guide> guide(JobView view, GuideLibrary guides) {
    return guides
        .find(view.words().language(), GUIDE)
        .or(() -> guides.find(WordsLibrary.FALLBACK, GUIDE));
  }
}
