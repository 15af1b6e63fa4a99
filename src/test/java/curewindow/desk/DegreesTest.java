package curewindow.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.shop.Units;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.Connection.KeyVal;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.FormElement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A shop that thinks in Fahrenheit types Fahrenheit, and reads the same number ever after. */
class DegreesTest {

  private static final Degrees US = new Degrees(Units.US);

  @TempDir Path folder;

  /** The definition: degrees Fahrenheit are 1.8 times degrees Celsius and 32. */
  @Test
  void whatIsTypedStaysWhatItIs() {
    assertEquals("22.22", US.celsius("72"));
    assertEquals("100", US.celsius("212"));
    assertEquals("-17.78", US.celsius("0"));
    assertEquals("22.5", US.celsius("72,5"));
    for (int tenths = -400; tenths <= 2120; tenths++) {
      String typed = BigDecimal.valueOf(tenths, 1).stripTrailingZeros().toPlainString();
      assertEquals(typed.equals("0.0") ? "0" : typed, US.shown(US.celsius(typed)));
    }
  }

  @Test
  void whatIsInTheFileStaysWhatItIs() {
    assertEquals("140", US.shown("60"));
    assertEquals("69.8", US.shown("21"));
    for (int hundredths = -1000; hundredths <= 10_000; hundredths++) {
      String celsius = BigDecimal.valueOf(hundredths, 2).stripTrailingZeros().toPlainString();
      assertEquals(
          0, new BigDecimal(US.celsius(US.shown(celsius))).compareTo(new BigDecimal(celsius)));
    }
    assertEquals("warm", US.shown("warm"));
    assertEquals("warm", US.celsius("warm"));
    assertEquals("21", new Degrees(Units.METRIC).shown("21"));
    assertEquals("21.5", new Degrees(Units.METRIC).celsius("21,5"));
  }

  private static List<String> form(Document page, String name, String value) {
    List<String> fields = new ArrayList<>();
    for (KeyVal field : ((FormElement) page.selectFirst("main form")).formData()) {
      // This is what jsoup makes of an empty value that is chosen.
      String typed = field.value().equals("on") ? "" : field.value();
      fields.addAll(List.of(field.key(), field.key().equals(name) ? value : typed));
    }
    fields.addAll(List.of("do", "save"));
    return fields;
  }

  private static String post(DeskClient desk, String path, List<String> fields) {
    return desk.post(path, fields.toArray(String[]::new)).body();
  }

  private static String value(DeskClient desk, String name) {
    return Jsoup.parse(desk.page("/shop")).selectFirst("[name=" + name + "]").val();
  }

  @Test
  void theBayOfAShopInTheStatesIsAskedInFahrenheit() throws IOException {
    try (DeskClient desk = DeskClient.open(folder)) {
      Path file = desk.shop.resolve("shop.yaml");
      String before = Files.readString(file);
      Document page = Jsoup.parse(desk.page("/shop"));
      assertEquals("69.8", page.selectFirst("[name=bay.temperature]").val());
      assertTrue(page.text().contains("Bay, \u00B0F"), page.text());
      assertTrue(
          page.text().contains("Left empty, it is 70\u00B0F, 50% and 140\u00B0F"), page.text());
      post(desk, "/shop", form(page, "email", "desk@quillhaven.example"));
      assertEquals(
          before.lines().filter(l -> l.contains("temperature:")).toList(),
          Files.readString(file).lines().filter(l -> l.contains("temperature:")).toList(),
          "what nobody touched stays to the letter");
      page = Jsoup.parse(desk.page("/shop"));
      String saved = post(desk, "/shop", form(page, "bay.temperature", "72"));
      assertTrue(Files.readString(file).contains("temperature: 22.22"), saved);
      assertEquals("72", value(desk, "bay.temperature"));
      String wrong =
          post(desk, "/shop", form(Jsoup.parse(desk.page("/shop")), "bay.temperature", "200"));
      // The reader's range is -10 to 50 degrees Celsius.
      assertTrue(wrong.contains("from 14 to 122"), wrong);
      page = Jsoup.parse(desk.page("/shop"));
      post(desk, "/shop", form(page, "units", "metric"));
      assertEquals("22.22", value(desk, "bay.temperature"), "the same, in the other unit");
    }
  }

  @Test
  void theLampOfACarIsAskedInTheUnitsOfTheShop() throws IOException {
    try (DeskClient desk = DeskClient.open(folder)) {
      String path = "/job/Q-3101/change";
      Document page = Jsoup.parse(desk.page(path));
      assertTrue(page.text().contains("Film under the lamp, \u00B0F"), page.text());
      List<String> lit = form(page, "items[1].lamp.surface", "140");
      lit.set(lit.indexOf("items[1].lamp.minutes") + 1, "20");
      String saved = post(desk, path, lit);
      String file = Files.readString(desk.shop.resolve("jobs/Q-3101.yaml"));
      assertTrue(file.contains("surface: 60,") || file.contains("surface: 60\n"), file + saved);
      page = Jsoup.parse(desk.page(path));
      assertEquals("140", page.selectFirst("[name=items[1].lamp.surface]").val());
      assertFalse(page.text().contains("\u00B0C"), page.text());
    }
  }
}
