package curewindow.desk;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.send.SftpHost;
import curewindow.site.ViewServer;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyPair;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Hand over, where the site goes to a real SFTP server and is asked for over HTTP. */
class DeskSendTest {

  private static final String HERE = "https://care.quillhaven.example/";

  @TempDir Path folder;
  private SftpHost host;
  private ViewServer web;
  private Path key;
  private DeskClient desk;

  @BeforeEach
  void open() throws Exception {
    Files.createDirectories(site());
    KeyPair user = SftpHost.key();
    key = SftpHost.keyFile(user, folder.resolve("key"), "rw-------");
    host = new SftpHost(folder.resolve("host"), SftpHost.key(), List.of(user.getPublic()));
    web = ViewServer.start(folder.resolve("host"), 0);
    desk = DeskClient.open(folder);
  }

  @AfterEach
  void close() throws IOException {
    desk.close();
    web.close();
    host.close();
  }

  private Path site() {
    return folder.resolve("host/site");
  }

  /** The desk on a shop whose site goes to the host. */
  private void sendTo(String where, String hostKey) throws IOException {
    desk.close();
    Path file = desk.shop.resolve("shop.yaml");
    String send =
        "send:\n  to: sftp://%s@127.0.0.1:%d/%s\n%s  key-file: %s\n"
            .formatted(
                SftpHost.USER,
                host.port(),
                where,
                hostKey.isEmpty() ? "" : "  host-key: " + hostKey + "\n",
                key);
    String plain = Files.readString(file).replaceFirst("(?s)send:.*", "");
    Files.writeString(file, plain.replace(HERE, web.address().toString()) + send);
    desk = DeskClient.open(folder, DeskClient.NOW);
    assertEquals(List.of(), desk.loaded().errors());
  }

  private String press(String language) {
    String cookie = "language=" + language;
    String to =
        desk.send(DeskClient.sent(desk.at("/job/Q-3101/press"), "x=1").header("Cookie", cookie))
            .headers()
            .firstValue("Location")
            .orElseThrow();
    return desk.send(HttpRequest.newBuilder(desk.at(to)).header("Cookie", cookie)).body();
  }

  private long there() throws IOException {
    try (Stream<Path> files = Files.walk(site())) {
      return files.filter(Files::isRegularFile).count();
    }
  }

  @Test
  void thePageIsSentAndAnswersAtItsAddress() throws IOException {
    sendTo("site", host.fingerprint());
    String made = press("en");
    assertTrue(made.contains("It is sent."), made);
    assertTrue(made.contains("The address answers with this page."), made);
    assertFalse(made.contains("class=\"warn\">The address"), made);
    String page = desk.loaded().madePage(desk.out, "Q-3101").orElseThrow() + "index.html";
    assertArrayEquals(
        Files.readAllBytes(desk.out.resolve("site").resolve(page)),
        Files.readAllBytes(site().resolve(page)));
    assertFalse(Files.exists(folder.resolve("host/office")));
  }

  @Test
  void aHostWithAnotherKeyGetsNothingAndItIsSaidInBothLanguages() throws IOException {
    String other = "SHA256:" + "A".repeat(43);
    sendTo("site", other);
    String english = press("en");
    assertTrue(english.contains("The page is made."), english);
    assertTrue(
        english.contains("Nothing was sent: 127.0.0.1 shows another key than shop.yaml says"),
        english);
    assertTrue(english.contains(host.fingerprint()), english);
    assertTrue(
        english.contains("does not answer with this page yet: it says HTTP status 404."), english);
    assertFalse(english.contains("It is sent."), english);
    String spanish = press("es");
    assertTrue(
        spanish.contains("No se envió nada: 127.0.0.1 muestra otra clave que la de shop.yaml"),
        spanish);
    assertTrue(spanish.contains(host.fingerprint()), spanish);
    assertTrue(spanish.contains("dice estado HTTP 404."), spanish);
    assertFalse(spanish.contains("Nothing was sent"), spanish);
    assertEquals(0, there());
    sendTo("site", host.fingerprint());
    assertTrue(press("es").contains("La dirección responde con esta página."), "once it is right");
  }

  @Test
  void whatElseStandsInTheWayIsSaidTooAndNoSecret() throws IOException {
    sendTo("site", "");
    assertTrue(press("en").contains("does not say by which key 127.0.0.1 is known"));
    sendTo("sites", host.fingerprint());
    assertTrue(press("es").contains("127.0.0.1 no tiene la carpeta /sites."));
    SftpHost.keyFile(keyOfNobody(), key, "rw-------");
    sendTo("site", host.fingerprint());
    String shut = press("en");
    assertTrue(shut.contains("127.0.0.1 does not let quillhaven in."), shut);
    assertFalse(shut.contains("BEGIN"), shut);
    host.close();
    web.close();
    String silent = press("es");
    assertTrue(silent.contains("no se puede llegar a 127.0.0.1."), silent);
    assertTrue(silent.contains("aún no responde con esta página: no hay respuesta."), silent);
    assertEquals(0, there());
  }

  private static KeyPair keyOfNobody() {
    try {
      return SftpHost.key();
    } catch (java.security.GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }
}
