package curewindow.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Severity;
import curewindow.shop.ShopFiles;
import curewindow.words.WordsLibrary;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The guides of a shop folder. The languages used are ones that do not come with the program. */
class GuideLibraryTest {

  @TempDir Path shop;

  private final Problems problems = new Problems();

  private void write(String file, String text) throws IOException {
    write(file, text.getBytes(StandardCharsets.UTF_8));
  }

  private void write(String file, byte[] bytes) throws IOException {
    Path path = shop.resolve("content/guides").resolve(file);
    Files.createDirectories(path.getParent());
    Files.write(path, bytes);
  }

  private GuideLibrary read(String... languages) {
    ShopFiles files = new ShopFiles(shop);
    return GuideLibrary.read(
        files, WordsLibrary.open(files), Samples.catalogue(), List.of(languages), problems);
  }

  @Test
  void findsGuidesByLanguageAndId() throws IOException {
    write("fi/tint.md", "# Kalvo\n\nTeksti (= shop.name =), (= job.car =), (= shop.name =).\n");
    write("fi/paint-film.md", "# Maali\n\n## Pesu\n\nTeksti.\n");
    write("fi/notes.txt", "not a guide");
    GuideLibrary library = read("fi");
    assertEquals(List.of(), problems.all());
    assertEquals(List.of("tint", "paint-film"), library.ids("fi"));
    assertEquals(List.of(), library.ids("sv"));
    Guide tint = library.find("fi", "tint").orElseThrow();
    assertEquals("tint", tint.id());
    assertEquals("fi", tint.language());
    assertEquals("Kalvo", tint.title());
    assertEquals(List.of("shop.name", "job.car"), tint.valuesUsed());
    assertTrue(library.find("fi", "notes").isEmpty());
    assertTrue(library.find("sv", "tint").isEmpty());
  }

  @Test
  void leavesOutGuidesWithErrorsOnly() throws IOException {
    write("fi/good.md", "# A\n\nText\n");
    write("fi/bad.md", "# A\n\n(= shop.nam =)\n");
    write("fi/bytes.md", new byte[] {'#', ' ', 'A', '\n', (byte) 0xC3, '\n'});
    write("fi/Bad Name.md", "# A\n");
    write("fi/empty.md", "");
    GuideLibrary library = read("fi");
    assertEquals(List.of("good"), library.ids("fi"));
    assertEquals(
        List.of(
            "content/guides/fi/Bad Name.md guide-name 0",
            "content/guides/fi/bad.md unknown-value 3",
            "content/guides/fi/bytes.md not-utf8 2",
            "content/guides/fi/empty.md no-title 0"),
        problems.all().stream().map(p -> p.file() + " " + p.code() + " " + p.line()).toList());
  }

  @Test
  void aMissingTranslationIsANotice() throws IOException {
    write("fi/tint.md", "# A\n\nText\n");
    write("fi/wrap.md", "# A\n\n(= broken\n");
    write("sv/tint.md", "# A\n\nText\n");
    read("fi", "sv");
    Problem missing = problems.all().get(problems.all().size() - 1);
    assertEquals(Severity.NOTICE, missing.severity());
    assertEquals(
        "content/guides/sv/wrap.md  the guide \"wrap\" is there in fi but not in sv  translate"
            + " content/guides/fi/wrap.md",
        missing.oneLine());
  }

  @Test
  void aByteOrderMarkAndWindowsLineEndsAreNoMatter() throws IOException {
    write("fi/tint.md", "\uFEFF# A\r\n\r\n(? service tint ?)\r\nText\r\n(? end ?)\r\n");
    Guide guide = read("fi").find("fi", "tint").orElseThrow();
    assertEquals("<p>Text</p>\n", guide.html(Samples.facts("service tint")));
    assertEquals("", guide.html(Samples.facts("")));
  }

  @Test
  void shiftsHeadingsNoDeeperThanSix() {
    Guide guide = Samples.guide("## Two\n\na\n\n##### Five\n\nb\n\n# One\n\nc");
    assertEquals(
        "<h3>Two</h3>\n<p>a</p>\n<h6>Five</h6>\n<p>b</p>\n<h2>One</h2>\n<p>c</p>\n",
        guide.html(Samples.facts(""), 1));
    assertTrue(guide.html(Samples.facts(""), 5).startsWith("<h6>Two</h6>"));
    assertThrows(IllegalArgumentException.class, () -> guide.html(Samples.facts(""), 6));
    assertThrows(IllegalArgumentException.class, () -> guide.html(Samples.facts(""), -1));
  }

  /** The worked example of docs/guides.md, as printed there. */
  @Test
  void theWorkedExampleOfTheDocumentsIsTrue() throws IOException {
    String document = Files.readString(Path.of("docs/guides.md"));
    String text = block(document, "```markdown\n# Window tint");
    String html = block(document, "```html\n");
    Guide guide =
        Samples.read(text, problems).orElseThrow(() -> new AssertionError(problems.all()));
    assertEquals(
        html,
        guide.html(
            Samples.facts(
                "hold windows-up\nhold.windows-up.until = Friday, 8:00\nshop.phone = 555 0100")));
  }

  private static String block(String document, String start) {
    int from = document.indexOf('\n', document.indexOf(start)) + 1;
    return document.substring(from, document.indexOf("```", from));
  }

  @Test
  void oneGuideServesManyJobsAtOnce() throws Exception {
    Guide guide =
        Samples.guide("(? service tint ?)\nTint (= shop.name =)\n(? else ?)\nNone\n(? end ?)\n");
    List<Callable<String>> jobs =
        IntStream.range(0, 2000)
            .<Callable<String>>mapToObj(
                i ->
                    () ->
                        guide.html(
                            Samples.facts(
                                i % 2 == 0 ? "service tint\nshop.name = B" + i : "service wrap")))
            .toList();
    ExecutorService pool = Executors.newFixedThreadPool(4);
    try {
      List<Future<String>> results = pool.invokeAll(jobs);
      for (int i = 0; i < results.size(); i++) {
        String expected = i % 2 == 0 ? "<p>Tint B" + i + "</p>\n" : "<p>None</p>\n";
        assertEquals(expected, results.get(i).get());
      }
    } finally {
      pool.shutdownNow();
    }
  }
}
