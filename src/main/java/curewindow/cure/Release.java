package curewindow.cure;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * When a hold ends, and why then.
 *
 * @param hold the hold's id
 * @param kind what the hold asks of the customer
 * @param end the published end
 * @param likely the median time at which the need is met, not rounded, never before the floor and
 *     never after the limit
 * @param because what decides the published end
 * @param becauseLikely what decides {@code likely}
 * @param waitsFor the id of another hold, where this one is over sooner by itself but not told to
 *     be
 */
public record Release(
    String hold,
    HoldKind kind,
    End end,
    Instant likely,
    ExplanationCause because,
    ExplanationCause becauseLikely,
    Optional<String> waitsFor) {

  /** Refuses missing parts. */
  public Release {
    Objects.requireNonNull(hold, "hold");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(end, "end");
    Objects.requireNonNull(likely, "likely");
    Objects.requireNonNull(because, "because");
    Objects.requireNonNull(becauseLikely, "becauseLikely");
    Objects.requireNonNull(waitsFor, "waitsFor");
  }

  /**
   * The same hold told to end with another one, on whose end it waits.
   *
   * @param other the other hold's release, whose end is not sooner
   * @return the release
   */
  public Release waitingFor(Release other) {
    Instant later = other.likely.isAfter(likely) ? other.likely : likely;
    return new Release(
        hold, kind, end.movedTo(other.end), later, because, becauseLikely, Optional.of(other.hold));
  }

  /**
   * The same hold found to be over sooner than was computed.
   *
   * @param at a whole hour between 8:00 and 20:00 where the car is
   * @return the release
   */
  public Release overAt(Instant at) {
    return new Release(
        hold,
        kind,
        new Seen(at),
        likely.isBefore(at) ? likely : at,
        because,
        becauseLikely,
        Optional.empty());
  }

  /**
   * Until when something is left to be careful with once the hold is over.
   *
   * @return when it is fully set in the median weather, not rounded; empty where nothing is left
   */
  public Optional<Instant> gentleUntil() {
    return end instanceof AtLimit limit && limit.isGentle()
        ? Optional.of(limit.full())
        : Optional.empty();
  }

  /**
   * From when on nothing is left to be careful with.
   *
   * @return the published end, or where that is the limit when it is fully set, not rounded
   */
  public Instant setAt() {
    return gentleUntil().orElse(end.at());
  }

  /** The published end of a hold. */
  public sealed interface End {

    /**
     * The name used in files and data.
     *
     * @return lower case
     */
    String id();

    /**
     * The instant shown to people.
     *
     * @return a whole hour between 8:00 and 20:00 where the car is
     */
    Instant at();

    /**
     * The same end told with a later one.
     *
     * @param other the end of another hold
     * @return the end
     */
    End movedTo(End other);
  }

  /**
   * The hold ends in nine of ten weathers by this time.
   *
   * @param at a whole hour between 8:00 and 20:00 where the car is
   */
  public record SafeBy(Instant at) implements End {

    @Override
    public String id() {
      return "safe-by";
    }

    @Override
    public End movedTo(End other) {
      return new SafeBy(other.at());
    }
  }

  /**
   * The hold ends as nobody is asked to wait any longer, though the weather may not have been
   * enough.
   *
   * @param at the limit, a whole hour between 8:00 and 20:00 where the car is
   * @param share how far it is by then in the median weather, a share of the need, 0 to 1
   * @param full when the need is met in the median weather; not rounded
   */
  public record AtLimit(Instant at, double share, Instant full) implements End {

    /** From this share on nobody can tell the difference; common practice, no source. */
    private static final double AS_GOOD_AS_ALL = 0.9;

    /** Nobody needs to be careful for a shorter time; common practice, no source. */
    private static final Duration AS_GOOD_AS_NOW = Duration.ofDays(2);

    /** Refuses a share that is not within 0 to 1. */
    public AtLimit {
      if (!(share >= 0 && share <= 1)) {
        throw new IllegalArgumentException("share " + share + " is not within 0 to 1");
      }
    }

    @Override
    public String id() {
      return "at-limit";
    }

    /** Its share grows evenly between its own limit and the time it is full. */
    @Override
    public End movedTo(End other) {
      if (!full.isAfter(other.at())) {
        return new AtLimit(other.at(), 1, other.at());
      }
      double gone = Duration.between(at, other.at()).toSeconds();
      double whole = Duration.between(at, full).toSeconds();
      return new AtLimit(other.at(), share + (1 - share) * Math.max(0, gone / whole), full);
    }

    /**
     * Whether something is left to be careful with.
     *
     * @return false where in the median weather it is as good as set, or will be within two days
     */
    public boolean isGentle() {
      return share < AS_GOOD_AS_ALL && full.isAfter(at.plus(AS_GOOD_AS_NOW));
    }
  }

  /**
   * Something normal that may last longer than its horizon: it is told by the season.
   *
   * @param at when it is over in the median weather, a whole hour between 8:00 and 20:00 where the
   *     car is
   */
  public record BySeason(Instant at) implements End {

    @Override
    public String id() {
      return "by-season";
    }

    @Override
    public End movedTo(End other) {
      return new BySeason(other.at());
    }
  }

  /**
   * The shop has looked, and found it to be over before that was sure.
   *
   * @param at a whole hour between 8:00 and 20:00 where the car is
   */
  public record Seen(Instant at) implements End {

    @Override
    public String id() {
      return "seen";
    }

    @Override
    public End movedTo(End other) {
      return other instanceof Seen ? other : new SafeBy(other.at());
    }
  }
}
