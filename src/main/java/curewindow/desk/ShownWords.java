package curewindow.desk;

import curewindow.desk.FormFields.Choice;
import curewindow.desk.FormFields.Choices;
import curewindow.desk.FormFields.Field;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the fields of a job's form show, in the words that stand on the screen. */
final class ShownWords {

  private final JobFields.Rest rest;
  private final List<JobFields.Item> items;

  ShownWords(JobFields fields) {
    this.rest = fields.rest();
    this.items = fields.items();
  }

  /** What the field of a name shows; empty where it shows nothing. */
  String of(String name) {
    if (name.equals("items")) {
      return items.stream().map(ShownWords::film).collect(Collectors.joining(", "));
    }
    return Stream.of(
            choices().filter(c -> c.name().equals(name)).map(c -> chosen(c.all().stream())),
            fields()
                .filter(f -> f.name().equals(name))
                // Days and hours as forms have them, with a space between them.
                .map(f -> f.value().replaceFirst("(?<=\\d)T(?=\\d)", " ")),
            items.stream().filter(i -> i.film().equals(name)).map(ShownWords::film))
        .flatMap(found -> found)
        .findFirst()
        .orElse("");
  }

  private static String film(JobFields.Item item) {
    return chosen(item.films().stream().flatMap(group -> group.choices().stream()));
  }

  private static String chosen(Stream<Choice> all) {
    return all.filter(Choice::chosen).map(Choice::text).collect(Collectors.joining(", "));
  }

  private Stream<Choices> choices() {
    return Stream.concat(
        Stream.of(
            rest.language(),
            rest.body(),
            rest.paint(),
            rest.finish(),
            rest.lacks(),
            rest.place(),
            rest.day(),
            rest.night()),
        items.stream().map(JobFields.Item::spots));
  }

  private Stream<Field> fields() {
    return Stream.concat(
        Stream.of(rest.firstName(), rest.year(), rest.text(), rest.pickup()),
        items.stream()
            .flatMap(
                i ->
                    Stream.of(
                        i.finished(),
                        i.batch(),
                        i.vlt(),
                        i.glassVlt(),
                        i.warranty(),
                        i.lampSurface(),
                        i.lampMinutes())));
  }
}
