package curewindow.page;

import curewindow.problem.Problems;
import curewindow.shop.ShopFiles;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

/**
 * The style of what stands below the first screen of customers' pages, and of them on paper: one
 * file for all, so that each page has room for more answers. A page is right without it up to
 * there.
 *
 * @param text the text of the file
 * @param href where a customer's page finds it: another address for another text, so that none is
 *     stale
 */
public record BelowStyle(String text, String href) {

  /** The file, at the top of the site. */
  public static final String FILE = "below.css";

  /**
   * Reads the style sheets.
   *
   * @param files the shop folder laid over the program's own files
   * @param problems where it is said what is missing or cannot be read
   * @return the style
   */
  public static BelowStyle read(ShopFiles files, Problems problems) {
    String text = PageLook.style(files, PageLook.BELOW, problems) + "\n";
    CRC32 sum = new CRC32();
    sum.update(text.getBytes(StandardCharsets.UTF_8));
    return new BelowStyle(text, "../../%s?%08x".formatted(FILE, sum.getValue()));
  }
}
