package curewindow.guide;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The dates that a text quotes: once the last of them has passed there is nothing left to say. In a
 * clause that changes with a hold it is the clause that says when that hold's dates are told.
 */
final class Quotes {

  private static final Pattern DATE = Pattern.compile("hold\\.(.+)\\.(until|full)|visit\\.day");

  private final GuideFacts facts;
  private final Set<String> told;

  Quotes(GuideFacts facts) {
    this(facts, Set.of());
  }

  private Quotes(GuideFacts facts, Set<String> told) {
    this.facts = facts;
    this.told = told;
  }

  /** The same in a clause that changes with a hold. */
  Quotes in(String hold) {
    Set<String> more = new TreeSet<>(told);
    more.add(hold);
    return new Quotes(facts, more);
  }

  /** When running text is shown. */
  Shown shown(List<Piece> inline) {
    return Shown.until(
        inline.stream()
            .filter(Piece.Slot.class::isInstance)
            .map(slot -> DATE.matcher(((Piece.Slot) slot).name()))
            .filter(date -> date.matches() && !isTold(date.group(1)))
            .map(this::end)
            .toList());
  }

  private boolean isTold(String hold) {
    return hold != null && told.contains(hold);
  }

  private Optional<Instant> end(Matcher date) {
    String hold = date.group(1);
    if (hold == null) {
      return facts.invitedUntil();
    }
    return date.group(2).equals("full") ? facts.set(hold) : facts.over(hold);
  }
}
