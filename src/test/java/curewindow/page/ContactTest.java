package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.told.Contact;
import java.net.URI;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ContactTest {

  /** RFC 3966 section 5.1.1: visual separators may be left out; 555-01xx numbers are fictional. */
  @ParameterizedTest
  @CsvSource({
    "+1 303 555 0142, +13035550142",
    "(303) 555-0142, 3035550142",
    "+49.30/5550142, +49305550142",
    "303 555 0142 x12, 3035550142",
    "٠٣٠ ٥٥٥, 030555"
  })
  void dialsDigitsOnly(String written, String dialled) {
    assertEquals(dialled, Contact.dialled(written));
  }

  /**
   * RFC 5724 section 2.5 and RFC 6068 section 2: spaces as %20, reserved marks encoded, and letters
   * in UTF-8 once the browser has read the address.
   */
  @Test
  void preparesMessages() {
    Contact contact = new Contact(Demo.shop("S"), Demo.WORDS.of("en"));
    assertEquals("sms:+13035550143?body=a%20b%26c%3F", contact.sms("a b&c?").orElseThrow());
    assertEquals(
        "mailto:hello@care.example?subject=x%20y&body=%C3%A1%0D%0A",
        URI.create(contact.mail("x y", "á\n").orElseThrow()).toASCIIString());
    assertEquals("mailto:hello@care.example", contact.mail("", "").orElseThrow());
  }

  /** {@link Demo} is closed on December 25, 2026. */
  @Test
  void onlyClosingsThatAreStillToComeAreTold() {
    Demo demo = Demo.tint();
    assertTrue(closed(demo).contains("Dec 25"));
    demo.pickup = Demo.at("2026-12-26T16:00");
    assertEquals("", closed(demo));
    demo.pickup = Demo.at("2026-03-26T16:00");
    assertEquals("", closed(demo), "far ahead");
  }

  private static String closed(Demo demo) {
    return new Contact(demo.view())
        .card("", "").hours().stream()
            .filter(h -> h.name().equals("Closed on"))
            .map(Contact.Pair::text)
            .findFirst()
            .orElse("");
  }
}
