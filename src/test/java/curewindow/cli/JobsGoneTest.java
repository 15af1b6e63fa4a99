package curewindow.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.site.PressedDemo;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Customers' pages never vanish in silence, however the jobs got lost. */
class JobsGoneTest {

  private static final String JOB = "jobs/Q-3102.yaml";

  private static final int JOBS = 9;

  @TempDir Path temp;
  private Path shop;
  private Path out;
  private List<String> list;

  @BeforeEach
  void layOut() throws IOException {
    shop = shop("shop");
    out = temp.resolve("out");
    PressedDemo.layOutOpenPages(out);
    List<String> demo = Files.readAllLines(Path.of("content/demo/jobs.csv"));
    list = new ArrayList<>(demo.subList(0, 1));
    for (int i = 1; i <= JOBS; i++) {
      list.add(demo.get(1).replace("Q-3115", "R-" + i));
    }
    jobs(JOBS);
  }

  @Test
  void aListThatWasCutOffKeepsThePagesUntilTheyMayGo() throws IOException {
    List<String> before = press(Exit.OK).pages;
    jobs(1);
    for (int i = 0; i < 2; i++) {
      Pressed cut = press(Exit.PROBLEMS);
      int gone = before.size() - 2;
      assertTrue(cut.said.contains(gone + " of " + before.size() + " customers' pages"), cut.said);
      assertTrue(cut.said.contains("(R-2, R-3, R-4 and 5 more)") && cut.said.contains("--let-go"));
      assertEquals(before, cut.pages);
    }
    assertEquals(2, press(Exit.OK, "--let-go").pages.size());
    press(Exit.OK);
  }

  @Test
  void aFolderOfJobsThatIsNotThereKeepsThePages() throws IOException {
    Files.delete(shop.resolve("jobs.csv"));
    List<String> before = press(Exit.OK).pages;
    Files.move(shop.resolve("jobs"), shop.resolve("jobs-old"));
    Pressed gone = press(Exit.PROBLEMS);
    assertTrue(gone.said.contains("1 of 1 customers' pages"), gone.said);
    assertEquals(before, gone.pages);
    out = temp.resolve("fresh");
    assertTrue(press(Exit.PROBLEMS).said.contains("link-ledger.csv knows some"));
    press(Exit.OK, "--let-go");
  }

  @Test
  void fewJobsMayGo() throws IOException {
    int all = press(Exit.OK).pages.size();
    jobs(JOBS - 2);
    assertEquals(all - 2, press(Exit.OK).pages.size());
  }

  @Test
  void theOutputOfAnotherShopIsRefused() throws IOException {
    List<String> before = press(Exit.OK).pages;
    Path other = shop("other");
    Files.move(other.resolve(JOB), other.resolve("jobs/K-1.yaml"));
    replace(other.resolve("jobs/K-1.yaml"), "id: Q-3102", "id: K-1");
    Path first = shop;
    shop = other;
    Pressed refused = press(Exit.PROBLEMS, "--let-go");
    assertTrue(refused.said.contains("of another shop"), refused.said);
    assertEquals(before, refused.pages);
    assertFalse(Files.exists(other.resolve("link-ledger.csv")));
    shop = first;
    Path yaml = shop.resolve("shop.yaml");
    String text = Files.readString(yaml);
    Files.writeString(
        yaml, text.replaceFirst("(?m)^address: .*$", "address: https://new.example/"));
    assertEquals(before.size(), press(Exit.OK).pages.size(), "a shop may move to another address");
  }

  private record Pressed(String said, List<String> pages) {}

  private Pressed press(int code, String... more) throws IOException {
    List<Object> words = new ArrayList<>(List.of("press", "--shop", shop, "--out", out));
    words.addAll(List.of(more));
    Typed typed = Typed.run(words.toArray());
    assertEquals(code, typed.code(), typed.said());
    List<String> rows = Files.readAllLines(out.resolve("office/pages.csv"));
    List<String> pages = rows.subList(1, rows.size());
    for (String page : pages) {
      assertTrue(Files.exists(out.resolve("site").resolve(page.split(",")[2] + "index.html")));
    }
    return new Pressed(typed.said(), List.copyOf(pages));
  }

  private Path shop(String name) throws IOException {
    Path folder = temp.resolve(name);
    Files.createDirectories(folder.resolve("jobs"));
    for (String file : List.of("shop.yaml", "logo.svg", JOB)) {
      Files.copy(Path.of("content/demo").resolve(file), folder.resolve(file));
    }
    return folder;
  }

  private void jobs(int rows) throws IOException {
    Files.write(shop.resolve("jobs.csv"), list.subList(0, rows + 1));
  }

  private static void replace(Path file, String old, String by) throws IOException {
    Files.writeString(file, Files.readString(file).replace(old, by));
  }
}
