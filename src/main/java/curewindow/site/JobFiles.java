package curewindow.site;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.Job;
import curewindow.shop.JobCheck;
import curewindow.shop.JobDraft;
import curewindow.shop.JobText;
import curewindow.shop.Sha256;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * Writes job files: only what the one reader of jobs takes, never over a file that somebody else
 * wrote meanwhile, and each as a whole.
 */
public final class JobFiles {

  private static final String FOLDER = "jobs/";
  private static final String ENDING = ".yaml";

  private JobFiles() {}

  /**
   * A job's file as it stands.
   *
   * @param file relative to the shop folder
   * @param text its text
   * @param version changes whenever the text does
   */
  public record Kept(String file, String text, String version) {

    /** Refuses missing parts. */
    public Kept {
      Objects.requireNonNull(file, "file");
      Objects.requireNonNull(text, "text");
      Objects.requireNonNull(version, "version");
    }
  }

  /** What came of writing. */
  public sealed interface Result permits Written, Refused, Overtaken {}

  /**
   * It is on the disk.
   *
   * @param job as it was read from the text that was written
   */
  public record Written(Job job) implements Result {}

  /**
   * Nothing was written.
   *
   * @param problems what is wrong, each with its path in the job
   */
  public record Refused(List<Problem> problems) implements Result {

    /** Copies the list. */
    public Refused {
      problems = List.copyOf(problems);
    }
  }

  /**
   * Nothing was written, as the file is another by now.
   *
   * @param now the file as it stands
   */
  public record Overtaken(Kept now) implements Result {}

  /**
   * The file of a job.
   *
   * @param shop the shop folder
   * @param job one of its good jobs
   * @return the file; empty where the job stands in a table of jobs, or its file is gone
   */
  public static Optional<Kept> of(LoadedShop shop, Job job) {
    String file = job.where().file();
    return file.endsWith(ENDING) ? kept(shop, file) : Optional.empty();
  }

  private static Optional<Kept> kept(LoadedShop shop, String file) {
    return shop.files()
        .text(file, new Problems())
        .map(text -> new Kept(file, text, HexFormat.of().formatHex(Sha256.of(text))));
  }

  /**
   * Writes the file of a new job.
   *
   * @param shop the shop folder
   * @param draft the job
   * @return what came of it; nothing is written under a number that any job has, or had
   * @throws IOException where the shop folder cannot be written; the message is for the user
   */
  public static Result add(LoadedShop shop, JobDraft draft) throws IOException {
    String file = FOLDER + draft.id() + ENDING;
    String text = JobText.of(draft);
    JobCheck.Tried tried = shop.tried(file, text);
    if (tried.job().isEmpty()) {
      return new Refused(tried.problems());
    }
    try (FolderLock lock = FolderLock.on(shop.files().root())) {
      Optional<Problem> taken = taken(shop, draft.id(), file, Ledgers.links(lock));
      if (taken.isPresent()) {
        return new Refused(List.of(taken.get()));
      }
      AtomicFiles.writePrivate(shop.files().root().resolve(file), bytes(text));
    }
    return new Written(tried.job().get());
  }

  private static Optional<Problem> taken(
      LoadedShop shop, String id, String file, LinkLedger links) {
    Path path = shop.files().root().resolve(file);
    boolean isThere =
        Files.exists(path)
            || shop.jobs().stream().anyMatch(j -> j.id().equalsIgnoreCase(id))
            || shop.brokenJobs().stream()
                .anyMatch(b -> b.toLowerCase(Locale.ROOT).equals(id.toLowerCase(Locale.ROOT)));
    Where where = new Where(file, 1, 1, "id");
    if (isThere) {
      return Optional.of(
          Problem.error(
              "id-taken",
              where,
              "there is a job " + id + " already",
              "give this one the next number"));
    }
    return links.known(id).isEmpty()
        ? Optional.empty()
        : Optional.of(
            Problem.error(
                "id-taken",
                where,
                id + " was another job, and its card still leads to that page",
                "give this one the next number"));
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
  public static Result change(LoadedShop shop, Job job, String version, JobDraft draft)
      throws IOException {
    String file = job.where().file();
    if (!draft.id().equals(job.id())) {
      throw new IllegalArgumentException("a change does not rename " + job.id());
    }
    try (FolderLock lock = FolderLock.on(shop.files().root())) {
      Optional<Kept> now = file.endsWith(ENDING) ? kept(shop, file) : Optional.empty();
      if (now.isEmpty()) {
        return byHand(file);
      }
      if (!now.get().version().equals(version)) {
        return new Overtaken(now.get());
      }
      Optional<String> text = JobText.changed(now.get().text(), draft);
      if (text.isEmpty()) {
        return byHand(file);
      }
      JobCheck.Tried tried = shop.tried(file, text.get());
      if (tried.job().isEmpty()) {
        return new Refused(tried.problems());
      }
      AtomicFiles.replace(lock.folder().resolve(file), bytes(text.get()));
      return new Written(tried.job().get());
    }
  }

  private static Refused byHand(String file) {
    return new Refused(
        List.of(
            Problem.error(
                "by-hand",
                Where.file(file),
                "this job cannot be changed here",
                "change it in " + file)));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
