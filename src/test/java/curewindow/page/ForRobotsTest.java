package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problems;
import java.io.ByteArrayInputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import javax.xml.parsers.DocumentBuilderFactory;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.w3c.dom.NodeList;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Sitemap, robots.txt and the data in the words of schema.org. */
class ForRobotsTest {

  private static final String MAP = "http://www.sitemaps.org/schemas/sitemap/0.9";
  private static final String XHTML = "http://www.w3.org/1999/xhtml";

  /** Properties that schema.org gives to the types used here; kept by hand, from memory. */
  private static final Map<String, Set<String>> SCHEMA =
      Map.of(
          "AutomotiveBusiness",
          Set.of(
              "name",
              "url",
              "telephone",
              "email",
              "address",
              "openingHoursSpecification",
              "specialOpeningHoursSpecification"),
          "OpeningHoursSpecification",
          Set.of("dayOfWeek", "opens", "closes", "validFrom", "validThrough"),
          "FAQPage",
          Set.of("url", "name", "inLanguage", "mainEntity"),
          "Question",
          Set.of("name", "url", "acceptedAnswer"),
          "Answer",
          Set.of("text"));

  private static final SortedMap<String, String> PAGES =
      Demo.PAGES.open(
          Demo.shop("Longs Peak"),
          Optional.empty(),
          List.of(Demo.WORDS.of("en"), Demo.WORDS.of("es")),
          new Problems());

  /** The rules of sitemaps.org's schema 0.9, from memory; hreflang links by the search engines'. */
  @Test
  void sitemapFollowsItsSchemaAndNamesEveryPageOnce() throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    String text = PAGES.get("sitemap.xml");
    assertFalse(text.contains("lastmod"));
    org.w3c.dom.Element root =
        factory
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)))
            .getDocumentElement();
    assertEquals(MAP, root.getNamespaceURI());
    assertEquals("urlset", root.getLocalName());
    NodeList urls = root.getElementsByTagNameNS(MAP, "url");
    assertEquals(urls.getLength(), root.getElementsByTagName("url").getLength());
    Set<String> named = new HashSet<>();
    for (int i = 0; i < urls.getLength(); i++) {
      org.w3c.dom.Element url = (org.w3c.dom.Element) urls.item(i);
      NodeList locs = url.getElementsByTagNameNS(MAP, "loc");
      assertEquals(1, locs.getLength());
      String loc = locs.item(0).getTextContent();
      assertTrue(URI.create(loc).isAbsolute() && loc.length() >= 12 && loc.length() <= 2048);
      assertTrue(named.add(loc), loc);
      Document page = Jsoup.parse(PAGES.get(file(loc)));
      assertEquals(loc, page.select("link[rel=canonical]").attr("href"));
      NodeList links = url.getElementsByTagNameNS(XHTML, "link");
      List<String> others = page.select("link[rel=alternate]").eachAttr("href");
      assertEquals(others.size(), links.getLength(), loc);
      for (int k = 0; k < links.getLength(); k++) {
        org.w3c.dom.Element link = (org.w3c.dom.Element) links.item(k);
        assertEquals("alternate", link.getAttribute("rel"));
        assertEquals(others.get(k), link.getAttribute("href"));
      }
    }
    // All but the second address of the shop's own home and the pages for who finds none.
    long pages = PAGES.keySet().stream().filter(p -> p.endsWith(".html")).count();
    assertEquals(pages - 3, named.size());
  }

  private static String file(String address) {
    String path = URI.create(address).getPath().substring(1);
    return path.isEmpty() || path.endsWith("/") ? path + "index.html" : path;
  }

  /** RFC 9309: groups of a user-agent line and rules; sitemap lines belong to no group. */
  @Test
  void robotsMayReadEverythingAndAreNotToldOfCustomers() {
    assertEquals(
        "User-agent: *\nAllow: /\n\nSitemap: https://care.example/sitemap.xml\n",
        PAGES.get("robots.txt"));
  }

  @Test
  void dataUseKnownTypesAndSayOnlyWhatThePageSays() {
    PAGES.forEach(
        (path, html) -> {
          for (Element block : Jsoup.parse(html).select("script[type=application/ld+json]")) {
            JsonNode data = JsonMapper.builder().build().readTree(block.data());
            assertEquals("https://schema.org", data.get("@context").asString());
            known(data, path);
          }
        });
  }

  private static void known(JsonNode node, String path) {
    if (node.isArray()) {
      node.forEach(n -> known(n, path));
    }
    if (node.isObject()) {
      Set<String> allowed = SCHEMA.get(node.get("@type").asString());
      node.properties()
          .forEach(
              p -> {
                assertTrue(
                    p.getKey().startsWith("@") || allowed.contains(p.getKey()),
                    path + ": " + p.getKey());
                known(p.getValue(), path);
              });
    }
  }

  @Test
  void theShopIsDescribedAsOnItsHome() {
    JsonNode shop = data("index.html");
    assertEquals("AutomotiveBusiness", shop.get("@type").asString());
    assertEquals("1180 Quarry Street, Denver, CO 80204", shop.get("address").asString());
    JsonNode hours = shop.get("openingHoursSpecification");
    assertEquals(2, hours.size());
    assertEquals(5, hours.get(0).get("dayOfWeek").size());
    assertEquals("Monday", hours.get(0).get("dayOfWeek").get(0).asString());
    assertEquals("08:00", hours.get(0).get("opens").asString());
    assertEquals("13:30", hours.get(1).get("closes").asString());
    JsonNode closed = shop.get("specialOpeningHoursSpecification").get(0);
    assertEquals("2026-12-25", closed.get("validThrough").asString());
    assertFalse(closed.has("opens"));
  }

  @Test
  void everyQuestionGivenToRobotsCanBeReadOnThePage() {
    for (String language : List.of("en", "es")) {
      String path = language + "/normal.html";
      Document page = Jsoup.parse(PAGES.get(path));
      JsonNode questions = data(path).get("mainEntity");
      assertTrue(questions.size() > 30, language);
      for (JsonNode question : questions) {
        String id = URI.create(question.get("url").asString()).getFragment();
        Element heading = page.getElementById(id);
        assertEquals(question.get("name").asString(), heading.text());
        StringBuilder under = new StringBuilder();
        for (Element e = heading.nextElementSibling();
            e != null && !e.normalName().matches("h[1-6]");
            e = e.nextElementSibling()) {
          under.append(e.text()).append(' ');
        }
        assertEquals(
            under.toString().strip(), question.get("acceptedAnswer").get("text").asString());
      }
    }
    assertTrue(Jsoup.parse(PAGES.get("en/tint.html")).select("script").isEmpty());
  }

  private static JsonNode data(String path) {
    String json =
        Jsoup.parse(PAGES.get(path)).selectFirst("script[type=application/ld+json]").data();
    return JsonMapper.builder().build().readTree(json);
  }
}
