package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.HoldKind;
import curewindow.shop.Handout;
import curewindow.shop.Hold;
import curewindow.told.JobView;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever has to wait, its name and its date have room in every row and above every stamp. */
final class HoldNamesTest {

  /** What is stamped, so that all else stands in rows. */
  private static final List<String> FIRST = List.of("keep-dry", "windows-up", "wipers");

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
    List<JobView> views = new ArrayList<>();
    for (int from = 0; from < holds.size(); from += some(kind)) {
      List<String> few = holds.subList(from, Math.min(from + some(kind), holds.size()));
      views.add(with(stamps(kind) ? List.of() : FIRST, few, language));
    }
    HandoutPress.Handouts made = DemoPapers.print(kind, views);
    try (PrintedCard pdf = new PrintedCard(made.pdf())) {
      for (int page = 0; page < pdf.pdf().getNumberOfPages(); page++) {
        assertFalse(pdf.text(page).contains("…"), pdf.text(page));
      }
    }
  }

  /** How many names a paper has room for, beside two stamps where it has rows. */
  private static int some(Handout kind) {
    return switch (kind) {
      case HANG_TAG, CARE_A5, LABEL_4X6 -> 5;
      default -> 2;
    };
  }

  private static boolean stamps(Handout kind) {
    return kind == Handout.WALLET_INCH || kind == Handout.LABEL_SMALL;
  }

  /** Until the last days of September, which are as long as any. */
  private static JobView with(List<String> first, List<String> holds, String language) {
    SampleJobs job = SampleJobs.bare().shippedWords().language(language);
    first.stream()
        .filter(hold -> !holds.contains(hold))
        .limit(2)
        .forEach(hold -> job.hold(hold, HoldKind.HOLD, "2027-09-29T12:00"));
    holds.forEach(hold -> job.hold(hold, HoldKind.HOLD, "2027-09-29T10:00"));
    return job.view();
  }
}
