package curewindow.site;

import curewindow.problem.Problems;
import curewindow.told.JobView;
import curewindow.told.Printed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Which of the pages that were made are those of their jobs as they are now. What all pages are
 * made from is read once, and stays as it was then. Safe for use by several threads.
 */
public final class PagesNow {

  private final Path out;
  private Optional<Inputs> inputs = Optional.empty();

  /** From what the pages were made, by job, as the memory said at a time. */
  private Map<String, String> made = Map.of();

  private Optional<FileTime> readAt = Optional.empty();

  /**
   * The pages of an output folder; nothing is read yet.
   *
   * @param out the output folder of presses, which need not be there
   */
  public PagesNow(Path out) {
    this.out = out;
  }

  /** How the page of a job stands. */
  public enum Stand {
    /** There is none. */
    NONE,
    /** It is from before something changed that a press would make it anew for. */
    OLD,
    /** It is the page of the job as it is now. */
    NOW
  }

  /**
   * How the page of a job stands. A card that was handed over since makes no difference, as it says
   * what the page says.
   *
   * @param shop the shop folder as it stood when its inputs were first asked for, or with other
   *     jobs and ledgers
   * @param noted one of its good jobs with its real token
   * @return how its page stands
   * @throws IOException where a folder cannot be read; the message is for the user
   */
  public Stand of(LoadedShop shop, JobView noted) throws IOException {
    String id = noted.job().id();
    if (shop.madePage(out, id).isEmpty()) {
      return Stand.NONE;
    }
    Inputs all = inputs(shop);
    String from = made().getOrDefault(id, "");
    boolean same = views(shop, noted).anyMatch(view -> isFrom(from, view, shop, all));
    return same ? Stand.NOW : Stand.OLD;
  }

  private static boolean isFrom(String from, JobView view, LoadedShop shop, Inputs all) {
    return all.of(view).and(shop.calendarsSaid(view.job().id())).print().equals(from);
  }

  /** The job as it is, and as it was before each card. */
  private static Stream<JobView> views(LoadedShop shop, JobView noted) {
    JobView view =
        shop.dates().isMeasured(noted.job()) ? ParkedViews.of(shop, noted).get(0) : noted;
    List<Printed> ever =
        shop.ledgers().printed().map(p -> p.everOf(noted.job().id())).orElse(List.of());
    return Stream.concat(
        Stream.of(view), ever.stream().map(told -> shop.dates().withCards(view, told)));
  }

  private synchronized Inputs inputs(LoadedShop shop) throws IOException {
    if (inputs.isEmpty()) {
      inputs = Optional.of(new Inputs(shop, out));
    }
    return inputs.get();
  }

  private synchronized Map<String, String> made() throws IOException {
    Path file = out.resolve(MadeBefore.FILE);
    Optional<FileTime> now =
        Files.isRegularFile(file) ? Optional.of(Files.getLastModifiedTime(file)) : Optional.empty();
    if (!now.equals(readAt)) {
      made = MadeBefore.prints(out, new Problems());
      readAt = now;
    }
    return made;
  }
}
