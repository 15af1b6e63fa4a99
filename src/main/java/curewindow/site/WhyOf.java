package curewindow.site;

import curewindow.cure.CureCase;
import curewindow.shop.Job;
import curewindow.why.Grounds;
import curewindow.why.JustDates;
import curewindow.why.Look;
import curewindow.why.Trial;
import curewindow.why.TrialAsked;
import curewindow.why.TrialRead;
import curewindow.why.Why;
import java.util.List;

/** The explanation of a job of a shop folder. */
public final class WhyOf {

  private WhyOf() {}

  /**
   * The explanation of a job.
   *
   * @param shop the shop folder
   * @param job one of its good jobs
   * @param trial what is tried instead of what its file says; {@link Trial#NONE} for nothing
   * @param look what is shown, and how
   * @return lines in English
   */
  public static String text(LoadedShop shop, Job job, Trial trial, Look look) {
    return why(shop, job, trial).text(look);
  }

  /**
   * The explanation as JSON.
   *
   * @param shop the shop folder
   * @param job one of its good jobs
   * @param trial what is tried instead of what its file says; {@link Trial#NONE} for nothing
   * @param look what is shown
   * @return one JSON object
   */
  public static String json(LoadedShop shop, Job job, Trial trial, Look look) {
    return why(shop, job, trial).json(look);
  }

  /**
   * Reads a trial as typed.
   *
   * @param shop the shop folder
   * @param job one of its good jobs
   * @param asked what was typed
   * @return the trial, or what is wrong with it
   */
  public static TrialRead trial(LoadedShop shop, Job job, TrialAsked asked) {
    return asked.read(job, shop.read().places());
  }

  /**
   * The holds that apply to a job.
   *
   * @param shop the shop folder
   * @param job one of its good jobs
   * @return their ids, by date
   */
  public static List<String> holds(LoadedShop shop, Job job) {
    return shop.english(job).timeline().releases().stream().map(r -> r.hold()).toList();
  }

  /**
   * The dates of some jobs without their reasons. No guide, no template and no words but the
   * English ones are read for them.
   *
   * @param shop the shop folder
   * @param jobs good jobs of it, as they are or as tried
   * @return their dates, in the order of the jobs
   */
  public static JustDates dates(LoadedShop shop, List<Job> jobs) {
    return JustDates.of(jobs.parallelStream().map(shop::english).toList());
  }

  private static Why why(LoadedShop shop, Job job, Trial trial) {
    Job tried = trial.on(job);
    CureCase curing = shop.cureCase(tried);
    return Why.of(
        new Grounds(
            shop.english(tried), curing, hold -> shop.curing().account(curing, hold), trial));
  }
}
