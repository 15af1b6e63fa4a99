package curewindow.guide;

import com.vladsch.flexmark.ext.tables.TablesExtension;
import com.vladsch.flexmark.html.HtmlRenderer;
import com.vladsch.flexmark.html.HtmlWriter;
import com.vladsch.flexmark.html.renderer.NodeRenderer;
import com.vladsch.flexmark.html.renderer.NodeRendererContext;
import com.vladsch.flexmark.html.renderer.NodeRenderingHandler;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.data.DataHolder;
import com.vladsch.flexmark.util.data.MutableDataHolder;
import com.vladsch.flexmark.util.data.MutableDataSet;
import com.vladsch.flexmark.util.misc.Extension;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Markdown as guides use it: CommonMark, tables, clauses and values. Rendering keeps clauses and
 * values as elements of our own, to be settled for each job later. Keeps nothing of what it reads.
 */
final class GuideMarkdown {

  /**
   * The element that a clause becomes; its attribute {@code data-clause} is the clause's number.
   */
  static final String CLAUSE = "curewindow-clause";

  /** The element that a branch of a clause becomes. */
  static final String BRANCH = "curewindow-branch";

  /** The element that a value becomes; its attribute {@code data-value} is the value's name. */
  static final String VALUE = "curewindow-value";

  private final Parser parser;
  private final HtmlRenderer renderer;

  /**
   * A parser and renderer.
   *
   * @param tables whether tables are understood, which plain CommonMark does not
   */
  GuideMarkdown(boolean tables) {
    List<Extension> extensions = new ArrayList<>(List.of(new ClausesAndValues()));
    if (tables) {
      extensions.add(TablesExtension.create());
    }
    DataHolder options = options();
    parser = Parser.builder(options).extensions(extensions).build();
    renderer = HtmlRenderer.builder(options).extensions(extensions).build();
  }

  /** The settings that make the library follow the published specification most closely. */
  static DataHolder options() {
    return new MutableDataSet().set(HtmlRenderer.PERCENT_ENCODE_URLS, true).toImmutable();
  }

  Node parse(String text) {
    return parser.parse(text);
  }

  /** The HTML of a node, not yet cleaned. */
  String render(Node node) {
    return renderer.render(node);
  }

  private static final class ClausesAndValues
      implements Parser.ParserExtension, HtmlRenderer.HtmlRendererExtension {

    @Override
    public void parserOptions(MutableDataHolder options) {
      // The settings are those of options().
    }

    @Override
    public void rendererOptions(MutableDataHolder options) {
      // The settings are those of options().
    }

    @Override
    public void extend(Parser.Builder builder) {
      builder.customBlockParserFactory(new ClauseMarkParser.Maker());
      builder.customInlineParserExtensionFactory(new ValueParser.Maker());
    }

    @Override
    public void extend(HtmlRenderer.Builder builder, String rendererType) {
      builder.nodeRendererFactory(settings -> new Rendering());
    }
  }

  private static final class Rendering implements NodeRenderer {

    @Override
    public Set<NodeRenderingHandler<?>> getNodeRenderingHandlers() {
      return Set.of(
          new NodeRenderingHandler<>(ClauseNode.class, this::clause),
          new NodeRenderingHandler<>(ClauseNode.Branch.class, this::branch),
          new NodeRenderingHandler<>(ValueNode.class, this::value),
          new NodeRenderingHandler<>(CleanHtml.class, this::cleanHtml));
    }

    private void clause(ClauseNode node, NodeRendererContext context, HtmlWriter html) {
      html.line();
      html.raw("<" + CLAUSE + " data-clause=\"" + node.number() + "\">");
      context.renderChildren(node);
      html.raw("</" + CLAUSE + ">");
      html.line();
    }

    private void branch(ClauseNode.Branch node, NodeRendererContext context, HtmlWriter html) {
      html.raw("<" + BRANCH + ">");
      html.line();
      context.renderChildren(node);
      html.raw("</" + BRANCH + ">");
    }

    private void value(ValueNode node, NodeRendererContext context, HtmlWriter html) {
      html.raw("<" + VALUE + " data-value=\"" + node.name() + "\"></" + VALUE + ">");
    }

    private void cleanHtml(CleanHtml node, NodeRendererContext context, HtmlWriter html) {
      html.line();
      html.raw(node.html());
      html.line();
    }
  }
}
