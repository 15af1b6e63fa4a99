package curewindow.site;

import curewindow.cure.CureCase;
import curewindow.shop.Job;
import curewindow.told.BeforePickup;
import curewindow.told.JobView;
import curewindow.why.ExplanationInputs;
import curewindow.why.JustDates;
import curewindow.why.Trial;
import curewindow.why.TrialAsked;
import curewindow.why.TrialRead;
import curewindow.why.Why;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** The explanation of a job of a shop folder. */
public final class WhyOf {

  private WhyOf() {}

  /**
   * The explanation of a job.
   *
   * @param shop the shop folder
   * @param job one of its good jobs
   * @param trial what is tried instead of what its file says; {@link Trial#NONE} for nothing
   * @param now nothing is advised for before a pickup that is past
   * @return the explanation
   */
  public static Why of(LoadedShop shop, Job job, Trial trial, Instant now) {
    Job tried = trial.on(job);
    JobView view = shop.dates().english(tried);
    CureCase curing = shop.cureCase(tried);
    Optional<BeforePickup> before =
        tried.hasLeft(now) ? Optional.empty() : BeforePickup.of(curing, view.catalogue());
    return Why.of(
        new ExplanationInputs(
            view, curing, hold -> shop.dates().curing().explanation(curing, hold), before, trial));
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
    return shop.dates().english(job).timeline().releases().stream().map(r -> r.hold()).toList();
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
    return JustDates.of(jobs.parallelStream().map(shop.dates()::english).toList());
  }
}
