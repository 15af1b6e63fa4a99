package curewindow.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlacesCommandTest {

  @TempDir Path dir;
  private String said = "";

  private int run(Object... args) {
    Typed typed = Typed.run(args);
    said = typed.said().replace("\r\n", "\n");
    return typed.code();
  }

  private void says(String pattern) {
    assertTrue(said.matches("(?s).*(^|\n)" + pattern + "(\n.*|$)"), said);
  }

  @Test
  void listsTheBuiltInPlacesWithTheirSource() {
    assertEquals(Exit.OK, run("places"));
    assertTrue(said.lines().count() > 208, said);
    says(" +id +name +country +north +east +height +source");
    says(" +seattle +Seattle, Washington +US +47\\.\\d\\d +-122\\.\\d\\d +\\d+ m +\\[\\d+\\]");
    says(" +\\[1\\] .*from memory.*");
  }

  /** Any part of a name, several words, without regard to capitals and accents. */
  @ParameterizedTest
  @CsvSource({
    "seatt, seattle",
    "PORTLAND maine, portland-maine",
    "maine land, portland-maine",
    "ZÜRICH, zurich",
    "switzer, zurich",
    "glasgow, glasgow",
    "Wien, vienna",
    "K\u00D8BENHAVN, copenhagen",
    "kobenhavn, copenhagen",
    "\u0627\u0644\u0642\u0627\u0647\u0631\u0629, cairo",
    "Ciudad de M\u00E9xico, mexico-city",
  })
  void findsPlacesByName(String typed, String id) {
    assertEquals(Exit.OK, run((Object[]) ("places " + typed).split(" ")), said);
    says("[0-9]+ of [0-9]+ built-in places:");
    says(" +" + id + " .*");
    assertFalse(said.contains("accra"), said);
    assertEquals(Exit.OK, run("places", typed), said);
    says(" +" + id + " .*");
  }

  @Test
  void saysWhatToDoWhereNoPlaceHasTheName() throws IOException {
    assertEquals(Exit.USAGE, run("places", "seatel"));
    says("No place is called seatel; did you mean seattle \\(Seattle, Washington\\)\\?");
    for (String typed : new String[] {"M\u00FCnchen", "munchen", "M\u00DCNCHEN", "Mu\u0308nchen"}) {
      assertEquals(Exit.USAGE, run("places", typed));
      says("No place is called " + typed + "; did you mean munich \\(Munich, Germany\\)\\?");
      says("Names are English, such as Munich for M\u00FCnchen\\.");
    }
    assertEquals(Exit.USAGE, run("places", "K\u00F6ln"));
    says("No place is called K\u00F6ln");
    assertEquals(Exit.USAGE, run("places", "xyzzyplugh"));
    says("No place is called xyzzyplugh");
    says("To find the nearest built-in place, give latitude and longitude, in degrees:");
    says("  places near LAT LON --height M");
    says("It also shows what to write into content/places for a place of your own\\.");
    Files.createDirectories(dir.resolve("content/places"));
    Files.writeString(
        dir.resolve("content/places/mill.yaml"),
        "name: Mill Creek\nlatitude: 47.86\nlongitude: -122.2\nheight: 110\n"
            + "zone: America/Los_Angeles\n");
    assertEquals(Exit.OK, run("places", "creek", "--shop", dir), said);
    says("1 place of the shop's own:");
    says(" +mill +Mill Creek +- .*");
    says("0 of [0-9]+ built-in places:");
  }

  @Test
  void showsTheNearestPlacesWithTheCorrectionForHeight() {
    assertEquals(Exit.OK, run("places", "near", "47.86", "-122.20", "--height", "1053"), said);
    assertTrue(said.startsWith("Built-in places nearest to 47.86, -122.2 at 1053 m:"), said);
    says(" +id +name +distance +height +correction\n +seattle +Seattle, Washington +\\d+ km .*K");
    double correction = number(" +seattle .* m +([-+][0-9.]+) K");
    double height = number(" +seattle .* km +([0-9]+) m.*");
    // ICAO standard atmosphere: 6.5 K per km.
    assertEquals(-6.5 * (1053 - height) / 1000, correction, 0.051);
    says(" +Jul +[0-9.]+ C +[0-9.]+ C +[0-9.]+ C +[0-9.]+ kWh/m2");
    says("longitude: -122.2\nheight: 1053\nzone: America/Los_Angeles");
  }

  @Test
  void saysThatAFarPlaceMayHaveAnotherClimate() {
    assertEquals(Exit.OK, run("places", "near", "-40", "-100"));
    assertTrue(said.contains("may be of another kind"), said);
    assertEquals(Exit.OK, run("places", "near", "47.86", "-122.20"));
    assertFalse(said.contains("may be of another kind"), said);
  }

  private double number(String pattern) {
    return said.lines()
        .filter(l -> l.matches(pattern))
        .map(l -> Double.valueOf(l.replaceFirst(pattern, "$1")))
        .findFirst()
        .orElseThrow();
  }

  /** London is seven metres lower than Glasgow, which is nothing to speak of. */
  @Test
  void nothingIsMinusZero() {
    assertEquals(Exit.OK, run("places", "near", "55.8", "-4.2"), said);
    says(" +london .* \\+0\\.0 K");
  }

  @Test
  void withoutHeightTheNearestPlacesHeightIsTaken() {
    assertEquals(Exit.OK, run("places", "near", "-33.9", "151.2"), said);
    assertTrue(said.contains("give yours with --height"), said);
    says(" +sydney .* \\+0\\.0 K");
    says("zone: Australia/Sydney");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "91 0|LAT is 91, outside -90 to 90",
        "0 -181|LON is -181, outside -180 to 180",
        "NaN 0|LAT is NaN",
        "10 10 --height 9000|--height is 9000, outside -450 to 6000",
        "north 10|'north' is not a double",
        "10|LON",
      })
  void whatCannotBeIsRefused(String args, String words) {
    String all = "places near " + args;
    assertEquals(Exit.USAGE, run((Object[]) all.split(" ")), said);
    assertTrue(said.contains(words), said);
    assertFalse(said.contains("\tat "), said);
  }

  @Test
  void listsTheShopsOwnPlacesAndWhatIsWrongWithThem() throws IOException {
    Path places = Files.createDirectories(dir.resolve("content/places"));
    Files.writeString(
        places.resolve("mill-creek.yaml"),
        "name: Mill Creek\nlatitude: 47.86\nlongitude: -122.2\nheight: 110\n"
            + "zone: America/Los_Angeles\n");
    Files.writeString(dir.resolve("shop.yaml"), "name: half a shop\n");
    assertEquals(Exit.OK, run("places", "--shop", dir), said);
    assertTrue(said.startsWith("1 place of the shop's own:"), said);
    says(" +mill-creek +Mill Creek +- +47\\.86 +-122\\.20 +110 m +\\[1\\]");
    says(" +\\[1\\] taken from Seattle, Washington, .*");
    Files.writeString(
        places.resolve("wrong.yaml"),
        "name: Wrong\nzone: America/Los_Angeles\nweather-file: weather/none.epw\n");
    assertEquals(Exit.PROBLEMS, run("places", "--shop", dir), said);
    says("content/places/wrong.yaml:3:15  there is no file weather/none.epw  .*");
    assertEquals(Exit.DISK, run("places", "--shop", dir.resolve("nowhere")));
  }

  @Test
  void saysTheSameUnderAnyLocale() {
    run("places", "near", "47.86", "-122.20");
    String root = said;
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      run("places", "near", "47.86", "-122.20");
    } finally {
      Locale.setDefault(before);
    }
    assertEquals(root, said);
  }
}
