package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NewShopTest {

  private static final Pattern SCHEMA =
      Pattern.compile("^# yaml-language-server: \\$schema=(\\S+)\n");

  @TempDir Path dir;

  @Test
  void aNewShopReadsWithoutProblems() {
    Path shop = dir.resolve("shop");
    assertInstanceOf(NewShop.Written.class, NewShop.write(shop));
    ShopRead read = TestShops.read(shop);
    assertEquals(List.of(), TestShops.lines(read));
    assertEquals(List.of("1001", "1002"), read.jobs().stream().map(Job::id).toList());
    assertEquals(List.of(), read.brokenJobs());
    assertTrue(read.shop().isPresent());
  }

  @Test
  void everyFileOfANewShopNamesASchemaThatIsThere() throws IOException {
    NewShop.Written written = assertInstanceOf(NewShop.Written.class, NewShop.write(dir));
    assertTrue(written.files().containsAll(List.of("shop.yaml", "jobs/1001.yaml")));
    assertTrue(written.files().stream().noneMatch(f -> f.contains("starter-shop")));
    assertTrue(
        written.files().stream().noneMatch(f -> f.contains("guides") || f.contains("templates")),
        "what it does not change follows the program");
    int named = 0;
    for (String file : written.files()) {
      boolean wanted =
          file.equals("shop.yaml") || file.startsWith("jobs/") || file.contains("/catalogue/");
      if (file.endsWith(".yaml") && wanted) {
        Matcher schema = SCHEMA.matcher(Files.readString(dir.resolve(file)));
        assertTrue(schema.find(), file);
        Path target = dir.resolve(file).getParent().resolve(schema.group(1)).normalize();
        assertTrue(Files.isRegularFile(target), file + " names " + target);
        named++;
      }
    }
    assertEquals(4, named);
  }

  @Test
  void aFolderThatIsNotEmptyIsLeftAlone() throws IOException {
    Files.writeString(dir.resolve("mine.txt"), "mine");
    NewShop.Refused refused = assertInstanceOf(NewShop.Refused.class, NewShop.write(dir));
    assertTrue(refused.problem().oneLine().contains("is not an empty folder  name a folder that"));
    assertEquals(List.of("mine.txt"), List.of(dir.toFile().list()));
  }

  @Test
  void aFileInTheWayIsRefused() throws IOException {
    Path file = Files.writeString(dir.resolve("file"), "");
    assertInstanceOf(NewShop.Refused.class, NewShop.write(file));
    NewShop.Refused below =
        assertInstanceOf(NewShop.Refused.class, NewShop.write(file.resolve("shop")));
    assertTrue(below.problem().message().endsWith("cannot be written to"));
  }
}
