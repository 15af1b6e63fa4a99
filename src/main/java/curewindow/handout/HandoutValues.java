package curewindow.handout;

import curewindow.cure.Release;
import curewindow.shop.Handout;
import curewindow.told.JobView;
import java.util.List;
import java.util.Map;

/** What the templates can show of one job, and which dates that tells. */
final class HandoutValues {

  private HandoutValues() {}

  /**
   * The values of a job's handouts.
   *
   * @return one map for each; several stickers, one of anything else
   */
  static List<Map<String, Object>> of(JobView view, Handout kind, int codeNumber) {
    return switch (kind) {
      case WALLET, WALLET_INCH -> List.of(CardWords.of(view, codeNumber));
      case HANG_TAG -> List.of(TagWords.of(view, codeNumber));
      case WINDOW_UP -> GlassWords.of(view, codeNumber);
      case CARE_A5, CARE_LETTER -> List.of(CareWords.of(view, codeNumber));
    };
  }

  /** The releases whose dates stand on a job's handout. */
  static List<Release> dates(JobView view, Handout kind) {
    return switch (kind) {
      case WALLET, WALLET_INCH -> UrgentDates.of(view, CardWords.DATES);
      case HANG_TAG -> TagWords.dates(view);
      case WINDOW_UP -> GlassWords.dates(view);
      case CARE_A5, CARE_LETTER -> CareWords.dates(view);
    };
  }
}
