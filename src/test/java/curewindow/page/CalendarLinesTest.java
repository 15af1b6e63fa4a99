package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Calendars of several parkings in one JSON. */
class CalendarLinesTest {

  @Test
  void linesOfTheFirstStandInARowAndOthersAreRunsOfThem() {
    String first = "BEGIN:A\r\nX:1\r\nEND:A\r\nBEGIN:A\r\nX:2\r\nEND:A\r\n";
    assertEquals(
        "{\"cases\":[[],[0,5],[0,0,6,6,2,5],[0,5]],"
            + "\"lines\":[\"BEGIN:A\",\"X:1\",\"END:A\",\"BEGIN:A\",\"X:2\",\"END:A\",\"X:3\"]}",
        CalendarLines.json(List.of(first, first.replace("X:1", "X:3"), first)));
  }

  @Test
  void aCalendarWithMoreAndWithLessIsWhole() {
    assertEquals(
        "{\"cases\":[[],[0,2],[0,0,2,2],[0,0,3,3,1,2]],\"lines\":[\"a\",\"b\",\"c\",\"d\"]}",
        CalendarLines.json(List.of("a\r\nb\r\nc\r\n", "a\r\nc\r\n", "a\r\nd\r\nb\r\nc\r\n")));
  }

  /** RFC 5545 section 3.1: a line break and a space are taken out. */
  @Test
  void linesAreUnfolded() {
    assertEquals(
        "{\"cases\":[[],[0,1]],\"lines\":[\"SUMMARY:One line\",\"b\"]}",
        CalendarLines.json(List.of("SUMMARY:One\r\n  line\r\nb\r\n")));
  }
}
