package curewindow.calendar;

import com.github.mangstadt.vinnie.SyntaxStyle;
import com.github.mangstadt.vinnie.VObjectProperty;
import com.github.mangstadt.vinnie.io.VObjectPropertyValues;
import com.github.mangstadt.vinnie.io.VObjectWriter;
import curewindow.shop.AddressParts;
import curewindow.shop.Shop;
import curewindow.told.Contact;
import curewindow.words.Words;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The shop as an entry for a phone's address book (vCard 4.0, RFC 6350). */
public final class ShopCard {

  /** The file's name in the site. */
  public static final String FILE = "shop.vcf";

  private ShopCard() {}

  /**
   * The shop's card. It has nothing that the shop's public pages do not say.
   *
   * @param shop the shop
   * @param words the words of the shop's language
   * @return the text, lines ended by CR LF and folded at 75 octets; to be written as UTF-8
   */
  public static String text(Shop shop, Words words) {
    StringWriter text = new StringWriter();
    try (VObjectWriter card = new VObjectWriter(text, SyntaxStyle.NEW)) {
      card.writeBeginComponent("VCARD");
      card.writeVersion("4.0");
      for (VObjectProperty property : properties(shop, words)) {
        card.writeProperty(property);
      }
      card.writeEndComponent("VCARD");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return Fold.lines(text.toString());
  }

  private static List<VObjectProperty> properties(Shop shop, Words words) {
    List<VObjectProperty> all = new ArrayList<>();
    all.add(new VObjectProperty("KIND", "org"));
    all.add(new VObjectProperty("FN", plain(shop.name())));
    all.add(new VObjectProperty("ORG", escaped(shop.name())));
    all.add(typed("TEL", plain(shop.phone()), "work", "voice"));
    shop.textNumber().ifPresent(n -> all.add(typed("TEL", plain(n), "text")));
    shop.email().ifPresent(e -> all.add(typed("EMAIL", plain(e), "work")));
    if (!shop.street().isEmpty()) {
      all.add(new VObjectProperty("ADR", address(shop.addressParts())));
    }
    all.add(new VObjectProperty("URL", shop.address().toString()));
    all.add(new VObjectProperty("LANG", words.language()));
    // Without single closed days: who keeps a card keeps it for years.
    List<String> hours = new Contact(shop, words).weekText();
    if (!hours.isEmpty()) {
      all.add(new VObjectProperty("NOTE", plain(String.join("\n", hours))));
    }
    return all;
  }

  private static VObjectProperty typed(String name, String value, String... types) {
    VObjectProperty property = new VObjectProperty(name, value);
    for (String type : types) {
      property.getParameters().put("TYPE", type);
    }
    return property;
  }

  /** RFC 6350 section 6.3.1: the first two fields, a box and a room, should be empty. */
  private static String address(AddressParts parts) {
    String street = String.join(",", parts.street().stream().map(ShopCard::escaped).toList());
    return Stream.of(parts.city(), parts.region(), parts.postalCode(), parts.country())
        .map(ShopCard::escaped)
        .collect(Collectors.joining(";", ";;" + street + ";", ""));
  }

  /** A value that has no parts: a semicolon in it needs no mark, and some readers keep the mark. */
  private static String plain(String text) {
    return escaped(text).replace("\\;", ";");
  }

  /** A part of a value, as RFC 6350 section 3.4 has it. */
  private static String escaped(String text) {
    return VObjectPropertyValues.escape(Plain.text(text)).replace("\n", "\\n");
  }
}
