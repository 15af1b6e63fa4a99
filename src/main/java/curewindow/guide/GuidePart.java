package curewindow.guide;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.parser.Parser;

/**
 * A part of a guide that a link can lead to: a heading with what stands under it, up to the next
 * heading.
 *
 * @param id the name of its place in the page, unique in the guide: {@code s-} and the words of the
 *     heading; empty for what stands before the first heading
 * @param level the heading's level, 2 to 6; 0 for what stands before the first heading
 * @param title the heading as plain text
 * @param heading the heading's own HTML; empty for what stands before the first heading
 * @param body the HTML under it; empty where another heading follows at once
 * @param text the same as plain text
 */
public record GuidePart(
    String id, int level, String title, String heading, String body, String text) {

  private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}\\p{M}]+");
  private static final int ID_LENGTH = 60;

  /** Refuses missing parts. */
  public GuidePart {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(heading, "heading");
    Objects.requireNonNull(body, "body");
    Objects.requireNonNull(text, "text");
  }

  /**
   * The parts of a guide.
   *
   * @param html what {@link Guide#html} gave
   * @return the parts in their order; together they are the whole guide
   */
  public static List<GuidePart> of(String html) {
    Element body = Parser.parseBodyFragment(html, "").body();
    body.ownerDocument().outputSettings().prettyPrint(false);
    List<GuidePart> parts = new ArrayList<>();
    Set<String> taken = new HashSet<>();
    Element heading = null;
    List<Node> under = new ArrayList<>();
    for (Node node : body.childNodes()) {
      if (node instanceof Element element && level(element) > 0) {
        add(parts, heading, under, taken);
        heading = element;
        under.clear();
      } else {
        under.add(node);
      }
    }
    add(parts, heading, under, taken);
    return parts;
  }

  private static void add(
      List<GuidePart> parts, Element heading, List<Node> under, Set<String> taken) {
    StringBuilder html = new StringBuilder();
    StringBuilder text = new StringBuilder();
    for (Node node : under) {
      html.append(node.outerHtml());
      text.append(node instanceof Element element ? element.text() + " " : "");
    }
    String body = html.toString().strip();
    String plain = text.toString().strip();
    if (heading != null) {
      String title = heading.text();
      String id = heading.id().isEmpty() ? fresh(title, taken) : heading.id();
      parts.add(new GuidePart(id, level(heading), title, heading.html(), body, plain));
    } else if (!body.isEmpty()) {
      parts.add(new GuidePart("", 0, "", "", body, plain));
    }
  }

  private static String fresh(String title, Set<String> taken) {
    String words = BETWEEN.matcher(title.toLowerCase(Locale.ROOT)).replaceAll("-");
    String name = "s-" + words.replaceAll("^-|-$", "");
    if (name.length() > ID_LENGTH) {
      name = name.substring(0, Math.max(2, name.lastIndexOf('-', ID_LENGTH)));
    }
    String id = name;
    for (int i = 2; !taken.add(id); i++) {
      id = name + "-" + i;
    }
    return id;
  }

  private static int level(Element element) {
    String name = element.normalName();
    boolean heading = name.matches("h[1-6]");
    return heading ? name.charAt(1) - '0' : 0;
  }

  /**
   * The part as it stands in a page, its heading with the id.
   *
   * @return HTML
   */
  public String html() {
    return level == 0
        ? body
        : "<h" + level + " id=\"" + id + "\">" + heading + "</h" + level + ">\n" + body;
  }
}
