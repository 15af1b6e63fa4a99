package curewindow.site;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.told.JobView;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What a press would do with the pages, and why. Nothing is written to find out. */
public final class PressPlan {

  private static final int NAMED = 10;

  /** Why something is made or not, said of one page and of several. */
  private record Why(String one, String several) {}

  private static final Map<MadeBefore.Reason, Why> WHY =
      Map.of(
          MadeBefore.Reason.NEW, new Why("new", "new"),
          MadeBefore.Reason.SHARED,
              new Why(
                  "what it shares with other pages has changed",
                  "what they share with other pages has changed"),
          MadeBefore.Reason.GUIDE,
              new Why("a guide on it has changed", "a guide on them has changed"),
          MadeBefore.Reason.OWN,
              new Why(
                  "its job, visits or card have changed",
                  "their jobs, visits or cards have changed"),
          MadeBefore.Reason.TOUCHED,
              new Why(
                  "a file is gone, or was changed by hand",
                  "files are gone, or were changed by hand"));

  private static final Why GONE =
      new Why("its job is gone or its time is over", "their jobs are gone or their time is over");

  private static final Why LEFT_OUT =
      new Why("a page from before stays as it is", "pages from before stay as they are");

  private final LoadedShop shop;
  private final Path out;
  private final Problems problems = new Problems();
  private final List<String> lines = new ArrayList<>();

  private PressPlan(LoadedShop shop, Path out) {
    this.shop = shop;
    this.out = out;
  }

  /**
   * Finds out what a press would do.
   *
   * @param shop a shop folder whose shop.yaml and ledgers are right
   * @param out the output folder, which need not be there
   * @param allowed what was said to be meant
   * @param clock tells the day
   * @return the plan
   * @throws IOException where the output folder cannot be read
   */
  public static PressPlan of(LoadedShop shop, Path out, Press.Allowed allowed, Clock clock)
      throws IOException {
    PressPlan plan = new PressPlan(shop, out);
    List<PageList.Row> before = shop.ledgers().open(PageList.read(out));
    plan.problems.addAll(LostAddresses.of(shop, before));
    if (plan.problems.errorCount() == 0) {
      try {
        plan.pages(before, allowed, PressJobs.of(shop, allowed.same(), clock));
      } catch (UncheckedIOException e) {
        throw e.getCause();
      }
    }
    return plan;
  }

  /**
   * The plan in words.
   *
   * @return the lines
   */
  public List<String> lines() {
    return List.copyOf(lines);
  }

  /**
   * What stands in the way of some pages.
   *
   * @return the problems beside those of the shop folder itself
   */
  public List<Problem> problems() {
    return problems.all();
  }

  private void pages(List<PageList.Row> before, Press.Allowed allowed, PressJobs jobs)
      throws IOException {
    problems.addAll(jobs.problems());
    Leaving leaving = allowed.letGo() ? Leaving.FREELY : Leaving.of(shop, before);
    problems.addAll(leaving.problems());
    List<JobView> views =
        JobViews.of(
            shop, jobs.good(), job -> shop.knownToken(job.id()).orElse(Tokens.SAMPLE), problems);
    make(views);
    Set<String> ids = views.stream().map(v -> v.job().id()).collect(Collectors.toSet());
    List<String> leftOut = leaving.with(jobs.leftOut(shop, ids));
    List<PageList.Row> stay = new KeptPages(before, ids, leftOut, true, true).rows();
    List<String> gone =
        before.stream()
            .filter(row -> !ids.contains(row.job()) && !stay.contains(row))
            .map(PageList.Row::job)
            .toList();
    say("take down", gone, GONE);
    say("leave out", leftOut, LEFT_OUT);
  }

  private void make(List<JobView> views) throws IOException {
    Inputs inputs = new Inputs(shop, out);
    MadeBefore memory = MadeBefore.read(out);
    Map<MadeBefore.Reason, List<String>> make = new EnumMap<>(MadeBefore.Reason.class);
    int stand = 0;
    for (JobView noted : views) {
      String id = noted.job().id();
      JobView view =
          shop.dates().isMeasured(noted.job()) ? ParkedViews.of(shop, noted).get(0) : noted;
      Optional<MadeBefore.Reason> reason =
          memory.reason(id, inputs.of(view).and(shop.calendarsSaid(id)));
      reason.ifPresent(why -> make.computeIfAbsent(why, w -> new ArrayList<>()).add(id));
      stand += reason.isEmpty() ? 1 : 0;
    }
    make.forEach((why, ids) -> say("make", ids, WHY.get(why)));
    memory
        .reason(MadeBefore.PUBLIC, inputs.open())
        .ifPresent(why -> lines.add("make       the pages for anyone: " + WHY.get(why).several()));
    if (stand > 0) {
      lines.add("leave      " + pages(stand) + " as they stand");
    }
  }

  private void say(String what, List<String> jobs, Why why) {
    if (!jobs.isEmpty()) {
      String said = jobs.size() == 1 ? why.one() : why.several();
      String more = jobs.size() > NAMED ? " and " + (jobs.size() - NAMED) + " more" : "";
      String named = jobs.stream().limit(NAMED).collect(Collectors.joining(", "));
      lines.add("%-10s %s, %s: %s%s".formatted(what, pages(jobs.size()), said, named, more));
    }
  }

  private static String pages(int count) {
    return count == 1 ? "1 page" : count + " pages";
  }
}
