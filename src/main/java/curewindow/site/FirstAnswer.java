package curewindow.site;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.told.JobView;
import curewindow.told.Urgency;
import curewindow.told.When;
import curewindow.words.Words;
import java.util.List;
import java.util.Optional;

/** What a press says of a page: the first thing to hold off from, in the shop's language. */
final class FirstAnswer {

  private final Words words;

  FirstAnswer(LoadedShop shop) {
    this.words = shop.words().of(shop.shop().orElseThrow().language());
  }

  /** The row of a job whose page was made; of a car that left late nothing has to wait. */
  PressReport.Made of(JobView view, String page) {
    List<Release> holds = Urgency.holds(view);
    Optional<Release> first =
        (holds.isEmpty() ? view.timeline().releases() : holds).stream().findFirst();
    String answer =
        first.map(release -> answer(view, release)).orElseGet(() -> words.text("page.now.clear"));
    return new PressReport.Made(view.job().id(), view.job().firstName(), answer, page);
  }

  private String answer(JobView view, Release first) {
    String until = first.kind() == HoldKind.HOLD ? "hold" : "settle";
    return words.text("hold." + first.hold() + ".short")
        + " "
        + words.text("page.state." + until)
        + " "
        + new When(view.in(words)).shortDayAndTime(first);
  }
}
