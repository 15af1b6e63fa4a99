package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.page.Browser;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
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
        picture(browser, id + "-phone.png");
        browser.prefers("prefers-color-scheme", "dark").go(page);
        picture(browser, id + "-phone-dark.png");
        browser.prefers("prefers-color-scheme", "light").screen(1200, 900, false).go(page);
        picture(browser, id + "-desktop.png");
        print(browser, id);
      }
    }
  }

  /** The screen at its size in CSS pixels. */
  private static void picture(Browser browser, String name) throws Exception {
    Path whole = Files.createTempFile("page", ".png");
    browser.picture(whole, false);
    BufferedImage from = ImageIO.read(whole.toFile());
    int width = from.getWidth() / 2;
    int height = from.getHeight() / 2;
    BufferedImage to = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = to.createGraphics();
    graphics.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    graphics.drawImage(from, 0, 0, width, height, null);
    graphics.dispose();
    ImageIO.write(to, "png", FOLDER.resolve(name).toFile());
    Files.delete(whole);
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
