package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problems;
import curewindow.words.Words;
import java.net.URI;
import java.util.List;
import java.util.SortedMap;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

class PublicPagesTest {

  private static final List<Words> LANGUAGES = List.of(Demo.WORDS.of("en"), Demo.WORDS.of("es"));
  private static final SortedMap<String, String> PAGES = pages();

  private static SortedMap<String, String> pages() {
    Problems problems = new Problems();
    SortedMap<String, String> pages =
        Demo.PAGES.open(Demo.shop("Longs Peak Film & Coat"), LANGUAGES, problems);
    assertEquals(List.of(), problems.all());
    return pages;
  }

  @Test
  void thereIsAHomeInEachLanguageAGuideForEachAndAPageForTheLost() {
    assertTrue(
        PAGES
            .keySet()
            .containsAll(List.of("index.html", "404.html", "en/index.html", "es/index.html")));
    for (String language : List.of("en", "es")) {
      for (String id : Demo.GUIDES.ids(language)) {
        assertTrue(PAGES.containsKey(language + "/" + id + ".html"), id);
      }
    }
    assertEquals("es", Jsoup.parse(PAGES.get("es/tint.html")).selectFirst("html").attr("lang"));
  }

  @Test
  void everyLinkLeadsToAPageThatIsThere() {
    PAGES.forEach(
        (path, html) -> {
          URI from = URI.create("https://care.example/" + path);
          for (Element link : Jsoup.parse(html).select("a[href]")) {
            URI to = from.resolve(link.attr("href"));
            if (to.getScheme().equals("https") && to.getFragment() == null) {
              String target = to.getPath().substring(1);
              assertTrue(
                  PAGES.containsKey(target.isEmpty() ? "index.html" : target), path + ": " + to);
            }
          }
        });
  }

  @Test
  void homeNamesShopHoursPhoneAddressLanguagesAndGuides() {
    Document home = Jsoup.parse(PAGES.get("index.html"));
    assertEquals("Longs Peak Film & Coat", home.select("h1").text());
    assertTrue(home.text().contains("1180 Quarry Street"));
    assertTrue(home.text().contains("Monday to Friday 8 AM to 6 PM"));
    assertEquals("tel:+13035550142", home.select(".mast a").attr("href"));
    assertEquals(List.of("English", "Español"), home.select(".langs a").eachText());
    assertEquals("page", home.select(".langs a").first().attr("aria-current"));
    assertEquals(Demo.GUIDES.ids("en").size(), home.select(".index a").size());
  }

  @Test
  void guidesFollowTheServicesAndThenTheirTitles() {
    assertEquals(
        List.of(
            "tint.html",
            "paint-film.html",
            "wrap.html",
            "windshield-film.html",
            "headlight-film.html",
            "coating.html"),
        Jsoup.parse(PAGES.get("en/index.html")).select(".index a").eachAttr("href").subList(0, 6));
    for (String language : List.of("en", "es")) {
      List<String> titles =
          Jsoup.parse(PAGES.get(language + "/index.html")).select(".index a").eachText();
      List<String> general = titles.subList(6, titles.size());
      assertTrue(general.size() >= 3, titles.toString());
      assertEquals(general.stream().sorted().toList(), general);
    }
  }

  @Test
  void guidesSpeakOfNoJob() {
    Document guide = Jsoup.parse(PAGES.get("en/tint.html"));
    assertEquals("Window tint", guide.select("h1").text());
    assertTrue(guide.text().contains("Leave the windows up until the date on your own page"));
    assertTrue(guide.select("h2").size() > 2);
    PAGES.forEach(
        (path, html) -> {
          assertFalse(html.contains("/C/"), path);
          assertFalse(html.contains("[page."), path);
          assertFalse(html.contains("noindex"), path);
          assertFalse(html.contains("<script"), path);
          assertTrue(
              html.contains("script-src &#39;none&#39;") || html.contains("script-src 'none'"));
          assertEquals(1, Jsoup.parse(html).select("h1").size(), path);
        });
  }

  @Test
  void shopsLanguageMustBeAmongTheLanguages() {
    assertThrows(
        IllegalArgumentException.class,
        () -> Demo.PAGES.open(Demo.shop("S"), List.of(Demo.WORDS.of("es")), new Problems()));
  }
}
