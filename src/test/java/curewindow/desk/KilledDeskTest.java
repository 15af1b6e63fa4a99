package curewindow.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.site.LoadedShop;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A desk is killed while cars are saved: what it said it saved is there, whole; more desks with
 * {@code -Dkills=200}.
 */
class KilledDeskTest {

  private static final int KILLS = Math.max(2, Integer.getInteger("kills", 2) / 10);

  @TempDir Path folder;
  private final HttpClient client = HttpClient.newHttpClient();

  /** A desk of its own, for this test to kill. */
  public static void main(String[] args) throws Exception {
    Desk desk =
        Desk.open(
            new Desk.Setting(
                Path.of(args[0]), Path.of(args[1]), 0, Optional.empty(), Clock.systemUTC()));
    System.out.println(desk.address());
    System.in.read();
  }

  @Test
  void whatWasSavedIsThere() throws Exception {
    try (DeskClient laidOut = DeskClient.open(folder)) {
      assertTrue(Files.exists(laidOut.shop.resolve("shop.yaml")));
    }
    Path shop = folder.resolve("shop");
    List<String> saved = new ArrayList<>();
    for (int kill = 0; kill < KILLS; kill++) {
      Process desk = start(shop);
      URI address = URI.create(line(desk));
      save(address, "K-" + kill + "-first", saved);
      Thread killer = killSoon(desk, 40 + 70L * kill);
      for (int i = 0; desk.isAlive(); i++) {
        save(address, "K-" + kill + "-" + i, saved);
      }
      killer.join();
      LoadedShop loaded = LoadedShop.load(shop, DeskClient.clock(DeskClient.NOW));
      assertEquals(List.of(), loaded.errors());
      for (String id : saved) {
        assertTrue(loaded.job(id).isPresent(), id + " was saved and is gone");
      }
    }
    assertTrue(saved.size() > KILLS, "desks were killed before they saved anything");
  }

  private Process start(Path shop) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("java.class.path"),
            KilledDeskTest.class.getName(),
            shop.toString(),
            folder.resolve("out").toString())
        .redirectErrorStream(true)
        .start();
  }

  private static String line(Process desk) throws IOException {
    return new BufferedReader(new InputStreamReader(desk.getInputStream())).readLine();
  }

  private static Thread killSoon(Process desk, long millis) {
    Thread killer =
        new Thread(
            () -> {
              try {
                desk.waitFor(millis, TimeUnit.MILLISECONDS);
                desk.destroyForcibly().waitFor();
              } catch (InterruptedException e) {
                desk.destroyForcibly();
              }
            });
    killer.start();
    return killer;
  }

  private void save(URI address, String id, List<String> saved) throws InterruptedException {
    HttpRequest request =
        DeskClient.sent(
                address.resolve("/new"), DeskClient.form(List.of(DeskClient.car(id, "harbor-35"))))
            .build();
    try {
      if (client.send(request, HttpResponse.BodyHandlers.discarding()).statusCode() == 303) {
        saved.add(id);
      }
    } catch (IOException e) {
      // The desk was killed in the middle of it, and said nothing of having saved it.
    }
  }
}
