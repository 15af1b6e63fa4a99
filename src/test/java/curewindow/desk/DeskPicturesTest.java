package curewindow.desk;

import curewindow.page.Browser;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * Makes the pictures of the desk in {@code docs/pictures}: with {@code -Dpictures=true} only, as
 * they are looked at by people.
 */
@EnabledIfSystemProperty(named = "pictures", matches = "true")
class DeskPicturesTest {

  private static final Path FOLDER = Path.of("docs/pictures");

  @TempDir Path folder;

  @Test
  void fourScreens() throws Exception {
    try (DeskClient desk = DeskClient.open(folder);
        Browser browser = Browser.open()) {
      browser.clock(DeskClient.NOW).screen(1180, 900, false);
      browser.go(desk.at("/new").toString());
      browser.click("button[value='usual:Q-3101']");
      browser.until("document.getElementById('items[1].film').value==='harbor-35'");
      browser.type("[id='items[1].batch']", "H35-0742").type("[id='first-name']", "Ines");
      browser.until("document.querySelectorAll('.holds li').length>5");
      browser.run("document.activeElement.blur();scrollTo(0,0)");
      browser.small(FOLDER.resolve("desk-new-car.png"));
      browser.click("button.main").until("location.pathname.endsWith('hand-over')");
      browser.click("button[data-busy]").until("document.querySelector('.code')");
      // Without what was just done, as that names a folder of this machine.
      browser.go(desk.at("/job/Q-3117/hand-over").toString());
      browser.small(FOLDER.resolve("desk-hand-over.png"));
      browser.go(desk.at("/job/Q-3117").toString());
      browser.until("document.querySelector('iframe')");
      Thread.sleep(2000);
      browser.small(FOLDER.resolve("desk-car.png"));
      browser.go(desk.at("/").toString());
      browser.small(FOLDER.resolve("desk-today.png"));
    }
  }
}
