package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A shop's color: what can be read, and the nearest to what cannot. */
class ShopColorTest {

  private static Rgb rgb(String hex) {
    return Rgb.of(hex).orElseThrow();
  }

  /**
   * W3C, ACT rule afw4f7 (text has minimum contrast), passed and failed examples; #767676 and
   * #777777 on white are the two grays at the limit that WCAG's understanding document of 1.4.3
   * speaks of; 21 for black on white is of WCAG's own definition.
   */
  @ParameterizedTest
  @CsvSource({
    "#000000,#ffffff,21.0,0",
    "#333333,#ffffff,12.6,0.05",
    "#777777,#eeeeee,3.85,0.02",
    "#767676,#ffffff,4.54,0.005",
    "#777777,#ffffff,4.478,0.001"
  })
  void contrastIsThatOfThePublishedExamples(
      String text, String ground, double ratio, double least) {
    assertEquals(ratio, rgb(text).contrast(rgb(ground)), least);
    assertEquals(ratio, rgb(ground).contrast(rgb(text)), least);
  }

  /**
   * W3C web platform tests, css/css-color/oklch-001, -005, -007 and oklab-007: color and what it is
   * in sRGB, percent.
   */
  @ParameterizedTest
  @CsvSource({
    "0.51975,0.17686,142.495,0,50.196,0",
    "0.50,0.2,270,23.056,31.73,82.628",
    "0.55,0.15,345,67.293,27.791,52.28",
    "0.55,0.2,270,27.888,38.072,89.414"
  })
  void oklchIsThatOfTheBrowsersTests(
      double lightness, double chroma, double degrees, double red, double green, double blue) {
    Rgb shown = new Oklch(lightness, chroma, Math.toRadians(degrees)).rgb().orElseThrow();
    assertEquals(red, shown.red() / 2.55, 0.2);
    assertEquals(green, shown.green() / 2.55, 0.2);
    assertEquals(blue, shown.blue() / 2.55, 0.2);
    Oklch back = Oklch.of(shown);
    assertEquals(lightness, back.lightness(), 0.002);
    assertEquals(chroma, back.chroma(), 0.002);
    assertEquals(0, Math.sin(back.hue() - Math.toRadians(degrees)), 0.01);
  }

  /** White is 1, 0, 0 (B. Ottosson, the table of test values); black is 0, 0, 0 by definition. */
  @Test
  void theEndsOfGrayAreWhereTheyShallBe() {
    assertEquals(1, Oklch.of(rgb("#ffffff")).lightness(), 1e-6);
    assertEquals(0, Oklch.of(rgb("#ffffff")).chroma(), 1e-6);
    assertEquals(0, Oklch.of(rgb("#000000")).lightness(), 1e-9);
  }

  @Test
  void whatNoScreenShowsIsNoColor() {
    assertEquals(Optional.empty(), new Oklch(0.5, 0.4, 2.5).rgb());
    assertEquals(Optional.empty(), Rgb.of("0b5d57"));
    assertEquals(Optional.empty(), Rgb.of("#0b5d5"));
    assertEquals(Optional.of(new Rgb(0xFF, 0xCC, 0x00)), Rgb.of("#fc0"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "#ffcc00", "#7fd1ae", "#ff5a36", "#8ab4ff", "#ffffff", "#ff00ff", "#c0c0c0", "#e07a00",
        "#00ff00", "#00ffff"
      })
  void theNearestKeepsItsHueAndIsNotFartherThanAnyOtherThatCanBeRead(String hex) {
    Rgb asked = rgb(hex);
    assertEquals(Optional.empty(), ShopColor.of(asked));
    Rgb found = rgb(ShopColor.nearest(asked).onLight());
    assertTrue(found.contrast(ShopColor.PAGE) >= 4.5, found + " on a page");
    assertTrue(found.contrast(new Rgb(255, 255, 255)) >= 4.5, found + " on white");
    assertTrue(ShopColor.of(found).isPresent());
    double away = apart(asked, found);
    double turned = turned(asked, found);
    assertTrue(turned <= 0.006, hex + " became " + found + ", aside by " + turned);
    // All colors of a screen in steps of 3, but for those of another hue.
    for (int red = 0; red < 256; red += 3) {
      for (int green = 0; green < 256; green += 3) {
        for (int blue = 0; blue < 256; blue += 3) {
          Rgb other = new Rgb(red, green, blue);
          if (other.contrast(ShopColor.PAGE) >= 4.5 && turned(asked, other) < 0.002) {
            assertTrue(apart(asked, other) > away - 0.005, other + " is nearer than " + found);
          }
        }
      }
    }
  }

  /** How far apart in Oklab, with the hue. */
  private static double apart(Rgb a, Rgb b) {
    Oklch one = Oklch.of(a);
    Oklch two = Oklch.of(b);
    double across = one.chroma() * Math.cos(one.hue()) - two.chroma() * Math.cos(two.hue());
    double down = one.chroma() * Math.sin(one.hue()) - two.chroma() * Math.sin(two.hue());
    return Math.sqrt(
        across * across + down * down + Math.pow(one.lightness() - two.lightness(), 2));
  }

  /** How far a color lies beside the line of the hue of another one. */
  private static double turned(Rgb from, Rgb to) {
    Oklch one = Oklch.of(from);
    Oklch two = Oklch.of(to);
    boolean gray = one.chroma() < 1e-4;
    double turn = two.hue() - one.hue();
    return gray
        ? two.chroma()
        : Math.cos(turn) < 0 ? two.chroma() : Math.abs(two.chroma() * Math.sin(turn));
  }

  @ParameterizedTest
  @ValueSource(strings = {"#0b5d57", "#a52a16", "#5b2a86", "#000000", "#0000ff", "#333", "#6b5900"})
  void inTheDarkItIsALighterOneOfTheSameHue(String hex) {
    Rgb day = rgb(hex);
    Rgb night = rgb(ShopColor.of(day).orElseThrow().onDark());
    assertTrue(night.contrast(rgb("#10191d")) >= 4.5, night + " on a page at night");
    assertTrue(night.contrast(rgb("#17202a")) >= 4.5, night + " on the day's paper at night");
    assertTrue(Oklch.of(night).lightness() > Oklch.of(day).lightness(), night.hex());
    assertTrue(turned(day, night) < 0.006, night.hex());
  }

  /** The grounds are those of the style sheets. */
  @Test
  void theGroundsAreThoseOfPagesAndOfTheDaysPaper() throws Exception {
    String page = Files.readString(Path.of("site-templates/page.css"));
    assertTrue(page.contains("--paper:" + ShopColor.PAGE.hex()), page);
    String day = Files.readString(Path.of("site-templates/office-day-screen.css"));
    assertTrue(day.contains("body { background: " + ShopColor.NIGHT.hex()), day);
    double night = rgb("#10191d").luminance();
    assertTrue(page.contains("--paper:#10191d") && night < ShopColor.NIGHT.luminance());
  }
}
