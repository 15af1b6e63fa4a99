package curewindow.guide;

import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.util.ast.Document;
import com.vladsch.flexmark.util.ast.Node;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Reports questions and photos that stand where they cannot. */
final class QuestionCheck {

  private final List<Opening> openings;
  private final GuideSource source;
  private final Set<String> ids = new HashSet<>();

  QuestionCheck(List<Opening> openings, GuideSource source) {
    this.openings = openings;
    this.source = source;
  }

  /** Checks a guide whose clauses are built. */
  void check(Node document) {
    Tree.walk(
        document,
        (node, depth) -> {
          if (node instanceof ClauseNode clause) {
            Opening opening = openings.get(clause.number());
            if (opening instanceof Opening.Question question) {
              question(clause, question.id());
            } else if (opening instanceof Opening.Photo && !isInQuestion(clause)) {
              error(clause, "stray-photo", "a photo belongs to a question", "move it into one");
            }
          }
        });
  }

  private void question(ClauseNode clause, String id) {
    if (!ids.add(id)) {
      error(clause, "second-question", "the question \"" + id + "\" is there twice", "rename one");
    }
    if (isInQuestion(clause)) {
      error(clause, "question-inside", "this question stands inside another", "end that one first");
    } else if (!isOnPage(clause)) {
      error(
          clause,
          "question-inside",
          "a question cannot stand in a list or quote",
          "put it on the page itself");
    }
    if (!(clause.current().getFirstChild() instanceof Heading heading)
        || heading.getText().isBlank()) {
      error(
          clause,
          "no-question",
          "the question has no heading",
          "start it with a heading such as \"### Why does the glass look hazy?\"");
    }
  }

  private boolean isInQuestion(ClauseNode clause) {
    for (Node node = clause.getParent(); node != null; node = node.getParent()) {
      if (node instanceof ClauseNode outer
          && openings.get(outer.number()) instanceof Opening.Question) {
        return true;
      }
    }
    return false;
  }

  private static boolean isOnPage(ClauseNode clause) {
    Node node = clause.getParent();
    while (node instanceof ClauseNode || node instanceof ClauseNode.Branch) {
      node = node.getParent();
    }
    return node instanceof Document;
  }

  private void error(ClauseNode clause, String code, String message, String fix) {
    source.error(code, clause.getStartOffset(), message, fix);
  }
}
