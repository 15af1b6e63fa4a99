package curewindow.guide;

import com.vladsch.flexmark.ast.HtmlBlockBase;
import com.vladsch.flexmark.ast.HtmlCommentBlock;
import com.vladsch.flexmark.ast.HtmlInlineBase;
import com.vladsch.flexmark.ast.HtmlInlineComment;
import com.vladsch.flexmark.util.ast.Node;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Makes HTML written in a guide harmless before rendering: what may not stand on a page goes, and
 * what stays is closed where it was opened, so that it can never reach across the edge of a clause.
 */
final class RawHtml {

  private static final Pattern TAG = Pattern.compile("^<(/?)([A-Za-z][A-Za-z0-9-]*)[\\s/>]");
  private static final Pattern PICTURE =
      Pattern.compile("<(img|picture|svg|video|object|embed|iframe)\\b", Pattern.CASE_INSENSITIVE);

  private final GuideSource source;

  RawHtml(GuideSource source) {
    this.source = source;
  }

  /** Replaces all HTML of a document. */
  void makeSafe(Node document) {
    List<HtmlBlockBase> blocks = new ArrayList<>();
    Set<Node> inlineParents = new LinkedHashSet<>();
    Tree.walk(
        document,
        (node, depth) -> {
          if (node instanceof HtmlBlockBase block) {
            blocks.add(block);
          } else if (node instanceof HtmlInlineBase) {
            inlineParents.add(node.getParent());
          }
        });
    blocks.forEach(this::block);
    inlineParents.forEach(this::balance);
  }

  private void block(HtmlBlockBase block) {
    String html = block.getContentChars().toString();
    if (!(block instanceof HtmlCommentBlock)) {
      picture(block, html);
      if (!SafeHtml.passes(html)) {
        removed(block);
      }
    }
    block.insertBefore(new CleanHtml(block.getChars(), SafeHtml.clean(html)));
    block.unlink();
  }

  private void balance(Node parent) {
    Deque<Node> open = new ArrayDeque<>();
    List<Node> dropped = new ArrayList<>();
    for (Node child : parent.getChildren()) {
      if (child instanceof HtmlInlineBase tag && !balances(tag, open)) {
        dropped.add(tag);
      }
    }
    dropped.addAll(open);
    for (Node tag : dropped) {
      if (!(tag instanceof HtmlInlineComment)) {
        picture(tag, tag.getChars().toString());
        removed(tag);
      }
      tag.unlink();
    }
  }

  private boolean balances(HtmlInlineBase tag, Deque<Node> open) {
    Matcher found = TAG.matcher(tag.getChars());
    if (!found.find() || !SafeHtml.allowsInline(found.group(2))) {
      return false;
    }
    String name = found.group(2).toLowerCase(Locale.ROOT);
    if (name.equals("br")) {
      return found.group(1).isEmpty();
    }
    if (found.group(1).isEmpty()) {
      if (!SafeHtml.passes(tag.getChars().toString())) {
        removed(tag);
      }
      open.push(tag);
      return true;
    }
    if (open.isEmpty() || !nameOf(open.peek()).equals(name)) {
      return false;
    }
    open.pop();
    return true;
  }

  private static String nameOf(Node tag) {
    Matcher found = TAG.matcher(tag.getChars());
    return found.find() ? found.group(2).toLowerCase(Locale.ROOT) : "";
  }

  private void picture(Node node, String html) {
    if (PICTURE.matcher(html).find()) {
      GuideCheck.picture(source, node.getStartOffset());
    }
  }

  private void removed(Node node) {
    source.notice(
        "html-removed",
        node.getStartOffset(),
        "some of the HTML here may not stand on a page and is left out",
        "use Markdown, or close the element in the same paragraph if it is only not closed");
  }
}
