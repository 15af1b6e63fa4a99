package curewindow.shop;

import curewindow.cure.Bay;
import java.net.URI;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Period;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The shop itself, as shop.yaml says it.
 *
 * @param name the name shown to customers
 * @param phone the phone number as people write it
 * @param textNumber a number for text messages, if the shop takes them
 * @param email a mail address
 * @param street the lines of the street address
 * @param addressParts the same address by its parts, as far as they are known
 * @param address where the site will be published, http or https, ending in a slash
 * @param zone the time zone of the times written in the job files
 * @param language the language of jobs that name none, and of the public pages
 * @param locale whose words, dates and units are used, where they are not those of the languages
 * @param units the units shown to customers, where they are not those of locale or language
 * @param place the place of jobs that name none
 * @param bay the air in the bay
 * @param bondEnergy activation energy of bond and crosslink, J/mol
 * @param opening opening hours by day of the week; days left out are closed
 * @param closed single days on which the shop is closed
 * @param visitWithin from how far a car is asked to come in for a look, km from the shop's place, 0
 *     or more; from farther away a photo will do
 * @param look its logo and its color
 * @param handout what the shop hands out unless told otherwise
 * @param keepPages how long customers' pages are kept after the car was last at the shop; for good
 *     where the shop does not say
 * @param send where the site is sent to
 */
public record Shop(
    String name,
    String phone,
    Optional<String> textNumber,
    Optional<String> email,
    List<String> street,
    AddressParts addressParts,
    URI address,
    ZoneId zone,
    String language,
    Optional<String> locale,
    Optional<Units> units,
    String place,
    Bay bay,
    double bondEnergy,
    Map<DayOfWeek, List<OpenHours>> opening,
    List<LocalDate> closed,
    double visitWithin,
    ShopLook look,
    HandoutChoice handout,
    Optional<Period> keepPages,
    Optional<SendTo> send) {

  /** Nobody drives farther than this for a look, km; common practice, no source. */
  public static final double VISIT_WITHIN = 100;

  /** Refuses missing parts. */
  public Shop {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(phone, "phone");
    Objects.requireNonNull(textNumber, "textNumber");
    Objects.requireNonNull(email, "email");
    Objects.requireNonNull(addressParts, "addressParts");
    Objects.requireNonNull(address, "address");
    Objects.requireNonNull(zone, "zone");
    Objects.requireNonNull(language, "language");
    Objects.requireNonNull(locale, "locale");
    Objects.requireNonNull(units, "units");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(bay, "bay");
    Objects.requireNonNull(look, "look");
    Objects.requireNonNull(handout, "handout");
    Objects.requireNonNull(keepPages, "keepPages");
    Objects.requireNonNull(send, "send");
    street = List.copyOf(street);
    opening = Map.copyOf(opening);
    closed = List.copyOf(closed);
  }

  /**
   * A shop that hands out what is usual.
   *
   * @param name the name shown to customers
   * @param phone the phone number as people write it
   * @param textNumber a number for text messages, if the shop takes them
   * @param email a mail address
   * @param street the lines of the street address
   * @param address where the site will be published
   * @param zone the time zone of the times written in the job files
   * @param language the language of jobs that name none
   * @param units the units shown to customers, where they are not those of the language
   * @param place the place of jobs that name none
   * @param bay the air in the bay
   * @param bondEnergy activation energy of bond and crosslink, J/mol
   * @param opening opening hours by day of the week
   * @param closed single days on which the shop is closed
   */
  public Shop(
      String name,
      String phone,
      Optional<String> textNumber,
      Optional<String> email,
      List<String> street,
      URI address,
      ZoneId zone,
      String language,
      Optional<Units> units,
      String place,
      Bay bay,
      double bondEnergy,
      Map<DayOfWeek, List<OpenHours>> opening,
      List<LocalDate> closed) {
    this(
        name,
        phone,
        textNumber,
        email,
        street,
        AddressParts.of(street),
        address,
        zone,
        language,
        Optional.empty(),
        units,
        place,
        bay,
        bondEnergy,
        opening,
        closed,
        VISIT_WITHIN,
        ShopLook.NONE,
        HandoutChoice.USUAL,
        Optional.empty(),
        Optional.empty());
  }
}
