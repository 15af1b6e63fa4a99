package curewindow.desk;

import curewindow.shop.Job;
import curewindow.site.LoadedShop;
import curewindow.site.PagesNow;
import curewindow.told.JobView;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The shop folder as the desk has it in memory. It is read again where somebody else changed it,
 * and once an hour, as time passes for visits and weather.
 */
final class DeskShop {

  private static final Duration LONGEST = Duration.ofHours(1);

  private final Path folder;

  /** What presses make may stand in the shop folder, and is none of its files. */
  private final Path out;

  private final Clock clock;
  private volatile State state;

  DeskShop(Path folder, Path out, Clock clock) {
    this.folder = folder;
    this.out = out.toAbsolutePath().normalize();
    this.clock = clock;
    this.state = read();
  }

  /** What was read, when, and how the files stood then. */
  private record State(Now now, Instant at, FolderStamp stamp) {}

  /**
   * The shop at one moment, and what was found out about it.
   *
   * @param views the jobs that were looked at, each in its customer's language
   * @param made which pages are up to date
   */
  record Now(LoadedShop shop, Finder finder, Map<Job, JobView> views, PagesNow made) {

    static Now of(LoadedShop shop, PagesNow made) {
      return of(shop, Finder.of(shop), made);
    }

    static Now of(LoadedShop shop, Finder finder, PagesNow made) {
      return new Now(shop, finder, new ConcurrentHashMap<>(), made);
    }

    /** How the page of a job stands. */
    PagesNow.Stand page(Job job) {
      try {
        return made.of(shop, view(job));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    /** Whether anything can be done at all. */
    boolean isUsable() {
      return shop.shop().isPresent() && !shop.ledgerIsBroken();
    }

    JobView view(Job job) {
      return views.computeIfAbsent(job, j -> shop.view(j, shop.knownToken(j.id()).orElse("0")));
    }
  }

  /** The shop as it was last read. */
  Now now() {
    return state.now();
  }

  Path folder() {
    return folder;
  }

  Instant time() {
    return clock.instant();
  }

  /** The day by the shop's clock, once there is a shop. */
  LocalDate today() {
    return time().atZone(now().shop().shop().orElseThrow().zone()).toLocalDate();
  }

  private State read() {
    FolderStamp stamp = stamp();
    return new State(
        Now.of(LoadedShop.load(folder, clock), new PagesNow(out)), clock.instant(), stamp);
  }

  /** Something that writes into the shop folder. */
  interface Work<T> {
    T in(LoadedShop shop) throws IOException;
  }

  /** Reads the folder again, after something was done in it. */
  synchronized void readAgain() {
    state = read();
  }

  /** Does something in the shop folder, one at a time, and reads it again. */
  synchronized <T> T write(Work<T> work) throws IOException {
    T result = work.in(state.now().shop());
    state = read();
    return result;
  }

  /** Does something that only adds to the ledgers, one at a time, and reads those again. */
  synchronized <T> T note(Work<T> work) throws IOException {
    State before = state;
    T result = work.in(before.now().shop());
    LoadedShop shop = before.now().shop().again();
    state =
        new State(
            Now.of(shop, before.now().finder(), before.now().made()), before.at(), before.stamp());
    return result;
  }

  /**
   * Takes in a job whose file was just written, at once. All others are read again when {@link
   * #look} is next called, as its file is newer than what was read.
   */
  synchronized void put(Job job) {
    State before = state;
    LoadedShop shop = before.now().shop().with(job);
    FolderStamp stamp = before.stamp().knowing(jobs(), folder.resolve(job.where().file()));
    state = new State(Now.of(shop, before.now().made()), before.at(), stamp);
  }

  /** Reads the folder again where it is another by now. */
  void look() {
    State before = state;
    boolean old = Duration.between(before.at(), clock.instant()).compareTo(LONGEST) > 0;
    if (old || !stamp().isAs(before.stamp())) {
      synchronized (this) {
        if (state == before) {
          state = read();
        }
      }
    }
  }

  /**
   * The same where a glance, which costs next to nothing, shows that a job came, went or changed:
   * who has just written a file by hand asks for it at once.
   *
   * @param id the number of the job that is asked for, which names a file; empty for any
   */
  void glance(String id) {
    FolderStamp known = state.stamp();
    boolean same =
        known.has(jobs())
            && known.has(folder.resolve("jobs.csv"))
            && (id.isEmpty() || known.has(folder.resolve(file(id))));
    if (!same) {
      look();
    }
  }

  /** Where a job stands; one that cannot be read most likely in the file of its name. */
  private String file(String id) {
    return job(id).map(job -> job.where().file()).orElse("jobs/" + id + ".yaml");
  }

  private Path jobs() {
    return folder.resolve("jobs");
  }

  private FolderStamp stamp() {
    return FolderStamp.of(folder, out);
  }

  /** A good job by its id. */
  Optional<Job> job(String id) {
    return now().shop().job(id);
  }
}
