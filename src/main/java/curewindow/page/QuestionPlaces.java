package curewindow.page;

import curewindow.guide.GuideLibrary;
import curewindow.guide.GuideQuestion;
import curewindow.guide.Questions;
import curewindow.told.JobView;
import java.util.List;
import java.util.OptionalInt;

/**
 * At which places questions stand on a customer's page, parked as noted, where there is room for
 * all of its likeliest questions; a page that is too heavy shows fewer.
 *
 * @param questions the ids of the questions, the first first
 * @param atAGlance how many of them are seen before anything is unfolded
 */
public record QuestionPlaces(List<String> questions, int atAGlance) {

  /** Copies the list. */
  public QuestionPlaces {
    questions = List.copyOf(questions);
    if (atAGlance < 0 || atAGlance > questions.size()) {
      throw new IllegalArgumentException(atAGlance + " of " + questions.size() + " questions");
    }
  }

  /**
   * The questions of a job's page.
   *
   * @param view the job, in the language of its customer
   * @param guides the care texts
   * @return their places
   */
  public static QuestionPlaces of(JobView view, GuideLibrary guides) {
    List<String> ids =
        Asking.likely(Questions.answered(view, guides))
            .limit(Asking.MOST)
            .map(GuideQuestion::id)
            .toList();
    int moved = new CardNotes(view).later().size();
    DateList.Dates dates = new DateList(new Cases(List.of(view))).dates();
    return new QuestionPlaces(ids, Asking.atAGlance(ids.size(), Asking.isMuch(moved, dates)));
  }

  /**
   * The place of a question.
   *
   * @param question its id
   * @return 1 for the first; empty where it is not on the page
   */
  public OptionalInt of(String question) {
    int index = questions.indexOf(question);
    return index < 0 ? OptionalInt.empty() : OptionalInt.of(index + 1);
  }

  /**
   * Whether a question is seen before anything is unfolded.
   *
   * @param question its id
   * @return true where it is
   */
  public boolean isAtAGlance(String question) {
    return of(question).stream().anyMatch(place -> place <= atAGlance);
  }
}
