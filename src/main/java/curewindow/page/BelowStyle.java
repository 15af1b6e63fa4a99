package curewindow.page;

import curewindow.problem.Problems;
import curewindow.shop.ShopFiles;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

/**
 * The style of what stands below the first screen of customers' pages, and of them on paper: one
 * file for all, so that each page has room for more answers. A page is right without it up to
 * there.
 */
public final class BelowStyle {

  /** The file, at the top of the site. */
  public static final String FILE = "below.css";

  private BelowStyle() {}

  /**
   * The style sheet.
   *
   * @param files the shop folder laid over the program's own files
   * @param problems where it is said what is missing or cannot be read
   * @return the text of the file
   */
  public static String text(ShopFiles files, Problems problems) {
    return Look.style(files, Look.BELOW, problems) + "\n";
  }

  /** Where a customer's page finds it: another address for another text, so that none is stale. */
  static String href(String text) {
    CRC32 sum = new CRC32();
    sum.update(text.getBytes(StandardCharsets.UTF_8));
    return "../../%s?%08x".formatted(FILE, sum.getValue());
  }
}
