package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A change of shop.yaml leaves alone what it does not concern. */
class ShopTextTest {

  @ParameterizedTest
  @ValueSource(strings = {"content/demo/shop.yaml", "content/starter-shop/shop.yaml"})
  void aFileIsTheSameWrittenFromItsDraft(Path file) throws Exception {
    String text = Files.readString(file);
    assertEquals(Optional.of(text), ShopText.changed(text, ShopText.read(text).orElseThrow()));
  }

  private static ShopDraft draft(List<String> street, Map<String, String> opening) {
    return new ShopDraft(
        "1001",
        "+1 206 555 0142",
        "",
        "",
        street,
        "https://q.example/",
        "",
        "en",
        "",
        opening,
        List.of("2026-12-25"),
        "",
        "",
        ShopDraft.BayDraft.NONE,
        ShopDraft.SendDraft.NONE);
  }

  private static final String TEXT =
      """
      name: "1001"  # after the harbor light
      phone: "+1 206 555 0142"
      street:
        # from the north
        - 18 Tern Yard  # the red door
        - Quillhaven
      address: https://q.example/
      language: en
      opening: {mon: 8:30-17:30} # more in spring
      closed: [2026-12-25]  # and no other
      """;

  @Test
  void linesOfTheStreetComeAndGoOneByOne() {
    Map<String, String> mon = Map.of("mon", "8:30-17:30");
    assertEquals(
        Optional.of(TEXT.replace("- Quillhaven", "- \"2nd floor\"\n  - \"98000\"")),
        ShopText.changed(TEXT, draft(List.of("18 Tern Yard", "2nd floor", "98000"), mon)));
    assertEquals(
        Optional.of(TEXT.replace("  - Quillhaven\n", "")),
        ShopText.changed(TEXT, draft(List.of("18 Tern Yard"), mon)));
  }

  @Test
  void hoursInBracketsKeepWhatStandsBehindThem() {
    List<String> street = List.of("18 Tern Yard", "Quillhaven");
    assertEquals(
        Optional.of(
            TEXT.replace(
                "{mon: 8:30-17:30}", "{mon: \"8:30-12:30, 13:30-17:30\", sat: \"9:00-13:00\"}")),
        ShopText.changed(
            TEXT, draft(street, Map.of("mon", "8:30-12:30, 13:30-17:30", "sat", "9:00-13:00"))));
  }
}
