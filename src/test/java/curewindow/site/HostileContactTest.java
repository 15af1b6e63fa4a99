package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.ObjectMapper;

/**
 * Texts that try to become code, in the fields of shop.yaml that take no free text. {@link
 * HostilePressTest} presses what gets through.
 */
class HostileContactTest {

  /** The key, and what is written there in place of the demo's good value. */
  private static final List<List<String>> REFUSED =
      List.of(
          List.of("phone", "+1 206 <script>top.fired=1</script>"),
          List.of("phone", "javascript:top.fired=1//"),
          List.of("phone", "555;ext=1?body=x&y"),
          List.of("phone", "(--/.. ..)"),
          List.of("text-number", "+1\" onclick=top.fired=1"),
          List.of("text-number", "555?body=x"),
          List.of("text-number", "---"),
          List.of("email", "a@b.example\nbcc:c@d.example"),
          List.of("email", "a@b.example,c@d.example"),
          List.of("email", "a b@c.example onfocus=top.fired=1"),
          List.of("email", "\u202Ea@b.example"),
          List.of("email", "javascript:top.fired=1"),
          List.of("address", "javascript:top.fired=1//"),
          List.of("address", "data:text/html,<script>top.fired=1</script>"),
          List.of("address", "https://a.example/\"><script>top.fired=1</script>"),
          List.of("address", "https://a.example@evil.example/"),
          List.of("address", "https://a.example/?q=<b>"),
          List.of("address", "//evil.example/"),
          List.of("mon", "08:30-17:30<script>top.fired=1</script>"),
          List.of("mon", "\"><img src=x onerror=top.fired=1>"),
          List.of("mon", "08:30-17:30\nEND:VCARD"),
          List.of("mon", "25:99-26:00"));

  private static final ObjectMapper QUOTING = new ObjectMapper();

  @TempDir Path temp;

  @Test
  void whatIsNoNumberAddressOrHourIsRefused() throws IOException {
    Path shop = Files.createDirectories(temp.resolve("shop"));
    String good = Files.readString(Path.of("content/demo/shop.yaml"));
    Files.writeString(shop.resolve("shop.yaml"), good);
    Files.copy(Path.of("content/demo/logo.svg"), shop.resolve("logo.svg"));
    assertFalse(LoadedShop.load(shop, PressedDemo.CLOCK).hasErrors());
    for (List<String> refused : REFUSED) {
      String key = refused.get(0);
      String line = key + ": " + QUOTING.writeValueAsString(refused.get(1));
      String bad = HostilePressTest.setting(good, key, line);
      Files.writeString(shop.resolve("shop.yaml"), bad);
      LoadedShop loaded = LoadedShop.load(shop, PressedDemo.CLOCK);
      assertTrue(loaded.hasErrors(), line);
      assertEquals("shop.yaml", loaded.problems().get(0).file(), line);
      long at = bad.substring(0, bad.indexOf(line)).lines().count();
      assertTrue(Math.abs(loaded.problems().get(0).line() - at) <= 1, line);
    }
  }
}
