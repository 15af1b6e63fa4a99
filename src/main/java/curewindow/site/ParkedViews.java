package curewindow.site;

import curewindow.cure.ParkingPlan;
import curewindow.cure.Timeline;
import curewindow.problem.Faults;
import curewindow.problem.Problems;
import curewindow.told.JobView;
import curewindow.told.Parkings;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Finds out how a job's dates would be if its car really stood elsewhere. */
final class ParkedViews {

  private ParkedViews() {}

  /**
   * The views of all cases of some jobs.
   *
   * @param shop the shop folder
   * @param noted its jobs, as the shop noted them
   * @param problems where faults are told; a job with one is left out
   * @return for each job its cases
   */
  static List<List<JobView>> of(LoadedShop shop, List<JobView> noted, Problems problems) {
    return Faults.guardEach(
            noted, view -> view.job().where(), problems, (view, found) -> of(shop, view))
        .stream()
        .flatMap(Optional::stream)
        .toList();
  }

  /**
   * The views of all cases of parking that make a difference.
   *
   * @param shop the shop folder
   * @param noted a job of it, as the shop noted it
   * @return the noted view first, which then knows all cases, then one view for each other case
   */
  static List<JobView> of(LoadedShop shop, JobView noted) {
    Map<ParkingPlan, Timeline> dates =
        Parkings.others(noted).parallelStream()
            .collect(
                Collectors.toMap(
                    Function.identity(),
                    plan ->
                        shop.dates().curing().timeline(shop.cureCase(noted.job().parkedAs(plan)))));
    Parkings cases = Parkings.of(noted, dates);
    if (cases.cases().isEmpty()) {
      return List.of(noted);
    }
    return IntStream.range(0, cases.cases().size())
        .mapToObj(i -> noted.parked(cases.showing(i)))
        .map(view -> view.parkings().index() == 0 ? view : shop.dates().withCards(view))
        .toList();
  }
}
