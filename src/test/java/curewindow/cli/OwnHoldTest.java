package curewindow.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.page.JobView;
import curewindow.shop.Handout;
import curewindow.site.LoadedShop;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A hold and a spot of a shop's own, with words and without, behave like any other. */
class OwnHoldTest {

  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T17:00:00Z"), ZoneOffset.UTC);

  private static final String JOB =
      """
      id: F-%s
      language: %<s
      car: {body: suv, paint: mid, text: the tall one}
      parking: outside
      pickup: 2026-11-25T17:00
      items:
        - {service: paint-coating, film: tidewater-paint, spots: [whole-body, hatch-glass], finished: 2026-11-25T15:00}
      """;

  private static final String WORDS =
      """
      hold:
        foam:
          label: "Snow foam"
          until: "No snow foam until {when}."
          done: "You can use snow foam."
          gently: "Only about {share} set: foam gently until about {full}."
          short: "No foam"
      spot:
        hatch-glass: "hatch window"
      """;

  @TempDir Path temp;

  private Path shop;

  @BeforeEach
  void layOut() throws IOException {
    shop = temp.resolve("shop");
    assertEquals(Exit.OK, Typed.run("new-shop", shop).code());
    edit(
        "content/catalogue/holds.yaml",
        "\nrules:\n",
        """

        rules:
          - {service: paint-coating, hold: foam, need: {crosslink: 1}, floor: 1, limit: 1}
        """);
    edit(
        "content/catalogue/holds.yaml",
        "holds:\n",
        "holds:\n  foam: {kind: hold, rank: 10, brings: [water], after: [rinse]}\n");
    edit("content/catalogue/spots.yaml", "spots:\n", "spots:\n  hatch-glass: {faces: side}\n");
    edit(
        "content/catalogue/services.yaml",
        "taillight, whole-body]\n    guide: coating",
        "taillight, whole-body, hatch-glass]\n    guide: coating");
    for (String language : new String[] {"en", "es", "ar"}) {
      Files.writeString(shop.resolve("jobs/F-" + language + ".yaml"), JOB.formatted(language));
    }
  }

  private void edit(String file, String from, String to) throws IOException {
    String text = Files.readString(shop.resolve(file));
    assertTrue(text.contains(from), file);
    Files.writeString(shop.resolve(file), text.replace(from, to));
  }

  @Test
  void withoutWordsItIsAProblemWithFileAndLineAndNoKeyIsShown() throws Exception {
    Typed check = Typed.run(CLOCK, "check", "--shop", shop);
    assertEquals(Exit.PROBLEMS, check.code(), check::said);
    assertTrue(
        check.said().matches("(?s).*content/catalogue/holds\\.yaml:[0-9]+:3  the hold foam.*"),
        check::said);
    assertTrue(check.said().contains("the hold foam has no words to be shown in"), check::said);
    assertTrue(check.said().contains("add hold.foam.label, hold.foam.until"), check::said);
    assertTrue(check.said().contains("the spot hatch-glass has no words"), check::said);
    noKeyIsShown();
  }

  @Test
  void englishWordsAreEnough() throws IOException {
    Files.writeString(shop.resolve("content/words/en/own.yaml"), WORDS);
    Typed check = Typed.run(CLOCK, "check", "--shop", shop);
    assertEquals(Exit.OK, check.code(), check::said);
  }

  /** It needs an hour, but nothing wet comes near a coating that has to stay dry. */
  @Test
  void itWaitsForTheCoatingAndTheRinse() throws IOException {
    Files.writeString(shop.resolve("content/words/en/own.yaml"), WORDS);
    LoadedShop loaded = LoadedShop.load(shop, CLOCK);
    JobView view = loaded.view(loaded.job("F-en").orElseThrow(), "7K3MPQ9W2XHTR4VB");
    Instant foam = view.timeline().of("foam").orElseThrow().end().at();
    assertEquals(view.timeline().of("rinse").orElseThrow().end().at(), foam);
    assertFalse(foam.isBefore(view.timeline().of("keep-dry").orElseThrow().end().at()));
    Instant wax = view.timeline().of("topper").orElseThrow().end().at();
    assertFalse(wax.isBefore(view.timeline().of("hand-wash").orElseThrow().end().at()));
  }

  @Test
  void aFactThatNoHoldForbidsIsNoticed() throws IOException {
    edit(
        "content/catalogue/holds.yaml", "brings: [water], after: [rinse]}\n", "brings: [watre]}\n");
    Typed check = Typed.run(CLOCK, "check", "--notes", "--shop", shop);
    assertTrue(check.said().contains("brings watre, which no hold forbids"), check::said);
    assertTrue(check.said().contains("did you mean water?"), check::said);
  }

  private void noKeyIsShown() throws Exception {
    Path out = temp.resolve("out");
    Typed press = Typed.run(CLOCK, "press", "--shop", shop, "--out", out);
    for (Map.Entry<String, byte[]> file : Typed.contents(out).entrySet()) {
      if (file.getKey().matches(".*\\.(html|ics|webmanifest|csv)")) {
        clean(file.getKey(), new String(file.getValue(), StandardCharsets.UTF_8), press);
      }
    }
    for (Handout handout : Handout.values()) {
      Path pdf = temp.resolve(handout.id() + ".pdf");
      Typed card =
          Typed.run(
              CLOCK,
              "card",
              "F-en",
              "F-es",
              "F-ar",
              "--as",
              handout.id(),
              "--shop",
              shop,
              "--out",
              pdf);
      if (Files.exists(pdf)) {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
          clean(handout.id(), new PDFTextStripper().getText(document), card);
        }
      }
    }
  }

  private static void clean(String where, String text, Typed typed) {
    assertFalse(text.matches("(?s).*\\[(hold|spot|service|page|office|handout)\\..*"), where);
    assertFalse(typed.said().contains("[hold."), typed::said);
  }
}
