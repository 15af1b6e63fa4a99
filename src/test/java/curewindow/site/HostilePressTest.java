package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.page.Browser;
import java.io.IOException;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.ObjectMapper;

/**
 * Texts that try to become code, in every field of shop.yaml, of job files, of the list of jobs and
 * of the films that takes any text: pressed, served and opened in a real browser, nothing runs, and
 * nothing even tries to, for the browser would complain of what the page's policy stops. The kinds
 * are those of published lists (OWASP's notes on filter evasion, from memory), the strings our own.
 */
class HostilePressTest {

  /** As long as the shortest field takes. */
  private static final List<String> HOSTILE =
      List.of(
          "<script>top.fired=1</script>",
          "</script><script>top.fired=1</script>",
          "</style></title></textarea><svg/onload=top.fired=1>",
          "\"><img src=x onerror=top.fired=1>",
          "' autofocus tabindex=1 onfocus='top.fired=1",
          "x onmouseover=top.fired=1 style=x",
          "<a href=\"java&#x09;script:top.fired=1\">x</a>",
          "javascript:top.fired=1//",
          "<iframe srcdoc='<script>top.fired=1</script>'></iframe>",
          "<math><mglyph><style></math><img src onerror=top.fired=1>",
          "--><!--]]><details open ontoggle=top.fired=1>",
          "<meta http-equiv=refresh content='0;url=data:text/html,x'>",
          "<base href=//evil.example/>",
          "%3Cscript%3Etop.fired=1%3C/script%3E&lt;script&gt;",
          "[[${7*7}]] ${7*7} #{page.title} __${7*7}__ {when} '{' `",
          "(= shop.name =) }</style><style>*{display:none}",
          "END:VCARD;,\\nBEGIN:VALARM\\,:\\");

  /** Signs that turn the text after them round, and line breaks; refused when they are read. */
  private static final List<String> REFUSED =
      List.of("\u202Eturned", "\u2067turned", "a\u2066b", "a\r\nEND:VCALENDAR", "a\u0000b");

  /** As far as the check of an address for mail lets such texts through. */
  private static final String MAIL =
      "'\"></script><script>top.fired=1</script>?bcc=a&b@\"><img/src=x/onerror=top.fired=1>.b";

  /** As far as the check of a web address lets them through. */
  private static final String ADDRESS =
      "https://care.quillhaven.example/'onfocus='top.fired=1;&lt;(b);%22%3E%3Csvg/";

  /** As far as the check of a phone number lets them through: signs, but no letters. */
  private static final String PHONE = "../+1 (206) 555-0142 //)(";

  private static final ObjectMapper QUOTING = new ObjectMapper();

  /** What a page may not have in it, and what happens when everything is touched. */
  private static final String PROBE =
      "var bad=[];document.querySelectorAll('*').forEach(e=>{"
          + "for(var a of e.attributes){if(/^on|^style$|^srcdoc$/.test(a.name))bad.push(e.outerHTML)}"
          + "const logo=e.matches('.mast img.logo')&&/\\/logo\\.svg\\?[0-9a-f]{8}$/.test(e.src)"
          + "&&e.getAttributeNames().sort().join()=='alt,class,height,src,width';"
          + "if(!logo&&e.matches('iframe,img,base,object,embed,meta[http-equiv=refresh]'))bad.push(e.outerHTML);"
          + "if(e.protocol&&!/^(https?|tel|sms|mailto):$/.test(e.protocol)&&!(e.download==='care.ics'"
          + "&&/^data:text\\/calendar;charset=utf-8,BEGIN:VCALENDAR%0D%0A[^<>\"'&#?+]*$/.test(e.href)))"
          + "bad.push(e.outerHTML);"
          + "if(e.host&&/evil/.test(e.host))bad.push(e.outerHTML)});"
          + "addEventListener('click',x=>x.preventDefault(),true);"
          + "document.querySelectorAll('a,summary,li,td,p,h1').forEach(e=>"
          + "['mouseover','focus','toggle','click'].forEach(t=>"
          + "e.dispatchEvent(new MouseEvent(t,{bubbles:true,cancelable:true}))));"
          + "if(window.fired)bad.push('fired');return bad";

  @TempDir Path temp;

  @Test
  void nothingRunsWhateverPeopleWrite() throws IOException {
    Path out = press(shop());
    List<String> found = new ArrayList<>();
    int pages = 0;
    try (Browser browser = Browser.open();
        ViewServer view = ViewServer.start(out, 0)) {
      browser.screen(390, 844, true);
      for (Path page : pages(out.resolve("site"))) {
        pages++;
        String address = view.address() + out.resolve("site").relativize(page).toString();
        browser.go(address);
        ((List<?>) browser.run(PROBE)).forEach(bad -> found.add(address + " " + bad));
      }
      for (String hostile : HOSTILE) {
        String asked = URLEncoder.encode(hostile, StandardCharsets.UTF_8);
        browser.go(view.address() + "en/find.html?q=" + asked);
        ((List<?>) browser.run(PROBE)).forEach(bad -> found.add(asked + " " + bad));
        assertEquals(hostile, browser.run("return document.querySelector('#q').value"));
      }
      browser.complaints().stream().filter(c -> !isLostIcon(c)).forEach(found::add);
    }
    assertEquals(List.of(), found);
    assertTrue(pages >= 2 * HOSTILE.size(), pages + " pages");
  }

  /** The page for lost visitors finds its icon and logo only at the shop's own address. */
  private static boolean isLostIcon(String complaint) {
    return complaint.matches("(?s).*/(icon|logo)\\.svg[?0-9a-f]* - Failed to load resource.*404.*");
  }

  /** Links that call, text and mail reach the shop and carry nothing but what the page says. */
  @Test
  void linksReachTheShopAndNobodyElse() throws IOException {
    int mails = 0;
    int calls = 0;
    for (Path page : pages(press(shop()).resolve("site"))) {
      for (Element link : Jsoup.parse(Files.readString(page)).select("a[href]")) {
        String href = link.attr("href");
        String to = href.replaceFirst("[?].*", "");
        if (href.startsWith("mailto:")) {
          mails++;
          assertEquals("mailto:" + MAIL, URLDecoder.decode(to, StandardCharsets.UTF_8), href);
          assertTrue(href.substring(to.length()).matches("([?&](subject|body)=[^&?]*)*"), href);
        } else if (href.matches("(tel|sms):.*")) {
          calls++;
          assertEquals("+12065550142", to.substring(4), href);
        }
      }
    }
    assertTrue(mails > 20 && calls > 20, mails + ", " + calls);
  }

  static String setting(String yaml, String key, String line) {
    return yaml.replaceFirst("(?m)^( *)" + key + ": .*$", "$1" + Matcher.quoteReplacement(line));
  }

  /** Data, address cards and calendars are read by others; they say the same and no more. */
  @Test
  void dataAddressCardsAndCalendarsStayWhole() throws IOException {
    Path site = press(shop()).resolve("site");
    List<Path> all;
    try (Stream<Path> files = Files.walk(site)) {
      all = files.filter(Files::isRegularFile).toList();
    }
    int data = 0;
    int calendars = 0;
    for (Path file : all) {
      String name = file.toString();
      if (name.endsWith(".html")) {
        Document page = Jsoup.parse(Files.readString(file));
        List<Element> json = page.select("script[type=application/ld+json]");
        data += json.size();
        json.forEach(e -> QUOTING.readTree(e.data()));
        for (List<String> lines : ParkedCalendars.of(page)) {
          calendars++;
          whole(lines, name);
        }
      } else if (name.endsWith(".webmanifest")) {
        data++;
        QUOTING.readTree(Files.readString(file));
      } else if (name.endsWith(".ics")) {
        calendars++;
        whole(Files.readAllLines(file), name);
      }
    }
    assertTrue(data > 20 && calendars > 60, data + ", " + calendars);
    List<String> card = Files.readAllLines(site.resolve("shop.vcf"));
    assertEquals(1, count(card, "BEGIN:VCARD"));
    assertEquals(1, count(card, "END:VCARD"));
    assertEquals("END:VCARD", card.get(card.size() - 1));
  }

  private static void whole(List<String> lines, String name) {
    assertEquals("BEGIN:VCALENDAR", lines.get(0), name);
    assertEquals(count(lines, "BEGIN:VEVENT"), count(lines, "END:VEVENT"), name);
    assertEquals(1, count(lines, "BEGIN:VCALENDAR"), name);
    assertEquals(1, count(lines, "END:VCALENDAR"), name);
    assertEquals("END:VCALENDAR", lines.get(lines.size() - 1), name);
    assertTrue(count(lines, "BEGIN:VALARM") <= count(lines, "BEGIN:VEVENT"), name);
  }

  private static long count(List<String> lines, String line) {
    return lines.stream().filter(line::equals).count();
  }

  @Test
  void whatTurnsTextOrEndsLinesIsRefused() throws IOException {
    Path shop = shop();
    Path job = shop.resolve("jobs/H-0.yaml");
    String good = Files.readString(job);
    for (String hostile : REFUSED) {
      Files.writeString(
          job,
          good.replaceFirst(
              "(?m)^first-name: .*$",
              Matcher.quoteReplacement("first-name: " + QUOTING.writeValueAsString(hostile))));
      LoadedShop loaded = LoadedShop.load(shop, PressedDemo.CLOCK);
      assertTrue(loaded.hasErrors(), hostile);
      assertEquals("jobs/H-0.yaml", loaded.problems().get(0).file(), hostile);
    }
  }

  @Test
  void whatRunsIsSeen() throws IOException {
    try (Browser browser = Browser.open()) {
      for (String hostile : HOSTILE.subList(3, 6)) {
        String page =
            "<!DOCTYPE html><p title=\"" + hostile + "\"><p title='" + hostile + "'><p title=";
        browser.go(Files.writeString(temp.resolve("a.html"), page + hostile + ">x"));
        assertFalse(((List<?>) browser.run(PROBE)).isEmpty(), hostile);
      }
    }
  }

  private static List<Path> pages(Path site) throws IOException {
    try (Stream<Path> files = Files.walk(site)) {
      return files
          .filter(f -> f.toString().endsWith(".html"))
          .filter(f -> site.relativize(f).getNameCount() <= 3)
          .toList();
    }
  }

  private Path press(Path shop) throws IOException {
    LoadedShop loaded = LoadedShop.load(shop, PressedDemo.CLOCK);
    assertFalse(loaded.hasErrors(), () -> loaded.problems().toString());
    Random random = new Random(2);
    Path out = temp.resolve("out");
    PressReport report = Press.run(loaded, out, PressedDemo.CLOCK, () -> Tokens.from(random));
    assertEquals(List.of(), report.leftOut());
    return out;
  }

  private Path shop() throws IOException {
    Path shop = Files.createDirectories(temp.resolve("shop"));
    String text = Files.readString(Path.of("content/demo/shop.yaml"));
    text = text.replace("Quillhaven Film & Coatings", "@").replace("name: @", "name: " + yaml(2));
    text = text.replace("18 Tern Yard", yaml(3)).replace("Quillhaven, WA 98000", yaml(0));
    text = setting(text, "phone", "phone: " + QUOTING.writeValueAsString(PHONE));
    text = setting(text, "text-number", "text-number: " + QUOTING.writeValueAsString(PHONE));
    text = setting(text, "email", "email: " + QUOTING.writeValueAsString(MAIL));
    text = setting(text, "address", "address: " + QUOTING.writeValueAsString(ADDRESS));
    Files.writeString(shop.resolve("shop.yaml"), text);
    Files.copy(Path.of("content/demo/logo.svg"), shop.resolve("logo.svg"));
    String films = Files.readString(Path.of("content/catalogue/films.yaml"));
    films = films.replace("name: Harbor 35", "name: " + yaml(9));
    films = films.replace("name: Fieldcoat Gloss", "name: " + yaml(3));
    Files.createDirectories(shop.resolve("content/catalogue"));
    Files.writeString(shop.resolve("content/catalogue/films.yaml"), films);
    rest(shop);
    Files.createDirectories(shop.resolve("jobs"));
    String job = Files.readString(Path.of("content/demo/jobs/Q-3104.yaml"));
    for (int i = 0; i < HOSTILE.size(); i++) {
      Files.writeString(shop.resolve("jobs/H-" + i + ".yaml"), hostile(job, i));
    }
    List<String> list = Files.readAllLines(Path.of("content/demo/jobs.csv")).subList(0, 2);
    Files.writeString(shop.resolve("jobs.csv"), list.get(0) + "\n" + hostileRow(list.get(1)));
    return shop;
  }

  /** A place of the shop's own, what the catalogue is called, and texts of the words. */
  private static void rest(Path shop) throws IOException {
    Files.createDirectories(shop.resolve("content/places"));
    for (int i = 0; i < HOSTILE.size(); i++) {
      Files.writeString(
          shop.resolve("content/places/h-" + i + ".yaml"),
          "name: "
              + yaml(i)
              + "\nlatitude: 47.86\nlongitude: -122.20\nheight: 110\nzone: America/Los_Angeles\n");
    }
    Path words = Files.createDirectories(shop.resolve("content/words/en"));
    String catalogue = Files.readString(Path.of("content/words/en/catalogue.yaml"));
    Files.writeString(
        words.resolve("catalogue.yaml"),
        catalogue
            .replace("\"Paint protection film\"", yaml(1))
            .replace("\"Window tint\"", yaml(3))
            .replace("\"hood\"", yaml(2))
            .replace("\"front door windows\"", yaml(9)));
    String open = Files.readString(Path.of("content/words/en/public.yaml"));
    Files.writeString(
        words.resolve("public.yaml"), open.replaceFirst("(?m)^(  contents: ).*$", "$1" + WORD));
  }

  /** In a sentence braces and apostrophes mean something, so this one has none. */
  private static final String WORD = "\"</style></title></script><img src=x onerror=top.fired=1>\"";

  private static String hostile(String job, int i) {
    return job.replace("id: Q-3104", "id: H-" + i)
        .replaceFirst("(?m)^place: .*$", "place: h-" + i)
        .replace("first-name: Tomás", "first-name: " + yaml(i))
        .replace("text: dark green hybrid", "text: " + yaml(i))
        .replace("batch: FG-2207", "batch: " + yaml(i))
        .replace("Two stone chips near the badge stay visible under the film.", yaml(i));
  }

  private static String hostileRow(String row) {
    return row.replace("Imani", csv(1))
            .replace("white passenger van", csv(3))
            .replace("H20-0590", csv(9))
        + "\n";
  }

  private static String yaml(int i) {
    return QUOTING.writeValueAsString(HOSTILE.get(i));
  }

  private static String csv(int i) {
    return '"' + HOSTILE.get(i).replace("\"", "\"\"") + '"';
  }
}
