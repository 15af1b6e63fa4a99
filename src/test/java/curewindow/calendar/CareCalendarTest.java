package curewindow.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.handout.SampleJobs;
import curewindow.told.JobView;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VAlarm;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.DtStart;
import org.junit.jupiter.api.Test;

/** What is written is read back by ical4j, a library of other people than the one that writes. */
final class CareCalendarTest {

  private static Calendar parse(String text) throws Exception {
    return new CalendarBuilder().build(new StringReader(text));
  }

  private static String all(JobView view) {
    return CareCalendar.all(view, Revisions.FIRST);
  }

  private static List<VEvent> events(String text) throws Exception {
    return parse(text).getComponents("VEVENT");
  }

  private static VEvent event(JobView view, String hold) throws Exception {
    String uid = EventName.of(view.token(), hold);
    return events(all(view)).stream()
        .filter(e -> value(e, Property.UID).equals(uid))
        .findFirst()
        .orElseThrow();
  }

  private static String value(VEvent event, String property) {
    return event.getRequiredProperty(property).getValue();
  }

  private static Instant start(VEvent event) {
    DtStart<?> start = event.getRequiredProperty(Property.DTSTART);
    return Instant.from(start.getDate());
  }

  @Test
  void everyReleaseIsOneEventAtItsInstant() throws Exception {
    JobView view = SampleJobs.tinted().view();
    List<VEvent> events = events(all(view));
    int holds = view.timeline().releases().size();
    assertEquals(holds + 1, events.size(), "and the visit");
    for (int i = 0; i < holds; i++) {
      Release release = view.timeline().releases().get(i);
      assertEquals(release.end().at(), start(events.get(i)));
      assertEquals(EventName.of(view.token(), release.hold()), value(events.get(i), Property.UID));
    }
  }

  /** Next year's date must not pass for one of these weeks; the day of the event tells no year. */
  @Test
  void aVisitInMoreThanNineMonthsHasItsYear() throws Exception {
    VEvent near = event(SampleJobs.tinted().visit("2026-12-28").view(), "visit");
    assertFalse(value(near, Property.DESCRIPTION).contains("202"));
    VEvent far = event(SampleJobs.tinted().visit("2027-11-15").view(), "visit");
    assertTrue(
        value(far, Property.DESCRIPTION).contains("Mon, Nov 15, 2027"),
        value(far, Property.DESCRIPTION));
  }

  @Test
  void textsComeBackAsTheyWere() throws Exception {
    VEvent event = event(SampleJobs.tinted().view(), "windows-up");
    assertEquals("Windows can come down: Dark blue four-door", value(event, Property.SUMMARY));
    assertEquals(
        "You can roll the windows down.\n"
            + "Rear defroster off: until Saturday, December 19, 10 AM\n"
            + "Haze is normal: until Monday, December 28\n"
            + "All dates and advice for this car:"
            + " https://care.example/C/7K3MPQ9W2XHTR4VBD6NC/\n"
            + "Halyard Street Film & Glass, (503) 555-0142",
        value(event, Property.DESCRIPTION).replace('\u00a0', ' '));
    assertEquals("https://care.example/C/7K3MPQ9W2XHTR4VBD6NC/", value(event, Property.URL));
    assertEquals("TRANSPARENT", value(event, Property.TRANSP));
    assertEquals("PT15M", value(event, Property.DURATION));
  }

  @Test
  void whatTheStandardAsksForIsThere() throws Exception {
    Calendar calendar = parse(all(SampleJobs.tinted().view()));
    assertEquals("2.0", calendar.getVersion().getValue());
    assertEquals("-//Curewindow//Care dates//EN", calendar.getProductId().getValue());
    assertTrue(calendar.getProperty(Property.METHOD).isEmpty());
    assertFalse(calendar.validate().hasErrors(), () -> calendar.validate().toString());
    assertTrue(calendar.getComponents("VTIMEZONE").isEmpty());
    assertEquals(
        "20261201T003000Z", value(event(SampleJobs.tinted().view(), "haze"), Property.DTSTAMP));
  }

  @Test
  void spanishJob() throws Exception {
    VEvent event = event(SampleJobs.tinted().language("es").view(), "haze");
    assertEquals("Ya no debe verse lechoso: Dark blue four-door", value(event, Property.SUMMARY));
    assertEquals(
        "es",
        event.getRequiredProperty(Property.SUMMARY).getRequiredParameter("LANGUAGE").getValue());
    assertTrue(value(event, Property.DESCRIPTION).contains("Todas las fechas"));
  }

  @Test
  void whatEndsAtItsLimitSaysHowToGoOn() throws Exception {
    JobView view =
        SampleJobs.bare()
            .shippedWords()
            .atLimit("windows-up", HoldKind.HOLD, "2026-12-14T08:00")
            .view();
    VEvent event = event(view, "windows-up");
    assertTrue(
        value(event, Property.DESCRIPTION)
            .startsWith(
                "In this weather, it will be only about 60% cured by then.\n"
                    + "Until about January 13, move the windows only if you must. Never force a frozen one."),
        () -> value(event, Property.DESCRIPTION));
  }

  @Test
  void whatPeoplePlanByRingsTheRestStaysSilent() throws Exception {
    JobView view = SampleJobs.tinted().view();
    Set<String> ringing = new TreeSet<>();
    for (Release r : view.timeline().releases()) {
      List<VAlarm> alarms = event(view, r.hold()).getAlarms();
      if (!alarms.isEmpty()) {
        ringing.add(r.hold());
        assertEquals(1, alarms.size());
        assertEquals("DISPLAY", alarms.get(0).getRequiredProperty(Property.ACTION).getValue());
        assertEquals(
            value(event(view, r.hold()), Property.SUMMARY),
            alarms.get(0).getRequiredProperty(Property.DESCRIPTION).getValue());
        assertEquals(
            Duration.ZERO,
            Duration.parse(alarms.get(0).getRequiredProperty(Property.TRIGGER).getValue()));
      }
    }
    assertEquals(Set.of("hand-wash", "windows-up"), ringing);
    assertEquals(1, event(view, "visit").getAlarms().size());
  }

  /** United States: clocks go forward on 2027-03-14 (15 U.S.C. 260a). */
  @Test
  void datesOnEitherSideOfAChangeOfTheClocks() throws Exception {
    JobView view =
        SampleJobs.bare()
            .hold("hand-wash", HoldKind.HOLD, "2027-03-13T14:00")
            .hold("windows-up", HoldKind.HOLD, "2027-03-14T14:00")
            .hold("haze", HoldKind.SETTLE, "2027-03-14T08:00")
            .view();
    assertEquals(Instant.parse("2027-03-13T22:00:00Z"), start(event(view, "hand-wash")));
    assertEquals(Instant.parse("2027-03-14T21:00:00Z"), start(event(view, "windows-up")));
    assertEquals(Instant.parse("2027-03-14T15:00:00Z"), start(event(view, "haze")));
  }

  @Test
  void hostileTextStaysText() throws Exception {
    String hostile =
        "Glass; Film, \\n & \"Co\"\r\nEND:VEVENT\r\nBEGIN:VALARM\u0007\u0000 <b>{when}</b>";
    JobView view = SampleJobs.tinted().shopName(hostile).phone("1;2,3\\4:5").view();
    List<VEvent> events = events(all(view));
    assertEquals(5, events.size());
    assertEquals(
        "You can wash the outside by hand.\nAll dates and advice for this car: "
            + view.address()
            + "\nGlass; Film, \\n & \"Co\"\nEND:VEVENT\nBEGIN:VALARM <b>{when}</b>"
            + ", 1;2,3\\4:5",
        value(events.get(0), Property.DESCRIPTION));
  }

  @Test
  void linesAreFoldedByOctetsAndNeverInsideACharacter() throws Exception {
    String name = "Мастерская стёкол и плёнок на набережной \uD83D\uDE97\uD83D\uDE97 ".repeat(6);
    JobView view = SampleJobs.tinted().language("es").shopName(name).view();
    String text = all(view);
    assertTrue(text.endsWith("\r\n"));
    for (String line : text.split("\r\n")) {
      assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, line);
      assertFalse(line.contains("\n"), line);
      assertFalse(line.isEmpty());
      assertFalse(Character.isLowSurrogate(line.charAt(Math.min(1, line.length() - 1))), line);
    }
    assertTrue(value(events(text).get(0), Property.DESCRIPTION).contains(name.strip()));
  }

  @Test
  void namesOfEventsStayAndTellNothing() {
    JobView view = SampleJobs.tinted().view();
    String first = all(view);
    assertEquals(first, all(SampleJobs.tinted().view()));
    String moved =
        all(SampleJobs.bare().hold("windows-up", HoldKind.HOLD, "2026-12-09T08:00").view());
    assertTrue(moved.contains(EventName.of(view.token(), "windows-up")));
    assertNotEquals(EventName.of(view.token(), "haze"), EventName.of("OTHER", "haze"));
    Set<String> uids = first.lines().filter(l -> l.startsWith("UID:")).collect(Collectors.toSet());
    assertEquals(5, uids.size());
    for (String uid : uids) {
      assertTrue(uid.matches("UID:[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-.{12}"));
      assertFalse(uid.contains(view.job().id()) || uid.contains(view.token()));
    }
    assertFalse(first.contains(view.job().id()));
  }

  @Test
  void aJobWithoutHoldsHasAnEmptyCalendar() throws Exception {
    assertEquals(List.of(), events(all(SampleJobs.bare().view())));
  }

  /** RFC 5545, from memory: a day has no zone; its alarm counts from midnight (3.8.6.3). */
  @Test
  void theVisitIsAWholeDayWithAnAlarmTheEveningBefore() throws Exception {
    JobView view = SampleJobs.tinted().visit("2026-12-28").view();
    VEvent event = event(view, "visit");
    DtStart<?> start = event.getRequiredProperty(Property.DTSTART);
    assertEquals(LocalDate.of(2026, 12, 28), LocalDate.from(start.getDate()));
    assertEquals(
        Duration.ofHours(-6),
        Duration.parse(event.getAlarms().get(0).getRequiredProperty(Property.TRIGGER).getValue()));
  }

  @Test
  void theShortCalendarHasWhatMattersMostAndANoteOfTheRest() throws Exception {
    JobView view = SampleJobs.tinted().view();
    List<VEvent> main = events(CareCalendar.main(view, Revisions.FIRST));
    assertEquals(
        List.of("hand-wash", "windows-up", "visit").stream()
            .map(name -> EventName.of(view.token(), name))
            .collect(Collectors.toSet()),
        main.stream().map(e -> value(e, Property.UID)).collect(Collectors.toSet()));
    List<VEvent> noted =
        main.stream().filter(e -> value(e, Property.DESCRIPTION).contains("Haze")).toList();
    assertEquals(1, noted.size(), "one has the note");
    assertFalse(CareCalendar.brief(view, Revisions.FIRST).contains("Haze"));
  }

  @Test
  void titlesBeginWithTheActionAndNameTheCarWhereThereIsRoom() throws Exception {
    JobView view = SampleJobs.tinted().shippedWords().view();
    for (VEvent event : events(all(view))) {
      assertTrue(value(event, Property.SUMMARY).length() <= 45, value(event, Property.SUMMARY));
    }
    assertEquals(
        "Windows can come down: " + view.car(), value(event(view, "windows-up"), Property.SUMMARY));
    assertEquals(
        "Windows can come down: dark blue four-door\u2026",
        windowsOf("dark blue four-door estate"));
    assertEquals(
        "Windows can come down: Dampfschifffahrtskapi\u2026",
        windowsOf("Dampfschifffahrtskapit\u00e4nswagen"));
  }

  private static String windowsOf(String car) throws Exception {
    JobView view = SampleJobs.tinted().shippedWords().car(car).view();
    return value(event(view, "windows-up"), Property.SUMMARY);
  }

  /** RFC 5545 3.8.7.4 and RFC 5546 2.1.4, from memory: a moved date has a higher sequence. */
  @Test
  void revisionsAreTold() throws Exception {
    JobView view = SampleJobs.tinted().view();
    Instant moved = Instant.parse("2026-12-02T09:00:00Z");
    Revisions revisions =
        new Revisions(
            Map.of("windows-up", new Revisions.Revision(3, moved)),
            List.of(
                new Revisions.Gone(
                    "wipers", new CareEvent.At(moved), new Revisions.Revision(1, moved))));
    List<VEvent> events = events(CareCalendar.all(view, revisions));
    VEvent windows = named(events, view, "windows-up");
    assertEquals("3", value(windows, Property.SEQUENCE));
    assertEquals("20261202T090000Z", value(windows, Property.DTSTAMP));
    assertEquals("0", value(named(events, view, "haze"), Property.SEQUENCE));
    VEvent gone = named(events, view, "wipers");
    assertEquals("CANCELLED", value(gone, Property.STATUS));
    assertEquals("1", value(gone, Property.SEQUENCE));
  }

  private static VEvent named(List<VEvent> events, JobView view, String name) {
    String uid = EventName.of(view.token(), name);
    return events.stream()
        .filter(e -> value(e, Property.UID).equals(uid))
        .findFirst()
        .orElseThrow();
  }
}
