package curewindow.guide;

import com.vladsch.flexmark.util.ast.DoNotDecorate;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.util.Optional;

/** A value such as {@code (= shop.name =)}. */
final class ValueNode extends Node implements DoNotDecorate {

  private final Optional<BasedSequence> name;

  /** A value whose name is empty where the mark is not closed. */
  ValueNode(BasedSequence chars, Optional<BasedSequence> name) {
    super(chars);
    this.name = name;
  }

  boolean closed() {
    return name.isPresent();
  }

  String name() {
    return name.orElseThrow().toString();
  }

  @Override
  public BasedSequence[] getSegments() {
    return EMPTY_SEGMENTS;
  }
}
