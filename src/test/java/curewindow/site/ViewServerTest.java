package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ViewServerTest {

  @TempDir Path out;
  private ViewServer view;
  private final HttpClient client = HttpClient.newHttpClient();

  @BeforeEach
  void start() throws IOException {
    Files.createDirectories(out.resolve("site/C/TOKEN"));
    Files.createDirectories(out.resolve("office"));
    Files.writeString(out.resolve("site/index.html"), "home");
    Files.writeString(out.resolve("site/404.html"), "not here");
    Files.writeString(out.resolve("site/C/TOKEN/index.html"), "page");
    Files.writeString(out.resolve("site/C/TOKEN/care.ics"), "BEGIN:VCALENDAR");
    Files.writeString(out.resolve("office/secret.txt"), "secret");
    view = ViewServer.start(out, 0);
  }

  @AfterEach
  void stop() {
    view.close();
  }

  @Test
  void servesPagesFoldersAndCalendarsOnThisMachineOnly() throws Exception {
    assertTrue(view.address().getHost().startsWith("127."), view.address()::toString);
    assertEquals("home", get("").body());
    assertEquals("page", get("C/TOKEN/").body());
    assertEquals(301, get("C/TOKEN").statusCode());
    assertTrue(
        get("C/TOKEN/care.ics")
            .headers()
            .firstValue("Content-Type")
            .orElse("")
            .contains("calendar"));
    Files.writeString(out.resolve("site/offline.js"), "1");
    Files.writeString(out.resolve("site/C/TOKEN/care.webmanifest"), "{}");
    assertEquals("text/javascript; charset=utf-8", type("offline.js"));
    assertEquals("application/manifest+json", type("C/TOKEN/care.webmanifest"));
    assertEquals(404, get("nothing").statusCode());
    assertEquals("not here", get("nothing").body());
  }

  /** RFC 9110: 8.4.1.3 (gzip), 12.5.3 (a weight of 0 is a refusal), 12.5.5 (Vary). */
  @Test
  void packsWhatIsTextForWhoTakesIt() throws Exception {
    Files.write(out.resolve("site/icon.png"), new byte[] {1, 2});
    HttpResponse<byte[]> packed = get("C/TOKEN/", "br, gzip;q=0.5");
    assertEquals("gzip", packed.headers().firstValue("Content-Encoding").orElse(""));
    assertEquals("Accept-Encoding", packed.headers().firstValue("Vary").orElse(""));
    assertEquals(
        "page",
        new String(
            new GZIPInputStream(new ByteArrayInputStream(packed.body())).readAllBytes(),
            StandardCharsets.UTF_8));
    assertEquals("gzip", get("nothing", "gzip").headers().firstValue("Content-Encoding").get());
    for (String refused : List.of("br", "gzip;q=0", "gzip; q=0.00, br", "identity")) {
      HttpResponse<byte[]> plain = get("C/TOKEN/", refused);
      assertTrue(plain.headers().firstValue("Content-Encoding").isEmpty(), refused);
      assertEquals("Accept-Encoding", plain.headers().firstValue("Vary").orElse(""));
      assertEquals("page", new String(plain.body(), StandardCharsets.UTF_8));
    }
    assertTrue(get("icon.png", "gzip").headers().firstValue("Content-Encoding").isEmpty());
    assertTrue(raw("GET / HTTP/1.1").endsWith("home"), "who asks for nothing gets it plain");
  }

  private HttpResponse<byte[]> get(String path, String accepted) throws Exception {
    HttpRequest request =
        HttpRequest.newBuilder(view.address().resolve(path))
            .header("Accept-Encoding", accepted)
            .build();
    return client.send(request, HttpResponse.BodyHandlers.ofByteArray());
  }

  @Test
  void neverLeavesTheSiteFolder() throws Exception {
    for (String path : new String[] {"/../office/secret.txt", "/%2e%2e/office/secret.txt"}) {
      assertTrue(raw("GET " + path + " HTTP/1.1").startsWith("HTTP/1.1 404"), path);
    }
    Files.createSymbolicLink(out.resolve("site/link.txt"), out.resolve("office/secret.txt"));
    assertEquals(404, get("link.txt").statusCode());
  }

  @Test
  void answersOnlyReadingMethods() throws Exception {
    HttpRequest post =
        HttpRequest.newBuilder(view.address())
            .POST(HttpRequest.BodyPublishers.ofString("x"))
            .build();
    assertEquals(405, client.send(post, HttpResponse.BodyHandlers.ofString()).statusCode());
    HttpRequest head =
        HttpRequest.newBuilder(view.address())
            .method("HEAD", HttpRequest.BodyPublishers.noBody())
            .build();
    HttpResponse<String> answer = client.send(head, HttpResponse.BodyHandlers.ofString());
    assertEquals(200, answer.statusCode());
    assertEquals("4", answer.headers().firstValue("Content-Length").orElse(""));
  }

  @Test
  void saysWhatIsWrongWhenItCannotStart() {
    IOException empty =
        assertThrows(IOException.class, () -> ViewServer.start(out.resolve("office"), 0));
    assertTrue(empty.getMessage().contains("press it first"));
    int port = view.address().getPort();
    IOException taken = assertThrows(IOException.class, () -> ViewServer.start(out, port));
    assertTrue(taken.getMessage().contains("--port"));
  }

  /** As of a site whose name was let lead to this machine after its page was loaded. */
  @Test
  void answersOnlyWhoAsksForThisMachineByItsName() throws Exception {
    int port = view.address().getPort();
    for (String host : List.of("localhost:", "LOCALHOST:", "127.0.0.1:", "[::1]:")) {
      assertTrue(rawTo("GET / HTTP/1.1", "Host: " + host + port).endsWith("home"), host);
    }
    String twice = "Host: localhost:" + port + "\r\nHost: evil.example";
    for (String host :
        List.of(
            "Host: evil.example:" + port,
            "Host: localhost",
            "Host: localhost:1",
            "Host: localhost.evil.example:" + port,
            "Host: ",
            "X-None: ",
            twice)) {
      String answer = rawTo("GET / HTTP/1.1", host);
      assertTrue(answer.startsWith("HTTP/1.1 421"), host + " got " + answer);
      assertFalse(answer.contains("home"), host);
    }
  }

  @Test
  void requestsThatNeverBecomeWholeStopNoOthersAndEnd() throws Exception {
    List<Socket> half = new ArrayList<>();
    try {
      for (int i = 0; i < 40; i++) {
        Socket socket = new Socket(view.address().getHost(), view.address().getPort());
        half.add(socket);
        socket.getOutputStream().write("GET / HTTP/1.1\r\nHo".getBytes(StandardCharsets.US_ASCII));
      }
      HttpRequest whole =
          HttpRequest.newBuilder(view.address()).timeout(Duration.ofSeconds(8)).build();
      assertEquals("home", client.send(whole, HttpResponse.BodyHandlers.ofString()).body());
      half.get(0).setSoTimeout(30_000);
      assertEquals(-1, half.get(0).getInputStream().read(), "it was given up");
    } finally {
      for (Socket socket : half) {
        socket.close();
      }
    }
  }

  private HttpResponse<String> get(String path) throws Exception {
    URI uri = view.address().resolve(path);
    return client.send(HttpRequest.newBuilder(uri).build(), HttpResponse.BodyHandlers.ofString());
  }

  private String type(String path) throws Exception {
    return get(path).headers().firstValue("Content-Type").orElse("");
  }

  private String raw(String request) throws IOException {
    return rawTo(request, "Host: " + view.address().getAuthority());
  }

  private String rawTo(String request, String host) throws IOException {
    try (Socket socket = new Socket(view.address().getHost(), view.address().getPort())) {
      socket
          .getOutputStream()
          .write(
              (request + "\r\n" + host + "\r\nConnection: close\r\n\r\n")
                  .getBytes(StandardCharsets.US_ASCII));
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
