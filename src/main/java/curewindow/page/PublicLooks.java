package curewindow.page;

import curewindow.problem.Problems;
import curewindow.search.SearchScript;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopLook;

/**
 * The looks of the pages for anyone. Only the index and the guides have a script; all may send
 * their visitors' question to the index, which is the one form there is.
 *
 * @param still of all pages but these
 * @param reading of a guide that quotes days, where a script puts dates in
 * @param finding of the index
 * @param engine what searches, with the library's licence
 */
record PublicLooks(PageLook still, PageLook reading, PageLook finding, String engine) {

  static PublicLooks read(ShopFiles files, ShopLook house, Problems problems) {
    String find = script("find", files, problems);
    String style = PageLook.style(files, PageLook.OPEN, house, problems);
    return new PublicLooks(
        asking(PageLook.of(style, "")),
        asking(PageLook.of(style, script("guide", files, problems))),
        asking(finding(PageLook.of(style, find))),
        SearchScript.read(files, problems).map(PageTrim::script).orElse(""));
  }

  private static String script(String name, ShopFiles files, Problems problems) {
    return PageTrim.script(files.text(Templates.FOLDER + "/" + name + ".js", problems).orElse(""));
  }

  /**
   * A script that the policy allows by its hash may load another one (Content Security Policy Level
   * 3, 8.2); browsers that do not know of this take it from the page's own host.
   */
  private static PageLook finding(PageLook look) {
    return new PageLook(
        look.style(),
        look.script(),
        look.policy().replaceFirst("script-src [^;]*", "$0 'strict-dynamic' 'self'"));
  }

  /** Asks the index, shows the site's icon, and lets an audit read {@code robots.txt}. */
  private static PageLook asking(PageLook look) {
    return new PageLook(
        look.style(),
        look.script(),
        look.policy()
            .replace("form-action 'none'", "form-action 'self'; connect-src 'self'")
            .replace("img-src data:", "img-src 'self' data:"));
  }

  String searchScript() {
    return finding.script();
  }
}
