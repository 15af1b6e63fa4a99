package curewindow.guide;

import curewindow.cure.Release;
import curewindow.told.JobView;
import curewindow.told.When;
import curewindow.words.WordsLibrary;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;

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

  /**
   * A question as it may be put at a time, and what to say to it then.
   *
   * @param question the question
   * @param later whether it comes up long after the work, or hangs on no date and can wait
   * @param stand how the matter stands, in few words with its date; may be empty
   * @param answer this car's own answer, plain text on one line
   */
  public record Told(Question question, boolean later, String stand, String answer) {

    /** Refuses missing parts. */
    public Told {
      Objects.requireNonNull(question, "question");
      Objects.requireNonNull(stand, "stand");
      Objects.requireNonNull(answer, "answer");
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
    return answered(view, guides).stream().map(q -> question(q, view)).toList();
  }

  /**
   * The questions that apply to a job, with what to say to each at a time.
   *
   * @param view the job, in the language that is to be spoken
   * @param guides the care texts
   * @param at the time
   * @return the questions in the order of the page; empty where there is no guide
   */
  public static List<Told> told(JobView view, GuideLibrary guides, Instant at) {
    List<GuideQuestion> questions = answered(view, guides);
    return questions.stream()
        .map(q -> new Told(question(q, view), q.later(), stand(q, view, at), q.answer(at)))
        .toList();
  }

  /** How the matter of a question stands at a time, with its date; empty where it hangs on none. */
  private static String stand(GuideQuestion question, JobView view, Instant at) {
    Optional<Release> release =
        question.standing().flatMap(standing -> view.timeline().of(standing.hold()));
    return release.map(r -> stand(question.standing().get().normal(), r, view, at)).orElse("");
  }

  private static String stand(boolean normal, Release release, JobView view, Instant at) {
    When when = new When(view);
    if (release.end().at().isAfter(at)) {
      String key = normal ? "page.normal.until" : "page.normal.wait";
      return view.words().text(key, Map.of("when", when.shortDay(release)));
    }
    String over = when.fullBy(release).isPresent() ? "gently" : "go";
    return view.words().text("page.state." + (normal ? "show" : over));
  }

  private static Question question(GuideQuestion asked, JobView view) {
    return new Question(
        asked.id(),
        asked.heading(),
        asked.holds().stream().flatMap(h -> view.timeline().of(h).stream()).toList());
  }

  /**
   * The questions that any customer can have, in any language.
   *
   * @param guides the care texts
   * @return their ids, alphabetical
   */
  public static Set<String> ids(GuideLibrary guides) {
    return guides
        .all(GUIDE)
        .flatMap(guide -> guide.questionIds().stream())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /**
   * The questions with their answers.
   *
   * @param view the job
   * @param guides the care texts
   * @return the questions in the order of the page; empty where there is no guide
   */
  public static List<GuideQuestion> answered(JobView view, GuideLibrary guides) {
    return answered(view, guides, id -> true);
  }

  /**
   * Some of the questions with their answers.
   *
   * @param view the job
   * @param guides the care texts
   * @param wanted tells by its id whether a question is wanted
   * @return those that are, in the order of the page; empty where there is no guide
   */
  public static List<GuideQuestion> answered(
      JobView view, GuideLibrary guides, Predicate<String> wanted) {
    JobFacts facts = new JobFacts(view);
    return guide(view, guides).map(g -> g.questions(facts, wanted)).orElse(List.of());
  }

  /**
   * The language of the questions.
   *
   * @param view the job
   * @param guides the care texts
   * @return a BCP 47 tag; empty where it is the page's
   */
  public static Optional<String> language(JobView view, GuideLibrary guides) {
    return guide(view, guides).map(Guide::language).filter(l -> !l.equals(view.words().language()));
  }

  private static Optional<Guide> guide(JobView view, GuideLibrary guides) {
    return guides
        .find(view.words().language(), GUIDE)
        .or(() -> guides.find(WordsLibrary.FALLBACK, GUIDE));
  }
}
