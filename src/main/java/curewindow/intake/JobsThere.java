package curewindow.intake;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.BrokenJob;
import curewindow.shop.Job;
import curewindow.shop.ShopFiles;
import curewindow.site.LoadedShop;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The jobs that the shop folder has already. */
final class JobsThere {

  private final LoadedShop shop;
  private final ShopFiles files;
  private final Map<String, Job> good = new HashMap<>();
  private final Map<String, String> broken = new HashMap<>();

  JobsThere(ShopFiles files, LoadedShop shop) {
    this.shop = shop;
    this.files = files;
    shop.jobs().forEach(job -> good.put(key(job.id()), job));
    shop.brokenJobs().forEach(name -> broken.put(key(BrokenJob.likelyId(name)), name));
  }

  /** Ids that only differ in capitals are the same, as some disks do not tell them apart. */
  private static String key(String id) {
    return id.toLowerCase(Locale.ROOT);
  }

  /** Where a new job's file goes, relative to the shop folder. */
  static String file(String id) {
    return "jobs/" + id + ".yaml";
  }

  /**
   * Whether a job is there just so.
   *
   * @param job a job that is right
   * @param text the text that its file would have
   */
  boolean has(Job job, String text) {
    Job other = good.get(key(job.id()));
    if (other == null) {
      return false;
    }
    String file = other.where().file();
    if (!file.startsWith("jobs/")) {
      return isSame(job, other);
    }
    // What the shop saw of it since is no part of its file.
    Optional<String> now = files.text(file, new Problems());
    return now.filter(text::equals).isPresent()
        || now.flatMap(t -> shop.tried(file, t).job()).filter(j -> isSame(job, j)).isPresent();
  }

  private static boolean isSame(Job one, Job other) {
    return bare(one).equals(bare(other));
  }

  private static Job bare(Job job) {
    return new Job(
        job.id(),
        job.firstName(),
        job.language(),
        job.car(),
        job.place(),
        job.parking(),
        job.stays(),
        job.items(),
        job.found(),
        List.of(),
        Where.file(""));
  }

  /** What else has the id of a job, or the name of its file; that is never written over. */
  Optional<Problem> inTheWay(Job job, Where where) {
    Job other = good.get(key(job.id()));
    if (other != null) {
      return Optional.of(
          taken(
              job.id(),
              where,
              "the job "
                  + other.id()
                  + " is there already, in "
                  + place(other)
                  + ", and says"
                  + " something else"));
    }
    String name = broken.get(key(job.id()));
    if (name != null) {
      return Optional.of(
          taken(job.id(), where, "the job " + job.id() + " is there already, and has a problem"));
    }
    return files.isOwn(file(job.id()))
        ? Optional.of(taken(job.id(), where, "there is a file " + file(job.id()) + " already"))
        : Optional.empty();
  }

  private static String place(Job job) {
    return job.where().file() + ":" + job.where().line();
  }

  private static Problem taken(String job, Where where, String message) {
    return Problem.error(
            "job-there",
            where,
            message,
            "change that one by hand, or give this one another number; nothing is written over")
        .with("job", job);
  }
}
