package curewindow.guide;

import com.vladsch.flexmark.util.ast.Node;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Turns the marks of a parsed guide into clauses: marks pair with their neighbours in the same list
 * item, quote or page, never across its edge.
 */
final class ClauseTree {

  private final KnownNames known;
  private final GuideSource source;
  private final List<Opening> openings = new ArrayList<>();

  ClauseTree(KnownNames known, GuideSource source) {
    this.known = known;
    this.source = source;
  }

  /** Pairs all marks of a document, reporting those that do not pair. */
  void build(Node document) {
    Set<Node> parents = new LinkedHashSet<>();
    Tree.walk(
        document,
        (node, depth) -> {
          if (node instanceof ClauseMark) {
            parents.add(node.getParent());
          }
        });
    parents.forEach(this::pair);
  }

  /** What all clauses' first lines open, by the clause's number. */
  List<Opening> openings() {
    return List.copyOf(openings);
  }

  private void pair(Node parent) {
    List<Node> children = new ArrayList<>();
    parent.getChildren().forEach(children::add);
    Deque<ClauseNode> open = new ArrayDeque<>();
    for (Node child : children) {
      child.unlink();
      Node target = open.isEmpty() ? parent : open.peek().current();
      if (child instanceof ClauseMark mark) {
        place(mark, target, open);
      } else {
        target.appendChild(child);
      }
    }
    open.forEach(this::unclosed);
  }

  private void place(ClauseMark mark, Node target, Deque<ClauseNode> open) {
    switch (mark.kind()) {
      case OPEN -> {
        ClauseNode clause = new ClauseNode(mark, openings.size());
        openings.add(opening(mark));
        target.appendChild(clause);
        open.push(clause);
      }
      case ELSE -> placeElse(mark, open);
      case END -> {
        if (open.isEmpty()) {
          stray(mark, "end");
        } else {
          open.pop();
        }
      }
      case BROKEN ->
          source.error(
              "malformed-clause",
              mark.getStartOffset(),
              "the line starts like a clause but does not end with \"?)\"",
              "end the line with \"?)\", or write \"\\(?\" for an ordinary bracket");
    }
  }

  private Opening opening(ClauseMark mark) {
    // Where the opening is wrong the guide is not used; the clause only keeps the pairs right.
    return OpeningParser.parse(mark, known, source)
        .orElse(new Opening.If(new Condition.All(List.of())));
  }

  private boolean mayHaveElse(ClauseNode clause) {
    Opening opening = openings.get(clause.number());
    return opening instanceof Opening.If || opening instanceof Opening.Timed;
  }

  private void placeElse(ClauseMark mark, Deque<ClauseNode> open) {
    if (open.isEmpty() || !mayHaveElse(open.peek())) {
      stray(mark, "else");
    } else if (open.peek().hasElse()) {
      source.error(
          "second-else",
          mark.getStartOffset(),
          "the clause opened in line " + openedIn(open.peek()) + " has two \"else\"",
          "take one away, or put a clause inside the clause");
    } else {
      open.peek().startElse(mark);
    }
  }

  private void stray(ClauseMark mark, String word) {
    source.error(
        "stray-" + word,
        mark.getStartOffset(),
        "there is no open clause that takes this \"" + word + "\"",
        "take the line away, or open a clause above it at the same indentation");
  }

  private void unclosed(ClauseNode clause) {
    source.error(
        "unclosed-clause",
        clause.getStartOffset(),
        "the clause \"" + clause.opening().inner() + "\" opened here is not closed",
        "put a line \"(? end ?)\" after it at the same indentation");
  }

  private int openedIn(ClauseNode clause) {
    return source.line(clause.getStartOffset());
  }
}
