package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.page.Browser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a customer needs stands on few screens of a phone, in few words, with all folds closed. */
class ShortPageTest {

  private static final int WORDS = 500;
  private static final double SCREENS = 3.6;
  private static final int SCREEN = 844;

  /** Four files a job, and what one may take on the host. */
  private static final int FILES = 4;

  private static final long BYTES = 90_000;

  @ParameterizedTest
  @ValueSource(strings = {"Q-3101", "Q-3108", "Q-3114", "Q-3117"})
  void fewScreensAndFewWords(String id) throws IOException {
    PressedDemo demo = PressedDemo.get();
    LoadedShop shop = demo.shop();
    var pickup = shop.job(id).orElseThrow().pickup();
    Browser browser = Browser.open();
    try {
      browser
          .scripts(true)
          .screen(390, SCREEN, true)
          .clock(pickup.plus(Duration.ofMinutes(10)))
          .go(demo.job(id).resolve("index.html"));
      long words = (Long) browser.run("return document.body.innerText.trim().split(/\\s+/).length");
      Number height = (Number) browser.run("return document.documentElement.scrollHeight");
      assertTrue(words <= WORDS, id + ": " + words + " words");
      assertTrue(
          height.doubleValue() <= SCREENS * SCREEN,
          id + ": " + height.doubleValue() / SCREEN + " screens");
    } finally {
      browser.close();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"Q-3101", "Q-3108", "Q-3114", "Q-3117"})
  void fewFilesAndFewBytes(String id) throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(PressedDemo.get().job(id))) {
      files = all.filter(Files::isRegularFile).toList();
    }
    assertTrue(files.size() <= FILES, files.toString());
    long bytes = 0;
    for (Path file : files) {
      bytes += Files.size(file);
    }
    assertTrue(bytes <= BYTES, id + ": " + bytes + " bytes");
  }
}
