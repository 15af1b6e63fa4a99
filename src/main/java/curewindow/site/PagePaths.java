package curewindow.site;

import java.net.URI;

/** Where a job's files stand in the site. */
final class PagePaths {

  /** The folder of all customers' pages; upper case, so that QR codes stay short. */
  static final String CUSTOMERS = "C/";

  /** What stands in it, so that no host lists the addresses of customers' pages there. */
  static final String NO_LIST = CUSTOMERS + "index.html";

  /** What many hosts of static files read beside a site: headers that they add to its files. */
  static final String HEADERS = "_headers";

  private PagePaths() {}

  /**
   * A job's folder.
   *
   * @param token the secret part of the address
   * @return relative to the site, ending in a slash
   */
  static String folder(String token) {
    return CUSTOMERS + token + "/";
  }

  /**
   * Asks search engines to stay away from all of a customer's files, as a calendar has no place to
   * say so itself.
   *
   * @param site the address of the site
   * @return the text of {@link #HEADERS}
   */
  static String headers(URI site) {
    return site.resolve(CUSTOMERS).getRawPath() + "*\n  X-Robots-Tag: noindex\n";
  }
}
