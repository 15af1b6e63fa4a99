package curewindow.guide;

import com.vladsch.flexmark.parser.InlineParser;
import com.vladsch.flexmark.parser.InlineParserExtension;
import com.vladsch.flexmark.parser.InlineParserExtensionFactory;
import com.vladsch.flexmark.parser.LightInlineParser;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Recognises values in running text. */
final class ValueParser implements InlineParserExtension {

  private static final int OPENING = 2;

  // The length is bounded, so that a line of many openings is still read in linear time.
  private static final Pattern VALUE =
      Pattern.compile("^\\(=[ \\t]*([^\\r\\n]{0,200}?)[ \\t]*=\\)");

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
    if (parser.peek(1) != '=') {
      return false;
    }
    int start = parser.getIndex();
    BasedSequence input = parser.getInput();
    Matcher found = parser.matcher(VALUE);
    parser.flushTextNode();
    if (found == null) {
      parser.setIndex(start + OPENING);
      parser.appendNode(new ValueNode(input.subSequence(start, start + OPENING), null));
    } else {
      BasedSequence name = input.subSequence(found.start(1), found.end(1));
      parser.appendNode(new ValueNode(input.subSequence(start, found.end()), name));
    }
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
