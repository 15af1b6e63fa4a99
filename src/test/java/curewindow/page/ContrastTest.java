package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problems;
import curewindow.shop.Looks;
import curewindow.shop.ShopLook;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Contrast of the style sheet's colors, by WCAG 2.1's definition. */
class ContrastTest {

  private static double luminance(String hex) {
    double sum = 0;
    double[] weight = {0.2126, 0.7152, 0.0722};
    for (int i = 0; i < 3; i++) {
      double c = Integer.parseInt(hex.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
      sum += weight[i] * (c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
    }
    return sum;
  }

  private static double contrast(String a, String b) {
    double x = luminance(a);
    double y = luminance(b);
    return (Math.max(x, y) + 0.05) / (Math.min(x, y) + 0.05);
  }

  /** W3C ACT rule afw4f7 and Understanding success criterion 1.4.3. */
  @Test
  void formulaGivesThePublishedValues() {
    assertEquals(12.6, contrast("#333333", "#ffffff"), 0.05);
    assertEquals(3.85, contrast("#777777", "#eeeeee"), 0.02);
    assertEquals(4.54, contrast("#767676", "#ffffff"), 0.005);
    assertEquals(4.478, contrast("#777777", "#ffffff"), 0.001);
  }

  private static Map<String, String> colors(String css) {
    Map<String, String> colors = new LinkedHashMap<>();
    Matcher m = Pattern.compile("--([a-z]+):(#[0-9a-f]{6}|#[0-9a-f]{3})\\b").matcher(css);
    while (m.find()) {
      String c = m.group(2);
      colors.put(m.group(1), c.length() == 7 ? c : c.replaceAll("([0-9a-f])", "$1$1"));
    }
    return colors;
  }

  @Test
  void textReachesAaAndStateMarksReachThreeToOne() {
    check(ShopLook.NONE);
  }

  /** Dark and bright, of all hues; each is near the limit or far from it. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "#0b5d57", "#a52a16", "#5b2a86", "#000000", "#0000ff", "#333333", "#6b5900", "#b3005e",
        "#00703c", "#6e6e6e"
      })
  void soItIsInAShopsOwnColor(String hex, @TempDir Path shop) throws IOException {
    ShopLook look = Looks.color(shop, hex);
    String css = PageLook.customer(Demo.FILES, look, new Problems()).style();
    assertTrue(css.contains(":root{--stamp:" + hex + "}"), css);
    for (String ground : List.of("#ffffff", "#f3f2ea")) {
      assertTrue(contrast(hex, ground) >= 4.5, ground);
    }
    for (String ground : List.of("#10191d", "#17202a")) {
      assertTrue(contrast(look.color().orElseThrow().onDark(), ground) >= 4.5, ground);
    }
    check(look);
  }

  private static void check(ShopLook look) {
    Problems problems = new Problems();
    String css =
        PageLook.customer(Demo.FILES, look, problems).style()
            + SharedFile.read(Demo.FILES, problems).below().text();
    Matcher roots = Pattern.compile(":root\\{[^}]*\\}").matcher(css);
    int schemes = 0;
    Map<String, String> all = new LinkedHashMap<>();
    List<Map<String, String>> lights = new ArrayList<>();
    while (roots.find()) {
      Map<String, String> colors = colors(roots.group());
      // The shop's own color stands after those of the page, by day and in the dark as they do.
      boolean own = colors.keySet().equals(Set.of("stamp"));
      if (own) {
        Map<String, String> under = new LinkedHashMap<>(lights.get(lights.size() - 2));
        under.putAll(colors);
        colors = under;
      }
      lights.add(colors);
      assertTrue(colors.keySet().containsAll(List.of("paper", "ink", "soft", "stamp")));
      schemes++;
      for (String text : new String[] {"ink", "soft", "stamp"}) {
        double ratio = contrast(colors.get(text), colors.get("paper"));
        assertTrue(ratio >= 4.5, text + " on paper " + ratio + " in " + roots.group());
      }
      assertTrue(contrast(colors.get("ink"), colors.get("paper")) >= 7, "ink");
      assertTrue(contrast(colors.get("rule"), colors.get("paper")) >= 2.5, "rule");
      all.putAll(colors);
    }
    int own = look.color().isPresent() ? 2 : 0;
    assertEquals(3 + own, schemes, "light, dark and print");
    Matcher used = Pattern.compile("var\\(--([a-z]+)\\)").matcher(css);
    while (used.find()) {
      // The typeface, and the letters of a stamped date, are no colors.
      boolean other = used.group(1).equals("serif") || used.group(1).equals("n");
      assertTrue(all.containsKey(used.group(1)) || other, used.group());
    }
    String rules = css.replaceAll(":root\\{[^}]*\\}", "");
    assertTrue(!Pattern.compile("#[0-9a-f]{6}\\b").matcher(rules).find(), "a color by the way");
  }
}
