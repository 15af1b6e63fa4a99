package curewindow.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;

/** Turns the cleaned HTML of a guide into pieces. */
final class PieceReader {

  private static final Set<String> GROUPS =
      Set.of("ul", "ol", "li", "blockquote", "table", "thead", "tbody", "tr");
  private static final Set<String> LEAVES =
      Set.of("p", "h1", "h2", "h3", "h4", "h5", "h6", "td", "th", "pre", "hr");
  private static final Set<String> VOID = Set.of("br", "hr");

  private final List<Opening> openings;

  private PieceReader(List<Opening> openings) {
    this.openings = openings;
  }

  /** The pieces of a guide's body. */
  static List<Piece> read(Element body, List<Opening> openings) {
    return new PieceReader(openings).blocks(body);
  }

  private List<Piece> blocks(Element parent) {
    List<Piece> blocks = new ArrayList<>();
    List<Piece> run = new ArrayList<>();
    for (Node node : parent.childNodes()) {
      String name = node.normalName();
      boolean block =
          name.equals(GuideMarkdown.CLAUSE) || GROUPS.contains(name) || LEAVES.contains(name);
      if (block) {
        endRun(run, blocks);
        blocks.add(block((Element) node));
      } else {
        inline(node, run);
      }
    }
    endRun(run, blocks);
    return blocks;
  }

  private static void endRun(List<Piece> run, List<Piece> blocks) {
    boolean blank = run.stream().allMatch(p -> p instanceof Piece.Fixed f && f.html().isBlank());
    if (!blank) {
      blocks.add(new Piece.Run(run));
    }
    run.clear();
  }

  private Piece block(Element element) {
    String name = element.normalName();
    if (name.equals(GuideMarkdown.CLAUSE)) {
      return clause(element);
    }
    Piece.Tag tag = new Piece.Tag(name, element.attributes().html());
    if (GROUPS.contains(name)) {
      return new Piece.Group(tag, blocks(element));
    }
    List<Piece> inline = new ArrayList<>();
    element.childNodes().forEach(child -> inline(child, inline));
    return new Piece.Leaf(tag, inline);
  }

  private Piece clause(Element clause) {
    List<Element> branches = clause.children();
    List<Piece> then = blocks(branches.get(0));
    List<Piece> otherwise = branches.size() > 1 ? blocks(branches.get(1)) : List.of();
    Opening opening = openings.get(Integer.parseInt(clause.attr("data-clause")));
    if (opening instanceof Opening.Timed timed) {
      return new Piece.Timed(timed.hold(), timed.set(), then, otherwise);
    }
    if (opening instanceof Opening.Question question) {
      return new Piece.Asked(question, then);
    }
    return opening instanceof Opening.If given
        ? new Piece.Choice(given.condition(), then, otherwise)
        : new Piece.Photo(then);
  }

  private void inline(Node node, List<Piece> out) {
    if (node instanceof TextNode) {
      fixed(node.outerHtml(), out);
    } else if (node.normalName().equals(GuideMarkdown.VALUE)) {
      out.add(new Piece.Slot(node.attr("data-value")));
    } else if (node instanceof Element element) {
      String name = element.normalName();
      fixed("<" + name + element.attributes().html() + ">", out);
      if (!VOID.contains(name)) {
        element.childNodes().forEach(child -> inline(child, out));
        fixed("</" + name + ">", out);
      }
    }
  }

  /** Adds fixed HTML, to the piece before where that is fixed too. */
  private static void fixed(String html, List<Piece> out) {
    int last = out.size() - 1;
    if (last >= 0 && out.get(last) instanceof Piece.Fixed before) {
      out.set(last, new Piece.Fixed(before.html() + html));
    } else {
      out.add(new Piece.Fixed(html));
    }
  }
}
