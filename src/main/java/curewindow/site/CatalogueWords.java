package curewindow.site;

import curewindow.cure.HoldKind;
import curewindow.problem.Nearest;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.Catalogue;
import curewindow.shop.CatalogueEntry;
import curewindow.shop.Film;
import curewindow.shop.Hold;
import curewindow.shop.ShopFiles;
import curewindow.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Compares the catalogue with the words, and what its holds say of each other. */
final class CatalogueWords {

  private final ShopFiles files;
  private final Catalogue catalogue;
  private final Words words;
  private final Problems problems;

  private CatalogueWords(ShopFiles files, Catalogue catalogue, Words words, Problems problems) {
    this.files = files;
    this.catalogue = catalogue;
    this.words = words;
    this.problems = problems;
  }

  /**
   * Tells which entries lack texts in any language that can be shown, and which facts of holds lead
   * nowhere.
   *
   * @param files the shop folder laid over the program's own files
   * @param catalogue its catalogue
   * @param words the words of the shop's language, with English behind them
   * @param problems where it is said
   */
  static void check(ShopFiles files, Catalogue catalogue, Words words, Problems problems) {
    CatalogueWords check = new CatalogueWords(files, catalogue, words, problems);
    catalogue.holds().values().forEach(check::hold);
    catalogue.services().keySet().forEach(id -> check.named("service", id));
    catalogue.spots().keySet().forEach(id -> check.named("spot", id));
    catalogue.films().values().forEach(check::film);
    check.facts(Hold::brings, "brings");
    check.facts(Hold::wants, "wants");
  }

  private void hold(Hold hold) {
    List<String> parts = new ArrayList<>(List.of("label", "until", "done", "short"));
    parts.add(hold.kind() == HoldKind.HOLD ? "gently" : "season");
    if (hold.is(Hold.Mark.SAFETY)) {
      parts.add("safety");
    }
    lack("hold", hold.id(), parts.stream().map(p -> "hold." + hold.id() + "." + p));
  }

  private void named(String kind, String id) {
    lack(kind, id, Stream.of(kind + "." + id));
  }

  private void film(Film film) {
    film.finish().ifPresent(finish -> lack("film", film.id(), Stream.of("finish." + finish)));
  }

  private void lack(String kind, String id, Stream<String> keys) {
    List<String> lacking = keys.filter(key -> !words.has(key)).toList();
    if (!lacking.isEmpty()) {
      problems.add(
          Problem.error(
              "words-lacking",
              new CatalogueEntry(kind, id).where(files),
              "the " + kind + " " + id + " has no words to be shown in",
              "add " + String.join(", ", lacking) + " to content/words/" + words.language()));
    }
  }

  /** What no hold forbids is waited for in vain, most likely because it is misspelt. */
  private void facts(Function<Hold, Set<String>> fact, String key) {
    Set<String> forbidden =
        catalogue.holds().values().stream()
            .flatMap(h -> h.forbids().stream())
            .collect(Collectors.toCollection(TreeSet::new));
    for (Hold hold : catalogue.holds().values()) {
      for (String word : new TreeSet<>(fact.apply(hold))) {
        if (!forbidden.contains(word)) {
          problems.add(
              Problem.notice(
                  "nothing-forbids",
                  new CatalogueEntry("hold", hold.id()).where(files),
                  "the hold " + hold.id() + " " + key + " " + word + ", which no hold forbids",
                  Nearest.to(word, forbidden)
                      .map(near -> "did you mean " + near + "?")
                      .orElse("add it to forbids: of a hold, or delete it")));
        }
      }
    }
  }
}
