package curewindow.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.climate.Places;
import curewindow.shop.ShopFiles;
import curewindow.shop.Units;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;

/** Expected texts: the patterns of the Unicode CLDR for en-US and es-US, from memory. */
final class DatesAndNumbersTest {

  private static final ZoneId DENVER = ZoneId.of("America/Denver");
  private static final Instant TWO = Instant.parse("2026-12-03T21:00:00Z");
  private static final Instant HALF_PAST = Instant.parse("2026-12-03T21:30:00Z");

  private final WordsLibrary library = WordsLibrary.open(new ShopFiles(Path.of("no-such-shop")));
  private final Words en = library.of("en");
  private final Words es = library.of("es");

  @Test
  void englishDatesAndHours() {
    assertEquals("Thursday, December 3", en.day(TWO, DENVER));
    assertEquals("Thu, Dec 3", en.shortDay(TWO, DENVER));
    assertEquals("Thu", en.weekday(TWO, DENVER));
    assertEquals("Dec 3", en.monthDay(TWO, DENVER));
    assertEquals("2\u00A0PM", en.time(TWO, DENVER));
    assertEquals("2:30\u00A0PM", en.time(HALF_PAST, DENVER));
    assertEquals("Thursday, December 3, 2\u00A0PM", en.dayAndTime(TWO, DENVER));
    assertEquals("December 3, 2026", en.date(LocalDate.of(2026, 12, 3)));
  }

  /** Nobody has to think which of the two is 12 PM; midnight says on which side of it it is. */
  @Test
  void noonAndMidnightHaveTheirNames() {
    Instant noon = Instant.parse("2026-12-03T19:00:00Z");
    Instant midnight = Instant.parse("2026-12-03T07:00:00Z");
    assertEquals("noon", en.time(noon, DENVER));
    assertEquals("12:30\u00A0PM", en.time(noon.plusSeconds(1800), DENVER));
    assertEquals("Thursday, December 3, noon", en.dayAndTime(noon, DENVER));
    assertEquals("midnight", en.time(midnight, DENVER));
    assertEquals("12:30\u00A0AM", en.time(midnight.plusSeconds(1800), DENVER));
    assertEquals("Thursday, December 3, just after midnight", en.dayAndTime(midnight, DENVER));
    assertEquals("mediodía", es.time(noon, DENVER));
    assertEquals("jueves 3 de diciembre al mediodía", es.dayAndTime(noon, DENVER));
    assertEquals("medianoche", es.time(midnight, DENVER));
    assertEquals(
        "jueves 3 de diciembre justo después de medianoche", es.dayAndTime(midnight, DENVER));
    assertEquals(
        "jueves 3 de diciembre a las 12:30\u00A0p.m.",
        es.dayAndTime(noon.plusSeconds(1800), DENVER));
    Words ar = library.of("ar");
    assertEquals("الظهر", ar.time(noon, DENVER));
    assertTrue(ar.dayAndTime(noon, DENVER).endsWith("، عند الظهر"), ar.dayAndTime(noon, DENVER));
    assertEquals("منتصف الليل", ar.time(midnight, DENVER));
  }

  @Test
  void placesAreNamedWhereCldrNamesThem() {
    Words ar = library.of("ar");
    ZoneId phoenix = ZoneId.of("America/Phoenix");
    assertEquals("فينكس", ar.place("Phoenix, AZ", phoenix));
    assertEquals("القاهرة، مصر", ar.place("Cairo, Egypt", ZoneId.of("Africa/Cairo")));
    assertEquals("El Cairo, Egipto", es.place("Cairo, Egypt", ZoneId.of("Africa/Cairo")));
    assertEquals("Phoenix, AZ", es.place("Phoenix, AZ", phoenix));
    assertEquals(
        "أسونسيون، باراغواي", ar.place("Asuncion, Paraguay", ZoneId.of("America/Asuncion")));
    // Seattle keeps the time of Los Angeles, and is not that city: its name is in the list.
    ZoneId pacific = ZoneId.of("America/Los_Angeles");
    assertEquals("سياتل", ar.place("Seattle, Washington", pacific));
    assertEquals("Seattle, Washington", es.place("Seattle, Washington", pacific));
    assertEquals("Mill Creek, Washington", ar.place("Mill Creek, Washington", pacific));
    assertEquals("Múnich, Alemania", es.place("Munich, Germany", ZoneId.of("Europe/Berlin")));
    assertEquals("لوس انجلوس", ar.place("Los Angeles, California", pacific));
    assertEquals("Los Ángeles, California", es.place("Los Angeles, California", pacific));
    // A country has a name also where its city is called the same.
    assertEquals("Frankfurt, Alemania", es.place("Frankfurt, Germany", ZoneId.of("Europe/Berlin")));
    assertEquals(
        "Kinsasa, República Democrática del Congo",
        es.place("Kinshasa, Democratic Republic of the Congo", ZoneId.of("Africa/Kinshasa")));
    assertEquals("Ankara, Turquía", es.place("Ankara, Turkey", ZoneId.of("Europe/Istanbul")));
    assertEquals("Ankara, Turkey", en.place("Ankara, Turkey", ZoneId.of("Europe/Istanbul")));
    assertEquals("Phoenix, AZ", en.place("Phoenix, AZ", phoenix));
  }

  /** An Arabic page has no Latin letters for a place that comes with the program. */
  @Test
  void everyBuiltInPlaceHasAnArabicName() {
    Words ar = library.of("ar");
    List<String> latin =
        Places.builtIn().values().stream()
            .map(p -> ar.place(p.name(), p.zone()))
            .filter(name -> name.matches("(?s).*[A-Za-z].*"))
            .toList();
    assertEquals(List.of(), latin);
  }

  @Test
  void spanishDatesAndHours() {
    assertEquals("jueves 3 de diciembre", es.day(TWO, DENVER));
    assertEquals("jueves", es.fullWeekday(TWO, DENVER));
    assertEquals("3 de diciembre", es.fullMonthDay(TWO, DENVER));
    assertEquals("jueves 3 de diciembre a las 2\u00A0p.m.", es.dayAndTime(TWO, DENVER));
    Instant one = Instant.parse("2026-12-03T20:00:00Z");
    assertEquals("jueves 3 de diciembre a la 1\u00A0p.m.", es.dayAndTime(one, DENVER));
    assertEquals("jue, 3 de dic", es.shortDay(TWO, DENVER));
    assertEquals("jue", es.weekday(TWO, DENVER));
    assertEquals("3 dic", es.monthDay(TWO, DENVER));
    assertEquals("2\u00A0p.m.", es.time(TWO, DENVER));
    assertEquals("2:30\u00A0p.m.", es.time(HALF_PAST, DENVER));
    assertEquals("3 de diciembre de 2026", es.date(LocalDate.of(2026, 12, 3)));
  }

  /** A date that could be mistaken for one of this year has its year. */
  @Test
  void datesFarFromThePickupHaveTheirYear() {
    Words near = en.around(TWO);
    for (String day : List.of("2026-06-03T20:00:00Z", "2027-09-03T20:00:00Z")) {
      Instant at = Instant.parse(day);
      assertEquals(en.day(at, DENVER), near.day(at, DENVER));
      assertEquals(en.monthDay(at, DENVER), near.monthDay(at, DENVER));
      assertEquals(en.month(at, DENVER), near.month(at, DENVER));
    }
    assertEquals("Tue, Jun 2, 2026", near.shortDay(Instant.parse("2026-06-02T20:00:00Z"), DENVER));
    Instant far = Instant.parse("2027-11-15T21:00:00Z");
    assertEquals("Mon, Nov 15", en.shortDay(far, DENVER));
    assertEquals("Mon, Nov 15, 2027", near.shortDay(far, DENVER));
    assertEquals("Monday, November 15, 2027", near.day(far, DENVER));
    assertEquals("Nov 15, 2027", near.monthDay(far, DENVER));
    assertEquals("November 15, 2027", near.fullMonthDay(far, DENVER));
    assertEquals("November 2027", near.month(far, DENVER));
    assertEquals("Monday, November 15, 2027, 2\u00A0PM", near.dayAndTime(far, DENVER));
    Words spanish = es.around(TWO);
    assertEquals(
        "lunes 15 de noviembre de 2027 a las 2\u00A0p.m.", spanish.dayAndTime(far, DENVER));
    assertEquals("noviembre de 2027", spanish.month(far, DENVER));
  }

  @Test
  void hoursOfTheDayClockKeepTheirMinutes() {
    Dates spain = new Dates(com.ibm.icu.util.ULocale.forLanguageTag("es-ES"));
    assertEquals("14:00", spain.time(TWO, DENVER));
    assertEquals("8:00", spain.time(Instant.parse("2026-12-03T15:00:00Z"), DENVER));
  }

  /** The Java runtime carries its own copy of CLDR: long dates must agree with it. */
  @Test
  void datesAgreeWithTheJavaRuntime() {
    for (LocalDate d = LocalDate.of(2024, 1, 1); d.getYear() < 2028; d = d.plusDays(1)) {
      assertEquals(java(d, Locale.US), en.date(d));
      assertEquals(java(d, Locale.forLanguageTag("es-US")), es.date(d));
      Instant noon = d.atTime(12, 0).atZone(DENVER).toInstant();
      assertEquals(
          d.format(DateTimeFormatter.ofPattern("EEEE, MMMM d", Locale.US)), en.day(noon, DENVER));
    }
  }

  private static String java(LocalDate date, Locale locale) {
    return date.format(DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG).withLocale(locale));
  }

  @Test
  void theClockOfTheCarIsShownWhateverTheMachineIsSetTo() {
    TimeZone before = TimeZone.getDefault();
    Locale locale = Locale.getDefault();
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      Words fresh = library.of("en", Units.US);
      assertEquals("Thursday, December 3, 2\u00A0PM", fresh.dayAndTime(TWO, DENVER));
      assertEquals("1,234.5", fresh.number(1234.5, 1));
    } finally {
      TimeZone.setDefault(before);
      Locale.setDefault(locale);
    }
  }

  @Test
  void hoursOnEitherSideOfAChangeOfTheClocks() {
    // United States, 2026-11-01: 2 o'clock summer time becomes 1 o'clock (15 U.S.C. 260a).
    assertEquals("1\u00A0AM", en.time(Instant.parse("2026-11-01T07:00:00Z"), DENVER));
    assertEquals("1\u00A0AM", en.time(Instant.parse("2026-11-01T08:00:00Z"), DENVER));
    assertEquals("2\u00A0AM", en.time(Instant.parse("2026-11-01T09:00:00Z"), DENVER));
  }

  @Test
  void numbers() {
    assertEquals("1,234.57", en.number(1234.567, 2));
    assertEquals("3", en.number(3.0, 2));
    assertEquals("0", en.number(-0.2, 0));
    assertEquals("2.5", en.number(2.5, 1));
    assertEquals("3", en.number(2.5, 0));
    assertEquals("-4", en.number(-4, 0));
    for (double bad : List.of(Double.NaN, Double.POSITIVE_INFINITY)) {
      assertThrows(IllegalArgumentException.class, () -> en.number(bad, 0));
      assertThrows(IllegalArgumentException.class, () -> en.temperature(bad));
    }
    assertThrows(IllegalArgumentException.class, () -> en.number(1, 7));
    assertThrows(IllegalArgumentException.class, () -> en.number(1, -1));
  }

  @Test
  void temperatures() {
    assertEquals("32°F", en.temperature(0));
    assertEquals("-40°F", en.temperature(-40));
    assertEquals("73°F", en.temperature(23));
    assertEquals("23°C", library.of("en", Units.METRIC).temperature(23));
    assertEquals("73\u00A0°F", es.temperature(23));
  }
}
