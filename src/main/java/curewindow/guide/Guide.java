package curewindow.guide;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * A care text, read once and shown for each job. Safe for use by several threads at once.
 *
 * <p>Where the job lacks a value that a paragraph, list item or table row needs, that paragraph,
 * item or row is left out, and with it the list, table or heading that it leaves empty.
 */
public final class Guide {

  private static final int MAX_SHIFT = 5;

  private final String id;
  private final String language;
  private final String title;
  private final List<String> values;
  private final List<Piece> pieces;

  Guide(String id, String language, String title, List<String> values, List<Piece> pieces) {
    this.id = id;
    this.language = language;
    this.title = title;
    this.values = List.copyOf(values);
    this.pieces = List.copyOf(pieces);
  }

  /**
   * The guide's name, the same in every language.
   *
   * @return the file's name without its ending
   */
  public String id() {
    return id;
  }

  /**
   * The language it is written in.
   *
   * @return the name of its folder, such as {@code en}
   */
  public String language() {
    return language;
  }

  /**
   * The title: the text of the first heading of level 1.
   *
   * @return plain text, not escaped, not blank
   */
  public String title() {
    return title;
  }

  /**
   * The text for a job without the title, as safe HTML, with headings as written.
   *
   * @param facts the job's facts
   * @return HTML blocks, one a line; may be empty
   */
  public String html(GuideFacts facts) {
    return html(facts, 0);
  }

  /**
   * The text for a job without the title, as safe HTML.
   *
   * @param facts the job's facts
   * @param headingShift how many levels deeper headings stand than written, 0 to 5; none goes
   *     deeper than 6
   * @return HTML blocks, one a line; may be empty
   * @throws IllegalArgumentException where the shift is out of range
   */
  public String html(GuideFacts facts, int headingShift) {
    if (headingShift < 0 || headingShift > MAX_SHIFT) {
      throw new IllegalArgumentException(
          "the heading shift is " + headingShift + ", not 0 to " + MAX_SHIFT);
    }
    return new PieceWriter(facts, headingShift).write(pieces);
  }

  /**
   * The guide's questions with their answers for a job.
   *
   * @param facts the job's facts
   * @return the questions in the order of the guide, without those that are not for the job
   */
  public List<GuideQuestion> questions(GuideFacts facts) {
    return questions(facts, id -> true);
  }

  /** The same of those questions whose ids are wanted. */
  List<GuideQuestion> questions(GuideFacts facts, Predicate<String> wanted) {
    return new QuestionWriter(facts, wanted).write(pieces);
  }

  /**
   * The ids of all its questions, whatever the job.
   *
   * @return each id once
   */
  public Set<String> questionIds() {
    Set<String> ids = new TreeSet<>();
    gather(pieces, ids);
    return ids;
  }

  private static void gather(List<Piece> pieces, Set<String> ids) {
    for (Piece piece : pieces) {
      if (piece instanceof Piece.Asked asked) {
        ids.add(asked.question().id());
      } else if (piece instanceof Piece.Choice choice) {
        gather(choice.then(), ids);
        gather(choice.otherwise(), ids);
      }
    }
  }

  /**
   * The names of the values that the guide uses in any of its clauses.
   *
   * @return each name once, in the order of first use
   */
  public List<String> valuesUsed() {
    return values;
  }
}
