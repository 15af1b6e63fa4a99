package curewindow.guide;

import com.vladsch.flexmark.parser.InlineParser;
import com.vladsch.flexmark.parser.InlineParserExtension;
import com.vladsch.flexmark.parser.InlineParserExtensionFactory;
import com.vladsch.flexmark.parser.LightInlineParser;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.util.Set;

/** Recognises values in running text. */
final class ValueParser implements InlineParserExtension {

  private static final char SIGN = '=';

  // The length is bounded, so that a line of many openings is still read in linear time.
  private static final int LONGEST = 204;

  @Override
  public void finalizeDocument(InlineParser parser) {
    // Values need nothing from the rest of the document.
  }

  @Override
  public void finalizeBlock(InlineParser parser) {
    // Values need nothing from the rest of the block.
  }

  @Override
  public boolean parse(LightInlineParser parser) {
    int start = parser.getIndex();
    BasedSequence input = parser.getInput();
    BasedSequence rest = input.subSequence(start, Math.min(start + LONGEST, input.length()));
    if (!Marked.opens(rest, SIGN)) {
      return false;
    }
    BasedSequence whole =
        Marked.first(rest, SIGN).orElseGet(() -> rest.subSequence(0, Marked.MARK));
    parser.flushTextNode();
    parser.setIndex(start + whole.length());
    parser.appendNode(new ValueNode(whole, Marked.inner(whole, SIGN)));
    return true;
  }

  /** Makes the recogniser for a parser. */
  static final class Maker implements InlineParserExtensionFactory {

    @Override
    public CharSequence getCharacters() {
      return "(";
    }

    @Override
    public InlineParserExtension apply(LightInlineParser parser) {
      return new ValueParser();
    }

    @Override
    public Set<Class<?>> getAfterDependents() {
      return null;
    }

    @Override
    public Set<Class<?>> getBeforeDependents() {
      return null;
    }

    @Override
    public boolean affectsGlobalScope() {
      return false;
    }
  }
}
