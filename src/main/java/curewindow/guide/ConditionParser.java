package curewindow.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Reads the condition of a clause: terms {@code kind name} joined by {@code not}, {@code and} and
 * {@code or}, in this order of binding.
 */
final class ConditionParser {

  private static final Pattern WORD = Pattern.compile("\\S+");
  private static final Set<String> JOINERS = Set.of("and", "or", "not");
  private static final String SHAPE = "write it like (? service tint and not spot windshield ?)";

  private final KnownNames known;
  private final GuideSource source;
  private final List<MatchResult> words;
  private final int offset;
  private final int end;
  private final List<Condition> any = new ArrayList<>();
  private List<Condition> all = new ArrayList<>();
  private int next;
  private boolean broken;

  private ConditionParser(KnownNames known, GuideSource source, String text, int offset) {
    this.known = known;
    this.source = source;
    this.words = WORD.matcher(text).results().toList();
    this.offset = offset;
    this.end = offset + text.length();
  }

  /**
   * Reads a condition, reporting what is wrong with it.
   *
   * @param text the condition
   * @param offset where it starts in the guide's text
   * @return the condition, or empty where something was reported
   */
  static Optional<Condition> parse(String text, int offset, KnownNames known, GuideSource source) {
    return new ConditionParser(known, source, text, offset).parse();
  }

  private Optional<Condition> parse() {
    if (words.isEmpty()) {
      return malformed(end, "the clause has no condition");
    }
    while (true) {
      Optional<Condition> term = term();
      if (term.isEmpty()) {
        return Optional.empty();
      }
      all.add(term.get());
      if (next == words.size()) {
        break;
      }
      String joiner = word(next);
      if (joiner.equals("or")) {
        closeAll();
      } else if (!joiner.equals("and")) {
        return malformed(at(next), "\"and\" or \"or\" is missing before \"" + joiner + "\"");
      }
      next++;
    }
    closeAll();
    Condition whole = any.size() == 1 ? any.get(0) : new Condition.Any(any);
    return broken ? Optional.empty() : Optional.of(whole);
  }

  private void closeAll() {
    any.add(all.size() == 1 ? all.get(0) : new Condition.All(all));
    all = new ArrayList<>();
  }

  private Optional<Condition> term() {
    boolean negated = false;
    while (next < words.size() && word(next).equals("not")) {
      negated = !negated;
      next++;
    }
    if (next == words.size()) {
      return malformed(end, "the condition breaks off after \"" + word(next - 1) + "\"");
    }
    String kind = word(next);
    if (JOINERS.contains(kind)) {
      return malformed(at(next), "a term is missing before \"" + kind + "\"");
    }
    if (next + 1 == words.size() || JOINERS.contains(word(next + 1))) {
      return nameMissing(kind);
    }
    String name = word(next + 1);
    check(kind, name);
    next += 2;
    Condition term = new Condition.Term(kind, name);
    return Optional.of(negated ? new Condition.Not(term) : term);
  }

  private Optional<Condition> nameMissing(String kind) {
    if (known.kinds().contains(kind)) {
      return malformed(at(next), "the name after \"" + kind + "\" is missing");
    }
    unknownKind(kind);
    return Optional.empty();
  }

  private void check(String kind, String name) {
    if (!known.kinds().contains(kind)) {
      unknownKind(kind);
    } else if (!known.has(kind, name)) {
      broken = true;
      source.error(
          "unknown-name",
          at(next + 1),
          "the " + kind + " \"" + name + "\" is not known",
          GuideSource.suggestion(name, known.namesOf(kind)));
    }
  }

  private void unknownKind(String kind) {
    broken = true;
    source.error(
        "unknown-kind",
        at(next),
        "a clause cannot ask about \"" + kind + "\"",
        GuideSource.suggestion(kind, known.kinds()));
  }

  private Optional<Condition> malformed(int where, String message) {
    source.error("malformed-condition", where, message, SHAPE);
    return Optional.empty();
  }

  private String word(int i) {
    return words.get(i).group();
  }

  private int at(int i) {
    return offset + words.get(i).start();
  }
}
