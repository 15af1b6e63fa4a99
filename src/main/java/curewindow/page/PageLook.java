package curewindow.page;

import curewindow.problem.Problems;
import curewindow.shop.Sha256;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopLook;
import java.util.Base64;
import java.util.List;

/**
 * The style and script that stand inside a page, and the content security policy that allows
 * exactly these two by their hashes (W3C Content Security Policy Level 3), and of other files those
 * that the page asks for.
 *
 * @param style the style sheet
 * @param script the script; may be empty
 * @param policy the policy
 */
record PageLook(String style, String script, String policy) {

  /** The style sheets of a customer's first view, in the order in which they stand in the page. */
  static final List<String> CUSTOMER = List.of("page", "customer", "dates");

  /** Those of all that stands below it, and of paper, once for all customers' pages. */
  static final List<String> BELOW =
      List.of("late", "text", "normal", "car", "print", "customer-print");

  /** Those of the pages for anyone. */
  static final List<String> OPEN = List.of("page", "text", "print", "public");

  /**
   * A customer's page: what its first screen needs. It takes its script and the rest of its style
   * from {@link SharedFile}, and what lets a phone keep it, from its own host alone.
   */
  static PageLook customer(ShopFiles files, ShopLook house, Problems problems) {
    PageLook look = of(style(files, CUSTOMER, house, problems), "");
    return new PageLook(
        look.style(),
        look.script(),
        look.policy()
            .replace("style-src", "style-src 'self'")
            .replace("script-src 'none'", "script-src 'self'")
            .replace(
                "img-src data:", "img-src 'self' data:; manifest-src 'self'; worker-src 'self'"));
  }

  /** Style sheets one after the other; that of all pages is followed by what is the shop's own. */
  static String style(ShopFiles files, List<String> names, ShopLook house, Problems problems) {
    StringBuilder css = new StringBuilder();
    for (String name : names) {
      css.append(files.text(Templates.FOLDER + "/" + name + ".css", problems).orElse(""))
          .append('\n')
          .append(name.equals("page") ? HouseStyle.of(house) : "");
    }
    return PageTrim.style(css.toString());
  }

  static PageLook of(String style, String script) {
    return new PageLook(
        style,
        script,
        "default-src 'none'; style-src "
            + hash(style)
            + "; script-src "
            + (script.isEmpty() ? "'none'" : hash(script))
            + "; img-src data:; base-uri 'none'; form-action 'none'");
  }

  private static String hash(String text) {
    return "'sha256-" + Base64.getEncoder().encodeToString(Sha256.of(text)) + "'";
  }
}
