package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.Release;
import curewindow.page.Browser;
import curewindow.page.SharedFile;
import curewindow.problem.Problems;
import curewindow.told.JobView;
import curewindow.told.Printed;
import curewindow.told.PrintedDate;
import curewindow.told.Urgency;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
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
  private record Most(int words, double screens) {

    boolean isBelow(Size size) {
      return size.words() > words || size.screens() > screens;
    }
  }

  /** What a page asks at a time. */
  private record Size(Instant at, long words, double screens) {}

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
    PressedDemo.layOutShop(temp);
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

  /** The pages of a shop that ask more of their readers than they may, and when. */
  private List<String> tooLong(LoadedShop shop, int jobs, Most most) throws IOException {
    List<JobView> views = shop.jobs().stream().map(j -> shop.view(j, Tokens.SAMPLE)).toList();
    List<List<JobView>> cases =
        ParkedViews.of(shop, views, new Problems()).stream()
            .map(c -> c.stream().map(ShortPageTest::carded).toList())
            .toList();
    Problems problems = new Problems();
    Rendering rendering = Rendering.of(shop, problems);
    List<Rendering.Customer> pages = rendering.customers(cases, Calendars.unnoted(), () -> {});
    assertEquals(jobs, pages.size(), () -> problems.all().toString());
    for (SharedFile file : rendering.shared()) {
      Files.writeString(temp.resolve(file.name()), file.text());
    }
    List<String> tooLong = new ArrayList<>();
    try (Browser browser = Browser.open()) {
      browser.scripts(true).screen(390, SCREEN, true);
      for (int i = 0; i < jobs; i++) {
        String id = cases.get(i).get(0).job().id();
        Path page = Files.createDirectories(temp.resolve("C/" + id)).resolve("index.html");
        Files.writeString(page, pages.get(i).html());
        browser.clock(Instant.EPOCH).go(page);
        for (int parked = 0; parked < cases.get(i).size(); parked++) {
          String where = id + ", case " + parked + " at ";
          sizes(browser, parked, times(cases.get(i).get(parked))).stream()
              .filter(most::isBelow)
              .forEach(size -> tooLong.add(where + size));
        }
      }
    }
    return tooLong;
  }

  /** A job whose card promised the most urgent date a day too early. */
  private static JobView carded(JobView view) {
    List<PrintedDate> told =
        Urgency.holds(view).stream()
            .limit(1)
            .map(r -> new PrintedDate(r.hold(), dayBefore(r), dayBefore(r)))
            .toList();
    return view.withPrinted(new Printed(told, Optional.empty()));
  }

  private static Instant dayBefore(Release release) {
    return release.end().at().minus(Duration.ofDays(1));
  }

  /** At the pickup, whenever something is over or fully set, and long after. */
  private static List<Instant> times(JobView view) {
    TreeSet<Instant> ends = new TreeSet<>(Set.of(view.timeline().pickup()));
    for (Release release : view.timeline().releases()) {
      ends.addAll(List.of(release.end().at(), release.setAt()));
    }
    ends.add(ends.last().plus(Duration.ofDays(400)));
    return ends.stream().map(end -> end.plus(Duration.ofMinutes(1))).toList();
  }

  /** What the open page asks of its reader at some times, where the car is parked so. */
  @SuppressWarnings("unchecked")
  private static List<Size> sizes(Browser browser, int parked, List<Instant> times) {
    List<List<Long>> sizes =
        (List<List<Long>>)
            browser.run(
                """
                const radio = document.querySelectorAll("#parking input")[arguments[0]];
                if (radio) radio.click();
                return arguments[1].map(time => {
                  __later(time - Date.now());
                  document.dispatchEvent(new Event("visibilitychange"));
                  return [document.body.innerText.trim().split(/\\s+/).length,
                    document.documentElement.scrollHeight];
                })""",
                parked,
                times.stream().map(Instant::toEpochMilli).toList());
    return IntStream.range(0, times.size())
        .mapToObj(
            i -> new Size(times.get(i), sizes.get(i).get(0), sizes.get(i).get(1) / (double) SCREEN))
        .toList();
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
