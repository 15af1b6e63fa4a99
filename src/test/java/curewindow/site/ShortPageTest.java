package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.page.BelowStyle;
import curewindow.page.Browser;
import curewindow.page.JobView;
import curewindow.problem.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a customer needs stands on few screens of a phone, in few words, with all folds closed. */
class ShortPageTest {

  private static final Path DEMO = Path.of("content/demo");

  private static final int SCREEN = 844;

  /** How much a page may ask of its reader. */
  private record Most(int words, double screens) {}

  private static final Most USUAL = new Most(450, 3.0);

  /** For a car with four services or more. */
  private static final Most MUCH = new Most(600, 4.0);

  /** Four files a job, and what they may take on the host. */
  private static final int FILES = 4;

  private static final long BYTES = 80_000;

  @TempDir Path temp;

  @Test
  void fewScreensAndFewWordsForEveryJobOfTheDemo() throws IOException {
    assertEquals(List.of(), tooLong(LoadedShop.load(DEMO, PressedDemo.CLOCK), 17, USUAL));
  }

  /** The busiest car of the demo, with three more services. */
  @Test
  void aCarWithFiveServicesTakesOneScreenMore() throws IOException {
    Files.copy(DEMO.resolve("shop.yaml"), temp.resolve("shop.yaml"));
    Files.createDirectories(temp.resolve("jobs"));
    String job = "jobs/Q-3113.yaml";
    String more =
        """
        items:
          - {service: wrap, film: colorway-gloss, spots: [roof], finished: 2026-11-24T16:00}
          - {service: windshield-film, film: clearway-shield, spots: [windshield], finished: 2026-11-24T16:00}
          - {service: headlight-film, film: beamguard-clear, spots: [headlight], finished: 2026-11-24T16:00}
        """;
    Files.writeString(
        temp.resolve(job), Files.readString(DEMO.resolve(job)).replace("items:\n", more));
    assertEquals(List.of(), tooLong(LoadedShop.load(temp, PressedDemo.CLOCK), 1, MUCH));
  }

  /** The pages of a shop that ask more of their readers than they may. */
  private List<String> tooLong(LoadedShop shop, int jobs, Most most) throws IOException {
    List<JobView> views = shop.jobs().stream().map(j -> shop.view(j, Tokens.SAMPLE)).toList();
    Calendars calendars = Calendars.unnoted(shop.words().of("en"));
    Rendering pages = Rendering.of(shop, ParkedViews.of(shop, views, new Problems()), calendars);
    assertEquals(jobs, pages.customers().size(), () -> pages.problems().toString());
    Files.writeString(temp.resolve(BelowStyle.FILE), pages.below());
    Browser browser = Browser.open();
    List<String> tooLong = new ArrayList<>();
    try {
      browser.scripts(true).screen(390, SCREEN, true);
      for (Rendering.Customer customer : pages.customers()) {
        String id = customer.view().job().id();
        Path page = Files.createDirectories(temp.resolve("C/" + id)).resolve("index.html");
        Files.writeString(page, customer.html());
        browser.clock(customer.view().job().pickup().plus(Duration.ofMinutes(10))).go(page);
        // Not with what is said only of a card whose date has moved since.
        browser.run("document.querySelectorAll('.card').forEach(card => card.remove())");
        long words =
            (Long) browser.run("return document.body.innerText.trim().split(/\\s+/).length");
        Number height = (Number) browser.run("return document.documentElement.scrollHeight");
        double screens = height.doubleValue() / SCREEN;
        if (words > most.words() || screens > most.screens()) {
          tooLong.add(id + ": " + words + " words, " + screens + " screens");
        }
      }
    } finally {
      browser.close();
    }
    return tooLong;
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
