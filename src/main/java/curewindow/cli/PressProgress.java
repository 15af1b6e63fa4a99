package curewindow.cli;

import curewindow.site.Progress;
import java.io.PrintWriter;
import java.util.function.LongSupplier;

/**
 * Says how far a press is where it takes long: on a terminal in one line that goes again, elsewhere
 * in a line now and then.
 */
final class PressProgress implements Progress {

  private static final long SECOND = 1_000_000_000;

  /** A press that ends sooner says nothing. */
  private static final long SOON = 3 * SECOND;

  private static final long OFTEN = SECOND / 2;
  private static final long NOW_AND_THEN = 10 * SECOND;

  private final PrintWriter to;
  private final boolean terminal;
  private final LongSupplier nanoseconds;
  private long next;

  /** When the first page was made, and how many were then: the rate counts from there. */
  private long start;

  private int first;
  private int width;

  /**
   * A press that begins now.
   *
   * @param to where it is said
   * @param terminal whether a line there can be written over
   * @param nanoseconds the time since some instant
   */
  PressProgress(PrintWriter to, boolean terminal, LongSupplier nanoseconds) {
    this.to = to;
    this.terminal = terminal;
    this.nanoseconds = nanoseconds;
    this.next = nanoseconds.getAsLong() + (terminal ? SOON : NOW_AND_THEN);
  }

  @Override
  public synchronized void made(int made, int all) {
    long now = nanoseconds.getAsLong();
    if (made >= all) {
      clear();
    } else if (first == 0) {
      first = made;
      start = now;
    } else if (now >= next) {
      next = now + (terminal ? OFTEN : NOW_AND_THEN);
      say(line(made, all, (made - first) / ((double) (now - start) / SECOND)));
    }
  }

  private static String line(int made, int all, double rate) {
    return "%,d of %,d pages, %.0f a second, %s left"
        .formatted(made, all, rate, time(Math.round((all - made) / rate)));
  }

  private static String time(long seconds) {
    return seconds < 90 ? seconds + " s" : Math.round(seconds / 60.0) + " min";
  }

  private void say(String line) {
    if (terminal) {
      to.print("\r" + line + " ".repeat(Math.max(0, width - line.length())));
      to.flush();
      width = line.length();
    } else {
      to.println(line);
    }
  }

  private void clear() {
    if (width > 0) {
      to.print("\r" + " ".repeat(width) + "\r");
      to.flush();
      width = 0;
    }
  }
}
