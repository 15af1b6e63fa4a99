package curewindow.guide;

import java.time.Instant;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.jsoup.nodes.Comment;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.parser.Parser;
import org.jsoup.safety.Cleaner;
import org.jsoup.safety.Safelist;
import org.jsoup.select.NodeFilter;

/** The HTML that may stand on a page, whoever wrote it. */
final class SafeHtml {

  private static final Set<String> INLINE =
      Set.of("a", "abbr", "br", "code", "em", "strong", "sub", "sup");
  private static final Set<String> LINKS = Set.of("http:", "https:", "mailto:", "tel:");

  private static final Pattern WORDS =
      Pattern.compile("[\\p{L}\\p{N}\\p{P}&&[^&]]++(?: [\\p{L}\\p{N}\\p{P}&&[^&]]++)*+");

  private SafeHtml() {}

  private static Safelist allowed() {
    return new Safelist()
        .addTags("h1", "h2", "h3", "h4", "h5", "h6", "p", "ul", "ol", "li", "blockquote", "pre")
        .addTags("table", "thead", "tbody", "tr", "th", "td", "hr")
        .addTags(INLINE.toArray(String[]::new))
        .addAttributes("a", "href", "title")
        .addProtocols("a", "href", "http", "https", "mailto", "tel", "#")
        .addAttributes("abbr", "title")
        .addAttributes("ol", "start")
        .addAttributes("th", "align")
        .addAttributes("td", "align");
  }

  private static Safelist allowedWithOurs() {
    return allowed()
        .addTags(GuideMarkdown.CLAUSE, GuideMarkdown.BRANCH, GuideMarkdown.VALUE)
        .addAttributes(GuideMarkdown.CLAUSE, "data-clause")
        .addAttributes(GuideMarkdown.VALUE, "data-value");
  }

  /** Whether an element may stand in running text. */
  static boolean allowsInline(String tag) {
    return INLINE.contains(tag.toLowerCase(Locale.ROOT));
  }

  /** Whether a link may lead to an address. */
  static boolean allowsLink(String address) {
    String lower = address.strip().toLowerCase(Locale.ROOT);
    return (lower.startsWith("#") && lower.indexOf(' ') < 0)
        || LINKS.stream().anyMatch(lower::startsWith);
  }

  /** Whether HTML from a guide passes whole, apart from comments. */
  static boolean passes(String html) {
    Document dirty = Parser.parseBodyFragment(html, "");
    dirty.filter(
        (Node node, int depth) ->
            node instanceof Comment
                ? NodeFilter.FilterResult.REMOVE
                : NodeFilter.FilterResult.CONTINUE);
    return new Cleaner(allowed()).isValid(dirty);
  }

  /** HTML from a guide with what is not allowed left out and every element closed. */
  static String clean(String html) {
    return body(html, allowed()).html();
  }

  /** What is read of HTML; words with single spaces are read as they stand. */
  static String text(String html) {
    return WORDS.matcher(html).matches() ? html : Parser.parseBodyFragment(html, "").text().strip();
  }

  /** What is read of HTML at a time: of the parts that change then, those that hold. */
  static String text(String html, Instant at) {
    Element body = Parser.parseBodyFragment(html, "").body();
    for (Element part : body.select("[data-to]")) {
      if (!isBefore(at, part.attr("data-to"))) {
        part.remove();
      }
    }
    for (Element part : body.select("[data-from]")) {
      if (isBefore(at, part.attr("data-from"))) {
        part.remove();
      }
    }
    return body.text().strip();
  }

  private static boolean isBefore(Instant at, String second) {
    return at.getEpochSecond() < Long.parseLong(second);
  }

  /** The rendered guide, cleaned, with the elements for clauses and values kept. */
  static Element cleanGuide(String html) {
    Element body = body(html, allowedWithOurs());
    for (Element link : body.select("a[href]")) {
      if (link.attr("href").toLowerCase(Locale.ROOT).startsWith("http")) {
        link.attr("rel", "noopener noreferrer");
      }
    }
    body.select("thead th").attr("scope", "col");
    return body;
  }

  private static Element body(String html, Safelist safelist) {
    Document clean = new Cleaner(safelist).clean(Parser.parseBodyFragment(html, ""));
    clean.outputSettings().prettyPrint(false);
    return clean.body();
  }
}
