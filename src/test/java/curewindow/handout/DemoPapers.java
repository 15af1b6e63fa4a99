package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import curewindow.problem.Problems;
import curewindow.shop.Handout;
import curewindow.shop.Job;
import curewindow.shop.PaperChoice;
import curewindow.shop.SheetPaper;
import curewindow.site.LoadedShop;
import curewindow.told.JobView;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.stream.Stream;

/** All jobs of the demo shop, and some with more or less work than any of them, on every paper. */
final class DemoPapers {

  static final List<String> LANGUAGES = List.of("en", "es", "ar");

  private static final LoadedShop SHOP =
      LoadedShop.load(Path.of("content/demo"), Clock.systemUTC());

  private static final String TOKEN = "7K3MPQ9W2XHTR4VBD6NC";

  private static final List<String> WORK =
      List.of(
          "tint, film: harbor-35, spots: [front-door-glass, rear-door-glass, back-glass]",
          "paint-film, film: fieldcoat-gloss, spots: [hood, front-bumper, fender, mirror]",
          "wheel-coating, film: tidewater-wheel, spots: [wheels]",
          "fabric-coating, film: tidewater-fabric, spots: [seats, carpets, door-panels]",
          "paint-coating, film: tidewater-paint, spots: [hood, front-bumper, door, roof, trunk]",
          "glass-coating, film: tidewater-glass, spots: [front-door-glass, rear-door-glass]",
          "headlight-film, film: beamguard-clear, spots: [headlight, fog-light]",
          "windshield-film, film: clearway-shield, spots: [windshield]",
          "tint, film: lantern-90, spots: [windshield]",
          "wrap, film: colorway-satin, spots: [quarter-panel, rear-bumper, spoiler]");

  /** Their dates are computed once. */
  private static final List<JobView> VIEWS =
      Stream.concat(
              SHOP.jobs().stream(),
              Stream.of(work(4, "en"), work(WORK.size(), "en"), fabric("carpets")))
          .map(job -> SHOP.view(job, TOKEN))
          .toList();

  private DemoPapers() {}

  /** The jobs as their customers are told of them in a language, and the longest texts. */
  static List<JobView> jobs(String language) {
    return Stream.concat(
            VIEWS.stream().map(view -> view.in(SHOP.words().of(language))),
            Stream.of(SampleJobs.longest(language).view()))
        .toList();
  }

  /** A car with so many pieces of work, in words of a language. */
  static JobView job(int works, String language) {
    return SHOP.view(work(works, language), TOKEN);
  }

  private static Job work(int most, String language) {
    return job("W-" + most, language, WORK.subList(0, most));
  }

  private static Job fabric(String spot) {
    return job(
        "F-" + spot,
        "en",
        List.of("fabric-coating, film: tidewater-fabric, spots: [" + spot + "]"));
  }

  private static Job job(String id, String language, List<String> work) {
    StringBuilder text =
        new StringBuilder(
            """
            id: %s
            language: %s
            first-name: %s
            car: {year: 2024, body: suv, paint: dark, finish: gloss, text: %s}
            place: minneapolis
            zone: America/Chicago
            parking: {day: outside, night: outside}
            pickup: 2026-12-03T17:00
            items:
            """
                .formatted(id, language, firstName(language), car(language)));
    for (String one : work) {
      text.append(
          "  - {service: %s, finished: 2026-12-03T14:00, warranty-years: 10}\n".formatted(one));
    }
    var tried = SHOP.tried("jobs/" + id + ".yaml", text.toString());
    return tried.job().orElseThrow(() -> new AssertionError(tried.problems().toString()));
  }

  private static String firstName(String language) {
    return language.equals("ar") ? "سلمى" : "Marisol";
  }

  private static String car(String language) {
    return switch (language) {
      case "es" -> "camioneta azul oscuro";
      case "ar" -> "سيارة عائلية زرقاء";
      default -> "dark blue family car";
    };
  }

  /** One PDF with the handouts of some jobs, each on a page of its own. */
  static HandoutPress.Handouts print(Handout kind, List<JobView> views) {
    Problems problems = new Problems();
    HandoutPress.Handouts made =
        HandoutPress.read(SHOP.files(), kind, problems)
            .orElseThrow()
            .handouts(views, PaperChoice.on(SheetPaper.NONE), problems)
            .orElseThrow(() -> new AssertionError(problems.all().toString()));
    assertEquals(List.of(), problems.all());
    return made;
  }
}
