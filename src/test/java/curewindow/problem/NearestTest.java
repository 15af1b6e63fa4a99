package curewindow.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NearestTest {

  private static final List<String> KNOWN = List.of("tint", "paint-film", "wrap", "hood", "roof");

  @Test
  void findsTheNameWithOneLetterWrong() {
    assertEquals(Optional.of("paint-film"), Nearest.to("paint-flim", KNOWN));
    assertEquals(Optional.of("tint"), Nearest.to("Tnit", KNOWN));
    assertEquals(Optional.of("paint-film"), Nearest.to("Paint Film", KNOWN));
  }

  @Test
  void saysNothingWhenNothingIsNear() {
    assertEquals(Optional.empty(), Nearest.to("ceramic", KNOWN));
    assertEquals(Optional.empty(), Nearest.to("hood", List.of()));
    assertEquals(Optional.empty(), Nearest.to("fr", List.of("ar", "en")));
    assertEquals(Optional.of("en"), Nearest.to("EN", List.of("ar", "en")));
  }

  @Test
  void aNameOfAnotherLanguageBeginsAlike() {
    List<String> cities = List.of("munich", "kolkata", "prague", "muscat");
    assertEquals(Optional.empty(), Nearest.to("M\u00FCnchen", cities));
    assertEquals(Optional.of("munich"), Nearest.remotely("M\u00FCnchen", cities));
    assertEquals(Optional.empty(), Nearest.remotely("K\u00F6ln", cities));
    assertEquals(Optional.empty(), Nearest.remotely("mun", cities));
  }

  @Test
  void amongManyShortNamesOnlyOneThatHardlyDiffersIsMeant() {
    List<String> cities = List.of("Lisbon", "London", "Gaza", "Los_Angeles");
    assertEquals(Optional.empty(), Nearest.closely("Glasgow", cities));
    assertEquals(Optional.empty(), Nearest.closely("Graz", cities));
    assertEquals(Optional.of("London"), Nearest.closely("Lodnon", cities));
    assertEquals(Optional.of("Los_Angeles"), Nearest.closely("Los Angelos", cities));
  }
}
