package curewindow.words;

import curewindow.cure.HoldKind;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.Catalogue;
import curewindow.shop.CatalogueEntry;
import curewindow.shop.Hold;
import curewindow.shop.ShopFiles;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The texts that the entries of a catalogue need, and those that no language has for them. */
final class CatalogueTexts {

  private static final Pattern HOLD_TEXT =
      Pattern.compile(
          "hold[.][^.]+[.](label|until|done|short|event|gently|season|safety|sticker|order)");

  private static final Map<String, Set<String>> HOLD_VALUES =
      Map.of("until", Set.of("when"), "gently", Set.of("full"));

  /** An entry and the names of its texts. */
  private record Need(CatalogueEntry entry, List<String> texts) {}

  private final List<Need> needs;

  private final ShopFiles files;

  private CatalogueTexts(List<Need> needs, ShopFiles files) {
    this.needs = needs;
    this.files = files;
  }

  /**
   * What a catalogue needs.
   *
   * @param files where it stands
   */
  static CatalogueTexts of(Catalogue catalogue, ShopFiles files) {
    List<Need> needs = new ArrayList<>();
    catalogue.services().keySet().forEach(id -> needs.add(named("service", id)));
    catalogue.spots().keySet().forEach(id -> needs.add(named("spot", id)));
    catalogue.holds().values().forEach(hold -> needs.add(hold(hold)));
    catalogue
        .films()
        .values()
        .forEach(film -> film.finish().ifPresent(f -> needs.add(film(film.id(), f))));
    return new CatalogueTexts(needs, files);
  }

  /**
   * What a text of a hold may use; a shop names its own holds, so no text of the program says it.
   *
   * @param key the name of a text
   * @return the names of values, or empty where it is no text of a hold
   */
  static Optional<Set<String>> values(String key) {
    Matcher hold = HOLD_TEXT.matcher(key);
    return hold.matches()
        ? Optional.of(HOLD_VALUES.getOrDefault(hold.group(1), Set.of()))
        : Optional.empty();
  }

  /** Whether a text makes no sense without its date. */
  static boolean needsDate(String key) {
    return values(key).filter(v -> v.contains("when")).isPresent();
  }

  private static Need named(String kind, String id) {
    return new Need(new CatalogueEntry(kind, id), List.of(kind + "." + id));
  }

  private static Need film(String id, String finish) {
    return new Need(new CatalogueEntry("film", id), List.of("finish." + finish));
  }

  private static Need hold(Hold hold) {
    List<String> parts = new ArrayList<>(List.of("label", "until", "done", "short", "event"));
    parts.add(hold.kind() == HoldKind.HOLD ? "gently" : "season");
    if (hold.is(Hold.Mark.SAFETY)) {
      parts.add("safety");
    }
    return new Need(
        new CatalogueEntry("hold", hold.id()),
        parts.stream().map(part -> "hold." + hold.id() + "." + part).toList());
  }

  /** The names of all texts that are needed. */
  Set<String> texts() {
    return needs.stream().flatMap(n -> n.texts().stream()).collect(Collectors.toSet());
  }

  /**
   * Tells which entries lack texts: an error where a language that is shown lacks them, a notice
   * where only others do.
   *
   * @param shown the languages of the jobs and of the shop
   * @param known the names of the texts that each language or English has
   * @param problems where it is told
   */
  void tell(Set<String> shown, Map<String, Set<String>> known, Problems problems) {
    for (Need need : needs) {
      Set<String> in = new TreeSet<>(known.keySet());
      in.removeIf(language -> known.get(language).containsAll(need.texts()));
      Set<String> now = new TreeSet<>(in);
      now.retainAll(shown);
      if (!in.isEmpty()) {
        Set<String> told = now.isEmpty() ? in : now;
        List<String> texts =
            need.texts().stream()
                .filter(text -> told.stream().anyMatch(l -> !known.get(l).contains(text)))
                .toList();
        problems.add(problem(need, texts, told, !now.isEmpty()));
      }
    }
  }

  private Problem problem(Need need, List<String> texts, Set<String> in, boolean shown) {
    // English stands in for every other language, so that one addition will do.
    String to = in.size() == 1 ? in.iterator().next() : WordsLibrary.FALLBACK;
    String fix =
        "add " + inShort(texts) + " to " + WordsLibrary.FOLDER + "/" + to + "/catalogue.yaml";
    CatalogueEntry entry = need.entry();
    Where where = entry.where(files);
    String what = "the " + entry.kind() + " " + entry.id() + " lacks texts";
    return shown
        ? Problem.error("words-lacking", where, what + "; its id stands in for them", fix)
        : Problem.notice(
            "words-lacking", where, what + " in " + String.join(", ", in) + ", not used yet", fix);
  }

  /** The first name whole, of the others the last part: {@code hold.foam.label, .until}. */
  private static String inShort(List<String> texts) {
    String first = texts.get(0);
    String stem = first.substring(0, first.lastIndexOf('.'));
    return first
        + texts.stream()
            .skip(1)
            .map(text -> ", " + text.substring(stem.length()))
            .collect(Collectors.joining());
  }
}
