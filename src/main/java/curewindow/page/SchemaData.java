package curewindow.page;

import curewindow.guide.GuidePart;
import curewindow.shop.OpenHours;
import curewindow.shop.Shop;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * What a page says, once more in the vocabulary of schema.org as JSON-LD: only what is also there
 * to be read, and nothing that the shop folder does not know.
 */
final class SchemaData {

  /** The nearest type of schema.org; none of its subtypes is a shop for films and coatings. */
  static final String SHOP = "AutomotiveBusiness";

  private static final Pattern QUESTION = Pattern.compile("[?\u061f\uff1f][\"'»”]?\\s*$");

  private SchemaData() {}

  /** The shop, for its home. */
  static String shop(Shop shop) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("@context", "https://schema.org");
    data.put("@type", SHOP);
    data.put("@id", shop.address().resolve("#shop").toString());
    data.put("name", shop.name());
    data.put("url", shop.address().toString());
    data.put("telephone", shop.phone());
    shop.email().ifPresent(email -> data.put("email", email));
    if (!shop.street().isEmpty()) {
      data.put("address", String.join(", ", shop.street()));
    }
    List<Object> open = hours(shop);
    if (!open.isEmpty()) {
      data.put("openingHoursSpecification", open);
    }
    if (!shop.closed().isEmpty()) {
      data.put("specialOpeningHoursSpecification", closed(shop));
    }
    return Json.of(data);
  }

  /** One entry for each stretch of hours, with the days that have it. */
  private static List<Object> hours(Shop shop) {
    Map<OpenHours, List<String>> days = new LinkedHashMap<>();
    new TreeMap<>(shop.opening())
        .forEach(
            (day, stretches) ->
                stretches.forEach(
                    s -> days.computeIfAbsent(s, k -> new ArrayList<>()).add(name(day))));
    List<Object> hours = new ArrayList<>();
    days.forEach(
        (stretch, names) -> {
          Map<String, Object> entry = specification();
          entry.put("dayOfWeek", names);
          entry.put("opens", time(stretch.from()));
          entry.put("closes", time(stretch.to()));
          hours.add(entry);
        });
    return hours;
  }

  /** Days without a time of opening are days on which a place is closed, schema.org says. */
  private static List<Object> closed(Shop shop) {
    List<Object> days = new ArrayList<>();
    shop.closed().stream()
        .sorted()
        .forEach(
            date -> {
              Map<String, Object> entry = specification();
              entry.put("validFrom", date.toString());
              entry.put("validThrough", date.toString());
              days.add(entry);
            });
    return days;
  }

  private static Map<String, Object> answer(GuidePart part) {
    Map<String, Object> answer = new LinkedHashMap<>();
    answer.put("@type", "Answer");
    answer.put("text", part.text());
    return answer;
  }

  private static Map<String, Object> specification() {
    Map<String, Object> entry = new LinkedHashMap<>();
    entry.put("@type", "OpeningHoursSpecification");
    return entry;
  }

  private static String name(DayOfWeek day) {
    String name = day.name();
    return name.charAt(0) + name.substring(1).toLowerCase(java.util.Locale.ROOT);
  }

  private static String time(LocalTime time) {
    return time.toString();
  }

  /** The questions of a guide with their answers; empty where it has none. */
  static Optional<String> questions(String language, String address, GuideBook.Chapter chapter) {
    List<Object> questions = new ArrayList<>();
    for (GuidePart part : chapter.parts()) {
      if (QUESTION.matcher(part.title()).find() && !part.text().isEmpty()) {
        Map<String, Object> question = new LinkedHashMap<>();
        question.put("@type", "Question");
        question.put("name", part.title());
        question.put("url", address + "#" + part.id());
        question.put("acceptedAnswer", answer(part));
        questions.add(question);
      }
    }
    if (questions.isEmpty()) {
      return Optional.empty();
    }
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("@context", "https://schema.org");
    data.put("@type", "FAQPage");
    data.put("url", address);
    data.put("name", chapter.title());
    data.put("inLanguage", language);
    data.put("mainEntity", questions);
    return Optional.of(Json.of(data));
  }
}
