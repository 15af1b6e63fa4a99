package curewindow.desk;

import curewindow.shop.Sha256;
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

  /**
   * Where the customers' site is shown in a frame. What stands in a sandboxed frame belongs to no
   * site, so that browsers send no cookie with what it asks for (HTML, "opaque origin"); the path
   * says instead for whom it is, and opens nothing but that site.
   */
  static final String FRAMED = "/framed/";

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

  /** Where a browser that is in is shown the customers' site. */
  String site(Request request) {
    return FRAMED + key(request.cookies().getOrDefault(COOKIE, "")) + "/";
  }

  /** Nobody can tell the session by it. */
  private static String key(String session) {
    return HexFormat.of().formatHex(Sha256.of("framed " + session));
  }

  /**
   * What of the customers' site is asked for in a frame.
   *
   * @param path of a request, below {@link #FRAMED}
   * @return the path in the site; empty where no session that has not ended shows it
   */
  Optional<String> framed(String path) {
    String[] parts = path.substring(FRAMED.length()).split("/", 2);
    Instant now = clock.instant();
    return sessions.entrySet().stream()
        .filter(session -> now.isBefore(session.getValue()))
        .filter(session -> parts.length == 2 && isSame(key(session.getKey()), parts[0]))
        .map(session -> parts[1])
        .findFirst();
  }

  private static boolean isSame(String known, String typed) {
    return MessageDigest.isEqual(
        known.getBytes(StandardCharsets.UTF_8), typed.getBytes(StandardCharsets.UTF_8));
  }

  /** Whether nobody can try now, as too many tries were wrong. */
  synchronized boolean isClosed() {
    return clock.instant().isBefore(closedUntil);
  }

  /** For how many seconds nobody can try any more, rounded up; 0 where one can. */
  synchronized long closedSeconds() {
    if (!isClosed()) {
      return 0;
    }
    Duration left = Duration.between(clock.instant(), closedUntil);
    return left.plusSeconds(1).minusNanos(1).toSeconds();
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
