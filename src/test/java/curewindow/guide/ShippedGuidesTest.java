package curewindow.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problems;
import curewindow.shop.Catalogue;
import curewindow.shop.Service;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopFolder;
import curewindow.words.WordsLibrary;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The guides that come with the program, read against the catalogue that comes with it. */
class ShippedGuidesTest {

  private static final List<String> LANGUAGES = List.of("ar", "en", "es");

  @TempDir Path empty;

  private final Problems problems = new Problems();

  @Test
  void areWithoutProblemsAndServeEveryJob() {
    ShopFiles files = new ShopFiles(empty);
    Catalogue catalogue = ShopFolder.read(files, Instant.EPOCH).catalogue();
    GuideLibrary library =
        GuideLibrary.read(files, WordsLibrary.open(files), catalogue, LANGUAGES, problems);
    assertEquals(List.of(), problems.all());
    for (Service service : catalogue.services().values()) {
      for (String language : LANGUAGES) {
        assertTrue(library.find(language, service.guide()).isPresent(), service::guide);
      }
    }
    for (String language : LANGUAGES) {
      library.ids(language).forEach(id -> assertReads(library.find(language, id).orElseThrow()));
    }
  }

  /** What somebody asks before buying, when something looks wrong, and in later years. */
  @Test
  void tellWhatComesBeforeAndAfterTheFirstWeeks() {
    ShopFiles files = new ShopFiles(empty);
    Catalogue catalogue = ShopFolder.read(files, Instant.EPOCH).catalogue();
    GuideLibrary library =
        GuideLibrary.read(files, WordsLibrary.open(files), catalogue, LANGUAGES, problems);
    for (String language : LANGUAGES) {
      for (String id : List.of("before-you-come", "if-something-is-wrong", "through-the-year")) {
        Guide guide = library.find(language, id).orElseThrow();
        assertTrue(
            guide.valuesUsed().stream().allMatch(v -> v.startsWith("shop.") || v.equals("1 m")),
            "for who has no job yet: " + guide.valuesUsed());
        assertTrue(GuidePart.of(guide.html(facts(true, Optional.of("1")))).size() > 5, id);
      }
    }
  }

  private static void assertReads(Guide guide) {
    for (boolean has : new boolean[] {true, false}) {
      for (Optional<String> value : List.of(Optional.of("VALUE"), Optional.<String>empty())) {
        String html = guide.html(facts(has, value), 1);
        assertFalse(html.contains("(=") || html.contains("(?") || html.contains("?)"), html);
        assertFalse(value.isEmpty() && html.contains("VALUE"), html);
      }
    }
    boolean used = guide.html(facts(true, Optional.of("VALUE"))).contains("VALUE");
    assertEquals(!guide.valuesUsed().isEmpty(), used, guide.id());
  }

  private static GuideFacts facts(boolean has, Optional<String> value) {
    return new GuideFacts() {
      @Override
      public boolean has(String kind, String name) {
        return has;
      }

      @Override
      public Optional<String> value(String name) {
        return value;
      }
    };
  }
}
