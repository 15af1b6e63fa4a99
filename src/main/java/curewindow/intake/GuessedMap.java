package curewindow.intake;

import curewindow.problem.Problem;
import curewindow.shop.ImportMaps;
import java.util.List;
import java.util.Objects;

/**
 * A first map, as it was guessed from a table.
 *
 * @param name the name of the map
 * @param text the text of its file
 * @param looks the lines to look at: an error where nothing could be guessed, a notice where a
 *     guess may be wrong
 */
public record GuessedMap(String name, String text, List<Problem> looks) {

  /** Copies the list. */
  public GuessedMap {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(text, "text");
    looks = List.copyOf(looks);
  }

  /**
   * Where it is kept.
   *
   * @return the file, relative to the shop folder
   */
  public String file() {
    return ImportMaps.file(name);
  }
}
