package curewindow.guide;

import com.vladsch.flexmark.ast.AutoLink;
import com.vladsch.flexmark.ast.Code;
import com.vladsch.flexmark.ast.FencedCodeBlock;
import com.vladsch.flexmark.ast.HtmlBlockBase;
import com.vladsch.flexmark.ast.HtmlInlineBase;
import com.vladsch.flexmark.ast.Image;
import com.vladsch.flexmark.ast.ImageRef;
import com.vladsch.flexmark.ast.Link;
import com.vladsch.flexmark.ast.LinkRef;
import com.vladsch.flexmark.ast.Reference;
import com.vladsch.flexmark.ast.Text;
import com.vladsch.flexmark.util.ast.Node;
import curewindow.words.Quantity;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reports what a guide may not contain, and gathers the values it uses. */
final class GuideCheck {

  /** The deepest nesting of a guide; a list and a clause count twice, as each has parts. */
  static final int MAX_DEPTH = 100;

  private static final Pattern CLAUSE_IN_TEXT = Pattern.compile("(?<!\\\\)\\(\\?[ \\tA-Za-z]");
  private static final Pattern CLAUSE_LINE = Pattern.compile("(?m)^[ \\t>]*\\(\\?[^)]");
  private static final Pattern VALUE = Pattern.compile("\\(=[^\\r\\n]{0,200}?=\\)");
  private static final Pattern IN_LINK = Pattern.compile("(\\]\\([^()\\s]*|<[A-Za-z]+:)$");

  private final KnownNames known;
  private final GuideSource source;
  private final Set<String> values = new LinkedHashSet<>();
  private boolean tooDeep;

  GuideCheck(KnownNames known, GuideSource source) {
    this.known = known;
    this.source = source;
  }

  /** Checks a parsed guide. */
  void check(Node document) {
    Tree.walk(document, this::node);
  }

  /** The names of the values met, in the order of the text. */
  Set<String> values() {
    return values;
  }

  private void node(Node node, int depth) {
    if (depth > MAX_DEPTH && !tooDeep) {
      tooDeep = true;
      tooDeep(source, node.getStartOffset());
    }
    if (node instanceof ValueNode value) {
      value(value);
    } else if (node instanceof Text && !isCode(node.getParent())) {
      text(node);
    } else if (node instanceof HtmlBlockBase || node instanceof HtmlInlineBase) {
      html(node);
    } else {
      linkOrPicture(node);
    }
  }

  private void value(ValueNode value) {
    int at = value.getStartOffset();
    if (!value.closed()) {
      source.error(
          "unclosed-value",
          at,
          "the value opened with \"(=\" is not closed in the same line",
          "close it with \"=)\", or write \"\\(=\" for an ordinary bracket");
    } else if (isKnown(value.name(), at)) {
      values.add(value.name());
      String before = source.text().substring(Math.max(0, at - 200), at);
      if (IN_LINK.matcher(before).find()) {
        valueInAddress(at);
      }
    }
  }

  private boolean isKnown(String name, int at) {
    if (Quantity.isMeant(name)) {
      boolean good = Quantity.of(name).isPresent();
      if (!good) {
        source.error(
            "unknown-quantity",
            at,
            "the quantity \"" + name + "\" cannot be read",
            "write it as 0.9 m or 1 to 4 mm, in one of " + String.join(", ", Quantity.units()));
      }
      return good;
    }
    boolean good = known.hasValue(name);
    if (!good) {
      source.error(
          "unknown-value",
          at,
          "the value \"" + name + "\" is not known",
          GuideSource.suggestion(name, known.values()));
    }
    return good;
  }

  private void valueInAddress(int at) {
    source.error(
        "value-in-link",
        at,
        "a value cannot be part of a link's address",
        "write the value as text beside the link");
  }

  private static boolean isCode(Node node) {
    return node instanceof Code || node instanceof FencedCodeBlock;
  }

  private void text(Node node) {
    Matcher found = CLAUSE_IN_TEXT.matcher(node.getChars());
    if (found.find()) {
      source.error(
          "clause-in-text",
          node.getStartOffset() + found.start(),
          "a clause's line stands alone, indented by at most three spaces",
          "put it on a line of its own, or write \"\\(?\" for an ordinary bracket");
    }
  }

  private void html(Node node) {
    String html = node.getChars().toString();
    Matcher value = VALUE.matcher(html);
    Matcher clause = CLAUSE_LINE.matcher(html);
    boolean inValue = value.find();
    if (inValue || clause.find()) {
      source.error(
          "in-html",
          node.getStartOffset() + (inValue ? value.start() : clause.start()),
          "values and clauses are not filled in inside HTML",
          "use Markdown here, or put an empty line between the HTML and the clause");
    }
  }

  private void linkOrPicture(Node node) {
    if (node instanceof Image || node instanceof ImageRef ref && ref.isDefined()) {
      picture(source, node.getStartOffset());
    } else if (node instanceof Link link) {
      address(node, link.getUrl().unescape());
    } else if (node instanceof AutoLink link) {
      String url = link.getUrl().toString();
      address(node, url.contains(":") ? url : "mailto:" + url);
    } else if (node instanceof LinkRef ref && ref.isDefined()) {
      Reference reference = ref.getReferenceNode(ref.getDocument());
      if (reference != null) {
        address(node, reference.getUrl().unescape());
      }
    }
  }

  private void address(Node node, String address) {
    if (VALUE.matcher(address).find()) {
      valueInAddress(node.getStartOffset());
    } else if (!SafeHtml.allowsLink(address)) {
      source.error(
          "link-address",
          node.getStartOffset(),
          "a guide cannot link to \"" + address + "\"",
          "use an address that starts with https:, http:, mailto:, tel: or #");
    }
  }

  /** Reports nesting that is too deep. */
  static void tooDeep(GuideSource source, int offset) {
    source.error(
        "too-deep",
        offset,
        "lists, quotes, clauses or emphasis are nested too deep here",
        "write it flatter");
  }

  /** Reports a picture. */
  static void picture(GuideSource source, int offset) {
    source.error(
        "picture",
        offset,
        "pictures are not supported in guides",
        "take the picture away and say it in words");
  }
}
