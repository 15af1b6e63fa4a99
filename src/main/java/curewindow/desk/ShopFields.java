package curewindow.desk;

import curewindow.desk.FormFields.Choice;
import curewindow.desk.FormFields.Choices;
import curewindow.desk.FormFields.Field;
import curewindow.problem.Problem;
import curewindow.shop.ShopDraft;
import curewindow.site.LoadedShop;
import curewindow.words.Words;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The fields of the shop's form, each with what is wrong with its value beside it. */
final class ShopFields {

  /** Lines of an address that a form has room for; more are shown where the file has them. */
  private static final int STREET = 3;

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
      List<String> placeProblems) {}

  private final LoadedShop shop;
  private final ShopDraft draft;
  private final FormFields fields;
  private final Words words;

  ShopFields(LoadedShop shop, ShopDraft draft, List<Problem> problems, Words words) {
    this.shop = shop;
    this.draft = draft;
    this.fields = new FormFields(problems, words);
    this.words = words;
  }

  All all(String town) {
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
        Stream.of("place", "zone").flatMap(n -> fields.at(n).stream()).distinct().toList());
  }

  /** The problems that no field shows, once the fields were asked for. */
  List<String> others() {
    return fields.others();
  }

  /** Where it is the phone's, what is wrong with it is told there. */
  private Field textNumber() {
    Field own = fields.field("text-number", draft.textNumber());
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
    return new Day(
        day,
        words.fullWeekday(MONDAY.plus(Duration.ofDays(index)), ZoneOffset.UTC),
        fields.choices(ShopForm.hours(day), ways.toList(), how, this::way),
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
