package curewindow.handout;

import curewindow.cure.Release;
import curewindow.told.JobView;
import curewindow.told.Safety;
import java.util.List;
import java.util.Map;

/** The values that a wallet card's template can show of one job. */
final class CardWords {

  static final int DATES = 2;

  private CardWords() {}

  static Map<String, Object> of(JobView view, int codeNumber) {
    List<Release> dates = UrgentDates.of(view, DATES);
    Map<String, Object> card = CommonWords.of(view, codeNumber);
    card.put("dates", dates.stream().map(r -> CommonWords.stamp(view, r)).toList());
    card.put("sight", Safety.of(dates, view));
    return card;
  }
}
