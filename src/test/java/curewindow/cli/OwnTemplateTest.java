package curewindow.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A shop takes a template of the program as its own and changes it. */
final class OwnTemplateTest {

  private static final String CARD = "site-templates/card.html";

  @TempDir Path dir;

  /** A shop folder of three files, as somebody may have written it by hand. */
  private Path shop() throws Exception {
    Path shop = Files.createDirectories(dir.resolve("shop"));
    Files.createDirectories(shop.resolve("jobs"));
    for (String file : new String[] {"shop.yaml", "logo.svg", "jobs/Q-3101.yaml"}) {
      Files.copy(Path.of("content/demo").resolve(file), shop.resolve(file));
    }
    return shop;
  }

  @Test
  void aFirstCopyNeedsNoFolderForItsNote() throws Exception {
    Path shop = shop();
    Typed edited = Typed.run("edit", CARD, "--shop", shop.toString());
    assertEquals(Exit.OK, edited.code(), edited.said());
    assertTrue(Files.readString(shop.resolve("content/copies.sha256")).contains(CARD));
  }

  /** Who has put a picture into a template would else wait for it in vain. */
  @Test
  void checkNamesADroppedPictureUnasked() throws Exception {
    Path shop = shop();
    Typed.run("edit", CARD, "--shop", shop.toString());
    Path card = shop.resolve(CARD);
    String own = Files.readString(card);
    Files.writeString(card, own.replace("<body>", "<body><img src=\"logo.png\"/>"));
    Typed checked = Typed.run("check", "--shop", shop.toString());
    assertEquals(Exit.OK, checked.code(), checked.said());
    assertTrue(checked.said().contains("note: " + CARD + ":"), checked.said());
    assertFalse(checked.said().contains("--notes shows"), checked.said());
  }
}
