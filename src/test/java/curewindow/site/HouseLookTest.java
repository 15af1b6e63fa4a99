package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.page.Browser;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shop's logo and color on every kind of page that a press writes. */
class HouseLookTest {

  private static final String NAME = "Quillhaven Film & Coatings";
  private static final String SEEN =
      "const i=document.querySelector('.mast .logo');const b=i.getBoundingClientRect();"
          + "return [i.complete&&i.naturalWidth>0,Math.round(100*b.width/b.height)/100,"
          + "b.right<=innerWidth]";

  @TempDir Path temp;
  private Browser browser;

  @AfterEach
  void close() {
    if (browser != null) {
      browser.close();
    }
  }

  private static Map<String, Path> pages() throws IOException {
    Map<String, Path> pages = new TreeMap<>(PressedDemo.get().kinds("en"));
    PressedDemo.get().kinds("ar").forEach((kind, page) -> pages.put("ar " + kind, page));
    pages.put("404", PressedDemo.get().site().resolve("404.html"));
    return pages;
  }

  @Test
  void everyPageHasTheLogoBeforeTheName() throws IOException {
    for (Map.Entry<String, Path> page : pages().entrySet()) {
      Element mast = Jsoup.parse(Files.readString(page.getValue())).selectFirst(".mast");
      Element logo = mast.selectFirst("p:first-child > a > img.logo");
      assertEquals("", logo.attr("alt"), "the name stands beside it");
      assertEquals(NAME, mast.selectFirst("p").text(), page.getKey());
      assertTrue(
          logo.attr("src").matches("(\\.\\./)*/?logo\\.svg\\?[0-9a-f]{8}"), logo.attr("src"));
    }
    String published = Files.readString(PressedDemo.get().site().resolve("logo.svg"));
    assertTrue(published.startsWith("<svg xmlns="), published);
    assertFalse(published.contains("<!--"), "a clean copy");
  }

  @Test
  void itIsSeenByDayAndInTheDarkOnANarrowScreenAndFromADisk() throws IOException {
    browser = Browser.open();
    for (Map.Entry<String, Path> page : pages().entrySet()) {
      if (Files.readString(page.getValue()).contains("src=\"/logo.svg")) {
        continue; // Its links begin at the top of a host, which a disk has not.
      }
      for (String light : List.of("light", "dark")) {
        browser.prefers("prefers-color-scheme", light).screen(320, 640, true);
        browser.go(page.getValue());
        List<?> seen = (List<?>) browser.run(SEEN);
        assertEquals(true, seen.get(0), page.getKey() + " " + light);
        double ratio = ((Number) seen.get(1)).doubleValue();
        assertEquals(1, ratio, 0.25, page.getKey() + ": square; in the dark it has a margin");
        assertEquals(true, seen.get(2), page.getKey());
      }
    }
    try (ViewServer view = ViewServer.start(PressedDemo.get().out(), 0)) {
      URI lost = view.address().resolve("deep/down/nowhere");
      browser.go(lost.toString());
      assertEquals(true, ((List<?>) browser.run(SEEN)).get(0), "404 at any depth");
    }
  }

  @Test
  void theStampIsInTheShopsColorAndOnPaperBlack() throws IOException {
    browser = Browser.open();
    Path job = PressedDemo.get().kinds("en").get("job");
    String color = "return getComputedStyle(document.querySelector('.stamp')).color";
    browser.prefers("prefers-color-scheme", "light").go(job);
    assertEquals("rgb(11, 93, 87)", browser.run(color));
    browser.prefers("prefers-color-scheme", "dark").go(job);
    String dark = String.valueOf(browser.run(color));
    assertFalse(List.of("rgb(11, 93, 87)", "rgb(255, 144, 112)").contains(dark), dark);
    browser.onPaper();
    assertEquals("rgb(0, 0, 0)", browser.run(color));
  }

  @Test
  void withoutALogoTheNameStandsThereAndNoneIsPublished() throws IOException {
    Path shop = temp.resolve("shop");
    PressedDemo.layOutShop(shop, "Q-3101");
    Path yaml = shop.resolve("shop.yaml");
    Path out = temp.resolve("out");
    press(shop, out);
    assertTrue(Files.exists(out.resolve("site/logo.svg")));
    Files.writeString(yaml, Files.readString(yaml).replaceAll("(?m)^(logo|color): .*\n", ""));
    press(shop, out);
    assertFalse(Files.exists(out.resolve("site/logo.svg")));
    try (Stream<Path> all = Files.walk(out.resolve("site"))) {
      for (Path page : all.filter(p -> p.toString().endsWith(".html")).toList()) {
        String html = Files.readString(page);
        assertFalse(html.contains("logo"), page.toString());
        assertEquals(NAME, Jsoup.parse(html).selectFirst(".mast a").text(), page.toString());
      }
    }
  }

  private static void press(Path shop, Path out) throws IOException {
    Random random = new Random(1);
    LoadedShop loaded = LoadedShop.load(shop, PressedDemo.CLOCK);
    PressReport report = Press.run(loaded, out, PressedDemo.CLOCK, () -> Tokens.from(random));
    assertFalse(report.hasErrors(), () -> report.problems().toString());
  }
}
