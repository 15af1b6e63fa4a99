package curewindow.guide;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** Gathers a guide's questions for one job. */
final class QuestionWriter {

  private final GuideFacts facts;
  private final Predicate<String> wanted;
  private final PieceWriter writer;
  private final List<GuideQuestion> questions = new ArrayList<>();
  private String group = "";

  /** Gathers those questions whose ids are wanted. */
  QuestionWriter(GuideFacts facts, Predicate<String> wanted) {
    this.facts = facts;
    this.wanted = wanted;
    this.writer = new PieceWriter(facts, 0);
  }

  /** The questions in the order of the guide, without those that have no answer for the job. */
  List<GuideQuestion> write(List<Piece> pieces) {
    gather(pieces);
    return List.copyOf(questions);
  }

  private void gather(List<Piece> pieces) {
    for (Piece piece : pieces) {
      if (piece instanceof Piece.Choice choice) {
        gather(choice.shown(facts));
      } else if (piece instanceof Piece.Asked asked) {
        if (wanted.test(asked.question().id())) {
          question(asked).ifPresent(questions::add);
        }
      } else if (piece instanceof Piece.Leaf leaf && leaf.tag().headingLevel() > 0) {
        group = writer.inline(leaf.inline()).map(SafeHtml::text).orElse("");
      }
    }
  }

  private Optional<GuideQuestion> question(Piece.Asked asked) {
    Piece.Leaf heading = (Piece.Leaf) asked.blocks().get(0);
    List<Piece> answer = asked.blocks().subList(1, asked.blocks().size());
    String html = writer.write(answer);
    if (html.isBlank()) {
      return Optional.empty();
    }
    List<Piece> photo = new ArrayList<>();
    Set<String> holds = new LinkedHashSet<>();
    Optional<GuideQuestion.Standing> standing =
        asked.question().standing().filter(s -> facts.has("hold", s.hold()));
    standing.ifPresent(s -> holds.add(s.hold()));
    look(answer, photo, holds);
    String shown = SafeHtml.text(writer.write(photo));
    return writer
        .inline(heading.inline())
        .map(SafeHtml::text)
        .map(
            text ->
                new GuideQuestion(
                    asked.question().id(),
                    asked.question().later(),
                    group,
                    text,
                    html,
                    shown,
                    standing,
                    List.copyOf(holds)));
  }

  private void look(List<Piece> pieces, List<Piece> photo, Set<String> holds) {
    for (Piece piece : pieces) {
      if (piece instanceof Piece.Choice choice) {
        look(choice.shown(facts), photo, holds);
      } else if (piece instanceof Piece.Photo shot) {
        photo.addAll(shot.blocks());
      } else if (piece instanceof Piece.Group group) {
        look(group.blocks(), photo, holds);
      } else if (piece instanceof Piece.Timed timed && facts.has("hold", timed.hold())) {
        holds.add(timed.hold());
        look(timed.before(), photo, holds);
        look(timed.after(), photo, holds);
      }
    }
  }
}
