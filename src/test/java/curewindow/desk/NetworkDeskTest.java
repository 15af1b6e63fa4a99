package curewindow.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.page.Browser;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.ConnectException;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The desk for tablets: nobody without the passcode sees or does anything. */
class NetworkDeskTest {

  @TempDir Path folder;

  private static HttpRequest.Builder form(URI at, String path, String body) {
    return DeskClient.sent(at.resolve(path), body);
  }

  @Test
  void whoHasNoPasscodeSeesNothing() throws Exception {
    Assumptions.assumeFalse(OwnNames.inNetwork().isEmpty(), "Skipped: no network but the loopback");
    try (DeskClient own = DeskClient.open(folder)) {
      try (Desk desk = open(own)) {
        URI at = desk.others().get(0);
        for (String path : new String[] {"/", "/new", "/job/Q-3101", "/site/index.html"}) {
          HttpResponse<String> answer = own.send(HttpRequest.newBuilder(at.resolve(path)));
          assertEquals(401, answer.statusCode(), path);
          assertFalse(answer.body().contains("Mara"), answer.body());
        }
        assertEquals(401, own.send(form(at, "/job/Q-3101/taken", "x=1")).statusCode());
        assertEquals(403, own.send(form(at, "/enter", "passcode=heron7rr")).statusCode());
        HttpResponse<String> in = own.send(form(at, "/enter", "passcode=heron7rq"));
        assertEquals(303, in.statusCode());
        String cookie = cookie(in);
        HttpRequest.Builder car = HttpRequest.newBuilder(at.resolve("/job/Q-3101"));
        assertTrue(own.send(car.header("Cookie", cookie)).body().contains("Mara"));
      }
    }
  }

  /** What lets a browser in from now on. */
  private static String cookie(HttpResponse<String> in) {
    return in.headers().firstValue("Set-Cookie").orElseThrow().replaceFirst(";.*", "");
  }

  private Desk open(DeskClient own) throws IOException {
    Desk.Setting same = own.setting(DeskClient.NOW);
    return Desk.open(
        new Desk.Setting(same.shop(), same.out(), 0, Optional.of("heron7rq"), same.clock()));
  }

  /** A page in a sandboxed frame cannot send a cookie: its path opens the public site, no more. */
  @Test
  void whatAFrameAsksForNeedsNoCookieAndOpensNothingElse() throws Exception {
    Assumptions.assumeFalse(OwnNames.inNetwork().isEmpty(), "Skipped: no network but the loopback");
    try (DeskClient own = DeskClient.open(folder);
        Desk desk = open(own)) {
      own.post("/job/Q-3101/press");
      URI at = desk.others().get(0);
      String cookie = cookie(own.send(form(at, "/enter", "passcode=heron7rq")));
      HttpRequest.Builder car = HttpRequest.newBuilder(at.resolve("/job/Q-3101"));
      Matcher frame =
          Pattern.compile("<iframe src=\"((/framed/[0-9a-f]{64}/)[^\"]+)\"")
              .matcher(own.send(car.header("Cookie", cookie)).body());
      assertTrue(frame.find());
      HttpResponse<String> page = own.send(HttpRequest.newBuilder(at.resolve(frame.group(1))));
      assertEquals(200, page.statusCode());
      assertTrue(page.body().contains("Mara"), page.body());
      String policy = page.headers().firstValue("Content-Security-Policy").orElse("");
      assertTrue(policy.startsWith("sandbox ") && !policy.contains("same-origin"), policy);
      String site = frame.group(2);
      assertEquals(200, status(own, at, site + "en/index.html"));
      assertTrue(Files.exists(own.out.resolve("office/pages.csv")));
      for (String path :
          List.of(
              site + "../office/pages.csv",
              site + "%2e%2e/office/pages.csv",
              site + "..%2foffice%2fpages.csv",
              site + "/" + own.shop.resolve("shop.yaml"),
              site + "../../shop/shop.yaml",
              site + "../site/../office/pages.csv",
              site + "job/Q-3101",
              site.replaceFirst("[0-9a-f]{64}", "0".repeat(64)) + "en/index.html",
              site.replaceFirst("/$", ""),
              "/framed/",
              "/framed//en/index.html")) {
        assertEquals(404, raw(at, path), path);
      }
      assertEquals(401, own.send(form(at, site + "en/index.html", "x=1")).statusCode());
      assertEquals(401, status(own, at, "/site/en/index.html"), "the way without a frame");
      assertEquals(404, own.get(site + "en/index.html").statusCode(), "not from this machine");
    }
  }

  /** Back where one was, in one's own language, and nowhere else. */
  @Test
  void whoTypedThePasscodeIsWhereTheyWere() throws Exception {
    Assumptions.assumeFalse(OwnNames.inNetwork().isEmpty(), "Skipped: no network but the loopback");
    try (DeskClient own = DeskClient.open(folder);
        Desk desk = open(own)) {
      URI at = desk.others().get(0);
      String asked =
          own.send(HttpRequest.newBuilder(at.resolve("/find?q=black%20four&part=0"))).body();
      assertTrue(asked.contains("name=\"back\" value=\"/find?q=black+four&amp;part=0\""), asked);
      HttpResponse<String> spanish =
          own.send(HttpRequest.newBuilder(at.resolve("/enter?to=es&back=/job/Q-3101")));
      assertTrue(spanish.body().contains("lang=\"es\""), spanish.body());
      assertTrue(spanish.body().contains("value=\"/job/Q-3101\""), spanish.body());
      assertTrue(spanish.headers().map().toString().contains("language=es"));
      HttpResponse<String> in =
          own.send(form(at, "/enter", "passcode=heron7rq&back=%2Fjob%2FQ-3101"));
      assertEquals("/job/Q-3101", in.headers().firstValue("Location").orElse(""));
      for (String bad : new String[] {"//evil.example", "https://evil.example", "/%5Cevil", ""}) {
        HttpResponse<String> sent =
            own.send(form(at, "/enter", "passcode=heron7rq&back=" + bad.replace("%", "%25")));
        String to = sent.headers().firstValue("Location").orElse("");
        assertTrue(to.startsWith("/") && !to.startsWith("//"), bad + " " + to);
        assertEquals(at.getHost(), at.resolve(to).getHost(), bad);
      }
    }
  }

  @Test
  void howLongNobodyCanTryIsTold() throws Exception {
    Assumptions.assumeFalse(OwnNames.inNetwork().isEmpty(), "Skipped: no network but the loopback");
    try (DeskClient own = DeskClient.open(folder);
        Desk desk = open(own)) {
      URI at = desk.others().get(0);
      HttpResponse<String> last = null;
      for (int i = 0; i < Gate.FREE_TRIES; i++) {
        last = own.send(form(at, "/enter", "passcode=heron7rr"));
      }
      assertEquals(429, last.statusCode());
      assertEquals("15", last.headers().firstValue("Retry-After").orElse(""));
      assertTrue(last.body().contains("Try again in 15 seconds."), last.body());
    }
  }

  private static int status(DeskClient own, URI at, String path) {
    return own.send(HttpRequest.newBuilder(at.resolve(path))).statusCode();
  }

  /** The path as it stands, which a client would else tidy up. */
  private static int raw(URI at, String path) throws IOException {
    try (Socket line = new Socket(at.getHost(), at.getPort())) {
      String ask = "GET " + path + " HTTP/1.1\r\nHost: " + at.getAuthority() + "\r\n\r\n";
      line.getOutputStream().write(ask.getBytes(StandardCharsets.US_ASCII));
      String status =
          new BufferedReader(
                  new InputStreamReader(line.getInputStream(), StandardCharsets.US_ASCII))
              .readLine();
      return Integer.parseInt(status.split(" ")[1]);
    }
  }

  /** Where the site goes leads out of the two folders, so no tablet says that. */
  @Test
  void aTabletDoesNotChangeWhereTheSiteIsSentTo() throws Exception {
    Assumptions.assumeFalse(OwnNames.inNetwork().isEmpty(), "Skipped: no network but the loopback");
    try (DeskClient own = DeskClient.open(folder);
        Desk desk = open(own)) {
      URI at = desk.others().get(0);
      String cookie = cookie(own.send(form(at, "/enter", "passcode=heron7rq")));
      HttpRequest.Builder ask = HttpRequest.newBuilder(at.resolve("/shop"));
      String shown = own.send(ask.header("Cookie", cookie)).body();
      assertFalse(shown.contains("send.to"), shown);
      assertTrue(shown.contains("is changed on the machine that runs the desk"), shown);
      assertTrue(own.page("/shop").contains("id=\"send.to\""));
      Matcher version = Pattern.compile("name=\"version\" value=\"([0-9a-f]+)\"").matcher(shown);
      assertTrue(version.find());
      String body =
          DeskClient.form(
              List.of(
                  "do", "save",
                  "version", version.group(1),
                  "name", "Quillhaven Film & Coatings",
                  "phone", "+1 206 555 0142",
                  "texts", "same",
                  "address", "https://care.quillhaven.example/",
                  "language", "en",
                  "place", "seattle",
                  "bay.temperature", "19",
                  "send.to", own.shop.resolve("jobs").toString()));
      HttpResponse<String> saved = own.send(form(at, "/shop", body).header("Cookie", cookie));
      assertEquals(303, saved.statusCode(), saved.body());
      assertEquals(19, own.loaded().shop().orElseThrow().bay().temperature());
      assertEquals(Optional.empty(), own.loaded().shop().orElseThrow().send());
    }
  }

  @Test
  void aLinkInTheCustomersPageWorksOnATablet() throws Exception {
    Assumptions.assumeFalse(OwnNames.inNetwork().isEmpty(), "Skipped: no network but the loopback");
    try (DeskClient own = DeskClient.open(folder);
        Desk desk = open(own);
        Browser tablet = Browser.open()) {
      own.post("/job/Q-3101/press");
      tablet.screen(768, 1024, true).go(desk.others().get(0) + "job/Q-3101");
      tablet.type("input[name=passcode]", "heron7rq").click("main button");
      tablet.until("document.readyState==='complete'&&document.querySelector('iframe')!==null");
      tablet.intoFrame("iframe").until("document.readyState==='complete'");
      tablet.until("document.querySelector('.mast a img').naturalWidth>0");
      assertEquals(
          "Quillhaven Film & Coatings",
          tablet.run("return document.querySelector('.mast a').textContent"));
      assertEquals(
          true,
          tablet.run("return [...document.styleSheets].length>0&&origin==='null'"),
          "its styles came, and it is of no site");
      tablet.click(".mast a");
      tablet.until("location.pathname.endsWith('/en/index.html')");
      assertEquals("", tablet.seen("input[name=passcode]"));
      assertTrue(tablet.seen("h1").length() > 0, "the shop's public page");
      tablet.outOfFrame();
      assertEquals(true, tablet.run("return location.pathname==='/job/Q-3101'"));
    }
  }

  @Test
  void withoutAPasscodeNoOtherMachineGetsAnAnswer() throws Exception {
    Assumptions.assumeFalse(OwnNames.inNetwork().isEmpty(), "Skipped: no network but the loopback");
    try (DeskClient own = DeskClient.open(folder)) {
      URI at = own.desk.others().get(0);
      var e =
          Assertions.assertThrows(
              java.io.UncheckedIOException.class, () -> own.send(HttpRequest.newBuilder(at)));
      assertTrue(e.getCause() instanceof ConnectException, e.toString());
    }
  }
}
