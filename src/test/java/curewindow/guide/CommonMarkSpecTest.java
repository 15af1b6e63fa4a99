package curewindow.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.vladsch.flexmark.html.HtmlRenderer;
import com.vladsch.flexmark.parser.Parser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.TreeSet;
import org.commonmark.testutil.TestResources;
import org.commonmark.testutil.example.Example;
import org.commonmark.testutil.example.ExampleReader;
import org.junit.jupiter.api.Test;

/**
 * Our clauses and values leave CommonMark as it is: all examples of the published specification
 * (spec.commonmark.org, as packed in {@code org.commonmark:commonmark-test-util}).
 */
class CommonMarkSpecTest {

  private static final List<Example> EXAMPLES = ExampleReader.readExamples(TestResources.getSpec());

  @Test
  void theSpecificationIsAllThere() {
    assertTrue(EXAMPLES.size() > 600, "only " + EXAMPLES.size() + " examples were found");
  }

  @Test
  void everyExampleComesOutAsWithoutOurSyntax() {
    Parser plainParser = Parser.builder(GuideMarkdown.options()).build();
    HtmlRenderer plainRenderer = HtmlRenderer.builder(GuideMarkdown.options()).build();
    GuideMarkdown ours = new GuideMarkdown(false);
    for (Example example : EXAMPLES) {
      String source = example.getSource();
      String plain = plainRenderer.render(plainParser.parse(source));
      assertEquals(plain, ours.render(ours.parse(source)), example::toString);
    }
  }

  @Test
  void onlyTheListedExamplesDifferFromTheSpecification() throws IOException {
    GuideMarkdown ours = new GuideMarkdown(false);
    TreeSet<String> different = new TreeSet<>();
    for (int i = 0; i < EXAMPLES.size(); i++) {
      Example example = EXAMPLES.get(i);
      if (!ours.render(ours.parse(example.getSource())).equals(tabs(example.getHtml()))) {
        different.add("%03d %s".formatted(i + 1, example.getSection()));
      }
    }
    assertEquals(String.join("\n", known()), String.join("\n", different));
  }

  /** The specification prints tabs in its examples as arrows, and so does the package in HTML. */
  private static String tabs(String html) {
    return html.replace('\u2192', '\t');
  }

  private static List<String> known() throws IOException {
    try (var in = CommonMarkSpecTest.class.getResourceAsStream("/guide/spec-differences.txt")) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return text.lines().filter(line -> !line.isBlank() && !line.startsWith("#")).toList();
    }
  }
}
