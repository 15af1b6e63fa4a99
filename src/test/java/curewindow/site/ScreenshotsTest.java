package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.page.Browser;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * Makes the pictures of two customers' pages in {@code docs/pictures}: with {@code -Dpictures=true}
 * only, as they are looked at by people.
 */
@EnabledIfSystemProperty(named = "pictures", matches = "true")
class ScreenshotsTest {

  private static final Path FOLDER = Path.of("docs/pictures");

  @Test
  void twoJobsOnAPhoneOnADeskAndOnPaper() throws Exception {
    PressedDemo demo = PressedDemo.get();
    try (Browser browser = Browser.open()) {
      for (String id : new String[] {"Q-3101", "Q-3108"}) {
        Instant pickup = demo.shop().job(id).orElseThrow().pickup();
        Path page = demo.job(id).resolve("index.html");
        browser.scripts(true).clock(pickup.plus(Duration.ofHours(20)));
        browser.prefers("prefers-color-scheme", "light").screen(390, 844, true).go(page);
        browser.small(FOLDER.resolve(id + "-phone.png"));
        browser.prefers("prefers-color-scheme", "dark").go(page);
        browser.small(FOLDER.resolve(id + "-phone-dark.png"));
        browser.prefers("prefers-color-scheme", "light").screen(1200, 900, false).go(page);
        browser.small(FOLDER.resolve(id + "-desktop.png"));
        print(browser, id);
      }
    }
  }

  private static void print(Browser browser, String id) throws Exception {
    Path pdf = Files.createTempFile("page", ".pdf");
    browser.print(pdf, 8.27, 11.69);
    String picture = FOLDER.resolve(id + "-print").toString();
    Process png =
        new ProcessBuilder("pdftoppm", "-r", "60", "-png", "-singlefile", pdf.toString(), picture)
            .inheritIO()
            .start();
    assertTrue(png.waitFor(60, TimeUnit.SECONDS) && png.exitValue() == 0, "pdftoppm");
    Files.delete(pdf);
  }
}
