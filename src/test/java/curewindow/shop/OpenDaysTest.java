package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import curewindow.cure.Bay;
import java.net.URI;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OpenDaysTest {

  private static final ZoneId SEATTLE = ZoneId.of("America/Los_Angeles");

  /** Monday to Friday 8:30 to 12:30 and 13:30 to 17:30, Saturday 9:00 to 13:00. */
  private static Map<DayOfWeek, List<OpenHours>> week() {
    Map<DayOfWeek, List<OpenHours>> week = new HashMap<>();
    for (DayOfWeek day : DayOfWeek.values()) {
      if (day.getValue() <= 5) {
        week.put(day, List.of(hours("08:30", "12:30"), hours("13:30", "17:30")));
      }
    }
    week.put(DayOfWeek.SATURDAY, List.of(hours("09:00", "13:00")));
    return week;
  }

  private static OpenHours hours(String from, String to) {
    return new OpenHours(LocalTime.parse(from), LocalTime.parse(to));
  }

  private static Shop shop(Map<DayOfWeek, List<OpenHours>> week) {
    return new Shop(
        "S",
        "1",
        Optional.empty(),
        Optional.empty(),
        List.of(),
        URI.create("https://s.example/"),
        SEATTLE,
        "en",
        Optional.empty(),
        "seattle",
        new Bay(21, 50),
        50_000,
        week,
        List.of(LocalDate.of(2026, 11, 26), LocalDate.of(2026, 12, 25), LocalDate.of(2027, 1, 1)));
  }

  private static LocalDateTime offered(Shop shop, String local, String zone) {
    Instant at = LocalDateTime.parse(local).atZone(ZoneId.of(zone)).toInstant();
    return new OpenDays(shop).notBefore(at).atZone(SEATTLE).toLocalDateTime();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          2026-11-24T15:00 | America/Los_Angeles | 2026-11-24T15:00 | within opening hours
          2026-11-24T08:00 | America/Los_Angeles | 2026-11-24T08:30 | before opening
          2026-11-24T13:00 | America/Los_Angeles | 2026-11-24T13:30 | at noon
          2026-11-24T17:29 | America/Los_Angeles | 2026-11-24T17:29 | the last minute
          2026-11-24T17:30 | America/Los_Angeles | 2026-11-25T08:30 | the closing time
          2026-11-25T20:00 | America/Los_Angeles | 2026-11-27T08:30 | before a closed day
          2026-11-26T10:00 | America/Los_Angeles | 2026-11-27T08:30 | a closed day
          2026-11-28T13:00 | America/Los_Angeles | 2026-11-30T08:30 | Saturday after closing
          2026-11-29T10:00 | America/Los_Angeles | 2026-11-30T08:30 | Sunday
          2026-12-24T18:00 | America/Los_Angeles | 2026-12-26T09:00 | over a holiday into Saturday
          2026-12-31T18:00 | America/Los_Angeles | 2027-01-02T09:00 | into the next year
          2026-11-25T08:00 | America/New_York    | 2026-11-25T08:30 | still night at the shop
          2026-11-24T20:00 | America/New_York    | 2026-11-24T17:00 | evening there, open here
          2026-11-24T08:00 | Pacific/Auckland    | 2026-11-23T11:00 | the day before at the shop
          2026-11-01T01:30 | America/Los_Angeles | 2026-11-02T08:30 | the night the clocks go back
          """)
  void theFirstOpenTimeIsOffered(String at, String zone, String expected, String why) {
    assertEquals(LocalDateTime.parse(expected), offered(shop(week()), at, zone), why);
  }

  /** At 2:00 on March 14, 2027 the clocks go to 3:00: hours from 2:00 to 3:00 are none. */
  @Test
  void hoursThatTheClocksSkipAreNotOffered() {
    Map<DayOfWeek, List<OpenHours>> week =
        Map.of(DayOfWeek.SUNDAY, List.of(hours("02:00", "03:00"), hours("03:00", "05:00")));
    assertEquals(
        LocalDateTime.parse("2027-03-14T03:00"),
        offered(shop(week), "2027-03-13T10:00", "America/Los_Angeles"));
  }

  @Test
  void anOfferedTimeIsOfferedAgain() {
    OpenDays open = new OpenDays(shop(week()));
    Instant at = Instant.parse("2026-11-01T00:00:00Z");
    for (int hour = 0; hour < 24 * 90; hour++) {
      Instant offered = open.notBefore(at.plusSeconds(3600L * hour));
      assertEquals(offered, open.notBefore(offered));
    }
  }

  @Test
  void aShopWithoutHoursKeepsTheTime() {
    LocalDateTime at = LocalDateTime.parse("2026-11-29T03:00");
    assertEquals(at, offered(shop(Map.of()), at.toString(), "America/Los_Angeles"));
    Map<DayOfWeek, List<OpenHours>> none = Map.of(DayOfWeek.MONDAY, List.of());
    assertEquals(at, offered(shop(none), at.toString(), "America/Los_Angeles"));
  }
}
