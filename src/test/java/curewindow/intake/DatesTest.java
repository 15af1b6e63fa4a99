package curewindow.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.intake.DateOrders.Placed;
import curewindow.shop.DateOrder;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.chrono.IsoChronology;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Days and times as people and programs write them. */
class DatesTest {

  private static final LocalDateTime TIME = LocalDateTime.of(2026, 11, 24, 14, 30);

  private static Optional<String> read(String cell, DateOrder order) {
    return DateCell.of(cell).flatMap(d -> d.told(order, d.time()));
  }

  private static DateOrders.Told told(String... cells) {
    List<Placed> placed = new ArrayList<>();
    for (String cell : cells) {
      placed.add(new Placed(placed.size() + 2, cell, DateCell.of(cell).orElseThrow()));
    }
    return DateOrders.of(placed);
  }

  /** The patterns of CLDR, as java.time of the running Java has them, are the outside source. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "en-US", "en-GB", "en-AU", "en-CA", "en-IN", "de-DE", "de-AT", "de-CH", "fr-FR", "fr-CA",
        "es-ES", "es-MX", "it-IT", "pt-BR", "pt-PT", "nl-NL", "da-DK", "sv-SE", "nb-NO", "fi-FI",
        "pl-PL", "cs-CZ", "sk-SK", "hu-HU", "ro-RO", "bg-BG", "hr-HR", "ru-RU", "uk-UA", "tr-TR",
        "el-GR", "ja-JP", "zh-CN", "zh-TW", "ko-KR", "ar-AE", "ar-EG", "he-IL", "vi-VN", "id-ID"
      })
  void theShortFormsOfCountriesAreRead(String tag) {
    Locale locale = Locale.forLanguageTag(tag);
    String pattern =
        DateTimeFormatterBuilder.getLocalizedDateTimePattern(
            FormatStyle.SHORT, null, IsoChronology.INSTANCE, locale);
    DateTimeFormatter day = DateTimeFormatter.ofPattern(pattern, locale).localizedBy(locale);
    DateTimeFormatter hour =
        DateTimeFormatter.ofLocalizedTime(FormatStyle.SHORT).localizedBy(locale);
    int d = pattern.indexOf('d');
    int m = pattern.indexOf('M');
    int y = pattern.indexOf('y');
    DateOrder order =
        y < d && y < m ? DateOrder.YEAR_FIRST : d < m ? DateOrder.DAY_FIRST : DateOrder.MONTH_FIRST;
    String written = day.format(TIME) + " " + hour.format(TIME);
    assertEquals(Optional.of("2026-11-24T14:30"), read(written, order), written);
    LocalDate early = LocalDate.of(2026, 3, 2);
    assertEquals(Optional.of("2026-03-02"), read(day.format(early), order), day.format(early));
  }

  /** The forms of ISO 8601, as java.time writes them. */
  @Test
  void isoIsReadInEveryOrder() {
    List<DateTimeFormatter> forms =
        List.of(
            DateTimeFormatter.ISO_LOCAL_DATE_TIME,
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm"),
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmm"),
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS"));
    for (DateTimeFormatter form : forms) {
      for (DateOrder order : DateOrder.values()) {
        assertEquals(Optional.of("2026-11-24T14:30"), read(form.format(TIME), order));
      }
    }
    assertEquals(
        Optional.of("2026-11-24T14:30-08:00"),
        read("2026-11-24T14:30:00-08:00", DateOrder.DAY_FIRST));
    assertEquals(
        Optional.of("2026-11-24T22:30Z"), read("2026-11-24T22:30:00Z", DateOrder.DAY_FIRST));
    assertEquals(Optional.of("2026-11-24"), read("20261124", DateOrder.DAY_FIRST));
  }

  /** Common practice, no source; the names of months are those of CLDR. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "24-Nov-26|2026-11-24",
        "24 Nov 2026|2026-11-24",
        "Nov 24, 2026 2:30 PM|2026-11-24T14:30",
        "Tuesday, November 24, 2026|2026-11-24",
        "24. November 2026, 14:30 Uhr|2026-11-24T14:30",
        "24 de noviembre de 2026|2026-11-24",
        "Di., 24.11.2026 14.30|2026-11-24T14:30",
        "24.11.26 9:05:30|2026-11-24T09:05:30",
        "24/11/2026 12:10 am|2026-11-24T00:10",
        "24/11/2026 12:10 p.m.|2026-11-24T12:10",
        "24.11.2026 14h30|2026-11-24T14:30",
        "24/11/2026 2 PM|2026-11-24T14:00"
      })
  void dailyFormsAreRead(String cell, String day) {
    assertEquals(Optional.of(day), read(cell, DateOrder.DAY_FIRST));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "31.31.2026",
        "29.02.2027",
        "soon",
        "24.11.",
        "24.11. 14:30",
        "2026",
        "24.11.2026 25:00",
        "24.11.2026 14",
        "24.11.2026 13:75",
        "24.11.2026 0:30 am",
        "=1+1",
        "Foo 24, 2026"
      })
  void whatIsNoTimeIsNoneInAnyOrder(String cell) {
    for (DateOrder order : DateOrder.values()) {
      assertEquals(Optional.empty(), read(cell, order), cell);
    }
  }

  @Test
  void theWholeColumnTellsTheOrder() {
    assertEquals(DateOrder.DAY_FIRST, order("02.03.2026", "24.11.2026"));
    assertEquals(DateOrder.MONTH_FIRST, order("02/03/2026", "11/24/2026", "2026-05-06"));
    assertEquals(DateOrder.DAY_FIRST, order("24.11.26", "02.03.26"));
    assertEquals(DateOrder.YEAR_FIRST, order("26-11-24", "32-11-02"));
    DateOrders.Order by = (DateOrders.Order) told("02.03.2026", "24.11.2026");
    assertEquals(3, by.by().orElseThrow().line());
    DateOrders.Order neutral = (DateOrders.Order) told("05/05/2026", "2026-11-24");
    assertTrue(neutral.by().isEmpty());
  }

  private static DateOrder order(String... cells) {
    return assertInstanceOf(DateOrders.Order.class, told(cells)).order();
  }

  @Test
  void whatCannotBeToldIsNotGuessed() {
    assertInstanceOf(DateOrders.Unsure.class, told("02.03.2026", "05.05.2026", "11.12.2026"));
    assertInstanceOf(DateOrders.Unsure.class, told("26-11-24"));
    DateOrders.Mixed mixed =
        assertInstanceOf(DateOrders.Mixed.class, told("02.03.2026", "24.11.2026", "11.24.2026"));
    assertEquals(3, mixed.one().line());
    assertEquals(4, mixed.other().line());
  }

  @Test
  void monthsThatLanguagesDoNotAgreeOnAreNotGuessed() {
    assertEquals(11, MonthNames.month("nov").orElseThrow());
    assertEquals(3, MonthNames.month("m\u00E4rz").orElseThrow());
    assertEquals(12, MonthNames.month("dic").orElseThrow());
    assertTrue(MonthNames.month("x").isEmpty());
  }
}
