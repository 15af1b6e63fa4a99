package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.page.HomeScreen;
import curewindow.problem.Problems;
import curewindow.told.JobView;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every job of the demo shop, for every parking, as if its customer had asked for a language. */
class EveryLanguageWeightTest {

  /** Ten packets of 1460 bytes: what a new TCP connection sends at first (RFC 6928). */
  private static final int MOST = 14_600;

  /** All four files of a job, not packed. */
  private static final int MOST_ON_DISK = 80_000;

  @TempDir Path temp;

  @ParameterizedTest
  @ValueSource(strings = {"en", "es", "ar"})
  void everyPageArrivesInTheFirstRoundTripAndItsFilesAreSmall(String language) throws IOException {
    LoadedShop shop = LoadedShop.load(shop(language), PressedDemo.CLOCK);
    List<JobView> views = shop.jobs().stream().map(j -> shop.view(j, Tokens.SAMPLE)).toList();
    assertEquals(15, views.size());
    Calendars calendars = Calendars.unnoted();
    Problems problems = new Problems();
    List<Rendering.Customer> pages =
        Rendering.of(shop, problems)
            .customers(ParkedViews.of(shop, views, problems), calendars, () -> {});
    assertEquals(views.size(), pages.size(), () -> problems.all().toString());
    List<String> heavy = new ArrayList<>();
    int weighed = 0;
    for (Rendering.Customer customer : pages) {
      weighed++;
      String id = customer.view().job().id();
      int weight = gzipped(customer.html());
      assertTrue(customer.html().contains("lang=" + language));
      if (weight > MOST) {
        heavy.add(id + " " + weight);
      }
      if (customer.html().contains("<p class=guide")) {
        heavy.add(id + " has no room for all care texts");
      }
      int size = size(customer, calendars);
      if (size > MOST_ON_DISK) {
        heavy.add(id + " has files of " + size);
      }
    }
    assertEquals(15, weighed);
    assertEquals(List.of(), heavy);
  }

  private static int size(Rendering.Customer customer, Calendars calendars) {
    JobView view = customer.view();
    return Stream.of(
            customer.html(), HomeScreen.manifest(view), calendars.main(view), calendars.all(view))
        .mapToInt(text -> text.getBytes(StandardCharsets.UTF_8).length)
        .sum();
  }

  private Path shop(String language) throws IOException {
    PressedDemo.layOutShop(temp);
    try (Stream<Path> jobs = Files.list(Path.of("content/demo/jobs"))) {
      for (Path job : jobs.filter(f -> f.toString().endsWith(".yaml")).toList()) {
        String text = Files.readString(job).replaceAll("(?m)^language:.*\\n", "");
        Files.writeString(
            temp.resolve("jobs").resolve(job.getFileName()), text + "language: " + language + "\n");
      }
    }
    return temp;
  }

  private static int gzipped(String html) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (GZIPOutputStream gzip = new GZIPOutputStream(bytes)) {
      gzip.write(html.getBytes(StandardCharsets.UTF_8));
    }
    return bytes.size();
  }
}
