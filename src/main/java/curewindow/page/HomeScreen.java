package curewindow.page;

import curewindow.problem.Problems;
import curewindow.shop.ShopFiles;
import curewindow.told.JobView;

/**
 * What lets a phone keep a job's page on its home screen (W3C Web Application Manifest) and open it
 * without a network (W3C Service Workers).
 */
public final class HomeScreen {

  /** The manifest's file, beside the page. */
  public static final String MANIFEST = "care.webmanifest";

  /** The file of the script that keeps copies, at the top of the site, for all pages. */
  public static final String WORKER = "offline.js";

  private HomeScreen() {}

  /**
   * The script that keeps copies.
   *
   * @param files the shop folder laid over the program's own files
   * @param problems where it is said that it is missing or cannot be read
   * @return the text of the file
   */
  public static String worker(ShopFiles files, Problems problems) {
    return PageTrim.script(files.text(Templates.FOLDER + "/" + WORKER, problems).orElse("")) + "\n";
  }

  /**
   * What a home screen needs to know of a job's page.
   *
   * @param view the job
   * @return the text of the file
   */
  public static String manifest(JobView view) {
    String car = view.car();
    return "{"
        + ("\"name\":" + quoted(car + ", " + view.shop().name()))
        + (",\"short_name\":" + quoted(car))
        + (",\"lang\":" + quoted(view.words().language()))
        + (",\"dir\":" + quoted(view.words().rightToLeft() ? "rtl" : "ltr"))
        + ",\"start_url\":\"./\",\"scope\":\"./\",\"display\":\"standalone\""
        + ",\"background_color\":\"#f3f2ea\",\"theme_color\":\"#f3f2ea\",\"icons\":["
        + (icon(180) + "," + icon(512))
        + "]}\n";
  }

  private static String icon(int size) {
    return "{\"src\":\"../../icon-%d.png\",\"sizes\":\"%<dx%<d\",\"type\":\"image/png\"}"
        .formatted(size);
  }

  /** A JSON string (RFC 8259 section 7), which is one of JavaScript, too. */
  private static String quoted(String text) {
    StringBuilder out = new StringBuilder("\"");
    for (char c : text.toCharArray()) {
      boolean plain = c >= ' ' && c < 0x7F && c != '"' && c != '\\' && c != '<';
      out.append(plain ? String.valueOf(c) : "\\u%04x".formatted((int) c));
    }
    return out.append('"').toString();
  }
}
