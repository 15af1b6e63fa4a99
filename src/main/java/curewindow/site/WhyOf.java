package curewindow.site;

import curewindow.shop.Job;
import curewindow.why.Why;

/** The explanation of a job of a shop folder. */
public final class WhyOf {

  private WhyOf() {}

  /**
   * The explanation as text.
   *
   * @param shop the shop folder
   * @param job one of its good jobs
   * @return lines in English
   */
  public static String text(LoadedShop shop, Job job) {
    return why(shop, job).text();
  }

  /**
   * The explanation as JSON.
   *
   * @param shop the shop folder
   * @param job one of its good jobs
   * @return one JSON object
   */
  public static String json(LoadedShop shop, Job job) {
    return why(shop, job).json();
  }

  private static Why why(LoadedShop shop, Job job) {
    // The explanation shows no address, so it does not need the job's real token.
    return Why.of(shop.view(job, "0"), shop.cureCase(job));
  }
}
