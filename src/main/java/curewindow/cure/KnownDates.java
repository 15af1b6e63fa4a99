package curewindow.cure;

import java.util.Optional;

/**
 * Dates that were computed before, so that they need not be computed again. Safe for use by several
 * threads.
 */
public interface KnownDates {

  /** Knows nothing, and keeps nothing. */
  KnownDates NONE =
      new KnownDates() {
        @Override
        public Optional<Timeline> of(CureCase job) {
          return Optional.empty();
        }

        @Override
        public void keep(CureCase job, Timeline dates) {
          // Nobody asks for them again.
        }
      };

  /**
   * The dates of a job, where the weather is that of the normals of its place.
   *
   * @param job the job
   * @return what {@link Curing#timeline} would compute; empty where that is not known
   */
  Optional<Timeline> of(CureCase job);

  /**
   * Keeps dates for another time.
   *
   * @param job the job
   * @param dates its dates
   */
  void keep(CureCase job, Timeline dates);
}
