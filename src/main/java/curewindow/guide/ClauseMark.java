package curewindow.guide;

import com.vladsch.flexmark.util.ast.Block;
import com.vladsch.flexmark.util.sequence.BasedSequence;

/** A line such as {@code (? service tint ?)} as it is met while parsing, before pairing. */
final class ClauseMark extends Block {

  /** What the line does. */
  enum Kind {
    OPEN,
    ELSE,
    END,
    /** It starts like a clause's line but does not end like one. */
    BROKEN
  }

  private final Kind kind;
  private final BasedSequence inner;

  ClauseMark(Kind kind, BasedSequence chars, BasedSequence inner) {
    super(chars);
    this.kind = kind;
    this.inner = inner;
  }

  Kind kind() {
    return kind;
  }

  /** What stands between the marks. */
  BasedSequence inner() {
    return inner;
  }

  @Override
  public BasedSequence[] getSegments() {
    return new BasedSequence[] {inner};
  }
}
