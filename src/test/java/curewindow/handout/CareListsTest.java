package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.guide.JobFacts;
import curewindow.shop.FittedItem;
import curewindow.shop.Handout;
import curewindow.told.JobView;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A care sheet shows as much as it has room for, and says how much more the page has. */
final class CareListsTest {

  private static final Pattern MORE = Pattern.compile("And (\\d+) more on your page\\.");

  @ParameterizedTest
  @CsvSource({"CARE_A5, 4", "CARE_A5, 10", "CARE_LETTER, 4", "CARE_LETTER, 10"})
  void whatIsLeftOutIsCounted(Handout kind, int works) throws Exception {
    JobView view = DemoPapers.job(works, "en");
    HandoutPress.Handouts made = DemoPapers.print(kind, List.of(view));
    int shown = made.made().get(0).dates().size();
    int all = HandoutValues.dates(view, kind, new ListRoom(), 0).size();
    assertTrue(shown >= 6 && shown < all, shown + " of " + all);
    try (PrintedCard pdf = new PrintedCard(made.pdf())) {
      Matcher more = MORE.matcher(pdf.text(0));
      assertTrue(more.find(), pdf.text(0));
      assertEquals(all - shown, Integer.parseInt(more.group(1)));
      assertTrue(!more.find(), pdf.text(0));
    }
  }

  /** A warranty is kept on paper: advice gives way to it, and a line of its own does. */
  @ParameterizedTest
  @MethodSource("sheets")
  void everyFilmAndItsWarrantyStandThere(Handout kind, String language) throws Exception {
    List<JobView> views = DemoPapers.jobs(language);
    try (PrintedCard pdf = new PrintedCard(DemoPapers.print(kind, views).pdf())) {
      for (int i = 0; i < views.size(); i++) {
        JobView view = views.get(i);
        String text = plain(pdf.text(i));
        for (FittedItem item : view.job().items()) {
          String film = JobFacts.filmName(view, item);
          assertTrue(text.contains(plain(film)), view.job().id() + " lacks " + film + text);
          if (item.warrantyYears().isPresent()) {
            int year =
                item.finished().atZone(view.timeline().zone()).getYear()
                    + item.warrantyYears().getAsInt();
            assertTrue(text.contains("" + year), view.job().id() + " lacks " + year + text);
          }
        }
      }
    }
  }

  static Stream<Arguments> sheets() {
    return Stream.of(Handout.CARE_A5, Handout.CARE_LETTER)
        .flatMap(kind -> DemoPapers.LANGUAGES.stream().map(l -> Arguments.of(kind, l)));
  }

  private static String plain(String text) {
    return text.replaceAll("[\\s\u00A0\u2066-\u2069]", "");
  }

  /** A line that says that one date is left out has the room of that date. */
  @ParameterizedTest
  @EnumSource(
      value = Handout.class,
      names = {"CARE_A5", "CARE_LETTER"})
  void noLineSaysThatOneIsLeftOut(Handout kind) throws Exception {
    List<JobView> views = DemoPapers.jobs("en");
    try (PrintedCard pdf = new PrintedCard(DemoPapers.print(kind, views).pdf())) {
      for (int i = 0; i < views.size(); i++) {
        Matcher more = MORE.matcher(pdf.text(i));
        assertTrue(!more.find() || !more.group(1).equals("1"), pdf.text(i));
      }
    }
  }

  /** The day of the pickup stands where the lines begin. */
  @Test
  void theLinesBeginAtThePickup() throws Exception {
    byte[] pdf = DemoPapers.print(Handout.CARE_A5, List.of(DemoPapers.job(1, "en"))).pdf();
    try (PrintedCard card = new PrintedCard(pdf)) {
      assertTrue(plain(card.text(0)).contains("pickedupDec3"), card.text(0));
    }
  }

  @ParameterizedTest
  @CsvSource({"CARE_A5", "CARE_LETTER"})
  void whereAllHasRoomNothingMoreIsSaid(Handout kind) throws Exception {
    byte[] pdf = DemoPapers.print(kind, List.of(DemoPapers.job(1, "en"))).pdf();
    try (PrintedCard card = new PrintedCard(pdf)) {
      assertTrue(!MORE.matcher(card.text(0)).find(), card.text(0));
    }
  }
}
