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
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A shop in London: what its customers and its counter read is as Britain says it. */
class BritishShopTest {

  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-12-01T09:00:00Z"), ZoneOffset.UTC);

  private static final String SHOP =
      """
      name: Larch Row Film
      phone: "020 7946 0123"
      street: [4 Larch Row, London]
      address: https://care.larch-row.example/
      zone: Europe/London
      language: en
      locale: en-GB
      place: london
      opening: {mon: 8:30-17:30, tue: 8:30-17:30, wed: 8:30-12:00, sat: 9:00-13:00}
      """;

  private static final String JOB =
      """
      id: L-1
      first-name: Ada
      car: {body: sedan, paint: dark}
      parking: outside
      pickup: 2026-12-02T12:00
      items:
        - {service: tint, film: harbor-35, spots: [front-door-glass, back-glass], finished: 2026-12-01T15:00}
        - {service: windshield-film, film: clearway-shield, spots: [windshield], finished: 2026-12-01T15:00}
        - {service: paint-film, film: fieldcoat-gloss, spots: [hood, fender, trunk, rocker], finished: 2026-12-01T15:00}
      """;

  private static final Pattern AMERICAN =
      Pattern.compile(
          "(?i)\\b(windshields?|hood|trunk|fenders?|rocker|sedan|defog\\w*|defroster|gray|\\w*colou?red(?<!oured)|colors?|"
              + "(?<!garden )sprinklers?|toll|valet|slushy|quarter panels?|right away|as of|ride along|kids|"
              + "installed|states?|highways?|feet|inch(es)?|°F|[0-9]\\s(AM|PM)|(Wed|Sat), (Dec|Jan)\\w* [0-9]+)\\b");

  @TempDir Path temp;

  private Path shop;

  private void layOut() throws IOException {
    shop = Files.createDirectories(temp.resolve("shop/jobs")).getParent();
    Files.writeString(shop.resolve("shop.yaml"), SHOP);
    Files.writeString(shop.resolve("jobs/L-1.yaml"), JOB);
  }

  private static String text(byte[] file) {
    return new String(file, StandardCharsets.UTF_8);
  }

  /** What a page says, without its script, its marks and its addresses. */
  private static String said(String html) {
    return html.replaceAll("(?s)<(script|style).*?</\\1>|<[^>]*>", " ")
        .replace("&nbsp;", " ")
        .replace('\u00A0', ' ');
  }

  private static void isBritish(String name, String text) {
    Matcher found = AMERICAN.matcher(text);
    String all = found.results().map(r -> r.group()).distinct().collect(Collectors.joining(", "));
    assertEquals("", all, name);
  }

  @Test
  void pagesCalendarsAndTheCounterSpeakBritish() throws IOException {
    layOut();
    Typed press = Typed.run(CLOCK, "press", "--shop", shop, "--out", temp.resolve("out"));
    assertEquals(Exit.OK, press.code(), press::said);
    StringBuilder all = new StringBuilder();
    Typed.contents(temp.resolve("out"))
        .forEach(
            (name, file) -> {
              if (name.matches("(site/C/.*|site/en/.*|site/index|office/today)[.]html")) {
                String text = said(text(file));
                isBritish(name, text);
                all.append(text);
              }
              if (name.endsWith(".ics")) {
                isBritish(name, text(file).replaceAll("(?m)^(URL|UID|PRODID).*$", ""));
              }
            });
    String text = all.toString();
    for (String part :
        new String[] {
          "windscreen",
          "bonnet",
          "sills",
          "saloon",
          "heated rear window",
          "0.9 metres",
          "fitted",
          "Collections",
          "1 December 2026",
          "08:30 to 17:30",
          "Wed"
        }) {
      assertTrue(text.contains(part), part);
    }
    assertFalse(text.contains("language.swaps"), "the list is no text");
  }

  @Test
  void cardsStickersAndSheetsSpeakBritish() throws IOException {
    layOut();
    for (String as : new String[] {"wallet", "hang-tag", "window-up", "care-a5"}) {
      Path file = temp.resolve(as + ".pdf");
      Typed card = Typed.run(CLOCK, "card", "L-1", "--as", as, "--shop", shop, "--out", file);
      assertEquals(Exit.OK, card.code(), card::said);
      try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
        String text = new PDFTextStripper().getText(pdf).replace('\u00A0', ' ');
        isBritish(as, text);
        assertTrue(text.matches("(?s).*\\b[0-9]{1,2} (DEC|Dec)\\b.*"), text);
        assertTrue(text.matches("(?s).*\\b[0-9]{2}:00\\b.*"), text);
      }
    }
  }

  /** Lines that other programs read stay as they are. */
  @Test
  void whatTheShopReadsOnItsScreenIsBritish() throws IOException {
    layOut();
    String end = "L-1  .* (Mon|Tue|Wed|Thu|Fri|Sat|Sun),? [0-9]+ [A-Z][a-z]+ 202[67]";
    String dates = Typed.run(CLOCK, "dates", "--shop", shop).said();
    isBritish("dates", dates);
    assertTrue(dates.lines().allMatch(l -> l.matches(end + "(, [0-9]{2}:00, .*)?")), dates);
    isBritish("why", Typed.run(CLOCK, "why", "L-1", "--shop", shop).said().split("\n\n")[0]);
    String csv = Typed.run(CLOCK, "dates", "--csv", "--shop", shop).said();
    assertTrue(csv.contains(",2026-12-0") && csv.contains(":00Z,"), csv);
    Files.writeString(shop.resolve("jobs/L-1.yaml"), JOB + "place: yellowknife\n");
    String notes = Typed.run(CLOCK, "check", "--notes", "--shop", shop).said();
    isBritish("check", notes);
    assertTrue(notes.matches("(?s).*ends at its limit, [A-Z][a-z]{2},? [0-9]+ [A-Z].*"), notes);
  }

  @Test
  void aLocaleThatIsNoneIsTold() throws IOException {
    layOut();
    Files.writeString(shop.resolve("shop.yaml"), SHOP.replace("en-GB", "en-UK"));
    Typed check = Typed.run(CLOCK, "check", "--shop", shop);
    assertEquals(Exit.PROBLEMS, check.code());
    assertTrue(check.said().contains("shop.yaml:7:9"), check::said);
    assertTrue(check.said().contains("Britain is GB"), check::said);
  }
}
