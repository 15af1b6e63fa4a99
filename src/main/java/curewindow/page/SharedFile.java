package curewindow.page;

import curewindow.problem.Problems;
import curewindow.shop.BodyType;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopLook;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.CRC32;

/**
 * What all customers' pages need alike, once for the site, so that each page has room for more
 * answers.
 *
 * @param name the file, at the top of the site
 * @param text the text of the file
 */
public record SharedFile(String name, String text) {

  /**
   * All there are.
   *
   * @param below the style of what stands below the first screen, and of pages on paper
   * @param script the script
   * @param cars the car of each body type, without what was fitted on it
   */
  record All(SharedFile below, SharedFile script, Map<BodyType, SharedFile> cars) {
    List<SharedFile> files() {
      return Stream.concat(Stream.of(below, script), cars.values().stream()).toList();
    }
  }

  /**
   * Reads all there are.
   *
   * @param files the shop folder laid over the program's own files
   * @param problems where it is said what is missing or cannot be read
   * @return the files
   */
  static All read(ShopFiles files, Problems problems) {
    String script = files.text(Templates.FOLDER + "/page.js", problems).orElse("");
    return new All(
        new SharedFile(
            "below.css", PageLook.style(files, PageLook.BELOW, ShopLook.NONE, problems) + "\n"),
        new SharedFile("page.js", PageTrim.script(script) + "\n"),
        Stream.of(BodyType.values())
            .collect(
                Collectors.toMap(
                    Function.identity(), CarOutline::file, (a, b) -> a, TreeMap::new)));
  }

  /** Where a customer's page finds it. */
  String href() {
    return "../../" + address(name, text.getBytes(StandardCharsets.UTF_8));
  }

  /** Another address for other bytes, so that no copy is stale; from the top of the site. */
  static String address(String name, byte[] bytes) {
    CRC32 sum = new CRC32();
    sum.update(bytes);
    return "%s?%08x".formatted(name, sum.getValue());
  }
}
