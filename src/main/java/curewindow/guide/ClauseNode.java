package curewindow.guide;

import com.vladsch.flexmark.util.ast.Block;
import com.vladsch.flexmark.util.sequence.BasedSequence;

/** A clause with one branch, or with two where it has an {@code else}. */
final class ClauseNode extends Block {

  private final ClauseMark opening;
  private final int number;

  ClauseNode(ClauseMark opening, int number) {
    super(opening.getChars());
    this.opening = opening;
    this.number = number;
    appendChild(new Branch(opening.getChars()));
  }

  ClauseMark opening() {
    return opening;
  }

  /** Which of the guide's conditions is this clause's, from 0. */
  int number() {
    return number;
  }

  /** The branch that text is being added to. */
  Branch current() {
    return (Branch) getLastChild();
  }

  boolean hasElse() {
    return getFirstChild() != getLastChild();
  }

  void startElse(ClauseMark mark) {
    appendChild(new Branch(mark.getChars()));
  }

  @Override
  public BasedSequence[] getSegments() {
    return EMPTY_SEGMENTS;
  }

  /** What is shown where the condition holds, or where it does not. */
  static final class Branch extends Block {

    Branch(BasedSequence chars) {
      super(chars);
    }

    @Override
    public BasedSequence[] getSegments() {
      return EMPTY_SEGMENTS;
    }
  }
}
