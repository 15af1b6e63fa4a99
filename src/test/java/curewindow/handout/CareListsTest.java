package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.shop.Handout;
import curewindow.told.JobView;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
      assertTrue(more.find(), pdf.text(0));
      int fitted = works - Integer.parseInt(more.group(1));
      assertTrue(fitted >= 1 && fitted < works, pdf.text(0));
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
