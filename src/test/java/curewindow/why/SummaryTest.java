package curewindow.why;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.shop.Job;
import curewindow.site.LoadedShop;
import curewindow.site.WhyOf;
import curewindow.told.JobView;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The first lines of an explanation. */
class SummaryTest {

  private static final LoadedShop SHOP =
      LoadedShop.load(Path.of("content/demo"), Clock.systemUTC());

  private static List<String> summary(String text) {
    return text.substring(0, text.indexOf("\n\n")).lines().toList();
  }

  private static String text(Job job) {
    return WhyOf.of(SHOP, job, Trial.NONE, job.pickup()).text(ExplanationChoice.USUAL);
  }

  /** Each date of a job is there, or counted. */
  @Test
  void hasTenLinesAtMostForEveryJobOfTheDemo() {
    int full = 0;
    for (Job job : SHOP.jobs()) {
      List<String> said = summary(text(job));
      assertTrue(said.size() <= 10, said::toString);
      assertTrue(said.get(0).startsWith("Job " + job.id() + ", "), said::toString);
      assertTrue(said.get(1).startsWith("Place: "), said::toString);
      assertTrue(said.get(2).startsWith("Parking: "), said::toString);
      JobView view = SHOP.view(job, "0");
      String whole = String.join(" ", said).replaceAll(" +", " ");
      long named =
          view.timeline().releases().stream()
              .filter(r -> whole.contains(" " + label(r.hold()) + ": "))
              .count();
      long more = view.timeline().releases().size() - named;
      assertEquals(more > 0, whole.contains("... and " + more + " more: see below"), whole);
      assertEquals(
          view.visit().isPresent(),
          whole.contains("Come in so we can check it: any")
              || whole.contains("Send us a photo: starting"),
          whole);
      full += more > 0 ? 1 : 0;
    }
    assertTrue(full > 0, "no job of the demo has more dates than there is room for");
  }

  private static String label(String hold) {
    return SHOP.view(SHOP.job("Q-3101").orElseThrow(), "0").words().text("hold." + hold + ".label");
  }

  @Test
  void beginsWithTheMostUrgentAndTellsNoYearOfDatesThatAreNear() {
    Job job = SHOP.job("Q-3101").orElseThrow();
    List<String> said = summary(text(job));
    assertTrue(
        said.get(3).matches("Windows stay up: [A-Z]\\w\\w, Dec \\d, \\d+ [AP]M, safe by then"),
        said::toString);
    assertTrue(said.get(4).matches(".*, at the limit \\(\\d+% cured\\)"), said::toString);
    assertTrue(said.get(said.size() - 1).matches(".* starting .*, \\w+ \\d+"), said::toString);
  }

  @Test
  void isOfTheHoldsAskedForAndBelowWhatIsTried() {
    String text =
        Why.of(Steady.inputs(Trial.NONE)).text(new ExplanationChoice(List.of("haze"), false, true));
    List<String> said = summary(text);
    assertEquals(4, said.size(), text);
    assertTrue(said.get(3).startsWith("Haze is normal: "), text);
    assertFalse(text.contains("Windows stay up"), text);
  }
}
