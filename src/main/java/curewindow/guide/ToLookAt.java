package curewindow.guide;

import curewindow.cure.HoldKind;
import curewindow.shop.FittedItem;
import curewindow.told.JobView;
import curewindow.told.LaterCare;
import curewindow.words.Words;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What the shop looks at when a car comes in again. */
public final class ToLookAt {

  private final JobView ours;
  private final Words words;

  /**
   * What to look at on a car.
   *
   * @param ours the job, in the shop's own language
   */
  public ToLookAt(JobView ours) {
    this.ours = ours;
    this.words = ours.words();
  }

  /**
   * What was fitted.
   *
   * @return one text for each service: its name, the films, and the spots
   */
  public List<String> fitted() {
    return fitted(item -> true);
  }

  /**
   * At the visit after the work.
   *
   * @param day the day of the visit
   * @return the work, and what should have settled by then
   */
  public String at(LocalDate day) {
    String fitted = String.join(" ", fitted());
    String settled =
        ours.timeline().releases().stream()
            .filter(r -> r.kind() == HoldKind.SETTLE)
            .filter(r -> !day(r.likely()).isAfter(day))
            .map(r -> words.text("hold." + r.hold() + ".event"))
            .collect(Collectors.joining(" \u00b7 "));
    return settled.isEmpty()
        ? fitted
        : words.text("office.visits.look", Map.of("fitted", fitted, "settled", settled));
  }

  /**
   * What is looked at, topped up or replaced months later.
   *
   * @param later what is due
   * @return that work
   */
  public String at(LaterCare later) {
    List<String> of = later.of();
    return String.join(" ", fitted(i -> of.contains(i.service()) || of.contains(i.film())));
  }

  private List<String> fitted(Predicate<FittedItem> wanted) {
    JobFacts facts = new JobFacts(ours);
    return ours.job().items().stream()
        .filter(wanted)
        .map(FittedItem::service)
        .distinct()
        .map(
            s ->
                words.text(
                    "office.pickups.fitted",
                    Map.of(
                        "service", words.text("service." + s),
                        "film", facts.value("film." + s).orElse(""),
                        "spots", facts.value("spots." + s).orElse(""))))
        .toList();
  }

  private LocalDate day(Instant at) {
    return at.atZone(ours.timeline().zone()).toLocalDate();
  }
}
