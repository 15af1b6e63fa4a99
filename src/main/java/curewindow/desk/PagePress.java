package curewindow.desk;

import curewindow.desk.PressReports.Made;
import curewindow.desk.PressReports.Step;
import curewindow.problem.Problem;
import curewindow.send.Login;
import curewindow.send.NotLive;
import curewindow.send.Send;
import curewindow.send.SendTrouble;
import curewindow.shop.Job;
import curewindow.shop.SendTo;
import curewindow.shop.Shop;
import curewindow.site.LoadedShop;
import curewindow.site.Output;
import curewindow.site.PagesNow;
import curewindow.site.Press;
import curewindow.site.PressReport;
import curewindow.site.Tokens;
import curewindow.words.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

/**
 * Makes a car's page, sends it where that is set up, and asks whether it answers. Other pages that
 * have to be made follow by themselves, some at a time, so that nobody waits for them.
 */
final class PagePress implements AutoCloseable {

  private final DeskShop desk;
  private final Path out;
  private final Clock clock;

  /** How many pages are made at a time while nobody waits: in between others get their turn. */
  private static final int SOME = 50;

  private static final long PAUSE = 500;

  private final ExecutorService follow =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "other pages");
            thread.setDaemon(true);
            return thread;
          });

  PagePress(DeskShop desk, Path out, Clock clock) {
    this.desk = desk;
    this.out = out;
    this.clock = clock;
  }

  Made of(Job job) throws IOException {
    List<Step> steps = new ArrayList<>();
    PressReport report = press(new Press.Extent(Set.of(job.id()), 0));
    desk.readAgain();
    List<Problem> wrong =
        report.problems().stream().filter(Problem::isError).filter(p -> concerns(p, job)).toList();
    boolean made = isNow(job.id()) && !report.leftOut().contains(job.id());
    steps.add(Step.of(made, made ? "desk.hand-over.made" : "desk.hand-over.not-made", Map.of()));
    wrong.stream().map(Step::of).forEach(steps::add);
    if (report.later() > 0) {
      steps.add(Step.of(true, "desk.hand-over.follow", Map.of("n", report.later())));
      follow();
    }
    return made ? sent(job, steps) : new Made(steps, Optional.empty());
  }

  /** Makes the pages that are still to be made, beside what is done at the counter. */
  void follow() {
    follow.execute(this::others);
  }

  /** What goes wrong with one of them is told when it is asked for. */
  private void others() {
    try {
      int before;
      int left = Integer.MAX_VALUE;
      do {
        Thread.sleep(PAUSE);
        before = left;
        left = press(new Press.Extent(Set.of(), SOME)).later();
      } while (left > 0 && left < before);
      desk.readAgain();
    } catch (IOException | RuntimeException e) {
      // The folder is in use, or away: the next page that is made tries again.
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Ends with the page that is being made; the others are made after the next one. */
  @Override
  public void close() {
    follow.shutdownNow();
    try {
      follow.awaitTermination(1, TimeUnit.MINUTES);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private boolean isNow(String job) {
    return desk.job(job).filter(j -> desk.now().page(j) == PagesNow.Stand.NOW).isPresent();
  }

  private static boolean concerns(Problem problem, Job job) {
    return problem.file().equals(job.where().file()) || !problem.file().startsWith("jobs");
  }

  /**
   * A press takes seconds, in which others at the desk go on working; who wants a page too gets it
   * then, however long it takes.
   */
  private synchronized PressReport press(Press.Extent extent) throws IOException {
    try (Output output = Output.open(out)) {
      LoadedShop shop = LoadedShop.load(desk.folder(), clock);
      Press.Wish wish = new Press.Wish(Press.Allowed.NOTHING, extent);
      return Press.run(shop, output, clock, Tokens.secure(), wish);
    }
  }

  private Made sent(Job job, List<Step> steps) throws IOException {
    Shop own = desk.now().shop().shop().orElseThrow();
    if (own.send().isEmpty()) {
      String folder = out.resolve("site").toString();
      steps.add(Step.of(false, "desk.hand-over.not-sent", Map.of("folder", folder)));
    } else {
      steps.add(send(own.send().get()));
    }
    Optional<NotLive> wrong = Send.wrongAtAddress(out, job.id());
    steps.add(
        wrong
            .map(w -> new Step(false, words -> silent(w, words)))
            .orElseGet(() -> Step.of(true, "desk.hand-over.answers", Map.of())));
    return new Made(steps, Optional.of(wrong.isEmpty()));
  }

  private static String silent(NotLive wrong, Words words) {
    String why = words.text("desk.silent." + wrong.how().id(), Map.of("detail", wrong.detail()));
    return words.text("desk.hand-over.silent", Map.of("why", why));
  }

  /** Which other pages do not answer, the command tells; here it is about one car. */
  private Step send(SendTo to) {
    try {
      Send.Report report =
          new Send(to, out, line -> {}).run(Login.ofEnvironment(), new Send.Allowed(false, false));
      return report
          .refused()
          .map(PagePress::notSent)
          .orElseGet(() -> Step.of(true, "desk.hand-over.sent", Map.of()));
    } catch (SendTrouble e) {
      return notSent(e);
    } catch (IOException e) {
      return new Step(false, words -> String.join(" ", ProblemWords.told(e, words)));
    }
  }

  private static Step notSent(SendTrouble why) {
    return Step.of(false, "desk.send." + why.kind().id(), why.parts());
  }
}
