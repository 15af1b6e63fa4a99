package curewindow.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.climate.Trials;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WakingHoursTest {

  @ParameterizedTest
  @CsvSource({
    "2026-01-15T08:00, 2026-01-15T08:00",
    "2026-01-15T08:00:01, 2026-01-15T09:00",
    "2026-01-15T07:59:59, 2026-01-15T08:00",
    "2026-01-15T00:00, 2026-01-15T08:00",
    "2026-01-15T12:30, 2026-01-15T13:00",
    "2026-01-15T19:00:00.001, 2026-01-15T20:00",
    "2026-01-15T20:00, 2026-01-15T20:00",
    "2026-01-15T20:00:00.001, 2026-01-16T08:00",
    "2026-01-15T23:59:59, 2026-01-16T08:00",
    "2026-12-31T20:01, 2027-01-01T08:00",
    "2028-02-28T21:00, 2028-02-29T08:00",
    // clocks go forward on 8 March 2026 and back on 1 November 2026
    "2026-03-08T01:30, 2026-03-08T08:00",
    "2026-03-07T20:30, 2026-03-08T08:00",
    "2026-11-01T01:30, 2026-11-01T08:00",
    "2026-10-31T22:00, 2026-11-01T08:00",
  })
  void roundsUpByTheClocksOfChicago(LocalDateTime at, LocalDateTime expected) {
    ZoneId zone = ZoneId.of("America/Chicago");
    Instant rounded = WakingHours.notBefore(at.atZone(zone).toInstant(), zone);
    assertEquals(expected.atZone(zone).toInstant(), rounded);
  }

  @ParameterizedTest
  @CsvSource({
    "Asia/Kathmandu, 2026-05-01T03:16:00Z, 2026-05-01T10:00+05:45",
    "Asia/Kolkata, 2026-05-01T14:30:00Z, 2026-05-01T20:00+05:30",
    "Asia/Kolkata, 2026-05-01T14:31:00Z, 2026-05-02T08:00+05:30",
    // half an hour forward on 4 October 2026
    "Australia/Lord_Howe, 2026-10-03T22:10:00Z, 2026-10-04T10:00+11:00",
    // 30 December 2011 did not happen on Samoa
    "Pacific/Apia, 2011-12-30T07:00:00Z, 2011-12-31T08:00+14:00",
    "Pacific/Kiritimati, 2026-05-01T11:00:00Z, 2026-05-02T08:00+14:00",
    "Pacific/Chatham, 2026-07-01T08:00:00Z, 2026-07-02T08:00+12:45",
  })
  void roundsUpInOddZones(String zone, Instant at, OffsetDateTime expected) {
    assertEquals(expected.toInstant(), WakingHours.notBefore(at, ZoneId.of(zone)));
  }

  private record Moment(Instant at, ZoneId zone) {}

  @TestFactory
  Stream<DynamicTest> isTheFirstWholeWakingHour() {
    List<String> zones = ZoneId.getAvailableZoneIds().stream().sorted().toList();
    return Trials.of(
        1000,
        random ->
            new Moment(
                Instant.ofEpochSecond(random.nextLong(4_000_000_000L)),
                ZoneId.of(zones.get(random.nextInt(zones.size())))),
        WakingHoursTest::isTheFirstWholeWakingHour);
  }

  private static void isTheFirstWholeWakingHour(Moment moment) {
    Instant at = moment.at();
    Instant rounded = WakingHours.notBefore(at, moment.zone());
    assertFalse(rounded.isBefore(at));
    assertTrue(isWaking(rounded.atZone(moment.zone())));
    for (Instant earlier = rounded.minus(Duration.ofMinutes(15));
        !earlier.isBefore(at);
        earlier = earlier.minus(Duration.ofMinutes(15))) {
      assertFalse(isWaking(earlier.atZone(moment.zone())), earlier + " comes first");
    }
  }

  private static boolean isWaking(ZonedDateTime at) {
    return at.getMinute() == 0 && at.getSecond() == 0 && at.getHour() >= 8 && at.getHour() <= 20;
  }
}
