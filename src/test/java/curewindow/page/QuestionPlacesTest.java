package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.guide.Questions;
import curewindow.told.Contact;
import curewindow.told.JobView;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Where questions stand is where the page has them. */
class QuestionPlacesTest {

  @Test
  void theyStandWhereThePageHasThem() {
    Stream<Supplier<Demo>> demos =
        Stream.of(Demo::tint, Demo::coatedFilm, Demo::atLimit, Demo::nothingToHold);
    demos.map(Supplier::get).map(Demo::view).forEach(QuestionPlacesTest::areAsOnThePage);
  }

  private static void areAsOnThePage(JobView view) {
    Map<String, String> texts =
        Questions.of(view, Demo.GUIDES).stream()
            .collect(Collectors.toMap(Questions.Question::id, Questions.Question::text));
    Cases cases = new Cases(List.of(view));
    Asking asking = new Asking(cases, new Contact(view), Demo.GUIDES);
    boolean much = Asking.isMuch(new CardNotes(view).later().size(), new DateList(cases).dates());
    Asking.Cards page = asking.of(asking.cards(), much);
    QuestionPlaces places = QuestionPlaces.of(view, Demo.GUIDES);
    List<String> shown =
        Stream.concat(page.first().stream(), page.more().stream()).map(Asking.Card::text).toList();
    assertFalse(shown.isEmpty());
    assertEquals(shown, places.questions().stream().map(texts::get).toList());
    assertEquals(page.first().size(), places.atAGlance());
  }

  @Test
  void aPlaceIsCountedFromOne() {
    QuestionPlaces places = new QuestionPlaces(List.of("haze", "corner", "dots"), 2);
    assertEquals(OptionalInt.of(1), places.of("haze"));
    assertEquals(OptionalInt.of(3), places.of("dots"));
    assertEquals(OptionalInt.empty(), places.of("dust"));
    assertTrue(places.isAtAGlance("corner"));
    assertFalse(places.isAtAGlance("dots"));
    assertFalse(places.isAtAGlance("dust"));
    assertThrows(IllegalArgumentException.class, () -> new QuestionPlaces(List.of("haze"), 2));
  }
}
