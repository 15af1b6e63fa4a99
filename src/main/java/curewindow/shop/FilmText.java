package curewindow.shop;

import curewindow.problem.Nearest;
import curewindow.shop.Node.Branch;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The text of films.yaml with one film added or changed, and a film of it read into a draft. */
public final class FilmText {

  /** The file, relative to the shop folder. */
  public static final String FILE = CatalogueReader.FILMS;

  private static final String FILMS = "films";
  private static final int LONGEST = 36;

  private FilmText() {}

  /**
   * The text of the file in which one film is as a draft says. All else keeps its lines, their
   * order and comments; a new film stands after the last one of its service.
   *
   * @param text the file as it stands
   * @param id the film's id
   * @param draft what it should say of the film
   * @return the new text; empty where the file is not written a film below the other, so that
   *     somebody has to change it by hand
   */
  public static Optional<String> changed(String text, String id, FilmDraft draft) {
    Optional<Branch> root = Typed.root(text);
    Optional<Map<String, FilmDraft>> films =
        root.flatMap(r -> Typed.branch(r, FILMS)).map(FilmText::films);
    if (films.isEmpty()) {
      return Optional.empty();
    }
    Map<String, Object> after = new LinkedHashMap<>();
    order(films.get(), id, draft.service())
        .forEach(f -> after.put(f, (f.equals(id) ? draft : films.get().get(f)).tree()));
    return YamlLines.changed(
            text, root.orElseThrow(), Map.of(FILMS, trees(films.get())), Map.of(FILMS, after))
        .filter(now -> read(now, id).equals(Optional.of(draft)));
  }

  /**
   * The text of the file without one film. All else keeps its lines, their order and comments.
   *
   * @param text the file as it stands
   * @param id the film's id
   * @return the new text; empty where the film is not there or is the only one, or where the file
   *     is not written a film below the other, so that somebody has to change it by hand
   */
  public static Optional<String> without(String text, String id) {
    Optional<Branch> root = Typed.root(text);
    Map<String, FilmDraft> films =
        root.flatMap(r -> Typed.branch(r, FILMS)).map(FilmText::films).orElse(Map.of());
    if (!films.containsKey(id) || films.size() == 1) {
      return Optional.empty();
    }
    Map<String, FilmDraft> others = new LinkedHashMap<>(films);
    others.remove(id);
    Map<String, Object> after = trees(others);
    return YamlLines.changed(
            text, root.orElseThrow(), Map.of(FILMS, trees(films)), Map.of(FILMS, after))
        .filter(now -> films(now).equals(others));
  }

  private static Map<String, FilmDraft> films(String text) {
    return Typed.root(text)
        .flatMap(r -> Typed.branch(r, FILMS))
        .map(FilmText::films)
        .orElse(Map.of());
  }

  /**
   * Whether another film has the same trade name, whatever its capitals, accents and spaces.
   *
   * @param text the file as it stands
   * @param id the film's id
   * @param name its trade name
   * @return true where people could not tell the two apart
   */
  public static boolean isNameTaken(String text, String id, String name) {
    return films(text).entrySet().stream()
        .anyMatch(
            f ->
                !f.getKey().equals(id)
                    && ImportMap.key(f.getValue().name()).equals(ImportMap.key(name)));
  }

  /**
   * What the file says of a film.
   *
   * @param text the file's text
   * @param id the film's id
   * @return the draft; empty where the film is not there
   */
  public static Optional<FilmDraft> read(String text, String id) {
    return Optional.ofNullable(films(text).get(id));
  }

  /**
   * An id for a new film, made from its trade name.
   *
   * @param name the trade name
   * @param text the file as it stands, whose ids are taken
   * @return lower case letters and digits, joined with hyphens
   */
  public static String id(String name, String text) {
    Set<String> taken =
        Typed.root(text)
            .flatMap(r -> Typed.branch(r, FILMS))
            .map(films -> films.entries().keySet())
            .orElse(Set.of());
    String plain = Nearest.fold(name).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    String cut = plain.length() > LONGEST ? plain.substring(0, LONGEST) : plain;
    String base = cut.isEmpty() ? "film" : cut.replaceAll("-$", "");
    String id = base;
    for (int n = 2; taken.contains(id); n++) {
      id = base + "-" + n;
    }
    return id;
  }

  private static List<String> order(Map<String, FilmDraft> films, String id, String service) {
    List<String> order = new ArrayList<>(films.keySet());
    if (!films.containsKey(id)) {
      int last = order.size();
      for (int i = 0; i < order.size(); i++) {
        last = films.get(order.get(i)).service().equals(service) ? i + 1 : last;
      }
      order.add(last, id);
    }
    return order;
  }

  private static Map<String, Object> trees(Map<String, FilmDraft> films) {
    Map<String, Object> trees = new LinkedHashMap<>();
    films.forEach((id, film) -> trees.put(id, film.tree()));
    return trees;
  }

  private static Map<String, FilmDraft> films(Branch all) {
    Map<String, FilmDraft> films = new LinkedHashMap<>();
    all.entries().keySet().forEach(id -> Typed.branch(all, id).ifPresent(f -> put(films, id, f)));
    return films;
  }

  private static void put(Map<String, FilmDraft> films, String id, Branch film) {
    films.put(
        id,
        new FilmDraft(
            Typed.text(film, "service"),
            Typed.text(film, "name"),
            Typed.text(film, "material"),
            Typed.text(film, "thickness"),
            Typed.text(film, "permeance"),
            Typed.text(film, "vlt"),
            Typed.text(film, "reflectance"),
            Typed.text(film, "metallised"),
            Typed.text(film, "finish")));
  }
}
