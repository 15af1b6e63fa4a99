package curewindow.page;

import curewindow.shop.InPage;
import java.util.regex.Pattern;

/**
 * Takes out of a page what only its writers need: indents, empty lines, notes, and the quotes and
 * end tags that HTML can do without.
 */
final class PageTrim {

  private static final Pattern NOTE = Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL);
  private static final Spots KEPT = new Spots("<", "(?si)<(pre|textarea|style|script)\\b.*?</\\1>");

  /** Possessive, as going back would find nothing else. */
  private static final Spots TAG =
      new Spots(
          "<",
          "<[a-z][a-z0-9-]*+(?:\\s++[^\\s=<>\"/][^\\s=<>\"]*+(?:=(?:\"[^\"]*+\"|'[^']*+'))?+)*+\\s*+/?+>");

  private static final Spots QUOTED = new Spots("=", "=\"([A-Za-z0-9\\p{L}_.:,#%+?&;-]+)\"");

  /** End tags that HTML takes as read before what follows them here (HTML standard, 13.1.2.4). */
  private static final Spots IMPLIED =
      new Spots(
          "</",
          "</(?:li>(?=\\s*(?:<li[ >]|</[uo]l>))"
              + "|p>(?=\\s*(?:<(?:p|ul|ol|h[1-6]|section|details|div)[ >]"
              + "|</(?:details|section|div|main|li)>))"
              + "|t[hd]>(?=\\s*(?:<t[hd][ >]|</tr>))"
              + "|tr>(?=\\s*(?:<tr[ >]|</t(?:body|head)>))"
              + "|d[td]>(?=\\s*(?:<d[td][ >]|</dl>)))");

  private PageTrim() {}

  static String style(String css) {
    return InPage.kept(lines(NOTE.matcher(css).replaceAll(""), ""));
  }

  /** Whole-line notes only, so that no text inside the script can be hurt. */
  static String script(String js) {
    return InPage.kept(lines(Pattern.compile("(?m)^\\s*//.*$").matcher(js).replaceAll(""), "\n"));
  }

  /** Leaves quotes and end tags away where HTML does not need them. */
  private static String terse(String html) {
    return TAG.replaced(IMPLIED.replaced(html, m -> ""), m -> bare(m.group()));
  }

  private static String bare(String tag) {
    boolean isBare = tag.indexOf('=') < 0 && !tag.endsWith("/>");
    if (isBare || tag.contains("='")) {
      return tag;
    }
    String bare =
        QUOTED.replaced(tag.replace(" hidden=\"hidden\"", " hidden"), m -> "=" + m.group(1));
    return bare.endsWith("/>") && !bare.endsWith("\"/>")
        ? bare.substring(0, bare.length() - 2) + " />"
        : bare;
  }

  static String html(String html) {
    StringBuilder out = new StringBuilder();
    int[] at = {0};
    KEPT.each(
        html,
        kept -> {
          out.append(terse(lines(html.substring(at[0], kept.start()), "\n")))
              .append('\n')
              .append(kept.group());
          at[0] = kept.end();
        });
    String rest = terse(lines(html.substring(at[0]), "\n"));
    return out.append(at[0] > 0 && !rest.isEmpty() ? "\n" : "")
        .append(rest)
        .append('\n')
        .toString();
  }

  private static String lines(String text, String between) {
    return String.join(
        between, text.lines().map(String::strip).filter(line -> !line.isEmpty()).toList());
  }
}
