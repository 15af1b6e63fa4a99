package curewindow.guide;

import com.vladsch.flexmark.util.ast.Block;
import com.vladsch.flexmark.util.sequence.BasedSequence;

/** A block of HTML written in a guide, cleaned and with every element closed. */
final class CleanHtml extends Block {

  private final String html;

  CleanHtml(BasedSequence chars, String html) {
    super(chars);
    this.html = html;
  }

  String html() {
    return html;
  }

  @Override
  public BasedSequence[] getSegments() {
    return EMPTY_SEGMENTS;
  }
}
