package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problems;
import curewindow.shop.Finding;
import curewindow.shop.FindingKind;
import curewindow.shop.FittedItem;
import curewindow.shop.Shop;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Texts that try to become code. The kinds are those of published notes on cross-site scripting
 * (OWASP's filter evasion notes, from memory), the strings our own, and those that aim at the
 * template engine's own expressions.
 */
class HostileTextTest {

  private static final List<String> HOSTILE =
      List.of(
          "<script>boom()</script>",
          "</style><script>boom()</script>",
          "</script><script>boom()</script>",
          "\"><img src=x onerror=boom()>",
          "' onmouseover='boom()",
          "<svg/onload=boom()>",
          "</title></head><body onload=boom()>",
          "<a href=\"javascript:boom()\">x</a>",
          "javascript:boom()",
          "<iframe srcdoc='<script>boom()</script>'></iframe>",
          "<math><mtext></form><form><mglyph><style></math><img src onerror=boom()>",
          "-->]]><!--<script>boom()</script>",
          "<meta http-equiv=refresh content='0;url=javascript:boom()'>",
          "<base href=//evil.example/>",
          "&lt;script&gt;boom()&lt;/script&gt;",
          "${T(java.lang.Runtime).getRuntime()}",
          "[[${page.shop.name}]]",
          "__${7*7}__",
          "{when} '{'quoted'}' {0}",
          "\uE000 split here \uE000",
          "\u202Eright to left\u2066",
          "<b th:text=\"${1+1}\">b</b>");

  static List<String> hostile() {
    return HOSTILE;
  }

  @ParameterizedTest
  @MethodSource("hostile")
  void staysText(String hostile) {
    Demo demo = Demo.tint();
    Document expected = Jsoup.parse(demo.html());
    demo.firstName = hostile;
    demo.car = hostile;
    demo.placeName = hostile;
    demo.shop = shop(hostile);
    demo.found.set(
        0, new Finding(FindingKind.OLD_FILM, List.of("back-glass"), OptionalInt.of(2017), hostile));
    FittedItem item = demo.items.get(0);
    demo.items.set(
        0,
        new FittedItem(
            item.service(),
            hostile,
            item.spots(),
            item.finished(),
            OptionalDouble.of(31),
            Optional.of(hostile),
            item.warrantyYears()));
    Document page = Jsoup.parse(demo.html());

    assertEquals(tags(expected), tags(page));
    inert(page);
    assertTrue(page.select(".for").text().contains(Jsoup.parse(escaped(hostile)).text()));
  }

  /** Some at a time, as the pages for anyone take long to make. */
  static List<String> several() {
    List<String> several = new ArrayList<>();
    for (int from = 0; from < HOSTILE.size(); from += 6) {
      several.add(String.join(" ", HOSTILE.subList(from, Math.min(from + 6, HOSTILE.size()))));
    }
    return several;
  }

  @ParameterizedTest
  @MethodSource("several")
  void staysTextOnPagesForAnyone(String hostile) {
    Map<String, String> pages =
        Demo.PAGES.open(
            shop(hostile), Optional.empty(), List.of(Demo.WORDS.of("en")), new Problems());
    assertTrue(pages.size() > 5, () -> pages.keySet().toString());
    pages.values().forEach(html -> inert(Jsoup.parse(html)));
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;");
  }

  private static List<String> tags(Document page) {
    return page.getAllElements().stream().map(Element::tagName).toList();
  }

  private static void inert(Document page) {
    for (Element element : page.getAllElements()) {
      for (Attribute attribute : element.attributes()) {
        assertTrue(!attribute.getKey().startsWith("on"), element.outerHtml());
        assertTrue(!attribute.getKey().equals("style"), element.outerHtml());
        if (attribute.getKey().equals("href")) {
          assertTrue(
              attribute
                  .getValue()
                  .matches(
                      "(?s)(tel:|sms:|mailto:|#|data:image/svg[+]xml,|https://care\\.example/"
                          + "|[a-z0-9./-]+(#[a-z0-9-]+|\\?[0-9a-f]{8})?$).*"),
              element.outerHtml());
        }
      }
    }
    assertEquals(0, page.select("base,iframe,object,img,form:not(.ask)").size());
    page.select("form")
        .forEach(
            form -> assertTrue(form.attr("action").matches("/?([a-z]+/)*find\\.html"), "form"));
  }

  private static Shop shop(String text) {
    Shop good = Demo.shop(text);
    return new Shop(
        text,
        text,
        Optional.of(text),
        Optional.of(text),
        List.of(text, text),
        URI.create("https://care.example/"),
        good.zone(),
        "en",
        Optional.empty(),
        "denver",
        good.bay(),
        good.bondEnergy(),
        good.opening(),
        good.closed());
  }
}
