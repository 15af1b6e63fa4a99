package curewindow.guide;

import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.util.ast.Node;
import curewindow.shop.TurningSigns;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jsoup.nodes.Element;

/** Reads one guide. */
final class GuideReader {

  private static final String TITLE_FIX = "put a line \"# Title\" first, outside of clauses";

  private final KnownNames known;
  private final GuideMarkdown markdown = new GuideMarkdown(true);

  GuideReader(KnownNames known) {
    this.known = known;
  }

  /** Reads a guide, reporting what is wrong with it. */
  Optional<Guide> read(String id, String language, GuideSource source) {
    GuideLimits.check(source);
    TurningSigns.first(source.text())
        .ifPresent(
            at ->
                source.error(
                    "turning-sign",
                    at,
                    "an invisible sign stands here that turns the direction of the text",
                    TurningSigns.FIX));
    if (source.hasErrors()) {
      return Optional.empty();
    }
    try {
      return readWithinLimits(id, language, source);
    } catch (StackOverflowError e) {
      // Some patterns of the Markdown library recurse for every character of a link's title.
      GuideCheck.tooDeep(source, 0);
      return Optional.empty();
    }
  }

  private Optional<Guide> readWithinLimits(String id, String language, GuideSource source) {
    Node document = markdown.parse(source.text());
    ClauseTree clauses = new ClauseTree(known, source);
    clauses.build(document);
    new QuestionCheck(clauses.openings(), source).check(document);
    GuideCheck check = new GuideCheck(known, source);
    check.check(document);
    Optional<Heading> heading = title(document, source);
    if (source.hasErrors()) {
      return Optional.empty();
    }
    new RawHtml(source).makeSafe(document);
    if (source.hasErrors()) {
      return Optional.empty();
    }
    String title = SafeHtml.cleanGuide(markdown.render(heading.orElseThrow())).text();
    heading.orElseThrow().unlink();
    Element body = SafeHtml.cleanGuide(markdown.render(document));
    List<Piece> pieces = PieceReader.read(body, clauses.openings());
    return Optional.of(
        new Guide(id, language, title.strip(), new ArrayList<>(check.values()), pieces));
  }

  private static Optional<Heading> title(Node document, GuideSource source) {
    for (Node node : document.getChildren()) {
      if (node instanceof Heading heading && heading.getLevel() == 1) {
        checkTitle(heading, source);
        return Optional.of(heading);
      }
    }
    source.error("no-title", "the guide has no title", TITLE_FIX);
    return Optional.empty();
  }

  private static void checkTitle(Heading heading, GuideSource source) {
    if (heading.getText().isBlank()) {
      source.error("no-title", heading.getStartOffset(), "the title is empty", TITLE_FIX);
    }
    Tree.walk(
        heading,
        (node, depth) -> {
          if (node instanceof ValueNode) {
            source.error(
                "value-in-title",
                node.getStartOffset(),
                "the title cannot have values, as it is the same for every job",
                "move the value into the text");
          }
        });
  }
}
