package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.guide.GuideLibrary;
import curewindow.problem.Problems;
import curewindow.shop.Shop;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopLook;
import curewindow.words.Words;
import curewindow.words.WordsLibrary;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PublicPagesTest {

  private static final List<Words> LANGUAGES = List.of(Demo.WORDS.of("en"), Demo.WORDS.of("es"));
  private static final SortedMap<String, String> PAGES = pages();

  private static final Map<String, Document> PARSED = parsed();
  private static final String ADDRESS = Demo.shop("S").address().toString();

  /** They say that there is nothing. */
  private static final List<String> NOT_LISTED = List.of("404.html", "closed.html");

  private static SortedMap<String, String> pages() {
    Problems problems = new Problems();
    SortedMap<String, String> pages =
        Demo.PAGES.open(
            Demo.shop("Longs Peak Film & Coat"), Optional.of(Demo.year()), LANGUAGES, problems);
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
    html()
        .forEach(
            (path, html) -> {
              URI from = URI.create("https://care.example/" + path);
              for (Element link : Jsoup.parse(html).select("a[href]")) {
                URI to = from.resolve(link.attr("href"));
                if (to.getScheme().equals("https") && to.getHost().equals("care.example")) {
                  String target = to.getPath().substring(1);
                  if (target.equals("shop.vcf")) {
                    continue; // made with the calendars
                  }
                  String page = PAGES.get(target.isEmpty() ? "index.html" : target);
                  assertNotNull(page, path + ": " + to);
                  if (to.getFragment() != null) {
                    assertNotNull(
                        PARSED.get(target).getElementById(to.getFragment()), path + ": " + to);
                  }
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
    assertEquals("tel:+13035550142", home.select(".mast a[href^=tel:]").attr("href"));
    assertEquals(List.of("English", "Español"), home.select(".langs a").eachText());
    assertEquals("page", home.select(".langs a").first().attr("aria-current"));
    assertEquals(Demo.GUIDES.ids("en").size(), home.select(".toc > li > a").size());
  }

  /** Who has not bought yet finds first what to do before coming, and how long things take. */
  @Test
  void homeBeginsWithWhatToDoBeforeComing() {
    for (String language : List.of("en", "es")) {
      Document home = PARSED.get(language + "/index.html");
      List<String> links = home.select("main a").eachAttr("href");
      assertEquals(List.of("before-you-come.html", "year.html"), links.subList(0, 2));
    }
    assertEquals("en/before-you-come.html", PARSED.get("index.html").select("main a").attr("href"));
  }

  /** The Open Graph protocol: what a message shows of an address that is sent. */
  @Test
  void anAddressThatIsSentShowsTitleTextAndPicture() {
    Document guide = PARSED.get("en/tint.html");
    assertEquals(
        "Window tint · Longs Peak Film & Coat",
        guide.select("meta[property=og:title]").attr("content"));
    assertEquals(
        guide.select("meta[name=description]").attr("content"),
        guide.select("meta[property=og:description]").attr("content"));
    assertEquals(
        "https://care.example/icon-512.png",
        guide.select("meta[property=og:image]").attr("content"));
    assertTrue(PARSED.get("404.html").select("meta[property]").isEmpty());
  }

  @Test
  void everyPageHasTheIconOfTheSiteAndMayShowIt() {
    PARSED.forEach(
        (path, page) -> {
          String icon = page.select("link[rel=icon]").attr("href");
          URI from = URI.create("https://care.example/" + path);
          assertEquals("https://care.example/icon.svg", from.resolve(icon).toString(), path);
          String policy = page.select("meta[http-equiv=Content-Security-Policy]").attr("content");
          assertTrue(policy.contains("img-src 'self' data:"), policy);
        });
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
        Jsoup.parse(PAGES.get("en/index.html"))
            .select(".toc > li > a")
            .eachAttr("href")
            .subList(0, 6));
    for (String language : List.of("en", "es")) {
      List<String> titles =
          Jsoup.parse(PAGES.get(language + "/index.html")).select(".toc > li > a").eachText();
      List<String> general = titles.subList(6, titles.size());
      assertTrue(general.size() >= 3, titles.toString());
      assertEquals(general.stream().sorted().toList(), general);
    }
  }

  @Test
  void contentsDoNotRepeatTheHeadingsOfEveryGuide() {
    for (String page : List.of("en/index.html", "es/index.html", "404.html", "en/find.html")) {
      List<String> sections = PARSED.get(page).select(".toc small a").eachText();
      sections.forEach(
          s -> assertTrue(Collections.frequency(sections, s) < 4, page + ": " + sections));
      assertTrue(sections.size() > 8, page);
    }
    for (String language : List.of("en", "es")) {
      List<String> works =
          PARSED.get(language + "/index.html").select(".toc li").stream()
              .limit(6)
              .flatMap(li -> li.select("small a").eachText().stream())
              .toList();
      assertEquals(works.stream().distinct().toList(), works, "one heading, one work");
    }
    assertTrue(
        PARSED.get("en/tint.html").select(".parts a").eachText().contains("Today"),
        "a guide itself names all of its sections");
  }

  @Test
  void guidesSpeakOfNoJob() {
    Document guide = Jsoup.parse(PAGES.get("en/tint.html"));
    assertEquals("Window tint", guide.select("h1").text());
    assertTrue(
        guide.text().matches(".*Leave the windows up until \\d days? after the work in .*"),
        guide.text());
    assertTrue(guide.select("h2").size() > 2);
    PAGES.values().forEach(text -> assertFalse(text.contains("/C/")));
    html()
        .forEach(
            (path, html) -> {
              assertFalse(html.contains("[page.") || html.contains("[public."), path);
              assertEquals(NOT_LISTED.contains(path), html.contains("noindex"), path);
              assertEquals(
                  path.endsWith("find.html") || html.contains("data-date") ? 1 : 0,
                  PARSED.get(path).select("script:not([type])").size(),
                  path);
              assertEquals(1, Jsoup.parse(html).select("h1").size(), path);
            });
  }

  private static SortedMap<String, String> html() {
    SortedMap<String, String> html = new TreeMap<>(PAGES);
    html.keySet().removeIf(path -> !path.endsWith(".html"));
    return html;
  }

  private static Map<String, Document> parsed() {
    Map<String, Document> parsed = new TreeMap<>();
    html().forEach((path, text) -> parsed.put(path, Jsoup.parse(text)));
    return parsed;
  }

  @Test
  void idsAreUniqueAndEveryLabelPointsAtSomething() {
    PARSED.forEach(
        (path, page) -> {
          List<String> ids = page.select("[id]").eachAttr("id");
          assertEquals(ids.size(), Set.copyOf(ids).size(), path);
          page.select("[aria-labelledby], [aria-describedby], [for]")
              .forEach(
                  e -> {
                    String to = e.attr("aria-labelledby") + e.attr("aria-describedby");
                    assertNotNull(page.getElementById(to + e.attr("for")), path + ": " + e);
                  });
        });
  }

  @Test
  void everyPageNamesItsOneAddressAndThoseInOtherLanguages() {
    Document root = PARSED.get("index.html");
    Document english = PARSED.get("en/index.html");
    assertEquals(ADDRESS, root.select("link[rel=canonical]").attr("href"));
    assertEquals(ADDRESS, english.select("link[rel=canonical]").attr("href"));
    assertEquals(
        List.of("en", "es", "x-default"), root.select("link[rel=alternate]").eachAttr("hreflang"));
    Document tint = PARSED.get("es/tint.html");
    assertEquals(ADDRESS + "es/tint.html", tint.select("link[rel=canonical]").attr("href"));
    assertEquals(
        List.of(ADDRESS + "en/tint.html", ADDRESS + "es/tint.html"),
        tint.select("link[rel=alternate]").eachAttr("href"));
    assertTrue(PARSED.get("404.html").select("link[rel=canonical]").isEmpty());
  }

  @Test
  void theLostPagesLinksStartAtTheTopOfTheHost() {
    Document lost = PARSED.get("404.html");
    lost.select("a[href], form[action]")
        .forEach(
            e -> {
              String to = e.attr(e.hasAttr("action") ? "action" : "href");
              assertTrue(to.matches("(/(?!/)|tel:|#).*"), to);
            });
    Problems problems = new Problems();
    Shop deep = Demo.shopAt("https://care.example/care/", "Longs Peak");
    SortedMap<String, String> pages = Demo.PAGES.open(deep, Optional.empty(), LANGUAGES, problems);
    assertTrue(pages.get("404.html").contains("href=\"/care/en/tint.html\""));
    assertEquals(List.of("robots-below-top"), problems.all().stream().map(p -> p.code()).toList());
    assertEquals(0, problems.errorCount());
    assertTrue(pages.get("robots.txt").startsWith("# "));
  }

  @Test
  void aLostCardIsOneTapFromAMessageThatNamesNobody() {
    for (String page : List.of("index.html", "en/index.html", "404.html")) {
      assertTrue(PARSED.get(page).select("main a[href$=lost-card.html]").size() == 1, page);
    }
    Document page = PARSED.get("en/lost-card.html");
    assertEquals("Lost your card?", page.select("h1").text());
    String sms = page.select("a[href^=sms:]").attr("href");
    assertTrue(sms.startsWith("sms:+13035550143?body=I%20lost%20my%20card."), sms);
    assertTrue(sms.contains("%0AName%3A%20%0ACar%3A%20"), sms);
    String mail = page.select("a[href^=mailto:]").attr("href");
    assertTrue(mail.contains("subject=Lost%20card&body="), mail);
    assertTrue(mail.contains("%0D%0AName%3A%20"), "RFC 6068, 5: lines end in CR LF: " + mail);
    assertEquals("tel:+13035550142", page.select("main a[href^=tel:]").attr("href"));
    assertTrue(page.text().contains("does not know who you are"));
    assertTrue(PAGES.get("sitemap.xml").contains("es/lost-card.html"));
  }

  @Test
  void withoutScriptTheIndexNamesEveryQuestionAndSection() {
    for (String language : List.of("en", "es")) {
      Document index = PARSED.get(language + "/find.html");
      assertTrue(index.select(".index dt").size() > 50, language);
      List<String> named = index.select("main a[href]").eachAttr("href");
      for (Element heading : PARSED.get(language + "/normal.html").select("article > h2[id]")) {
        long guides =
            PARSED.entrySet().stream()
                .filter(page -> page.getKey().startsWith(language + "/"))
                .map(page -> page.getValue().select("article > h2[id]").eachText())
                .filter(headings -> headings.contains(heading.text()))
                .count();
        assertTrue(guides > 3 || named.contains("normal.html#" + heading.id()), heading.text());
      }
      long questions =
          PARSED.get(language + "/normal.html").select("article > h3[id]").stream()
              .filter(h -> named.contains("normal.html#" + h.id()))
              .count();
      assertTrue(questions > 30, language + ": " + questions);
    }
  }

  @Test
  void hostileNamesStayText() {
    for (String hostile :
        List.of(
            "</script><script>boom()</script>", "<!--<script>", "\"><img src=x onerror=boom()>")) {
      Problems problems = new Problems();
      SortedMap<String, String> pages =
          Demo.PAGES.open(
              Demo.shopAt("https://care.example/", hostile),
              Optional.of(Demo.year()),
              LANGUAGES,
              problems);
      assertEquals(List.of(), problems.all());
      pages.keySet().removeIf(path -> !path.endsWith(".html"));
      pages.forEach(
          (path, html) -> {
            Document page = Jsoup.parse(html);
            assertEquals(PARSED.get(path).select("script").size(), page.select("script").size());
            assertTrue(page.select("img, [onerror]").isEmpty(), path);
            assertTrue(page.title().contains(hostile), path);
          });
    }
  }

  @Test
  void aGuideCannotTakeThePlaceOfAPage(@TempDir Path folder) throws IOException {
    Path own = Files.createDirectories(folder.resolve("content/guides/en"));
    Files.writeString(own.resolve("find.md"), "# Find\n\nText.\n");
    ShopFiles files = new ShopFiles(folder);
    Problems problems = new Problems();
    GuideLibrary guides =
        GuideLibrary.read(
            files, WordsLibrary.open(files), Demo.CATALOGUE, List.of("en"), new Problems());
    SortedMap<String, String> pages =
        Pages.read(files, ShopLook.NONE, guides, problems)
            .open(Demo.shop("S"), Optional.empty(), List.of(Demo.WORDS.of("en")), problems);
    assertEquals(List.of("guide-name"), problems.all().stream().map(p -> p.code()).toList());
    assertTrue(pages.get("en/find.html").contains("<form role=search"));
  }

  @Test
  void shopsLanguageMustBeAmongTheLanguages() {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            Demo.PAGES.open(
                Demo.shop("S"), Optional.empty(), List.of(Demo.WORDS.of("es")), new Problems()));
  }
}
