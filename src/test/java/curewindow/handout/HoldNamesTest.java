package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.HoldKind;
import curewindow.shop.Handout;
import curewindow.shop.Hold;
import curewindow.told.JobView;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever has to wait, its name and its date have room in every row and above every stamp. */
final class HoldNamesTest {

  static Stream<Arguments> papers() {
    return Stream.of(
            Handout.WALLET_INCH,
            Handout.HANG_TAG,
            Handout.CARE_A5,
            Handout.LABEL_62,
            Handout.LABEL_4X6,
            Handout.LABEL_SMALL)
        .flatMap(kind -> DemoPapers.LANGUAGES.stream().map(l -> Arguments.of(kind, l)));
  }

  @ParameterizedTest
  @MethodSource("papers")
  void everyNameIsWhole(Handout kind, String language) throws Exception {
    List<String> holds =
        SampleJobs.bare().view().catalogue().holds().values().stream().map(Hold::id).toList();
    assertTrue(holds.size() > 15, holds::toString);
    boolean stamps = kind == Handout.WALLET_INCH || kind == Handout.LABEL_SMALL;
    List<JobView> views =
        holds.stream().map(h -> stamps ? stamped(h, language) : row(h, language)).toList();
    HandoutPress.Handouts made = DemoPapers.print(kind, views);
    try (PrintedCard pdf = new PrintedCard(made.pdf())) {
      for (int page = 0; page < pdf.pdf().getNumberOfPages(); page++) {
        assertFalse(pdf.text(page).contains("…"), pdf.text(page));
      }
    }
  }

  /** On the last day of September, which is as long as any. */
  private static JobView stamped(String hold, String language) {
    return SampleJobs.bare()
        .shippedWords()
        .language(language)
        .hold(hold, HoldKind.HOLD, "2027-09-29T10:00")
        .hold(hold.equals("wipers") ? "rain" : "wipers", HoldKind.HOLD, "2027-09-29T12:00")
        .view();
  }

  private static JobView row(String hold, String language) {
    SampleJobs job = SampleJobs.bare().shippedWords().language(language);
    List<String> first = List.of("keep-dry", "windows-up", "wipers");
    first.stream()
        .filter(other -> !other.equals(hold))
        .limit(2)
        .forEach(other -> job.hold(other, HoldKind.HOLD, "2027-09-29T12:00"));
    return job.hold(hold, HoldKind.HOLD, "2027-09-29T10:00").view();
  }
}
