package curewindow.site;

/** Where a job's files stand in the site. */
final class PagePaths {

  /** The folder of all customers' pages; upper case, so that QR codes stay short. */
  static final String CUSTOMERS = "C/";

  /** What stands in it, so that no host lists the addresses of customers' pages there. */
  static final String NO_LIST = CUSTOMERS + "index.html";

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
}
