package curewindow.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.ConnectException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The desk for tablets: nobody without the passcode sees or does anything. */
class NetworkDeskTest {

  @TempDir Path folder;

  private static HttpRequest.Builder form(URI at, String path, String body) {
    String origin = at.toString().replaceFirst("/$", "");
    return HttpRequest.newBuilder(at.resolve(path))
        .header("Origin", origin)
        .header("Content-Type", "application/x-www-form-urlencoded")
        .POST(HttpRequest.BodyPublishers.ofString(body));
  }

  @Test
  void whoHasNoPasscodeSeesNothing() throws Exception {
    Assumptions.assumeFalse(OwnNames.inNetwork().isEmpty(), "Skipped: no network but the loopback");
    try (DeskClient own = DeskClient.open(folder)) {
      Desk.Setting same = own.setting(DeskClient.NOW);
      Desk.Setting open =
          new Desk.Setting(same.shop(), same.out(), 0, Optional.of("heron7rq"), same.clock());
      try (Desk desk = Desk.open(open)) {
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
        String cookie = in.headers().firstValue("Set-Cookie").orElseThrow().replaceFirst(";.*", "");
        HttpRequest.Builder car = HttpRequest.newBuilder(at.resolve("/job/Q-3101"));
        assertTrue(own.send(car.header("Cookie", cookie)).body().contains("Mara"));
      }
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
