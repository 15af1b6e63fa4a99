package curewindow.shop;

import curewindow.cure.HoldKind;
import curewindow.problem.Nearest;
import curewindow.problem.Where;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Notices what the holds of a catalogue say of each other in vain. */
final class HoldFacts {

  private final Map<String, Hold> holds;
  private final BiFunction<String, String, Where> where;
  private final Source source;
  private final Set<String> wellSpelt = new HashSet<>();

  private HoldFacts(
      Map<String, Hold> holds, BiFunction<String, String, Where> where, Source source) {
    this.holds = holds;
    this.where = where;
    this.source = source;
  }

  /**
   * Tells which facts lead nowhere, most likely as they are misspelt, and which holds wait for each
   * other.
   *
   * @param holds the holds by id
   * @param where the place of a hold's key
   * @param source where it is told
   */
  static void tell(
      Map<String, Hold> holds, BiFunction<String, String, Where> where, Source source) {
    HoldFacts facts = new HoldFacts(holds, where, source);
    Set<String> forbidden = facts.words(Hold::forbids);
    Set<String> met = facts.words(HoldFacts::meets);
    facts.spare(forbidden, met);
    facts.vain("brings", Hold::brings, forbidden, "no hold forbids", "forbids:");
    facts.vain("wants", Hold::wants, forbidden, "no hold forbids", "forbids:");
    facts.vain("forbids", Hold::forbids, met, "no hold brings or wants", "brings: or wants:");
    facts.circles();
  }

  private Set<String> words(Function<Hold, Set<String>> fact) {
    return holds.values().stream()
        .flatMap(hold -> fact.apply(hold).stream())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> meets(Hold hold) {
    Set<String> met = new TreeSet<>(hold.brings());
    met.addAll(hold.wants());
    return met;
  }

  /** Of two words that miss each other by a slip, the one that more holds name is not told. */
  private void spare(Set<String> forbidden, Set<String> met) {
    for (String word : forbidden) {
      Nearest.to(word, met)
          .filter(near -> !met.contains(word) && !forbidden.contains(near))
          .ifPresent(
              near ->
                  wellSpelt.add(
                      named(word, Hold::forbids) > named(near, HoldFacts::meets) ? word : near));
    }
  }

  private long named(String word, Function<Hold, Set<String>> fact) {
    return holds.values().stream().filter(hold -> fact.apply(hold).contains(word)).count();
  }

  private void vain(
      String key,
      Function<Hold, Set<String>> fact,
      Set<String> answered,
      String nobody,
      String otherKey) {
    for (Hold hold : holds.values()) {
      for (String word : new TreeSet<>(fact.apply(hold))) {
        if (!answered.contains(word) && !wellSpelt.contains(word)) {
          source.notice(
              "fact-leads-nowhere",
              where.apply(hold.id(), key),
              "the hold " + hold.id() + " " + key + " " + word + ", which " + nobody,
              meant(word, answered, "add it to " + otherKey + " of a hold, or delete it"));
        }
      }
    }
  }

  private static String meant(String word, Collection<String> known, String otherwise) {
    return Nearest.to(word, known).map(near -> "did you mean " + near + "?").orElse(otherwise);
  }

  /** Holds that wait for each other all end with the latest; each circle is told once. */
  private void circles() {
    Set<String> told = new HashSet<>();
    for (Hold hold : holds.values()) {
      List<String> circle = circle(hold.id());
      if (!circle.isEmpty() && circle.stream().noneMatch(told::contains)) {
        told.addAll(circle);
        String next = circle.get(circle.size() > 1 ? 1 : 0);
        source.notice(
            "holds-in-a-circle",
            where.apply(hold.id(), hold.after().contains(next) ? "after" : "brings"),
            Stream.concat(circle.stream(), Stream.of(hold.id()))
                    .collect(Collectors.joining(" after "))
                + ": they wait for each other, so all end with the latest",
            "take one of them out of after:, or one of its words out of brings: or forbids:");
      }
    }
  }

  /** The shortest way from a hold through what it waits for back to it; empty without one. */
  private List<String> circle(String start) {
    Set<String> seen = new HashSet<>();
    List<List<String>> ways = new ArrayList<>(List.of(List.of(start)));
    for (int i = 0; i < ways.size(); i++) {
      List<String> here = ways.get(i);
      for (String next : waitsFor(here.get(here.size() - 1))) {
        if (next.equals(start)) {
          return here;
        }
        if (seen.add(next)) {
          ways.add(Stream.concat(here.stream(), Stream.of(next)).toList());
        }
      }
    }
    return List.of();
  }

  /** The holds that must be over before another: those it names, and those that forbid it. */
  private Set<String> waitsFor(String id) {
    Hold hold = holds.get(id);
    Set<String> others = new LinkedHashSet<>(hold == null ? List.of() : hold.after());
    holds.values().stream()
        .filter(other -> hold != null && !other.equals(hold) && other.kind() == HoldKind.HOLD)
        .filter(other -> hold.brings().stream().anyMatch(other.forbids()::contains))
        .forEach(other -> others.add(other.id()));
    return others;
  }
}
