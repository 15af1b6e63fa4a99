package curewindow.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Of what a shop adds to the catalogue nothing is told that is true of the program's own alone. */
class OwnWordsTest {

  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T17:00:00Z"), ZoneOffset.UTC);

  private static final String JOB =
      """
      id: %s
      car: {body: suv, paint: mid}
      parking: outside
      pickup: 2026-11-25T17:00
      items:
        - {service: tint, film: harbor-35, spots: [front-door-glass], finished: 2026-11-25T15:00}
      """;

  private static final String WORDS =
      """
      hold:
        no-tape:
          label: "No tape"
          until: "No tape until {when}."
          done: "You can use tape."
          gently: "Go easy with tape until about {full}."
          short: "No tape here"
          event: "Tape is fine"
      """;

  @TempDir Path temp;

  private Path shop;

  @BeforeEach
  void layOut() throws IOException {
    shop = temp.resolve("shop");
    assertEquals(Exit.OK, Typed.run("new-shop", shop).code());
    for (String file : List.of("content/catalogue/holds.yaml", "content/catalogue/services.yaml")) {
      assertEquals(Exit.OK, Typed.run("edit", file, "--shop", shop).code());
    }
    Files.createDirectories(shop.resolve("content/words/en"));
    Files.delete(shop.resolve("jobs/1001.yaml"));
    Files.delete(shop.resolve("jobs/1002.yaml"));
    Files.writeString(shop.resolve("jobs/T-1.yaml"), JOB.formatted("T-1"));
    Files.writeString(shop.resolve("content/words/en/own.yaml"), WORDS);
  }

  private void edit(String file, String from, String to) throws IOException {
    String text = Files.readString(shop.resolve(file));
    assertTrue(text.contains(from), file);
    Files.writeString(shop.resolve(file), text.replace(from, to));
  }

  private void hold(String keys) throws IOException {
    String file = "content/catalogue/holds.yaml";
    edit(file, "\nholds:\n", "\nholds:\n  no-tape: {kind: hold, rank: 1, %s}\n".formatted(keys));
    edit(
        file,
        "\nrules:\n",
        "\nrules:\n  - {service: tint, hold: no-tape, need: {bond: 90}, floor: 90, limit: 90}\n");
  }

  private String stickers() throws IOException {
    Path file = temp.resolve("s.pdf");
    Typed card =
        Typed.run(CLOCK, "card", "T-1", "--as", "window-up", "--shop", shop, "--out", file);
    assertEquals(Exit.OK, card.code(), card::said);
    try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
      return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
    }
  }

  @Test
  void aStickerSaysWhatItsHoldIsAbout() throws IOException {
    hold("sticker: true");
    edit("content/catalogue/holds.yaml", "main: true, sticker: true}", "main: true}");
    String printed = stickers();
    assertTrue(printed.contains("No tape here until"), printed);
    assertFalse(printed.contains("Leave this window up"), printed);
    Files.writeString(
        shop.resolve("content/words/en/own.yaml"),
        WORDS + "    sticker: \"Keep tape off until\"\n");
    assertTrue(stickers().contains("Keep tape off until"), printed);
  }

  @Test
  void theOrderOfACoatingAndAFilmIsToldOfThoseAlone() throws IOException {
    hold("forbids: [sun]");
    Path out = temp.resolve("out");
    Typed press = Typed.run(CLOCK, "press", "--shop", shop, "--out", out);
    assertEquals(Exit.OK, press.code(), press::said);
    String pages =
        String.join(
            " ",
            Typed.contents(out).entrySet().stream()
                .filter(e -> e.getKey().endsWith("index.html"))
                .map(e -> new String(e.getValue(), StandardCharsets.UTF_8))
                .toList());
    assertTrue(pages.contains("No tape"), "the hold is on the page");
    assertFalse(pages.contains("keep it out of strong sun too"), "nothing of it is a coating");
  }

  /** As many as press makes. */
  @Test
  void checkCountsNoJobWhoseGuideIsMissing() throws IOException {
    edit("content/catalogue/services.yaml", "guide: tint", "guide: no-tint");
    Typed check = Typed.run(CLOCK, "check", "--shop", shop);
    assertEquals(Exit.PROBLEMS, check.code());
    assertTrue(check.said().contains("the care guide no-tint cannot be used in en"), check::said);
    assertTrue(check.said().contains("1 problem; 0 good jobs;"), check::said);
  }

  @Test
  void aJobWhoseFileCannotBeReadHasAProblemAndIsNotUnknown() throws IOException {
    byte[] latin = JOB.formatted("latin\n# caf\u00E9").getBytes(StandardCharsets.ISO_8859_1);
    Files.write(shop.resolve("jobs/latin.yaml"), latin);
    Files.writeString(shop.resolve("jobs/cabin.yaml"), JOB.formatted("cabin"));
    Typed card = Typed.run(CLOCK, "card", "latin", "--shop", shop, "--out", temp.resolve("c.pdf"));
    assertEquals(Exit.PROBLEMS, card.code());
    assertTrue(card.said().startsWith("Job jobs/latin.yaml has to be mended first:"), card::said);
    assertTrue(card.said().contains("jobs/latin.yaml:2:"), card::said);
    assertFalse(card.said().contains("did you mean"), card::said);
  }
}
