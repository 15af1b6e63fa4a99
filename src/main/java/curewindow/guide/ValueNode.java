package curewindow.guide;

import com.vladsch.flexmark.util.ast.DoNotDecorate;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.sequence.BasedSequence;

/** A value such as {@code (= shop.name =)}. */
final class ValueNode extends Node implements DoNotDecorate {

  private final BasedSequence name;

  /** A value whose name is null where the mark is not closed. */
  ValueNode(BasedSequence chars, BasedSequence name) {
    super(chars);
    this.name = name;
  }

  boolean closed() {
    return name != null;
  }

  String name() {
    return name.toString();
  }

  @Override
  public BasedSequence[] getSegments() {
    return EMPTY_SEGMENTS;
  }
}
