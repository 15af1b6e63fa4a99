package curewindow.desk;

import curewindow.cure.Bay;
import curewindow.desk.FormFields.Choice;
import curewindow.desk.FormFields.Choices;
import curewindow.desk.FormFields.Field;
import curewindow.problem.Problem;
import curewindow.shop.ShopDraft;
import curewindow.shop.ShopText;
import curewindow.site.LoadedShop;
import curewindow.words.Words;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The fields of the shop's form, each with what is wrong with its value beside it. */
final class ShopFields {

  /** Lines of an address that a form has room for; more are shown where the file has them. */
  private static final int STREET = 3;

  private static final Field NOWHERE = new Field("", "", List.of());
  private static final String PASSWORD = "^(sftp://[^/@:]*):.*@";

  /** A Monday, of which the names of the days are taken. */
  private static final Instant MONDAY = Instant.parse("2027-01-04T12:00:00Z");

  /** A day of the week: its name, whether it is open, and from when to when. */
  record Day(String name, String label, Choices how, String from, String to, Times times) {}

  /** The names of the two fields of a day. */
  record Times(String from, String to) {}

  /** All fields. */
  record All(
      Field name,
      Field phone,
      Choices texts,
      Field textNumber,
      Field email,
      Choices street,
      Field address,
      Choices language,
      List<Day> days,
      Field closed,
      Field town,
      List<String> placeProblems,
      More more) {}

  /**
   * What most shops leave as it is.
   *
   * @param degrees the units of temperatures, and sign what they are called
   * @param usual what the bay is like where nobody says
   * @param open whether something of it is wrong
   */
  record More(
      Field locale,
      Choices units,
      String degrees,
      String sign,
      String usual,
      Field temperature,
      Field humidity,
      Field lamp,
      Field to,
      Field hostKey,
      Field keyFile,
      boolean open) {}

  private final LoadedShop shop;
  private final ShopDraft draft;
  private final Degrees degrees;
  private final FormFields fields;
  private final Words words;

  ShopFields(LoadedShop shop, ShopDraft draft, List<Problem> problems, Words words) {
    this.shop = shop;
    this.draft = draft;
    this.degrees = Degrees.of(shop, draft.language(), draft.units());
    this.fields = new FormFields(degrees.told(problems), words);
    this.words = words;
  }

  /**
   * All fields.
   *
   * @param town what was typed to find the place
   * @param own whether it is also said where the site is sent to; else what is wrong there is told
   *     with the problems that no field shows
   */
  All all(String town, boolean own) {
    return new All(
        fields.field("name", draft.name()),
        fields.field("phone", draft.phone()),
        texts(),
        textNumber(),
        fields.field("email", draft.email()),
        street(),
        fields.field("address", draft.address()),
        fields.choices("language", shop.read().languages(), draft.language(), this::language),
        days(),
        fields.field("closed", String.join(", ", draft.closed())),
        new Field(ShopForm.TOWN, town, List.of()),
        placeProblems(town),
        more(own));
  }

  /** Who typed a town has still to choose one of the places that are shown. */
  private List<String> placeProblems(String town) {
    List<String> all =
        Stream.of("place", "zone").flatMap(n -> fields.at(n).stream()).distinct().toList();
    return all.isEmpty() || town.isBlank() || !draft.place().isEmpty()
        ? all
        : List.of(
            words.text("desk.shop.choose", Map.of("weather", words.text("desk.shop.weather"))));
  }

  private More more(boolean own) {
    Field locale = fields.field("locale", draft.locale());
    Choices units =
        fields.choices(
            "units",
            List.of("", "us", "metric"),
            draft.units(),
            u -> words.text("desk.shop.in-units." + (u.isEmpty() ? "usual" : u)));
    List<Field> bay =
        List.of(
            fields.field("bay.temperature", degrees.shown(draft.bay().temperature())),
            fields.field("bay.humidity", draft.bay().humidity()),
            fields.field("bay.lamp", degrees.shown(draft.bay().lamp())));
    return more(locale, units, bay, own ? send() : List.of(NOWHERE, NOWHERE, NOWHERE));
  }

  private String usualBay() {
    Words ours = shop.words().of(words.language(), degrees.units());
    return words.text(
        "desk.shop.bay-hint",
        Map.of(
            "bay", ours.temperature(Bay.USUAL_TEMPERATURE),
            "lamp", ours.temperature(Bay.USUAL_LAMP)));
  }

  private List<Field> send() {
    // A password that somebody typed there is refused, and not shown either.
    return List.of(
        fields.field("send.to", draft.send().to().replaceFirst(PASSWORD, "$1@")),
        fields.field("send.host-key", draft.send().hostKey()),
        fields.field("send.key-file", draft.send().keyFile()));
  }

  private More more(Field locale, Choices units, List<Field> bay, List<Field> send) {
    boolean open =
        !units.problems().isEmpty()
            || Stream.of(List.of(locale), bay, send)
                .flatMap(List::stream)
                .anyMatch(f -> !f.problems().isEmpty());
    return new More(
        locale,
        units,
        degrees.units().id(),
        degrees.sign(),
        usualBay(),
        bay.get(0),
        bay.get(1),
        bay.get(2),
        send.get(0),
        send.get(1),
        send.get(2),
        open);
  }

  /** A value of a draft as people read it. */
  static String said(Object value) {
    return value instanceof List<?> lines
        ? lines.stream().map(String::valueOf).collect(Collectors.joining(", "))
        : String.valueOf(value);
  }

  /** The problems that no field shows, once the fields were asked for. */
  List<String> others() {
    return fields.others(ShopText.FILE);
  }

  /** Where it is the phone's, what is wrong with it is told there. */
  private Field textNumber() {
    Field own = fields.field("text-number", draft.textNumber());
    if (draft.textNumber().equals(ShopForm.UNTOLD)) {
      return new Field(own.name(), "", own.problems());
    }
    return ofTexts().equals(ShopForm.OTHER) ? own : new Field(own.name(), "", List.of());
  }

  private String language(String tag) {
    return shop.words().of(tag).text("language.name");
  }

  private String ofTexts() {
    if (draft.textNumber().equals(draft.phone())) {
      return ShopForm.SAME;
    }
    return draft.textNumber().isEmpty() ? ShopForm.NONE : ShopForm.OTHER;
  }

  private Choices texts() {
    return fields.choices(
        ShopForm.TEXTS,
        List.of(ShopForm.SAME, ShopForm.OTHER, ShopForm.NONE),
        ofTexts(),
        how -> words.text("desk.shop.by-text." + how));
  }

  private Choices street() {
    int lines = Math.max(STREET, draft.street().size());
    return new Choices(
        "street",
        IntStream.range(0, lines)
            .mapToObj(i -> i < draft.street().size() ? draft.street().get(i) : "")
            .map(line -> new Choice(line, "", false))
            .toList(),
        fields.at("street"));
  }

  private List<Day> days() {
    List<Day> days = new ArrayList<>();
    String above = "";
    for (String day : ShopDraft.days()) {
      String hours = draft.opening().getOrDefault(day, "");
      days.add(day(day, hours, above));
      above = hours;
    }
    return days;
  }

  private Day day(String day, String hours, String above) {
    int index = ShopDraft.days().indexOf(day);
    boolean same = !hours.isEmpty() && ShopForm.plain(hours).equals(ShopForm.plain(above));
    boolean whole = hours.contains(",");
    String how =
        hours.isEmpty()
            ? ShopForm.CLOSED
            : same ? ShopForm.SAME : whole ? ShopForm.AS + hours : ShopForm.OPEN;
    Stream<String> ways =
        Stream.of(
                Stream.of(ShopForm.CLOSED, ShopForm.OPEN),
                index == 0 ? Stream.<String>empty() : Stream.of(ShopForm.SAME),
                whole ? Stream.of(ShopForm.AS + hours) : Stream.<String>empty())
            .flatMap(Function.identity());
    String[] span = whole ? new String[] {"", ""} : (hours + "-").split("-", -1);
    // What is wrong with the day above is told there.
    Choices choices = fields.choices(ShopForm.hours(day), ways.toList(), how, this::way);
    return new Day(
        day,
        words.fullWeekday(MONDAY.plus(Duration.ofDays(index)), ZoneOffset.UTC),
        same ? new Choices(choices.name(), choices.all(), List.of()) : choices,
        same ? "" : padded(span[0]),
        same ? "" : padded(span[1]),
        new Times(ShopForm.from(day), ShopForm.to(day)));
  }

  private String way(String how) {
    return how.startsWith(ShopForm.AS)
        ? how.substring(ShopForm.AS.length())
        : words.text("desk.shop.day." + how);
  }

  /** As fields of browsers want a time. */
  private static String padded(String time) {
    String plain = time.strip();
    return plain.matches("[0-9]:[0-9]{2}") ? "0" + plain : plain;
  }
}
