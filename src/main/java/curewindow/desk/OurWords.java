package curewindow.desk;

import curewindow.desk.FormFields.Choice;
import curewindow.intake.TableGlance;
import curewindow.shop.Film;
import curewindow.site.LoadedShop;
import curewindow.words.Words;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Our columns of a job, and what may stand in them, as the desk says it. */
final class OurWords {

  private final LoadedShop shop;
  private final Words words;

  OurWords(LoadedShop shop, Words words) {
    this.shop = shop;
    this.words = words;
  }

  /** What a column of ours is called. */
  String column(String column) {
    return words.text("desk.import.column." + column);
  }

  /** What a column may hold; nothing where that is no name. */
  List<String> ids(String column) {
    return switch (column) {
      case "language" -> shop.read().languages();
      case "place" -> List.copyOf(shop.read().places().keySet());
      case "lacks" -> known("desk.lacks.", TableGlance.ours(column, shop.read().catalogue()));
      default -> TableGlance.ours(column, shop.read().catalogue());
    };
  }

  private List<String> known(String begins, Collection<String> ids) {
    return ids.stream().filter(id -> words.has(begins + id)).toList();
  }

  /** Whether there are so many names that one of them is typed rather than chosen. */
  static boolean isTyped(String column) {
    return column.equals("place");
  }

  /** The choices of a column; what is chosen is one of them, whatever it is. */
  List<Choice> choices(String column, Collection<String> chosen) {
    return Stream.concat(ids(column).stream(), chosen.stream())
        .distinct()
        .map(id -> new Choice(id, name(column, id), chosen.contains(id)))
        .toList();
  }

  private String name(String column, String id) {
    return switch (column) {
      case "language" -> shop.words().of(id).text("language.name");
      case "place" ->
          Optional.ofNullable(shop.read().places().get(id))
              .map(p -> words.place(p.name(), p.zone()))
              .orElse(id);
      case "film" ->
          Optional.ofNullable(shop.read().catalogue().films().get(id)).map(Film::name).orElse(id);
      case "body" -> text("car.body.", id);
      case "paint" -> text("desk.paint.", id);
      case "paint-finish" -> text("finish.", id);
      case "lacks" -> text("desk.lacks.", id);
      case "parking-day", "parking-night" -> text("desk.parking.", id);
      case "service" -> text("service.", id);
      case "spots" -> text("spot.", id);
      default -> id;
    };
  }

  private String text(String begins, String id) {
    return words.has(begins + id) ? words.text(begins + id) : id;
  }
}
