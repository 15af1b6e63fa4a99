package curewindow.shop;

import curewindow.climate.ObservedHours;
import curewindow.climate.Place;
import curewindow.problem.Problem;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything read from a shop folder: the values that are good, and the problems of those that are
 * not. Jobs with problems are not among {@code jobs}.
 *
 * @param shop the shop, or empty where shop.yaml cannot be used
 * @param catalogue the catalogue; entries with problems are left out
 * @param places all places that may be named, built-in ones and the shop's own, by id
 * @param observed weather that was measured, by the place's id; rows with problems are left out
 * @param languages languages that have both words and guides, in alphabetical order
 * @param jobs the good jobs, by id
 * @param brokenJobs the jobs that were left out, by name
 * @param problems all problems, sorted
 * @param oneJob reads one more job as these were read
 */
public record ShopRead(
    Optional<Shop> shop,
    Catalogue catalogue,
    Map<String, Place> places,
    Map<String, ObservedHours> observed,
    List<String> languages,
    List<Job> jobs,
    List<BrokenJob> brokenJobs,
    List<Problem> problems,
    JobCheck oneJob) {

  /** The file of weather that was measured, relative to the shop folder. */
  public static final String OBSERVED = ObservedReader.FILE;

  /** Copies the lists. */
  public ShopRead {
    languages = List.copyOf(languages);
    jobs = List.copyOf(jobs);
    brokenJobs = List.copyOf(brokenJobs);
    problems = List.copyOf(problems);
  }

  /** What was read, where no further job is to be. */
  ShopRead(
      Optional<Shop> shop,
      Catalogue catalogue,
      Map<String, Place> places,
      Map<String, ObservedHours> observed,
      List<String> languages,
      List<Job> jobs,
      List<BrokenJob> brokenJobs,
      List<Problem> problems) {
    this(shop, catalogue, places, observed, languages, jobs, brokenJobs, problems, JobCheck.NONE);
  }

  /**
   * The same folder with other good jobs.
   *
   * @param others the jobs, by id
   * @return what would be read then
   */
  public ShopRead with(List<Job> others) {
    return new ShopRead(
        shop, catalogue, places, observed, languages, others, brokenJobs, problems, oneJob);
  }
}
