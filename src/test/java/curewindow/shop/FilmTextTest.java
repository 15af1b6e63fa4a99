package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Films are written into their file one by one, and the usual permeance is that of the starter. */
class FilmTextTest {

  private static final Path FILE = Path.of("content/catalogue/films.yaml");

  @Test
  void eachFilmOfTheProgramIsTheSameWrittenFromItsDraft() throws Exception {
    String text = Files.readString(FILE);
    Catalogue catalogue =
        ShopFolder.read(new ShopFiles(Path.of("no-such-shop")), Instant.EPOCH).catalogue();
    for (String id : catalogue.films().keySet()) {
      FilmDraft draft = FilmText.read(text, id).orElseThrow();
      assertEquals(Optional.of(text), FilmText.changed(text, id, draft), id);
    }
  }

  /** The table of docs/formats.md gives no figure for a coating. */
  @Test
  void theUsualPermeanceIsThatOfTheStartersFilms() {
    ShopFolder.read(new ShopFiles(Path.of("no-such-shop")), Instant.EPOCH)
        .catalogue()
        .films()
        .values()
        .forEach(
            film ->
                film.thickness()
                    .ifPresent(
                        t ->
                            assertEquals(
                                OptionalDouble.of(film.permeance()),
                                UsualPermeance.of(film.material(), t, film.metallised()),
                                film.id())));
    assertEquals(OptionalDouble.empty(), UsualPermeance.of("silica", 1, false));
    assertEquals(OptionalDouble.empty(), UsualPermeance.of("PET", 0, false));
  }

  @ParameterizedTest
  @CsvSource({
    "Tern 15,tern-15",
    "Harbor 35,harbor-35-2",
    "'  Où-va? (matte) ',ou-va-matte",
    "'\u0645',film",
    "'An overlong name that nobody would ever paint on a roll',an-overlong-name-that-nobody-would-e"
  })
  void anIdIsMadeFromTheName(String name, String id) throws Exception {
    assertEquals(id, FilmText.id(name, Files.readString(FILE)));
    assertTrue(Values.isName(id));
  }

  @ParameterizedTest
  @ValueSource(strings = {"films: {}\n", "films: {a: {service: tint, name: A, material: PET}}\n"})
  void aFileInOneLineIsWrittenAnewOrLeft(String text) {
    FilmDraft draft = new FilmDraft("tint", "35", "PET", "", "13.6", "", "", "false", "");
    String now = FilmText.changed(text, "b", draft).orElseThrow();
    assertEquals(Optional.of(draft), FilmText.read(now, "b"));
    assertEquals(FilmText.read(text, "a"), FilmText.read(now, "a"));
    assertTrue(now.contains("name: \"35\""), now);
  }
}
