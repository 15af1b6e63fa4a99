package curewindow.told;

import curewindow.shop.OpenHours;
import curewindow.shop.Shop;
import curewindow.words.Words;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/** How to reach the shop: links, address and hours, ready for a page. */
public final class Contact {

  /**
   * A name and what belongs to it.
   *
   * @param name such as a day of the week
   * @param text such as its hours
   */
  public record Pair(String name, String text) {}

  /**
   * The shop as pages show it.
   *
   * @param name its name
   * @param phone its number as it writes it
   * @param tel the link that calls it
   * @param call what that link says
   * @param sms the link that prepares a text message, where it takes them
   * @param mail the link that prepares a mail, where it has an address
   * @param email that address
   * @param street the lines of its address
   * @param hours days and hours, then the days on which it is closed
   */
  public record Card(
      String name,
      String phone,
      String tel,
      String call,
      Optional<String> sms,
      Optional<String> mail,
      Optional<String> email,
      List<String> street,
      List<Pair> hours) {}

  /** Closings further away than this do not concern somebody who has just picked up a car. */
  private static final int NEAR_DAYS = 120;

  private final Shop shop;
  private final Words words;
  private final Predicate<LocalDate> concerns;
  private final Function<LocalDate, String> day;

  /**
   * The shop with all its closings.
   *
   * @param shop the shop
   * @param words the words of the language
   */
  public Contact(Shop shop, Words words) {
    this.shop = shop;
    this.words = words;
    this.concerns = day -> true;
    this.day = words::date;
  }

  /**
   * The shop with those closings that concern a job: from its last pickup on, and not far ahead.
   *
   * @param view the job
   */
  public Contact(JobView view) {
    LocalDate pickup = view.timeline().pickup().atZone(view.shop().zone()).toLocalDate();
    this.shop = view.shop();
    this.words = view.words();
    this.concerns = day -> !day.isBefore(pickup) && day.isBefore(pickup.plusDays(NEAR_DAYS));
    this.day =
        day -> words.monthDay(day.atTime(LocalTime.NOON).toInstant(ZoneOffset.UTC), ZoneOffset.UTC);
  }

  /**
   * The card with links that prepare a message.
   *
   * @param subject of a mail; may be empty
   * @param body of a mail or text message; may be empty
   * @return the card
   */
  public Card card(String subject, String body) {
    return new Card(
        shop.name(),
        shop.phone(),
        "tel:" + dialled(shop.phone()),
        words.text("page.reach.call", Map.of("phone", shop.phone())),
        sms(body),
        mail(subject, body),
        shop.email(),
        shop.street(),
        hours());
  }

  /**
   * A text message to the shop (RFC 5724).
   *
   * @param body what it says; may be empty
   * @return the link, where the shop takes text messages
   */
  public Optional<String> sms(String body) {
    return shop.textNumber().map(number -> sms(number, body));
  }

  /**
   * A text message (RFC 5724).
   *
   * @param number as people write it; empty where whoever sends it chooses
   * @param body what it says; may be empty
   * @return the link
   */
  public static String sms(String number, String body) {
    // Some phones take a body without a number only behind this sign: known from use, no source.
    return "sms:" + dialled(number) + query("body", body, number.isEmpty() ? "?&" : "?");
  }

  /**
   * A mail to the shop (RFC 6068).
   *
   * @param subject may be empty
   * @param body may be empty; its lines end in CR and LF in the link
   * @return the link, where the shop has an address for mail
   */
  public Optional<String> mail(String subject, String body) {
    return shop.email()
        .map(
            to ->
                "mailto:"
                    + encode(to).replace("%40", "@")
                    + query("subject", subject, "?")
                    + query("body", body.replace("\n", "\r\n"), subject.isEmpty() ? "?" : "&"));
  }

  private static String query(String name, String value, String before) {
    return value.isEmpty() ? "" : before + name + "=" + encode(value);
  }

  /** Letters beyond ASCII stay as they are, as addresses in HTML allow (URL Standard). */
  private static String encode(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              String one = Character.toString(c);
              boolean letter = c > 0xA0 && Character.isLetter(c);
              out.append(letter ? one : URLEncoder.encode(one, StandardCharsets.UTF_8));
            });
    return out.toString().replace("+", "%20");
  }

  /**
   * A number as it is dialled (RFC 3966).
   *
   * @param phone as somebody wrote it
   * @return digits and a leading plus; letters after the number, such as x12, end it
   */
  public static String dialled(String phone) {
    StringBuilder digits = new StringBuilder();
    for (char c : phone.strip().toCharArray()) {
      if (Character.isLetter(c)) {
        break;
      }
      if (c == '+' && digits.isEmpty()) {
        digits.append(c);
      }
      int digit = Character.digit(c, 10);
      if (digit >= 0) {
        digits.append(digit);
      }
    }
    return digits.toString();
  }

  /**
   * The opening hours, one line for days with the same ones, as plain text.
   *
   * @return the lines, none where the shop states no hours
   */
  public List<String> hoursText() {
    return lines(hours());
  }

  /**
   * The same without the single days on which the shop is closed, for what is kept for years.
   *
   * @return the lines, none where the shop states no hours
   */
  public List<String> weekText() {
    return lines(hoursOfTheWeek());
  }

  private List<String> lines(List<Pair> hours) {
    return shop.opening().isEmpty()
        ? List.of()
        : hours.stream().map(h -> h.name() + ": " + h.text()).toList();
  }

  /** The opening hours of the week without the days on which the shop is closed. */
  List<String> openDays() {
    List<String> open = new ArrayList<>();
    week().stream()
        .filter(days -> !shop.opening().getOrDefault(days.from(), List.of()).isEmpty())
        .forEach(
            days ->
                open.add(
                    words.text(
                        "page.comma",
                        Map.of("first", days(days.from(), days.to()), "next", open(days.from())))));
    return open;
  }

  /** Days of the week that follow each other and have the same hours. */
  private record Days(DayOfWeek from, DayOfWeek to) {}

  private List<Days> week() {
    List<Days> week = new ArrayList<>();
    DayOfWeek[] days = DayOfWeek.values();
    for (int from = 0; from < days.length; ) {
      int to = from;
      while (to + 1 < days.length && Objects.equals(open(days[from]), open(days[to + 1]))) {
        to++;
      }
      week.add(new Days(days[from], days[to]));
      from = to + 1;
    }
    return week;
  }

  private List<Pair> hoursOfTheWeek() {
    return week().stream().map(d -> new Pair(days(d.from(), d.to()), open(d.from()))).toList();
  }

  private List<Pair> hours() {
    List<Pair> pairs = new ArrayList<>(hoursOfTheWeek());
    List<LocalDate> closed = shop.closed().stream().filter(concerns).sorted().toList();
    if (!closed.isEmpty()) {
      String between = words.text("page.hours.between");
      String dates = String.join(between, closed.stream().map(day).toList());
      pairs.add(new Pair(words.text("page.hours.closed-days"), dates));
    }
    return pairs;
  }

  private String days(DayOfWeek from, DayOfWeek to) {
    String first = words.text("page.weekday." + from.getValue());
    String last = words.text("page.weekday." + to.getValue());
    String both =
        from == to ? first : words.text("page.hours.days", Map.of("first", first, "last", last));
    return Listing.capital(both);
  }

  private String open(DayOfWeek day) {
    List<OpenHours> hours = shop.opening().getOrDefault(day, List.of());
    if (hours.isEmpty()) {
      return words.text("page.hours.closed");
    }
    return String.join(
        ", ",
        hours.stream()
            .map(
                h ->
                    words.text(
                        "page.hours.range", Map.of("from", time(h.from()), "to", time(h.to()))))
            .toList());
  }

  private String time(LocalTime at) {
    return words.time(at.atDate(LocalDate.EPOCH).toInstant(ZoneOffset.UTC), ZoneOffset.UTC);
  }
}
