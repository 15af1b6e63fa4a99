package curewindow.desk;

import curewindow.shop.Job;
import curewindow.site.LoadedShop;
import curewindow.site.PagesNow;
import curewindow.told.JobView;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
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
  private record State(Now now, Instant at, long stamp) {}

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
    long stamp = stamp();
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
    state = new State(Now.of(shop, before.now().made()), before.at(), before.stamp());
  }

  /** Reads the folder again where it is another by now. */
  void look() {
    State before = state;
    boolean old = Duration.between(before.at(), clock.instant()).compareTo(LONGEST) > 0;
    if (old || stamp() != before.stamp()) {
      synchronized (this) {
        if (state == before) {
          state = read();
        }
      }
    }
  }

  /** Another number where a file came, went or changed. */
  private long stamp() {
    long[] sum = {0};
    try {
      Files.walkFileTree(
          folder,
          new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path dir, BasicFileAttributes facts) {
              boolean hidden = !dir.equals(folder) && dir.getFileName().toString().startsWith(".");
              return hidden || dir.toAbsolutePath().normalize().equals(out)
                  ? FileVisitResult.SKIP_SUBTREE
                  : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes facts) {
              if (!file.getFileName().toString().startsWith(".")) {
                long one =
                    31 * (31 * file.hashCode() + facts.size())
                        + facts.lastModifiedTime().toMillis();
                sum[0] += one * 0x9E3779B97F4A7C15L;
              }
              return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException e) {
              return FileVisitResult.CONTINUE;
            }
          });
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return sum[0];
  }

  /** A good job by its id. */
  Optional<Job> job(String id) {
    return now().shop().job(id);
  }
}
