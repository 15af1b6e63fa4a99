package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopLook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TemplatesTest {

  @TempDir Path shop;

  private Problem mistake(String template) throws IOException {
    Files.createDirectories(shop.resolve("site-templates"));
    Files.writeString(shop.resolve("site-templates/customer.html"), template);
    Problems problems = new Problems();
    Pages pages = Pages.read(new ShopFiles(shop), ShopLook.NONE, Demo.GUIDES, problems);
    Optional<String> html = Demo.page(pages, problems, Demo.tint().view());
    assertEquals(Optional.empty(), html);
    assertEquals(1, problems.all().size(), problems.all().toString());
    return problems.all().get(0);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<p th:text=\"${page.greting}\">x</p>           | there is no value 'greting'",
        "<p th:text=\"#{page.no-such-word}\">x</p>      | no text 'page.no-such-word'",
        "<p th:text=\"${page.greeting\">x</p>           | ${page.greeting",
        "<p th:text=\"${page.shop.nam}\">x</p>          | name is near",
        "<p th:replace=\"~{no-such-part :: x}\">x</p>   | no-such-part",
        "<p th:each=\"a : ${page.answers}\"><b th:text=\"${a.wen}\">x</b></p> | 'wen'",
      })
  void mistakeNamesFileAndLine(String line, String says) throws IOException {
    Problem problem = mistake("<!DOCTYPE html>\n<html>\n<body>\n" + line + "\n</body>\n</html>\n");
    assertEquals("template-mistake", problem.code());
    assertEquals("site-templates/customer.html", problem.file());
    assertEquals(4, problem.line(), problem.oneLine());
    assertTrue(problem.column() > 0);
    assertTrue(problem.message().contains(says), problem.oneLine());
  }

  @Test
  void markupThatIsNotHtmlNamesItsLine() throws IOException {
    Problem problem = mistake("<html>\n<body>\n<p th:text=\"${page.title}\" th:text=\"x\">\n");
    assertEquals("template-mistake", problem.code());
    assertEquals(3, problem.line(), problem.oneLine());
  }

  @Test
  void templateThatIsNotUtf8IsAProblemNotACrash() throws IOException {
    Files.createDirectories(shop.resolve("site-templates"));
    Files.write(shop.resolve("site-templates/customer.html"), new byte[] {'a', '\n', (byte) 0xff});
    Problems problems = new Problems();
    Pages pages = Pages.read(new ShopFiles(shop), ShopLook.NONE, Demo.GUIDES, problems);
    assertEquals(Optional.empty(), Demo.page(pages, problems, Demo.tint().view()));
    assertTrue(problems.all().stream().anyMatch(p -> p.code().equals("not-utf8") && p.line() == 2));
  }

  @Test
  void shopsOwnTemplateAndStyleReplaceTheProgramsAndStayWithinThePolicy() throws IOException {
    Files.createDirectories(shop.resolve("site-templates"));
    Files.writeString(shop.resolve("site-templates/page.css"), "body { color: navy } /* ours */\n");
    Problems problems = new Problems();
    Pages pages = Pages.read(new ShopFiles(shop), ShopLook.NONE, Demo.GUIDES, problems);
    Document page = Jsoup.parse(Demo.page(pages, problems, Demo.tint().view()).orElseThrow());
    String style = page.selectFirst("style").data();
    assertTrue(style.startsWith("body { color: navy }"), style);
    assertFalse(style.contains("ours"), style);
    assertTrue(
        page.select("meta[http-equiv]")
            .attr("content")
            .startsWith(
                PageLook.of(style, "")
                    .policy()
                    .split("; script")[0]
                    .replace("style-src", "style-src 'self'")));
  }

  /** HTML standard, 13.1.2.3 and 13.1.2.4: unquoted values and optional end tags. */
  @Test
  void slimLeavesAwayWhatHtmlReadsAnyway() {
    assertEquals(
        "<ul>\n<li class=a>x\n<li title=\"a b\">y</ul>\n",
        PageTrim.html("<ul>\n<li class=\"a\">x</li>\n<li title=\"a b\">y</li></ul>"));
    assertEquals("<p>a\n<p>b</p> c\n", PageTrim.html("<p>a</p>\n<p>b</p> c"));
    assertEquals("<path d=\"M1 1\" id=x />\n", PageTrim.html("<path d=\"M1 1\" id=\"x\"/>"));
    assertEquals("<a href=\"a=b\">a=\"b\"</a>\n", PageTrim.html("<a href=\"a=b\">a=\"b\"</a>"));
    assertEquals(
        "<style>a[b=\"c\"]{}</style>\n",
        PageTrim.html("<style>a[b=\"c\"]{}</style>").strip() + "\n");
  }

  @Test
  void slimKeepsWhatIsPreformatted() {
    assertEquals(
        "<p>\na\n</p>\n<pre>  a\n\n  b</pre>\n",
        PageTrim.html("  <p>\n   a\n\n </p>\n  <pre>  a\n\n  b</pre>"));
    assertEquals("a{b:c}", PageTrim.style("/* note\n over lines */\n  a{b:c}\n"));
    assertEquals("var u = 'x//y';", PageTrim.script("// note\n  var u = 'x//y';\n"));
  }
}
