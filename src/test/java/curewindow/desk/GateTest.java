package curewindow.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Who may come in from another machine. */
class GateTest {

  private final Ticking clock = new Ticking();
  private byte next;
  private final Gate gate = new Gate("heron7rq", clock, () -> new byte[] {next++, 1, 2, 3});

  private static final class Ticking extends Clock {
    private Instant now = Instant.parse("2026-11-25T20:00:00Z");

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }

    @Override
    public Instant instant() {
      return now;
    }
  }

  private boolean isIn(String session) {
    return gate.knows(
        new Request(
            false, "/", Request.Values.NONE, Request.Values.NONE, Map.of(Gate.COOKIE, session)));
  }

  @Test
  void whoKnowsThePasscodeIsInForAWorkingDay() {
    String session = gate.enter(" heron7rq ").orElseThrow();
    assertTrue(isIn(session));
    clock.now = clock.now.plus(Gate.SESSION).minusSeconds(1);
    assertTrue(isIn(session));
    clock.now = clock.now.plusSeconds(1);
    assertFalse(isIn(session));
    assertFalse(isIn(""));
    assertFalse(isIn("00010203ff"));
    assertFalse(session.equals(gate.enter("heron7rq").orElseThrow()), "each session is another");
  }

  @Test
  void aFrameIsOpenAsLongAsItsSessionAndTellsNothingOfIt() {
    String session = gate.enter("heron7rq").orElseThrow();
    Request request =
        new Request(
            false, "/", Request.Values.NONE, Request.Values.NONE, Map.of(Gate.COOKIE, session));
    String site = gate.site(request);
    assertTrue(site.matches("/framed/[0-9a-f]{64}/"), site);
    assertFalse(site.contains(session), site);
    assertEquals(Optional.of("en/index.html"), gate.framed(site + "en/index.html"));
    assertEquals(Optional.of(""), gate.framed(site));
    assertEquals(Optional.empty(), gate.framed(site.replaceFirst(".$", "")));
    assertEquals(Optional.empty(), gate.framed("/framed/" + session + "/"));
    assertEquals(Optional.empty(), gate.framed("/framed//en/index.html"));
    assertFalse(isIn(site.split("/")[2]), "it lets nobody in");
    clock.now = clock.now.plus(Gate.SESSION);
    assertEquals(Optional.empty(), gate.framed(site));
  }

  @Test
  void tenWrongOnesSlowEveryoneDown() {
    for (int i = 0; i < Gate.FREE_TRIES; i++) {
      assertFalse(gate.isClosed());
      assertEquals(Optional.empty(), gate.enter("wrong" + i));
    }
    assertTrue(gate.isClosed());
    assertEquals(Optional.empty(), gate.enter("heron7rq"), "not even the right one");
    Duration waited = Duration.ZERO;
    for (int i = 0; i < 4; i++) {
      Duration wait = Duration.ofSeconds(15L << i);
      clock.now = clock.now.plus(wait).minusMillis(1);
      assertTrue(gate.isClosed(), "after " + waited);
      clock.now = clock.now.plusMillis(1);
      assertFalse(gate.isClosed());
      assertEquals(Optional.empty(), gate.enter("wrong again"));
      waited = waited.plus(wait);
    }
    clock.now = clock.now.plus(Duration.ofHours(1));
    assertTrue(gate.enter("heron7rq").isPresent());
    assertFalse(gate.isClosed());
  }

  @Test
  void theCookieIsNoScriptsAndNoOtherSites() {
    String cookie = Gate.cookie("abc");
    assertTrue(cookie.startsWith("desk=abc;"), cookie);
    assertTrue(cookie.contains("HttpOnly") && cookie.contains("SameSite=Strict"), cookie);
  }
}
