package curewindow.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is noted at a tap: what was meant and no more, and back again at another tap. */
class NotedTest {

  private static final String CAR = "/job/Q-3101";

  @TempDir Path folder;
  private DeskClient desk;

  @BeforeEach
  void open() throws IOException {
    desk = DeskClient.open(folder);
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private String file(String name) throws IOException {
    return Files.readString(desk.shop.resolve(name));
  }

  private Document page(String path) {
    return Jsoup.parse(desk.page(path));
  }

  /** A card that promised two dates of Q-3101 too early, by the clock of Seattle. */
  private void promise() throws IOException {
    desk.pressed("Q-3101");
    Files.writeString(
        desk.shop.resolve("printed-dates.csv"),
        """
        job,hold,state,date,printed
        Q-3101,windows-up,safe-by,2026-11-26T09:00-08:00,2026-11-24T17:00
        Q-3101,defroster,safe-by,2026-11-26T10:00-08:00,2026-11-24T17:00
        """);
    again();
  }

  private void again() throws IOException {
    desk.close();
    desk = DeskClient.open(folder, DeskClient.NOW);
  }

  private List<Element> calls() {
    return page("/").select("#h-calls ~ ul li");
  }

  @Test
  void onlyTheRowThatWasToldIsMarked() throws IOException {
    promise();
    assertEquals(2, calls().size(), desk.page("/"));
    Element row = calls().get(0);
    assertEquals(303, told(row.selectFirst("input[name=date]").val()).statusCode());
    assertEquals(1, calls().size(), desk.page("/"));
    assertEquals(1, file("calls.csv").lines().skip(1).count(), file("calls.csv"));
    assertTrue(file("calls.csv").contains(",windows-up,"), file("calls.csv"));
    // The same tap again, and one on a screen that is not true any more.
    assertTrue(
        told(row.selectFirst("input[name=date]").val())
            .headers()
            .map()
            .toString()
            .contains("done=told"));
    desk.post(CAR + "/undo", "what", "told");
    assertEquals(2, calls().size(), "taken back");
    HttpResponse<String> old = told("2026-11-27T09:00-08:00");
    assertTrue(old.headers().map().toString().contains("done=moved-again"));
    assertEquals(2, calls().size(), "nothing is noted that was not told");
  }

  @Test
  void theHistorySaysWhatTheyWereToldAndTakesItBack() throws IOException {
    promise();
    assertFalse(page(CAR).select("dl.facts").text().contains("We told them."));
    told(calls().get(0).selectFirst("input[name=date]").val());
    Element history = page(CAR).selectFirst("dl.facts");
    String told = file("calls.csv").lines().skip(1).findFirst().orElseThrow();
    // The row says the date as ISO 8601, the history as people read it.
    assertTrue(told.contains(",windows-up,2026-12-"), told);
    Element row = history.selectFirst("dd:contains(We told them. Windows stay up:)");
    assertTrue(row.text().matches(".*: \\w+, December \\d+, .*"), history.text());
    assertEquals("told", row.selectFirst("button").val());
    HttpResponse<String> undone = desk.post(CAR + "/undo", "what", "told", "from", "car");
    assertTrue(undone.headers().map().toString().contains(CAR + "?done=undone"));
    assertFalse(page(CAR).select("dl.facts").text().contains("We told them."));
    Files.writeString(
        desk.shop.resolve("calls.csv"), "job,day,hold,told\nQ-3101,2026-11-24T18:00,,2026-12-11\n");
    again();
    history = page(CAR).selectFirst("dl.facts");
    assertTrue(history.text().contains("We told them. Visit: December 11, 2026"), history.text());
  }

  /** Of several notes of a day the last can be taken back, and stands first. */
  @Test
  void theUndoStandsAtWhatItTakesBack() throws IOException {
    desk.post(CAR + "/called", "question", "other", "outcome", "solved");
    desk.post(CAR + "/called", "question", "other", "outcome", "coming-in");
    List<Element> rows = page(CAR).select("dl.facts dd:has(button)");
    assertEquals(1, rows.size());
    assertTrue(rows.get(0).text().contains("coming in"), rows.toString());
  }

  /** A finger that taps twice has not heard two calls, which would be counted. */
  @Test
  void aDoubleTapIsOneCall() throws IOException {
    desk.post(CAR + "/called", "question", "other", "outcome", "solved");
    HttpResponse<String> second =
        desk.post(CAR + "/called", "question", "other", "outcome", "solved");
    assertTrue(second.headers().map().toString().contains("done=noted"));
    assertEquals(1, file("callbacks.csv").lines().skip(1).count(), file("callbacks.csv"));
    desk.post(CAR + "/called", "question", "other", "outcome", "coming-in");
    assertEquals(2, file("callbacks.csv").lines().skip(1).count(), file("callbacks.csv"));
    desk.close();
    desk = DeskClient.open(folder, DeskClient.NOW.plusSeconds(60));
    desk.post(CAR + "/called", "question", "other", "outcome", "coming-in");
    assertEquals(3, file("callbacks.csv").lines().skip(1).count(), file("callbacks.csv"));
  }

  @Test
  void carsThatTodayIsWithoutAreATapAway() throws IOException {
    Files.writeString(desk.shop.resolve("jobs/Q-3300.yaml"), "id: Q-3300\nfirst-name: [\n");
    again();
    Element line = page("/").selectFirst("p.warn:contains(1 car is not on this screen)");
    assertEquals("/job/Q-3300", line.selectFirst("a").attr("href"));
    assertTrue(page("/job/Q-3300").text().contains("its file cannot be read"));
  }

  private HttpResponse<String> told(String date) {
    return desk.post(CAR + "/told", "hold", "windows-up", "date", date);
  }

  /** Houston is two hours ahead of Seattle (IANA time zone database). */
  @Test
  void aCardSaysWhatItSaidThoughTheCarLivesElsewhereNow() throws IOException {
    promise();
    assertTrue(
        calls().get(0).text().contains("Card: Thursday, November 26, 9 AM"), calls().get(0).text());
    Path job = desk.shop.resolve("jobs/Q-3101.yaml");
    Files.writeString(job, Files.readString(job).replace("place: seattle", "place: houston"));
    again();
    String row = calls().stream().map(Element::text).toList().toString();
    assertTrue(row.contains("Card: Thursday, November 26, 9 AM"), row);
    assertTrue(page(CAR).select("dl.facts").text().contains("November 26, 9 AM"), desk.page(CAR));
    assertFalse(page(CAR).select("dl.facts").text().contains("11 AM"), desk.page(CAR));
  }

  @Test
  void aVisitNotedByMistakeIsTakenBack() throws IOException {
    String before = "job,day,what,result,note\nQ-3108,2026-11-20,,fine,by hand\n";
    Files.writeString(desk.shop.resolve("visits.csv"), before);
    again();
    HttpResponse<String> seen =
        desk.post(CAR + "/seen", "result", "fine", "note", "dry, all of it");
    assertTrue(file("visits.csv").contains("Q-3101,2026-11-25"), file("visits.csv"));
    String at = seen.headers().firstValue("Location").orElseThrow();
    assertEquals(1, page(at).select(".done button").size(), "one tap away");
    assertEquals(1, page(CAR).select("dl.facts button").size(), "and all day in the history");
    desk.post(CAR + "/undo", "what", "seen");
    assertEquals(before, file("visits.csv"));
    assertTrue(desk.page(CAR).contains("until Sun, Mar 14"), "its dates are as before");
    HttpResponse<String> none = desk.post(CAR + "/undo", "what", "seen");
    assertTrue(none.headers().map().toString().contains("not-undone"));
    assertEquals(before, file("visits.csv"));
  }

  @Test
  void aCallNotedByMistakeIsTakenBackOnItsDayOnly() throws IOException {
    String before = "job,at,question,outcome\nQ-3101,2026-11-24T18:00,other,solved\n";
    Files.writeString(desk.shop.resolve("callbacks.csv"), before);
    again();
    desk.post(CAR + "/called", "question", "other", "outcome", "coming-in");
    assertEquals(2, file("callbacks.csv").lines().skip(1).count());
    desk.post(CAR + "/undo", "what", "called");
    assertEquals(before, file("callbacks.csv"));
    desk.post(CAR + "/undo", "what", "called");
    assertEquals(before, file("callbacks.csv"), "yesterday's stays");
    assertEquals(400, desk.post(CAR + "/undo", "what", "nothing").statusCode());
  }

  /** The true fault is told: here a row of somebody else is wrong since the desk last looked. */
  @Test
  void whyAVisitIsNotNotedIsTold() throws IOException {
    Files.writeString(
        desk.shop.resolve("visits.csv"), "job,day,what,result,note\nQ-3101,2026-11-25,,perfect,\n");
    HttpResponse<String> answer = desk.post(CAR + "/seen", "result", "fine", "note", "dry");
    assertEquals(422, answer.statusCode());
    assertTrue(answer.body().contains("perfect"), answer.body());
    assertTrue(answer.body().contains("value=\"dry\""), answer.body());
    assertFalse(answer.body().contains("The work is from today"), answer.body());
  }

  /** A Saturday three weeks after the visit; the shop is closed on the day after. */
  @Test
  void whoDidNotComeIsOfferedTheNextOpenDay() throws IOException {
    desk.close();
    desk = DeskClient.open(folder, Instant.parse("2027-03-21T05:00:00Z"));
    String sms = page("/").select("a[href^=sms]").attr("href");
    String text = java.net.URLDecoder.decode(sms, java.nio.charset.StandardCharsets.UTF_8);
    assertTrue(text.replace('\u00A0', ' ').contains("starting Mon, Mar 22"), text);
    assertTrue(text.contains("Mara") && text.contains("Quillhaven"), text);
  }
}
