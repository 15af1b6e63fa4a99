package curewindow.desk;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * Who may come in from another machine: who knows the passcode, for a working day. After ten wrong
 * ones nobody can try for a while, each time twice as long.
 */
final class Gate {

  /** The cookie of a session. */
  static final String COOKIE = "desk";

  /** As long as a shop is open in a day. */
  static final Duration SESSION = Duration.ofHours(12);

  static final int FREE_TRIES = 10;
  private static final Duration FIRST_WAIT = Duration.ofSeconds(15);
  private static final int MOST_DOUBLINGS = 6;

  private final byte[] passcode;
  private final Clock clock;
  private final Supplier<byte[]> random;
  private final Map<String, Instant> sessions = new ConcurrentHashMap<>();
  private int wrong;
  private Instant closedUntil = Instant.MIN;

  /**
   * A gate.
   *
   * @param passcode what has to be known
   * @param random makes 16 bytes that nobody can guess
   */
  Gate(String passcode, Clock clock, Supplier<byte[]> random) {
    this.passcode = passcode.getBytes(StandardCharsets.UTF_8);
    this.clock = clock;
    this.random = random;
  }

  /** Whether a request carries a session that has not ended. */
  boolean knows(Request request) {
    Instant end = sessions.get(request.cookies().getOrDefault(COOKIE, ""));
    return end != null && clock.instant().isBefore(end);
  }

  /** Whether nobody can try now, as too many tries were wrong. */
  synchronized boolean isClosed() {
    return clock.instant().isBefore(closedUntil);
  }

  /** A new session for who typed the passcode. */
  synchronized Optional<String> enter(String typed) {
    if (isClosed()) {
      return Optional.empty();
    }
    if (!MessageDigest.isEqual(passcode, typed.strip().getBytes(StandardCharsets.UTF_8))) {
      wrong++;
      if (wrong >= FREE_TRIES) {
        int doublings = Math.min(MOST_DOUBLINGS, wrong - FREE_TRIES);
        closedUntil = clock.instant().plus(FIRST_WAIT.multipliedBy(1L << doublings));
      }
      return Optional.empty();
    }
    wrong = 0;
    Instant now = clock.instant();
    sessions.values().removeIf(end -> !now.isBefore(end));
    String session = HexFormat.of().formatHex(random.get());
    sessions.put(session, now.plus(SESSION));
    return Optional.of(session);
  }

  /** The cookie that keeps a session in a browser (RFC 6265). */
  static String cookie(String session) {
    return COOKIE
        + "="
        + session
        + "; Path=/; HttpOnly; SameSite=Strict; Max-Age="
        + SESSION.toSeconds();
  }
}
