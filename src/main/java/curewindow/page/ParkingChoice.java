package curewindow.page;

import curewindow.cure.ParkingPlan;
import curewindow.cure.Release;
import curewindow.told.Contact;
import curewindow.told.JobView;
import curewindow.told.Listing;
import curewindow.told.ParkingWords;
import curewindow.told.When;
import curewindow.words.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The choice of where the car really stands, which changes every date on the page. */
final class ParkingChoice {

  /**
   * The choice.
   *
   * @param options one for each case
   */
  record Choice(List<Option> options) {}

  /**
   * A case.
   *
   * @param id its lasting name, by which a phone remembers it
   * @param name where the car stands
   * @param dates those dates that are not the same in all cases, for a page without a script
   */
  record Option(String id, String name, List<Contact.Pair> dates) {}

  private final Cases cases;
  private final Words words;

  ParkingChoice(Cases cases) {
    this.cases = cases;
    this.words = cases.noted().words();
  }

  /** The choice, or empty where the parking makes no difference. */
  Optional<Choice> choice() {
    return cases.views().size() == 1
        ? Optional.empty()
        : Optional.of(new Choice(cases.numbers().mapToObj(this::option).toList()));
  }

  private Option option(int number) {
    JobView view = cases.views().get(number);
    return new Option(
        view.parkings().name(),
        Listing.capital(name(view)),
        view.timeline().releases().stream().filter(this::differs).map(r -> date(view, r)).toList());
  }

  /** Every way to park that has the case's dates, and which of them the shop noted. */
  private String name(JobView view) {
    List<ParkingPlan> plans = view.parkings().shown().plans();
    return plans.stream()
        .map(plan -> noted(plan, ParkingWords.of(plan, words)))
        .reduce((first, next) -> words.text("parked.or", Map.of("first", first, "next", next)))
        .orElseThrow();
  }

  private String noted(ParkingPlan plan, String name) {
    return plan.equals(cases.noted().job().parking())
        ? words.text("parked.noted", Map.of("parking", name))
        : name;
  }

  /** Where the car stands, in each case: what the shop noted, or the ways of the case chosen. */
  List<Cases.Text> here() {
    return cases.text(v -> words.text("parked.here", Map.of("parking", stands(v))));
  }

  private String stands(JobView view) {
    return view == cases.noted() ? ParkingWords.of(view.job().parking(), words) : name(view);
  }

  private boolean differs(Release release) {
    return cases.views().stream()
            .map(v -> v.timeline().of(release.hold()).map(Release::end))
            .distinct()
            .count()
        > 1;
  }

  private Contact.Pair date(JobView view, Release release) {
    return new Contact.Pair(
        When.shortLabel(release, words), new When(view).shortDayAndTime(release));
  }
}
