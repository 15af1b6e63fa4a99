package curewindow.site;

import curewindow.guide.Questions;
import curewindow.problem.Nearest;
import curewindow.shop.BrokenJob;
import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.Year;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** What customers called with, as it stood when the shop folder was read. */
public final class CallNotes {

  private static final Year FIRST = Year.of(1970);
  private static final Year LAST = Year.of(2199);

  private final Optional<Callbacks> kept;

  private CallNotes(Optional<Callbacks> kept) {
    this.kept = kept;
  }

  /**
   * The calls of a shop folder.
   *
   * @param shop the shop folder
   * @return the calls; none where their file has to be mended first
   */
  public static CallNotes of(LoadedShop shop) {
    return new CallNotes(shop.ledgers().callbacks());
  }

  /**
   * The calls of a job.
   *
   * @param job the job's id
   * @return the calls, the first first; empty where there is none
   */
  public List<CallNote> of(String job) {
    return kept.map(calls -> calls.of(job)).orElse(List.of());
  }

  /**
   * The questions that a call can be noted for.
   *
   * @param shop the shop folder
   * @return the ids of the guides' questions and {@link CallNote#OTHER}, alphabetical
   */
  public static List<String> questions(LoadedShop shop) {
    Set<String> ids = new TreeSet<>(Questions.ids(shop.guides()));
    ids.add(CallNote.OTHER);
    return List.copyOf(ids);
  }

  /**
   * Notes that a customer called with a question; it is on disk when this returns.
   *
   * @param shop the shop folder, whose shop.yaml and ledgers are right
   * @param job the id of a job that is there, or whose card was handed over
   * @param question the id of a question of the guides, or {@link CallNote#OTHER}
   * @param outcome what became of it
   * @param at when they called, in the years 1970 to 2199
   * @throws IllegalArgumentException where the job or the question is not known; the message is for
   *     the user
   * @throws IOException where it cannot be written; the message is for the user
   */
  public static void note(
      LoadedShop shop, String job, String question, CallOutcome outcome, Instant at)
      throws IOException {
    refuseOthers(shop, job, question);
    LocalDateTime time =
        LocalDateTime.ofInstant(
            at.truncatedTo(ChronoUnit.SECONDS), shop.shop().orElseThrow().zone());
    Year year = Year.from(time);
    if (year.isBefore(FIRST) || year.isAfter(LAST)) {
      throw new IllegalArgumentException("a call in the year " + year + " cannot be noted");
    }
    CallNote note = new CallNote(job, time, question, outcome);
    try (FolderLock lock = FolderLock.on(shop.files().root())) {
      Callbacks calls = Ledgers.callbacks(lock);
      calls.add(note);
      calls.save();
    }
  }

  /**
   * Takes back the last call of a job that was noted on a day.
   *
   * @param shop the shop folder
   * @param job the job's id
   * @param day the day, by the shop's clock
   * @return whether there was one
   * @throws IOException where the file is broken or cannot be written; the message is for the user
   */
  public static boolean takeBack(LoadedShop shop, String job, LocalDate day) throws IOException {
    try (FolderLock lock = FolderLock.on(shop.files().root())) {
      return Callbacks.CSV.dropLast(lock.folder(), LedgerCsv.ofDay(job, day));
    }
  }

  private static void refuseOthers(LoadedShop shop, String job, String question) {
    if (!isKnown(shop, job)) {
      Set<String> jobs = new TreeSet<>(shop.ledgers().withCard());
      shop.jobs().forEach(j -> jobs.add(j.id()));
      throw new IllegalArgumentException("There is no job " + job + Nearest.hint(job, jobs));
    }
    List<String> questions = questions(shop);
    if (!questions.contains(question)) {
      throw new IllegalArgumentException(
          "There is no question "
              + question
              + Nearest.hint(question, questions)
              + "; there are: "
              + String.join(", ", questions));
    }
  }

  /** Who calls may have a job whose file has to be mended, or is gone. */
  private static boolean isKnown(LoadedShop shop, String job) {
    return shop.job(job).isPresent()
        || shop.ledgers().withCard().contains(job)
        || shop.brokenJobs().stream().anyMatch(name -> BrokenJob.likelyId(name).equals(job));
  }
}
