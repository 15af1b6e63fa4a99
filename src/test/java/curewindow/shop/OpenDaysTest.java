package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.Bay;
import java.net.URI;
import java.time.DayOfWeek;
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

  /** Before opening, within hours, over lunch, at the very end, over a weekend, a closed day. */
  @ParameterizedTest
  @CsvSource({
    "2026-11-24T06:00, 2026-11-24T08:30",
    "2026-11-24T09:15, 2026-11-24T09:15",
    "2026-11-24T12:45, 2026-11-24T13:30",
    "2026-11-24T17:30, 2026-11-24T17:30",
    "2026-11-28T13:01, 2026-11-30T08:30",
    "2026-11-25T18:00, 2026-11-27T08:30"
  })
  void somebodyIsThereFrom(LocalDateTime from, LocalDateTime first) {
    assertEquals(Optional.of(first), new OpenDays(shop(week())).firstOpen(from));
  }

  @Test
  void aShopThatStatesNoHoursIsThereOnAllButItsClosedDays() {
    OpenDays open = new OpenDays(shop(Map.of()));
    LocalDateTime night = LocalDateTime.parse("2026-11-24T02:00");
    assertEquals(Optional.of(night), open.firstOpen(night));
    assertEquals(
        Optional.of(LocalDateTime.parse("2026-11-27T00:00")),
        open.firstOpen(LocalDateTime.parse("2026-11-26T10:00")));
  }

  @ParameterizedTest
  @CsvSource({
    "2026-11-24, 2026-11-24",
    "2026-11-26, 2026-11-27",
    "2026-11-29, 2026-11-30",
    "2026-12-25, 2026-12-26",
    "2027-01-01, 2027-01-02"
  })
  void theFirstOpenDayIsOffered(LocalDate day, LocalDate expected) {
    assertEquals(Optional.of(expected), new OpenDays(shop(week())).firstOpen(day));
  }

  @Test
  void aShopWithoutHoursIsOpenButForItsClosedDays() {
    OpenDays open = new OpenDays(shop(Map.of()));
    assertTrue(open.isOpen(LocalDate.parse("2026-11-29")));
    assertFalse(open.isOpen(LocalDate.parse("2026-12-25")));
    Map<DayOfWeek, List<OpenHours>> none = Map.of(DayOfWeek.MONDAY, List.of());
    assertEquals(Optional.empty(), new OpenDays(shop(none)).firstOpen(LocalDate.EPOCH));
  }
}
