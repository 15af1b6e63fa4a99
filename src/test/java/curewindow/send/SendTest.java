package curewindow.send;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.net.httpserver.HttpServer;
import curewindow.shop.SendTo;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyPair;
import java.security.PublicKey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A site on its way to a folder and to a real SFTP server. */
class SendTest {

  private static final Send.Allowed USUAL = new Send.Allowed(false, false);
  private static final Login NONE = new Login(Optional.empty(), Optional.empty());
  private static final Login LOGIN = new Login(Optional.of(SftpHost.PASSWORD), Optional.empty());

  @TempDir Path temp;
  private Path out;
  private Path there;

  @BeforeEach
  void makeASite() throws IOException {
    out = temp.resolve("out");
    there = Files.createDirectories(temp.resolve("there/site"));
    Files.createDirectories(out.resolve("office"));
    Files.writeString(out.resolve("office/files.txt"), "");
    for (int i = 0; i < 20; i++) {
      file("C/T%02d/index.html".formatted(i), "page " + i);
      file("C/T%02d/care.ics".formatted(i), "calendar " + i);
    }
    file("page.js", "script");
    file("en/tint.html", "guide");
    file("index.html", "home");
    file("en/index.html", "home");
  }

  private void file(String path, String text) throws IOException {
    Path file = out.resolve("site").resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private Send toFolder() {
    return new Send(new SendTo(there.toUri(), Optional.empty(), Optional.empty()), out, line -> {});
  }

  private static TreeMap<String, String> files(Path root) throws IOException {
    TreeMap<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(root)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(root.relativize(file).toString(), Files.readString(file));
      }
    }
    return files;
  }

  private void assertIsThere() throws IOException {
    assertEquals(files(out.resolve("site")), files(there));
  }

  @Test
  void allIsSentOnceThenOnlyWhatHasChanged() throws IOException {
    assertEquals(List.of("Sent 44 files."), toFolder().run(NONE, USUAL).done());
    assertIsThere();
    assertEquals(
        List.of("Nothing to send: all 44 files are there."), toFolder().run(NONE, USUAL).done());
    file("C/T03/index.html", "page 3 has moved");
    Files.delete(out.resolve("site/C/T04/index.html"));
    Files.delete(out.resolve("site/C/T04/care.ics"));
    assertEquals(
        List.of("put     C/T03/index.html", "remove  C/T04/care.ics", "remove  C/T04/index.html"),
        toFolder().plan(USUAL).done());
    assertFalse(Files.readString(there.resolve("C/T03/index.html")).contains("moved"));
    assertEquals(List.of("Sent 1 file, took away 2 files."), toFolder().run(NONE, USUAL).done());
    assertIsThere();
    assertFalse(Files.exists(there.resolve("C/T04")), "its folder, too");
  }

  @Test
  void pagesComeBeforeWhatLinksToThemAndAfterWhatTheyNeed() throws IOException {
    List<String> plan = toFolder().plan(USUAL).done();
    List<String> order =
        plan.stream()
            .map(line -> line.substring(8))
            .filter(path -> !path.matches("C/T(0[1-9]|1.)/.*"))
            .toList();
    assertEquals(
        List.of(
            "C/T00/care.ics",
            "page.js",
            "C/T00/index.html",
            "en/tint.html",
            "en/index.html",
            "index.html"),
        order);
  }

  @Test
  void anotherPlaceGetsAllOfItAndALostListToo() throws IOException {
    toFolder().run(NONE, USUAL);
    there = Files.createDirectories(temp.resolve("elsewhere"));
    assertEquals(List.of("Sent 44 files."), toFolder().run(NONE, USUAL).done());
    assertIsThere();
    Files.delete(out.resolve(SentFiles.FILE));
    assertEquals(List.of("Sent 44 files."), toFolder().run(NONE, USUAL).done());
    Send.Report again = toFolder().run(NONE, new Send.Allowed(true, false));
    assertEquals(List.of("Sent 44 files."), again.done(), "asked for");
  }

  @Test
  void aPlanForAnotherPlaceForgetsNothingOfThisOne() throws IOException {
    toFolder().run(NONE, USUAL);
    Path here = there;
    there = Files.createDirectories(temp.resolve("elsewhere"));
    assertEquals(44, toFolder().plan(USUAL).done().size());
    there = here;
    assertEquals(
        List.of("Nothing to send: all 44 files are there."), toFolder().run(NONE, USUAL).done());
  }

  @Test
  void manyPagesThatAreGoneAreNotTakenAwayUnasked() throws IOException {
    toFolder().run(NONE, USUAL);
    for (int i = 0; i < 4; i++) {
      Files.delete(out.resolve("site/C/T%02d/index.html".formatted(i)));
    }
    Send.Report refused = toFolder().run(NONE, USUAL);
    assertEquals(List.of(), refused.done());
    assertTrue(refused.wrong().get(0).startsWith("4 of 20 customers' pages"), refused.toString());
    assertTrue(Files.exists(there.resolve("C/T00/index.html")));
    toFolder().run(NONE, new Send.Allowed(false, true));
    assertIsThere();
  }

  @Test
  void withoutASiteNothingIsSentOrTakenAway() throws IOException {
    toFolder().run(NONE, USUAL);
    Files.delete(out.resolve("site/index.html"));
    Send.Report refused = toFolder().run(NONE, USUAL);
    assertTrue(refused.wrong().get(0).startsWith("There is no site in"), refused.toString());
    assertEquals(refused.wrong(), toFolder().plan(USUAL).wrong());
    assertTrue(Files.exists(there.resolve("index.html")));
  }

  /** Serves the other place as a host does. */
  private HttpServer served() throws IOException {
    HttpServer server = HttpServer.create(new InetSocketAddress("127.0.0.1", 0), 0);
    server.createContext(
        "/",
        ask -> {
          Path file = there.resolve(ask.getRequestURI().getPath().substring(1) + "index.html");
          byte[] bytes = Files.exists(file) ? Files.readAllBytes(file) : new byte[] {'x'};
          ask.sendResponseHeaders(Files.exists(file) ? 200 : 404, bytes.length);
          ask.getResponseBody().write(bytes);
          ask.close();
        });
    server.start();
    return server;
  }

  private void listPages(int port) throws IOException {
    List<String> rows = new ArrayList<>(List.of("job,first-name,folder,address"));
    for (int i = 0; i < 20; i++) {
      rows.add("Q-%d,Mara,C/T%02d/,http://127.0.0.1:%d/C/T%02d/".formatted(i, i, port, i));
    }
    Files.write(out.resolve("office/pages.csv"), rows);
  }

  @Test
  void afterwardsPagesAreAskedForThoseJustSentFirst() throws IOException {
    HttpServer host = served();
    try {
      listPages(host.getAddress().getPort());
      assertEquals(
          List.of("Sent 44 files.", "Asked for 10 of the pages on cards: all answer as sent."),
          toFolder().run(NONE, USUAL).done());
      file("C/T19/index.html", "new");
      Files.delete(there.resolve("C/T01/index.html"));
      Files.writeString(there.resolve("C/T02/index.html"), "an older copy");
      Send.Report report = toFolder().run(NONE, USUAL);
      assertEquals(List.of("Sent 1 file."), report.done());
      String address = "http://127.0.0.1:" + host.getAddress().getPort();
      assertEquals(
          List.of(
              "Q-1: " + address + "/C/T01/ gives HTTP status 404",
              "Q-2: "
                  + address
                  + "/C/T02/ gives another page than was sent, perhaps an older copy"),
          report.wrong());
    } finally {
      host.stop(0);
    }
    List<String> wrong = toFolder().run(NONE, USUAL).wrong();
    assertEquals(1, wrong.size(), "said once");
    assertTrue(
        wrong.get(0).startsWith("None of the 10 pages that were asked for is there"), wrong.get(0));
    assertTrue(wrong.get(0).contains("gives no answer ("), wrong.get(0));
  }

  @Test
  void aFolderThatIsNotThereIsNamed() {
    there = temp.resolve("nowhere");
    IOException e = assertThrows(IOException.class, () -> toFolder().run(NONE, USUAL));
    assertTrue(e.getMessage().contains("nowhere is not a folder"), e.getMessage());
  }

  private Send toHost(SftpHost host, String folder, String hostKey, Path keyFile) {
    URI to = URI.create("sftp://" + SftpHost.USER + "@127.0.0.1:" + host.port() + "/" + folder);
    Optional<String> known = Optional.of(hostKey).filter(k -> !k.isEmpty());
    return new Send(new SendTo(to, known, Optional.ofNullable(keyFile)), out, line -> {});
  }

  private SftpHost host(KeyPair key, PublicKey... users) throws IOException {
    return new SftpHost(temp.resolve("there"), key, List.of(users));
  }

  @Test
  void aHostGetsTheSameAndWhatWasCutOffGoesOn() throws Exception {
    try (SftpHost host = host(SftpHost.key())) {
      host.cutAfter(25);
      IOException cut =
          assertThrows(
              IOException.class,
              () -> toHost(host, "site", host.fingerprint(), null).run(LOGIN, USUAL));
      assertTrue(cut.getMessage().startsWith("cut off after 25 of 44 files"), cut.getMessage());
      assertTrue(cut.getMessage().endsWith("send again, and it goes on there"), cut.getMessage());
      for (String path : files(there).keySet()) {
        if (!path.contains(".half-")) {
          assertArrayEquals(
              Files.readAllBytes(out.resolve("site").resolve(path)),
              Files.readAllBytes(there.resolve(path)),
              "whole: " + path);
        }
      }
      host.cutAfter(Integer.MAX_VALUE);
      assertEquals(
          List.of("Sent 19 files."),
          toHost(host, "site", host.fingerprint(), null).run(LOGIN, USUAL).done());
      assertIsThere();
      file("C/T07/index.html", "other");
      Files.delete(out.resolve("site/en/tint.html"));
      Files.writeString(there.resolve("en/.half-tint.html"), "a cut left this");
      assertEquals(
          List.of("Sent 1 file, took away 1 file."),
          toHost(host, "site", host.fingerprint(), null).run(LOGIN, USUAL).done());
      assertIsThere();
    }
  }

  @Test
  void onlyTheHostThatTheShopNamesGetsAnything() throws Exception {
    try (SftpHost host = host(SftpHost.key())) {
      for (String known : List.of("", "SHA256:" + "A".repeat(43))) {
        IOException e =
            assertThrows(
                IOException.class, () -> toHost(host, "site", known, null).run(LOGIN, USUAL));
        assertTrue(e.getMessage().contains(host.fingerprint()), e.getMessage());
        assertEquals(known.isEmpty(), e.getMessage().contains("add it under send"), e.getMessage());
      }
      assertEquals(0, files(there).size());
    }
  }

  @Test
  void whoIsNotLetInIsToldWhatToDo() throws Exception {
    try (SftpHost host = host(SftpHost.key())) {
      IOException e =
          assertThrows(
              IOException.class,
              () -> toHost(host, "site", host.fingerprint(), null).run(NONE, USUAL));
      assertTrue(e.getMessage().contains(Login.PASSWORD), e.getMessage());
      assertFalse(e.getMessage().contains(SftpHost.PASSWORD), e.getMessage());
      e =
          assertThrows(
              IOException.class,
              () -> toHost(host, "sites", host.fingerprint(), null).run(LOGIN, USUAL));
      assertTrue(e.getMessage().contains("has no folder /sites"), e.getMessage());
      int port = host.port();
      host.stop();
      e =
          assertThrows(
              IOException.class,
              () -> toHost(host, "site", host.fingerprint(), null).run(LOGIN, USUAL));
      assertTrue(e.getMessage().startsWith("127.0.0.1 cannot be reached"), port + e.getMessage());
    }
  }

  @Test
  void aKeyFileThatOnlyItsOwnerCanReadOpensTheDoor() throws Exception {
    KeyPair user = SftpHost.key();
    try (SftpHost host = host(SftpHost.key(), user.getPublic())) {
      Path open = SftpHost.keyFile(user, temp.resolve("key"), "rw-r-----");
      IOException e =
          assertThrows(
              IOException.class,
              () -> toHost(host, "site", host.fingerprint(), open).run(NONE, USUAL));
      assertTrue(e.getMessage().contains("can be read by others"), e.getMessage());
      Path closed = SftpHost.keyFile(user, temp.resolve("key"), "rw-------");
      assertEquals(
          List.of("Sent 44 files."),
          toHost(host, "site", host.fingerprint(), closed).run(NONE, USUAL).done());
      assertIsThere();
      Files.writeString(closed, "no key");
      IOException bad =
          assertThrows(
              IOException.class,
              () ->
                  toHost(host, "site", host.fingerprint(), closed)
                      .run(NONE, new Send.Allowed(true, false)));
      assertTrue(bad.getMessage().contains("cannot be used as a key"), bad.getMessage());
    }
  }
}
