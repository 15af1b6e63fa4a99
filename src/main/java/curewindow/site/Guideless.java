package curewindow.site;

import curewindow.problem.Problem;
import curewindow.shop.FittedItem;
import curewindow.shop.Job;
import java.util.Optional;

/** A job without the care text for what was fitted: it gets no page, so no card leads to one. */
final class Guideless {

  private Guideless() {}

  /**
   * What is wrong with a job's guides. Those that come with the program are not read for that, as a
   * card should not wait for it.
   *
   * @param shop the shop folder
   * @param job a good job of it
   * @return the problem, or empty where each service has a guide in the job's language
   */
  static Optional<Problem> of(LoadedShop shop, Job job) {
    for (FittedItem item : job.items()) {
      String guide = shop.read().catalogue().services().get(item.service()).guide();
      String file = "content/guides/" + job.language() + "/" + guide + ".md";
      if (shop.files().original(file).isEmpty()
          && shop.guides().find(job.language(), guide).isEmpty()) {
        return Optional.of(
            Problem.error(
                "missing-guide",
                job.where(),
                "the care guide " + guide + " cannot be used in " + job.language(),
                "mend or add " + file));
      }
    }
    return Optional.empty();
  }
}
