package curewindow.guide;

import com.vladsch.flexmark.parser.block.AbstractBlockParser;
import com.vladsch.flexmark.parser.block.AbstractBlockParserFactory;
import com.vladsch.flexmark.parser.block.BlockContinue;
import com.vladsch.flexmark.parser.block.BlockParserFactory;
import com.vladsch.flexmark.parser.block.BlockStart;
import com.vladsch.flexmark.parser.block.CustomBlockParserFactory;
import com.vladsch.flexmark.parser.block.MatchedBlockParser;
import com.vladsch.flexmark.parser.block.ParserState;
import com.vladsch.flexmark.util.ast.Block;
import com.vladsch.flexmark.util.data.DataHolder;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.util.Optional;
import java.util.Set;

/** Recognises the lines that open, divide and close a clause. */
final class ClauseMarkParser extends AbstractBlockParser {

  private static final char SIGN = '?';

  private final ClauseMark mark;

  private ClauseMarkParser(ClauseMark mark) {
    this.mark = mark;
  }

  @Override
  public Block getBlock() {
    return mark;
  }

  @Override
  public BlockContinue tryContinue(ParserState state) {
    return BlockContinue.none();
  }

  @Override
  public void closeBlock(ParserState state) {
    // A mark is one line, so nothing is gathered that would have to be finished.
  }

  /** Makes the recogniser for a parser. */
  static final class Maker implements CustomBlockParserFactory {

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

    @Override
    public BlockParserFactory apply(DataHolder options) {
      return new Starts(options);
    }
  }

  private static final class Starts extends AbstractBlockParserFactory {

    Starts(DataHolder options) {
      super(options);
    }

    @Override
    public BlockStart tryStart(ParserState state, MatchedBlockParser matched) {
      if (state.getIndent() >= 4) {
        return BlockStart.none();
      }
      BasedSequence line = state.getLine();
      BasedSequence text = line.subSequence(state.getNextNonSpaceIndex(), line.length());
      if (!Marked.opens(text, SIGN)
          || text.length() == Marked.MARK
          || text.charAt(Marked.MARK) == ')') {
        return BlockStart.none();
      }
      return BlockStart.of(new ClauseMarkParser(read(text.trimEnd()))).atIndex(line.length());
    }

    private static ClauseMark read(BasedSequence text) {
      Optional<BasedSequence> closed = Marked.inner(text, SIGN);
      BasedSequence inner = closed.orElseGet(() -> text.subSequence(Marked.MARK).trim());
      ClauseMark.Kind kind = ClauseMark.Kind.OPEN;
      if (closed.isEmpty()) {
        kind = ClauseMark.Kind.BROKEN;
      } else if (inner.toString().equals("else")) {
        kind = ClauseMark.Kind.ELSE;
      } else if (inner.toString().equals("end")) {
        kind = ClauseMark.Kind.END;
      }
      return new ClauseMark(kind, text, inner);
    }
  }
}
