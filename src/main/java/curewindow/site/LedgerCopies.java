package curewindow.site;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Dated copies of the link ledger, in the folder {@code ledger-copies} of the shop folder: one for
 * each day on which it changed, the newest few.
 */
final class LedgerCopies {

  /** The folder, relative to the shop folder. */
  static final String FOLDER = "ledger-copies";

  private static final int KEPT = 7;
  private static final String BEGIN = "link-ledger-";
  private static final String END = ".csv";

  private LedgerCopies() {}

  /** The copy of a day, relative to the shop folder. */
  static String file(LocalDate day) {
    return FOLDER + "/" + BEGIN + day + END;
  }

  /**
   * The copies that there are.
   *
   * @param shop the shop folder
   * @return their names relative to it, the newest first
   * @throws IOException where the folder cannot be read
   */
  static List<String> of(Path shop) throws IOException {
    Path folder = shop.resolve(FOLDER);
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.startsWith(BEGIN) && name.endsWith(END))
          .sorted(Comparator.reverseOrder())
          .map(name -> FOLDER + "/" + name)
          .toList();
    }
  }

  /**
   * Removes old copies.
   *
   * @param shop the shop folder
   * @param newest the name of the copy that was just written
   * @param alone whether only that one stays, as the others know what has to be forgotten
   * @throws IOException where they cannot be removed
   */
  static void thin(Path shop, String newest, boolean alone) throws IOException {
    List<String> others = of(shop).stream().filter(copy -> !copy.equals(newest)).toList();
    for (String old :
        others.subList(alone ? 0 : Math.min(KEPT - 1, others.size()), others.size())) {
      Files.deleteIfExists(shop.resolve(old));
    }
  }
}
