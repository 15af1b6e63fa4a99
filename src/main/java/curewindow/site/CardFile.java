package curewindow.site;

import curewindow.handout.CardPress;
import curewindow.page.JobView;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.Job;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Writes the cards of some jobs into one PDF. */
public final class CardFile {

  private CardFile() {}

  /**
   * What became of the cards.
   *
   * @param written true where the file was written
   * @param problems what is wrong with the template or with an address
   */
  public record Result(boolean written, List<Problem> problems) {}

  /**
   * Writes the cards; a file that stands there is replaced only by a whole one.
   *
   * @param shop a shop folder whose shop.yaml and link ledger are right
   * @param jobs some of its good jobs
   * @param file the PDF
   * @param clock gives the date written beside new tokens
   * @param tokens makes the secret parts of new pages' addresses
   * @return what became of them
   * @throws IOException where a file cannot be written; the message is for the user
   */
  public static Result write(
      LoadedShop shop, List<Job> jobs, Path file, Clock clock, Supplier<String> tokens)
      throws IOException {
    Problems problems = new Problems();
    Optional<CardPress> press = CardPress.read(shop.files(), problems);
    if (press.isEmpty()) {
      return new Result(false, problems.all());
    }
    List<JobView> views = JobViews.of(shop, jobs, clock, tokens);
    Optional<byte[]> pdf = press.get().cards(views, problems);
    if (pdf.isPresent()) {
      PrintedCards.note(shop, views, clock);
      AtomicFiles.write(file, pdf.get());
    }
    return new Result(pdf.isPresent(), problems.all());
  }
}
