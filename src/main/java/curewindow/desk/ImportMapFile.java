package curewindow.desk;

import curewindow.intake.Intake;
import curewindow.intake.MapText;
import curewindow.problem.Problems;
import curewindow.shop.ImportMap;
import curewindow.shop.ImportMaps;
import curewindow.shop.Sha256;
import curewindow.shop.ShopFiles;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.Optional;

/**
 * The file of a map as the desk changes it. What a person wrote into it by hand is never lost: such
 * a map gets another name.
 *
 * @param name the map's name
 * @param text the text of its file; empty where there is none that can be read
 */
record ImportMapFile(String name, Optional<String> text) {

  /**
   * Which map is changed, and how its file stood.
   *
   * @param base its name; empty for a new one
   * @param version tells whether the file is still the same
   */
  record Draft(String base, String version) {

    static final Draft NEW = new Draft("", "");

    static Draft of(Request.Values form) {
      return new Draft(form.one("base"), form.one("version"));
    }

    /** The map as it is now; empty for a new one. */
    Optional<ImportMap> map(Path folder) {
      return ImportMaps.isName(base) ? ImportMapFile.of(folder, base).map() : Optional.empty();
    }
  }

  static ImportMapFile of(Path folder, String name) {
    Optional<String> text =
        Intake.hasMap(folder, name)
            ? new ShopFiles(folder).text(ImportMaps.file(name), new Problems())
            : Optional.empty();
    return new ImportMapFile(name, text);
  }

  /** A name that no map has yet, as near to one as can be. */
  static String free(Path folder, String name) {
    String free = name;
    for (int n = 2; Intake.hasMap(folder, free); n++) {
      String end = "-" + n;
      String begin = name.substring(0, Math.min(name.length(), 40 - end.length()));
      free = begin.replaceFirst("-+$", "") + end;
    }
    return free;
  }

  Optional<ImportMap> map() {
    return text.flatMap(t -> ImportMaps.unfinished(name, t));
  }

  /** Whether it can be written anew without losing anybody's notes. */
  boolean isOurs() {
    return text.filter(t -> MapText.isOurs(name, t)).isPresent();
  }

  Draft draft() {
    return new Draft(name, version());
  }

  private String version() {
    return HexFormat.of().formatHex(Sha256.of(text.orElse("")));
  }

  /**
   * Keeps a map.
   *
   * @param problems gets what is wrong with it
   * @return false where it is wrong, or another map has its name
   */
  static boolean keep(Path folder, String name, ImportMap map, Draft draft, Problems problems)
      throws IOException {
    String text = MapText.of(map);
    if (ImportMaps.of(name, text, problems).isEmpty()) {
      return false;
    }
    ImportMapFile now = of(folder, name);
    if (now.text().equals(Optional.of(text))) {
      return true;
    }
    boolean mayChange = now.isOurs() && now.draft().equals(draft);
    boolean isThere = Intake.hasMap(folder, name);
    return (!isThere || mayChange) && Intake.keep(name, text, now.text(), folder);
  }
}
