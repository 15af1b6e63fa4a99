package curewindow.guide;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * When a block is to be seen on a page that knows the time.
 *
 * @param from from when on; empty where it is from the start
 * @param to until when; empty where it is for good
 * @param clause whether a clause says so, and not a date that the block quotes
 */
record Shown(Optional<Instant> from, Optional<Instant> to, boolean clause) {

  static final Shown ALWAYS = new Shown(Optional.empty(), Optional.empty(), false);

  /** Until the last of some ends; for good where there is none, or one is not known. */
  static Shown until(List<Optional<Instant>> ends) {
    boolean isKnown = ends.stream().allMatch(Optional::isPresent);
    return new Shown(Optional.empty(), isKnown ? last(ends.stream()) : Optional.empty(), false);
  }

  /** As long as any of some blocks. */
  static Shown asLongAs(List<Shown> blocks) {
    return until(blocks.stream().map(Shown::to).toList());
  }

  /** Until the last date that is known of some blocks. */
  static Shown toLast(List<Shown> blocks) {
    return until(blocks.stream().map(Shown::to).filter(Optional::isPresent).toList());
  }

  private static Optional<Instant> last(Stream<Optional<Instant>> times) {
    return times.flatMap(Optional::stream).max(Comparator.naturalOrder());
  }

  /** The same in the part of a clause that is shown until an instant. */
  Shown before(Instant end) {
    return new Shown(from, to.filter(end::isAfter).or(() -> Optional.of(end)), true);
  }

  /** The same in the part of a clause that is shown from an instant on. */
  Shown after(Instant start) {
    return new Shown(last(Stream.of(from, Optional.of(start))), to, true);
  }

  /** How the page's script is told; what is shown only later is hidden until then. */
  String attributes() {
    return to.map(t -> " data-to=\"" + t.getEpochSecond() + "\"").orElse("")
        + from.map(f -> " data-from=\"" + f.getEpochSecond() + "\" hidden").orElse("");
  }
}
