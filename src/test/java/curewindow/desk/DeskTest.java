package curewindow.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.shop.Job;
import curewindow.site.LoadedShop;
import curewindow.site.ViewServer;
import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the desk does for a browser, and what it does not do for others. */
class DeskTest {

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

  private String file(String job) throws IOException {
    return Files.readString(desk.shop.resolve("jobs/" + job + ".yaml"));
  }

  @Test
  void aNewCarIsWrittenAsAPersonWould() throws IOException {
    HttpResponse<String> answer = desk.post("/new", DeskClient.car("Q-3118", "harbor-35"));
    assertEquals(303, answer.statusCode(), answer.body());
    assertEquals(
        """
        id: Q-3118
        first-name: Ines
        language: en
        car: {body: wagon, paint: dark, text: red wagon}
        place: seattle
        parking: {day: outside, night: garage}
        pickup: 2026-11-25T17:00
        items:
          - service: tint
            film: harbor-35
            spots: [front-door-glass, rear-door-glass]
            finished: 2026-11-25T11:30
            batch: "0611"
        """,
        file("Q-3118"));
    LoadedShop shop = desk.loaded();
    assertFalse(shop.hasErrors(), () -> shop.errors().toString());
    String next = desk.get(answer.headers().firstValue("Location").orElseThrow()).body();
    assertTrue(next.contains("Q-3118 · Ines · red wagon"), next);
    assertTrue(desk.get("/new").body().contains("value=\"Q-3119\""), "the next number");
  }

  @Test
  void theDatesBesideTheFormAreThoseOfTheJob() {
    String beside = desk.post("/new", DeskClient.car("Q-3118", "harbor-35", "do", "look")).body();
    desk.post("/new", DeskClient.car("Q-3118", "harbor-35"));
    Job job = desk.loaded().job("Q-3118").orElseThrow();
    var view = desk.loaded().view(job, "0");
    for (var release : view.timeline().releases()) {
      String when = new curewindow.told.When(view).shortDayAndTime(release);
      assertTrue(beside.contains(when), release.hold() + " " + when + "\n" + beside);
    }
  }

  @Test
  void aCarThatLivesElsewhereIsToldByTheClockThere() {
    String look =
        desk.post("/new", DeskClient.car("Q-3118", "harbor-35", "do", "look", "place", "houston"))
            .body();
    assertTrue(look.contains("Hours by the clock in Houston"), look);
    assertFalse(
        desk.post("/new", DeskClient.car("Q-3118", "harbor-35", "do", "look"))
            .body()
            .contains("Hours by the clock"));
  }

  @Test
  void aNumberOfAJobThatCannotBeReadIsNotGivenAgain() throws Exception {
    Files.writeString(desk.shop.resolve("jobs/Q-3200.yaml"), "id: Q-3200\n");
    desk.post("/job/Q-3101/called", "question", "other", "outcome", "solved");
    desk.post("/job/Q-3101/seen", "result", "fine");
    assertTrue(desk.get("/new").body().contains("value=\"Q-3201\""));
  }

  /** The key of the form of a new car. */
  private static String began(String page) {
    Matcher found = Pattern.compile("name=\"began\" value=\"([^\"]+)\"").matcher(page);
    assertTrue(found.find(), page);
    return found.group(1);
  }

  private HttpResponse<String> save(String form, String id, String name) {
    return desk.post(
        "/new", DeskClient.car(id, "harbor-35", "began", form, "first-name", name, "do", "save"));
  }

  private static String leadsTo(HttpResponse<String> answer) {
    return answer.headers().firstValue("Location").orElse("");
  }

  @Test
  void ofTwoTabletsWithOneNumberTheSecondGetsTheNextAndIsTold() throws IOException {
    String first = began(desk.page("/new"));
    String second = began(desk.page("/new"));
    assertEquals("/job/Q-3117/hand-over?done=saved", leadsTo(save(first, "Q-3117", "Ines")));
    HttpResponse<String> look =
        desk.post("/new", DeskClient.car("Q-3117", "harbor-35", "began", second, "do", "look"));
    assertEquals(second, began(look.body()), "still the same form");
    String moved = leadsTo(save(second, "Q-3117", "Odette"));
    assertEquals("/job/Q-3118/hand-over?done=moved&from=Q-3117", moved);
    String told = desk.page(moved);
    assertTrue(told.contains("Saved as Q-3118, as Q-3117 was taken meanwhile."), told);
    HttpResponse<String> spanish =
        desk.send(HttpRequest.newBuilder(desk.at(moved)).header("Cookie", "language=es"));
    assertTrue(spanish.body().contains("Guardado como Q-3118"), spanish.body());
    assertTrue(file("Q-3117").contains("Ines") && file("Q-3118").contains("Odette"));
    String other = desk.page("/job/Q-3118/hand-over?done=moved&from=%3Cb%3ENo%20such");
    assertFalse(other.contains("meanwhile"), "nobody else's words");
  }

  @Test
  void aNumberThatAFileTookUnseenIsPassedOver() throws IOException {
    String form = began(desk.page("/new"));
    Files.writeString(desk.shop.resolve("jobs/Q-3117.yaml"), "id: Q-3117\n");
    Files.writeString(desk.shop.resolve("jobs/Q-3118.yaml"), "id: Q-3118\n");
    assertEquals(
        "/job/Q-3119/hand-over?done=moved&from=Q-3117", leadsTo(save(form, "Q-3117", "Ines")));
    assertEquals("id: Q-3118\n", file("Q-3118"));
  }

  @Test
  void aNumberThatWasTypedIsNotMoved() {
    String form = began(desk.page("/new"));
    for (String key : List.of(form, "", "12-3")) {
      HttpResponse<String> answer = save(key, "Q-3101", "Ines");
      assertEquals(422, answer.statusCode());
      assertTrue(answer.body().contains("This number is taken"), answer.body());
    }
    assertEquals("/job/Q-3117/hand-over?done=saved", leadsTo(save("", "Q-3117", "Ines")));
    assertEquals(422, save("12-3", "Q-3117", "Odette").statusCode(), "a form of another run");
  }

  /** Two clicks, or a way back and once more, make no second car. */
  @Test
  void aFormThatIsSentTwiceIsOneCar() throws IOException {
    String first = began(desk.page("/new"));
    String form = began(desk.page("/new"));
    save(first, "Q-3117", "Ines");
    String moved = leadsTo(save(form, "Q-3117", "Odette"));
    assertEquals(moved, leadsTo(save(form, "Q-3117", "Odette")));
    assertEquals(422, save(form, "Q-3117", "Odette M").statusCode(), "changed, so not silently");
    assertFalse(Files.exists(desk.shop.resolve("jobs/Q-3119.yaml")));
  }

  @Test
  void whatIsWrongStandsAtItsFieldAndNothingIsWritten() {
    HttpResponse<String> answer =
        desk.post(
            "/new", DeskClient.car("Q 31", "harbor-35", "items[1].vlt", "140", "pickup", "x"));
    assertEquals(422, answer.statusCode());
    assertTrue(answer.body().contains("Use letters, digits and hyphens"), answer.body());
    assertTrue(
        answer.body().matches("(?s).*id=\"items\\[1].vlt\"[^>]*aria-invalid=\"true\".*"),
        answer.body());
    assertFalse(Files.exists(desk.shop.resolve("jobs/Q 31.yaml")));
    HttpResponse<String> empty = desk.post("/new", DeskClient.car("Q-3118", ""));
    assertEquals(422, empty.statusCode());
    assertTrue(empty.body().contains("Please fill this in."), empty.body());
  }

  @Test
  void nothingIsWrittenOverAJobThatIsThere() throws IOException {
    String before = file("Q-3101");
    for (String id : List.of("Q-3101", "q-3101", "Q-3115")) {
      HttpResponse<String> answer = desk.post("/new", DeskClient.car(id, "harbor-35"));
      assertEquals(422, answer.statusCode(), id);
      assertTrue(answer.body().contains("This number is taken"), answer.body());
    }
    assertEquals(before, file("Q-3101"));
  }

  @Test
  void aChangeKeepsWhatThePersonWroteAndRefusesToOverwrite() throws IOException {
    String before = file("Q-3101");
    String form = desk.get("/job/Q-3101/change").body();
    String version = form.replaceFirst("(?s).*name=\"version\" value=\"([0-9a-f]+)\".*", "$1");
    String[] change = {
      "do",
      "save",
      "version",
      version,
      "id",
      "Q-3101",
      "first-name",
      "Marta",
      "language",
      "",
      "car.year",
      "2023",
      "car.body",
      "sedan",
      "car.paint",
      "dark",
      "car.text",
      "black four-door",
      "place",
      "seattle",
      "parking.day",
      "garage",
      "parking.night",
      "garage",
      "pickup",
      "2026-11-24T17:00",
      "items[1].film",
      "harbor-35",
      "items[1].spots",
      "front-door-glass",
      "items[1].spots",
      "rear-door-glass",
      "items[1].spots",
      "back-glass",
      "items[1].finished",
      "2026-11-24T14:30",
      "items[1].vlt",
      "28",
      "items[1].batch",
      "H35-0611",
      "items[1].warranty-years",
      "10"
    };
    assertEquals(303, desk.post("/job/Q-3101/change", change).statusCode());
    String expected =
        before
            .replace("first-name: Mara", "first-name: Marta")
            .replace("{day: outside, night: outside}", "{day: garage, night: garage}");
    assertEquals(expected, file("Q-3101"));
    // The other tablet still has the form of before: what only one of them changed is put together.
    change[Arrays.asList(change).indexOf("first-name") + 1] = "Mara";
    change[Arrays.asList(change).indexOf("parking.day") + 1] = "outside";
    change[Arrays.asList(change).indexOf("items[1].batch") + 1] = "H35-0700";
    HttpResponse<String> second = desk.post("/job/Q-3101/change", change);
    assertEquals(303, second.statusCode(), second.body());
    String both = expected.replace("H35-0611", "H35-0700");
    assertEquals(both, file("Q-3101"));
    // A third one changes the name to another than the first did.
    change[Arrays.asList(change).indexOf("first-name") + 1] = "Odette";
    HttpResponse<String> third = desk.post("/job/Q-3101/change", change);
    assertEquals(409, third.statusCode());
    assertTrue(third.body().contains("Somebody else saved “Marta”"), third.body());
    assertTrue(third.body().contains("value=\"Odette\""), "what was typed stays");
    assertTrue(third.body().contains("value=\"H35-0700\""), "and what the other one typed");
    assertEquals(both, file("Q-3101"));
  }

  @Test
  void aCarIsHandedOver() throws IOException {
    desk.post("/new", DeskClient.car("Q-3118", "harbor-35"));
    String made = desk.pressed("Q-3118");
    assertTrue(made.contains("The page is made."), made);
    LoadedShop shop = desk.loaded();
    String folder = shop.madePage(desk.out, "Q-3118").orElseThrow();
    assertTrue(made.contains("https://care.quillhaven.example/" + folder), made);
    assertTrue(made.contains("sms:?&amp;body=Hi%20Ines"), made);
    HttpResponse<String> page = desk.get("/site/" + folder);
    assertEquals(200, page.statusCode());
    assertTrue(
        page.headers().firstValue("Content-Security-Policy").orElse("").startsWith("sandbox"));
    HttpResponse<String> card = desk.post("/job/Q-3118/print", "as", "wallet");
    assertTrue(card.body().startsWith("%PDF"), card.body());
    assertTrue(Files.readString(desk.shop.resolve("printed-dates.csv")).contains("Q-3118"));
    assertTrue(Files.readString(desk.shop.resolve("handed-over.csv")).contains("Q-3118,Ines"));
    String history = desk.get("/job/Q-3118").body();
    assertTrue(history.contains("On the card"), history);
  }

  /** The address answers here, as a web host of the test's own serves what was sent. */
  @Test
  void aPageIsSentAndAnswersAtItsAddress() throws IOException {
    Path host = folder.resolve("host/site");
    Files.createDirectories(host);
    try (ViewServer web = ViewServer.start(folder.resolve("host"), 0)) {
      Path file = desk.shop.resolve("shop.yaml");
      String sent =
          Files.readString(file)
              .replace("https://care.quillhaven.example/", web.address().toString());
      Files.writeString(file, sent + "send:\n  to: " + host + "\n");
      desk.close();
      desk = DeskClient.open(folder, DeskClient.NOW);
      String made = desk.pressed("Q-3101");
      assertTrue(made.contains("It is sent."), made);
      assertTrue(made.contains("The address answers with this page."), made);
      String page = desk.loaded().madePage(desk.out, "Q-3101").orElseThrow();
      assertTrue(Files.isRegularFile(host.resolve(page + "index.html")));
    }
  }

  @Test
  void aPageTakenWithoutPaperIsHandedOverToo() throws IOException {
    desk.post("/job/Q-3101/taken");
    assertFalse(Files.exists(desk.shop.resolve("handed-over.csv")), "there is no page yet");
    desk.post("/job/Q-3101/press");
    assertEquals(303, desk.post("/job/Q-3101/taken").statusCode());
    assertTrue(Files.readString(desk.shop.resolve("handed-over.csv")).contains("Q-3101,Mara"));
  }

  @Test
  void whatWasFoundAtAVisitLiftsTheHolds() throws IOException {
    assertTrue(desk.page("/job/Q-3101").contains("until Sun, Mar 14"));
    Files.writeString(desk.shop.resolve("visits.csv"), "day;job;result;note\r\n");
    assertEquals(
        303,
        desk.post("/job/Q-3101/seen", "result", "fine", "note", "dry; no \"fingers\"")
            .statusCode());
    assertEquals(
        "day;job;result;note\r\n2026-11-25;Q-3101;fine;\"dry; no \"\"fingers\"\"\"\r\n",
        Files.readString(desk.shop.resolve("visits.csv")));
    String after = desk.page("/job/Q-3101");
    assertTrue(after.contains("Seen, all well"), after);
    assertFalse(after.contains("until Sun, Mar 14"), after);
  }

  /** A car that was finished today cannot have been looked at again. */
  @Test
  void aVisitOnTheDayOfTheWorkIsNotWritten() {
    desk.post("/new", DeskClient.car("Q-3118", "harbor-35"));
    HttpResponse<String> answer =
        desk.post("/job/Q-3118/seen", "result", "mended", "note", "edge pressed down");
    assertEquals(422, answer.statusCode());
    assertTrue(answer.body().contains("The work is from today"), answer.body());
    assertTrue(answer.body().contains("value=\"edge pressed down\""), "what was typed stays");
    assertFalse(Files.exists(desk.shop.resolve("visits.csv")));
    for (int i = 0; i < 2; i++) {
      assertEquals(303, desk.post("/job/Q-3101/seen", "result", "fine").statusCode());
    }
    assertEquals(1, desk.loaded().job("Q-3101").orElseThrow().seen().size(), "once");
  }

  @ParameterizedTest
  @ValueSource(strings = {"drop:99", "drop:x", "drop", "usual", "usual:none", "add", "nothing"})
  void whatNoButtonSaysDoesNoHarm(String wanted) {
    assertEquals(
        200, desk.post("/new", DeskClient.car("Q-3118", "harbor-35", "do", wanted)).statusCode());
  }

  /** Weeks later: Q-3101's visit was due on a Monday in March, and nobody came. */
  @Test
  void todayHasVisitsWhoseDayPassed() throws IOException {
    try (Desk later = Desk.open(desk.setting(Instant.parse("2027-03-20T18:00:00Z")))) {
      String page =
          desk.send(HttpRequest.newBuilder(later.address())).body().replace('\u00A0', ' ');
      assertTrue(page.contains("Visit day passed"), page);
      assertTrue(page.contains("Q-3101 Mara") && page.contains("sms:?&amp;body="), page);
      HttpRequest.Builder seen =
          DeskClient.sent(
              later.address().resolve("/job/Q-3101/seen"), "result=fine&photo=1&from=today");
      assertEquals(303, desk.send(seen).statusCode());
      assertEquals(
          "job,day,what,result,note\nQ-3101,2027-03-20,,fine,photo\n",
          Files.readString(desk.shop.resolve("visits.csv")));
      assertFalse(desk.send(HttpRequest.newBuilder(later.address())).body().contains("Q-3101"));
    }
  }

  @Test
  void aCallIsNotedWithItsQuestion() throws IOException {
    String car = desk.page("/job/Q-3101");
    String question = car.replaceFirst("(?s).*?name=\"question\" value=\"([a-z-]+)\".*", "$1");
    assertEquals(
        303,
        desk.post("/job/Q-3101/called", "question", question, "outcome", "coming-in").statusCode());
    assertEquals(
        "job,at,question,outcome\nQ-3101,2026-11-25T12:00,%s,coming-in\n".formatted(question),
        Files.readString(desk.shop.resolve("callbacks.csv")));
    assertTrue(desk.page("/job/Q-3101").contains("(coming in)"));
    for (String[] bad : new String[][] {{"none", "solved"}, {question, "sold"}}) {
      assertEquals(
          400, desk.post("/job/Q-3101/called", "question", bad[0], "outcome", bad[1]).statusCode());
    }
  }

  @Test
  void whatSomebodyElseWroteIsSeenWithinSeconds() throws Exception {
    String text = file("Q-3101").replace("Q-3101", "Q-3200").replace("Mara", "Odette");
    Files.writeString(desk.shop.resolve("jobs/Q-3200.yaml"), text);
    long begin = System.nanoTime();
    while (!desk.get("/find?q=odette").body().contains("Q-3200")) {
      assertTrue(System.nanoTime() - begin < Duration.ofSeconds(20).toNanos(), "never seen");
      Thread.sleep(100);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"harbor 35 H35-0611", "mara", "BLACK four", "Q-3101", "2026-11-24"})
  void aCarIsFoundByWhatPeopleRemember(String query) {
    String found = desk.get("/find?q=" + DeskClient.form(List.of("q", query)).substring(2)).body();
    assertTrue(found.contains("/job/Q-3101"), found);
  }

  @Test
  void theDeskSpeaksSpanish() {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(desk.at("/new")).header("Cookie", "language=es");
    String page = desk.send(request).body();
    assertTrue(page.contains("Auto nuevo") && page.contains("lang=\"es\""), page);
    assertTrue(page.contains("Terminado"), page);
    HttpRequest.Builder early =
        DeskClient.sent(
            desk.at("/new"),
            DeskClient.form(
                List.of(DeskClient.car("Q-3118", "harbor-35", "pickup", "2026-11-24T09:00"))));
    String told = desk.send(early.header("Cookie", "language=es")).body();
    assertTrue(told.contains("El trabajo termina después de la entrega."), told);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/nothing",
        "/job/none",
        "/job/Q-3101/none",
        "/site/none",
        "/site/../shop.yaml",
        "/site/%2e%2e/office/pages.csv",
        "/desk.html"
      })
  void whatIsNotThereIsNotFound(String path) {
    assertEquals(404, desk.get(path).statusCode());
  }

  /** No page of another site can do anything here (Fetch Standard, the header Origin). */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "http://evil.example",
        "null",
        "http://localhost:1",
        "https://127.0.0.1",
        "http://127.0.0.1"
      })
  void aFormOfAnotherSiteIsRefused(String origin) {
    List<String> fields = List.of(DeskClient.car("Q-3118", "harbor-35"));
    assertEquals(403, desk.post("/new", origin, fields).statusCode());
    HttpRequest.Builder without =
        HttpRequest.newBuilder(desk.at("/new"))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(DeskClient.form(fields)));
    assertEquals(403, desk.send(without).statusCode());
    assertFalse(Files.exists(desk.shop.resolve("jobs/Q-3118.yaml")));
  }

  /** A name that another site lets lead to this machine (RFC 9110, section 7.4). */
  @ParameterizedTest
  @ValueSource(strings = {"evil.example:PORT", "127.0.0.1", "localhost:1", ""})
  void anotherNameOfThisMachineIsRefused(String host) throws IOException {
    int port = desk.desk.address().getPort();
    String asked =
        "GET / HTTP/1.1\r\nHost: "
            + host.replace("PORT", "" + port)
            + "\r\nConnection: close\r\n\r\n";
    try (Socket socket = new Socket("127.0.0.1", port);
        InputStream in = socket.getInputStream()) {
      socket.getOutputStream().write(asked.getBytes(StandardCharsets.US_ASCII));
      String answer = new String(in.readAllBytes(), StandardCharsets.US_ASCII);
      assertTrue(answer.startsWith("HTTP/1.1 4"), answer);
      assertFalse(answer.contains("Quillhaven"), answer);
    }
  }

  @Test
  void everyAnswerIsKeptAndFramedByNobodyAndLoadsNothingFromElsewhere() {
    for (String path : List.of("/", "/new", "/find", "/job/Q-3101", "/job/Q-3101/hand-over")) {
      HttpResponse<String> answer = desk.get(path);
      String policy = answer.headers().firstValue("Content-Security-Policy").orElse("");
      assertTrue(policy.startsWith("default-src 'none'"), path);
      assertTrue(policy.contains("frame-ancestors 'self'"), path);
      assertEquals("no-store", answer.headers().firstValue("Cache-Control").orElse(""), path);
      assertFalse(answer.body().contains("<script>") || answer.body().contains(" style="), path);
      assertFalse(answer.body().matches("(?s).*(src|href)=\"(https?:)?//.*"), path);
    }
  }

  @Test
  void markupThatWasTypedStaysText() {
    String bad = "<img src=x onerror=alert(1)>\"'";
    String page =
        desk.post(
                "/new",
                DeskClient.car(
                    "Q-3118",
                    "harbor-35",
                    "do",
                    "look",
                    "first-name",
                    bad,
                    "car.text",
                    bad,
                    "id",
                    bad))
            .body();
    assertFalse(page.contains("<img"), page);
    assertEquals(
        303,
        desk.post("/new", DeskClient.car("Q-3118", "harbor-35", "first-name", bad)).statusCode());
    for (String path : List.of("/", "/job/Q-3118", "/find?q=Q-3118", "/job/Q-3118/change")) {
      assertFalse(desk.get(path).body().contains("<img"), path);
    }
  }

  /** Twenty tablets at once: each car that was saved is there, whole, once. */
  @Test
  void aThousandRequestsOfTwentyClientsLoseNothing() throws Exception {
    ExecutorService clients = Executors.newFixedThreadPool(20);
    List<Future<List<Integer>>> all = new ArrayList<>();
    for (int client = 0; client < 20; client++) {
      int number = client;
      all.add(clients.submit(() -> work(number)));
    }
    List<Integer> answers = new ArrayList<>();
    for (Future<List<Integer>> one : all) {
      answers.addAll(one.get());
    }
    clients.shutdown();
    assertEquals(1000, answers.size());
    assertEquals(Set.of(200, 303), Set.copyOf(answers));
    LoadedShop shop = desk.loaded();
    assertFalse(shop.hasErrors(), () -> shop.errors().toString());
    Set<String> there = shop.jobs().stream().map(Job::id).collect(Collectors.toSet());
    for (int client = 0; client < 20; client++) {
      for (int i = 0; i < 5; i++) {
        assertTrue(there.contains("T-" + client + "-" + i), client + " " + i);
      }
    }
    long calls = Files.readString(desk.shop.resolve("callbacks.csv")).lines().count() - 1;
    assertEquals(100, calls);
  }

  /** Five new cars, a call about each, and looks around in between. */
  private List<Integer> work(int number) throws Exception {
    HttpClient own = HttpClient.newHttpClient();
    List<Integer> answers = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      String id = "T-" + number + "-" + i;
      answers.add(desk.post("/new", DeskClient.car(id, "harbor-35")).statusCode());
      answers.add(
          desk.post("/job/" + id + "/called", "question", "other", "outcome", "solved")
              .statusCode());
      List<String> looks = List.of("/new", "/find?q=" + id, "/job/" + id, "/desk.css");
      for (String path : IntStream.range(0, 8).mapToObj(k -> looks.get(k % 4)).toList()) {
        URI at = desk.at(path);
        HttpResponse<String> answer =
            own.send(HttpRequest.newBuilder(at).build(), HttpResponse.BodyHandlers.ofString());
        assertEquals(200, answer.statusCode(), answer.body());
        answers.add(answer.statusCode());
      }
    }
    return answers;
  }
}
