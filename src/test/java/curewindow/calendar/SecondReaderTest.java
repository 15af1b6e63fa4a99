package curewindow.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.Npm;
import curewindow.handout.SampleJobs;
import curewindow.told.JobView;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.DtStart;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Calendars and the shop's card are read back by ical4j and by ical.js, which agree with us. */
class SecondReaderTest {

  @TempDir Path dir;

  private record Told(
      String uid, String start, String sequence, String summary, String description) {}

  private JsonNode second(String script, String text) throws IOException {
    Path file = Files.writeString(dir.resolve("file.txt"), text);
    return JsonMapper.shared().readTree(Npm.run(script, file));
  }

  private static List<Told> ours(JobView view) {
    return CareEvents.of(view).stream()
        .map(
            e ->
                new Told(
                    EventName.of(view.token(), e.name()),
                    e.start() instanceof CareEvent.Day day
                        ? day.day().toString()
                        : e.start().mark(),
                    "0",
                    e.summary(),
                    e.details()))
        .toList();
  }

  private List<Told> byIcalJs(String text) throws IOException {
    List<Told> all = new ArrayList<>();
    second("calendar.js", text)
        .forEach(
            e ->
                all.add(
                    new Told(
                        e.get("uid").asString(),
                        e.get("start").asString(),
                        String.valueOf(e.get("sequence").asInt()),
                        e.get("summary").asString(),
                        e.get("description").asString())));
    return all;
  }

  private static List<Told> byIcal4j(String text) throws Exception {
    List<Told> all = new ArrayList<>();
    List<VEvent> events =
        new CalendarBuilder().build(new StringReader(text)).getComponents(Component.VEVENT);
    for (VEvent event : events) {
      DtStart<?> start = event.getRequiredProperty(Property.DTSTART);
      String at =
          start.getDate() instanceof LocalDate day
              ? day.toString()
              : Instant.from(start.getDate()).toString();
      all.add(
          new Told(
              value(event, Property.UID),
              at,
              value(event, Property.SEQUENCE),
              value(event, Property.SUMMARY),
              value(event, Property.DESCRIPTION)));
    }
    return all;
  }

  private static String value(VEvent event, String property) {
    return event.getRequiredProperty(property).getValue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void bothReadersAgreeInInstantAndText(String language) throws Exception {
    JobView view =
        SampleJobs.tinted()
            .language(language)
            .shopName("Glass; Film, \\n & «Película» \uD83D\uDE97 ".repeat(4))
            .view();
    String text = CareCalendar.all(view, Revisions.FIRST);
    assertEquals(ours(view), byIcal4j(text));
    assertEquals(ours(view), byIcalJs(text));
  }

  /** A visit that comes again keeps its weekday, as RRULE of RFC 5545 3.3.10 has it. */
  @Test
  void whatComesAgainKeepsItsWeekday() throws IOException {
    CareEvent.Day wednesday = new CareEvent.Day(LocalDate.of(2027, 12, 29), 12, 4);
    CareEvent event =
        new CareEvent("later.check", wednesday, "Check", "text", Optional.empty(), true);
    String text =
        new CalendarText("name", "en", uid -> uid)
            .add(event, new Revisions.Revision(2, Instant.EPOCH), "https://care.example/")
            .text();
    JsonNode read = second("calendar.js", text).get(0);
    // The last Wednesdays of the Decembers, from a calendar.
    assertEquals(
        "[\"2027-12-29\",\"2028-12-27\",\"2029-12-26\",\"2030-12-25\"]",
        read.get("days").toString());
    assertEquals("-PT6H", read.get("alarm").asString());
    assertEquals(2, read.get("sequence").asInt());
  }

  /** RFC 6350: the card says what the shop's pages say. */
  @Test
  void theShopsCard() throws IOException {
    JobView view = SampleJobs.tinted().shopName("Glass; Film, & «Más»").view();
    String text = ShopCard.text(view.shop(), view.words());
    assertTrue(text.startsWith("BEGIN:VCARD\r\nVERSION:4.0\r\n"), text);
    Map<String, String> read = new java.util.TreeMap<>();
    second("card.js", text)
        .forEach(p -> read.put(p.get("name").asString(), p.get("value").get(0).toString()));
    assertEquals("\"Glass; Film, & «Más»\"", read.get("fn"));
    assertEquals("\"org\"", read.get("kind"));
    assertEquals("\"" + view.shop().phone() + "\"", read.get("tel"));
    assertEquals("\"" + view.shop().address() + "\"", read.get("url"));
    assertEquals(
        "[\"\",\"\",\"12 Halyard Street\",\"Portland\",\"OR\",\"97201\",\"\"]", read.get("adr"));
  }
}
