package curewindow.site;

import curewindow.problem.Problem;
import curewindow.problem.Where;
import curewindow.shop.BrokenJob;
import curewindow.shop.Job;
import curewindow.shop.JobCheck;
import curewindow.shop.JobDraft;
import curewindow.shop.JobText;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Writes job files: only what the one reader of jobs takes, never over a file that somebody else
 * wrote meanwhile, and each as a whole.
 */
public final class JobFiles {

  private static final String FOLDER = "jobs/";
  private static final String ENDING = ".yaml";

  private JobFiles() {}

  /**
   * The file of a job.
   *
   * @param shop the shop folder
   * @param job one of its good jobs
   * @return the file; empty where the job stands in a table of jobs, or its file is gone
   */
  public static Optional<KeptFile> of(LoadedShop shop, Job job) {
    String file = job.where().file();
    return file.endsWith(ENDING) ? KeptFile.of(shop.files(), file) : Optional.empty();
  }

  /**
   * Writes the file of a new job.
   *
   * @param shop the shop folder
   * @param draft the job
   * @return what came of it; nothing is written under a number that any job has, or had
   * @throws IOException where the shop folder cannot be written; the message is for the user
   */
  public static Saved<Job> add(LoadedShop shop, JobDraft draft) throws IOException {
    String file = FOLDER + draft.id() + ENDING;
    String text = JobText.of(draft);
    Saved<Job> tried = tried(shop, file, text);
    if (tried instanceof Saved.Written) {
      try (NewJobs jobs = NewJobs.in(shop.files().root())) {
        Optional<Problem> taken = taken(shop, draft.id(), file, jobs.links());
        if (taken.isPresent()) {
          return new Saved.Refused<>(List.of(taken.get()));
        }
        if (!jobs.write(draft.id(), text)) {
          return new Saved.Refused<>(List.of(isThere(draft.id(), file)));
        }
      }
    }
    return tried;
  }

  private static Saved<Job> tried(LoadedShop shop, String file, String text) {
    JobCheck.Tried tried = shop.tried(file, text);
    return tried
        .job()
        .<Saved<Job>>map(Saved.Written::new)
        .orElseGet(() -> new Saved.Refused<>(tried.problems()));
  }

  private static Optional<Problem> taken(
      LoadedShop shop, String id, String file, LinkLedger links) {
    Stream<String> good = shop.jobs().stream().map(Job::id);
    Stream<String> broken = shop.brokenJobs().stream().map(BrokenJob::likelyId);
    if (Stream.concat(good, broken).anyMatch(id::equalsIgnoreCase)) {
      return Optional.of(isThere(id, file));
    }
    return links.known(id).map(token -> wasAnother(id, file));
  }

  private static Problem isThere(String id, String file) {
    return taken(file, "there is a job " + id + " already");
  }

  private static Problem wasAnother(String id, String file) {
    return taken(file, id + " was another job, and its card still leads to that page");
  }

  private static Problem taken(String file, String message) {
    return Problem.error(
        "id-taken", new Where(file, 1, 1, "id"), message, "give this one the next number");
  }

  /**
   * Changes the file of a job. What stays the same keeps its lines, their order and comments.
   *
   * @param shop the shop folder
   * @param job one of its good jobs
   * @param version of the file that the change was made from
   * @param draft what the job should say; its id may not change
   * @return what came of it
   * @throws IOException where the shop folder cannot be written; the message is for the user
   */
  public static Saved<Job> change(LoadedShop shop, Job job, String version, JobDraft draft)
      throws IOException {
    String file = job.where().file();
    if (!draft.id().equals(job.id())) {
      throw new IllegalArgumentException("a change does not rename " + job.id());
    }
    return file.endsWith(ENDING)
        ? KeptFile.change(
            shop.files(),
            new KeptFile.Change(file, version, text -> JobText.changed(text, draft)),
            text -> tried(shop, file, text))
        : KeptFile.byHand(file);
  }
}
