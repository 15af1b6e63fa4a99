package curewindow.guide;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Settles the pieces of a guide for one job.
 *
 * <p>A block whose text needs a value that the job lacks is lost whole, so that no half sentence is
 * shown. A lost first paragraph takes its list item along, a lost cell its row, a lost head its
 * table; a list, quote or table of which all is lost goes too, and so does a heading under which
 * nothing is left. Lists that only a clause parts are joined to one.
 */
final class PieceWriter {

  private final GuideFacts facts;
  private final int headingShift;
  private final Quotes quotes;

  PieceWriter(GuideFacts facts, int headingShift) {
    this(facts, headingShift, new Quotes(facts));
  }

  private PieceWriter(GuideFacts facts, int headingShift, Quotes quotes) {
    this.facts = facts;
    this.headingShift = headingShift;
    this.quotes = quotes;
  }

  /** A block as it comes out: lost, or with its HTML; {@code EDGE} stands for a clause's edge. */
  private record Out(Piece.Tag tag, String inner, boolean lost, Shown shown) {

    static final Out EDGE = new Out(null, "", false, Shown.ALWAYS);

    static Out lost(Piece.Tag tag) {
      return new Out(tag, "", true, Shown.ALWAYS);
    }

    Out as(Shown when) {
      return new Out(tag, inner, lost, when);
    }

    Out named(String id) {
      String attributes = tag.attributes() + " id=\"" + id + "\"";
      return new Out(new Piece.Tag(tag.name(), attributes), inner, lost, shown);
    }

    int headingLevel() {
      return tag == null ? 0 : tag.headingLevel();
    }
  }

  /** The HTML of a guide's pieces. */
  String write(List<Piece> pieces) {
    List<Out> kept = new ArrayList<>();
    for (Out out : shown(pieces)) {
      if (!out.lost()) {
        dropEmptyHeadings(kept, out.headingLevel());
        kept.add(out);
      }
    }
    dropEmptyHeadings(kept, 1);
    endHeadings(kept);
    StringBuilder html = new StringBuilder();
    kept.forEach(out -> html.append(html(out)).append('\n'));
    return html.toString();
  }

  /** Drops headings at the end that the next heading, of a level above 0, leaves empty. */
  private static void dropEmptyHeadings(List<Out> kept, int level) {
    while (level > 0 && !kept.isEmpty()) {
      Out last = kept.get(kept.size() - 1);
      if (last.headingLevel() < level) {
        return;
      }
      kept.remove(kept.size() - 1);
    }
  }

  /** A heading is shown as long as anything under it, unless a clause or its own date ends it. */
  private static void endHeadings(List<Out> kept) {
    for (int i = 0; i < kept.size(); i++) {
      Out heading = kept.get(i);
      if (heading.headingLevel() > 0 && heading.shown().equals(Shown.ALWAYS)) {
        kept.set(i, heading.as(Shown.asLongAs(under(heading, kept.subList(i + 1, kept.size())))));
      }
    }
  }

  private static List<Shown> under(Out heading, List<Out> after) {
    return after.stream()
        .takeWhile(o -> o.headingLevel() == 0 || o.headingLevel() > heading.headingLevel())
        .filter(o -> o.headingLevel() == 0)
        .map(Out::shown)
        .toList();
  }

  /** What is shown of a list of blocks, lost ones included, lists parted by clauses joined. */
  private List<Out> shown(List<Piece> blocks) {
    List<Out> flat = new ArrayList<>();
    flatten(blocks, flat);
    List<Out> joined = new ArrayList<>();
    int before = -1;
    boolean edge = false;
    for (Out out : flat) {
      if (out == Out.EDGE) {
        edge = true;
      } else if (out.lost()) {
        joined.add(out);
      } else if (edge && before >= 0 && continues(joined.get(before), out)) {
        Out first = joined.get(before);
        String items = first.inner() + out.inner().stripLeading();
        Shown shown = Shown.asLongAs(List.of(first.shown(), out.shown()));
        joined.set(before, new Out(first.tag(), items, false, shown));
        edge = false;
      } else {
        before = joined.size();
        joined.add(out);
        edge = false;
      }
    }
    return joined;
  }

  private static boolean continues(Out first, Out second) {
    return first.tag() != null
        && second.tag() != null
        && first.tag().isList()
        && !first.shown().clause()
        && !second.shown().clause()
        && first.tag().name().equals(second.tag().name());
  }

  private void flatten(List<Piece> blocks, List<Out> out) {
    for (Piece piece : blocks) {
      if (piece instanceof Piece.Choice choice) {
        out.add(Out.EDGE);
        flatten(choice.shown(facts), out);
        out.add(Out.EDGE);
      } else if (piece instanceof Piece.Timed timed) {
        timed(timed, out);
      } else if (piece instanceof Piece.Asked asked) {
        out.add(settle(asked.blocks().get(0)).named("q-" + asked.question().id()));
        flatten(asked.blocks().subList(1, asked.blocks().size()), out);
      } else if (!(piece instanceof Piece.Photo)) {
        out.add(settle(piece));
      }
    }
  }

  /** Both parts, marked for the page's script; what holds only later is hidden until then. */
  private void timed(Piece.Timed timed, List<Out> out) {
    if (!facts.has("hold", timed.hold())) {
      return;
    }
    Optional<Instant> over = timed.set() ? facts.set(timed.hold()) : facts.over(timed.hold());
    PieceWriter inside = new PieceWriter(facts, headingShift, quotes.in(timed.hold()));
    out.add(Out.EDGE);
    inside.shown(timed.before()).stream()
        .map(o -> over.map(end -> o.as(o.shown().before(end))).orElse(o))
        .forEach(out::add);
    over.ifPresent(
        end ->
            inside.shown(timed.after()).stream()
                .map(o -> o.as(o.shown().after(end)))
                .forEach(out::add));
    out.add(Out.EDGE);
  }

  private Out settle(Piece piece) {
    if (piece instanceof Piece.Group group) {
      return group(group);
    }
    boolean leaf = piece instanceof Piece.Leaf;
    Piece.Tag tag = leaf ? ((Piece.Leaf) piece).tag() : null;
    List<Piece> inline = leaf ? ((Piece.Leaf) piece).inline() : ((Piece.Run) piece).inline();
    return inline(inline)
        .map(html -> new Out(tag, html, false, quotes.shown(inline)))
        .orElse(Out.lost(tag));
  }

  private Out group(Piece.Group group) {
    List<Out> blocks = shown(group.blocks());
    if (isLost(group, blocks)) {
      return Out.lost(group.tag());
    }
    blocks.removeIf(Out::lost);
    boolean whole = endsWhole(group, blocks);
    boolean lines = !group.tag().name().equals("li");
    StringBuilder html = new StringBuilder(lines ? "\n" : "");
    for (Out out : blocks) {
      html.append(html(whole ? out.as(Shown.ALWAYS) : out)).append(lines ? "\n" : "");
    }
    boolean headed = group.tag().name().equals("table") && blocks.size() > 1;
    List<Shown> parts = blocks.stream().skip(headed ? 1 : 0).map(Out::shown).toList();
    Shown shown = whole ? Shown.toLast(parts) : Shown.asLongAs(parts);
    return new Out(group.tag(), html.toString(), false, shown);
  }

  /** Whether an item or a row goes as a whole once the last date that it quotes has passed. */
  private static boolean endsWhole(Piece.Group group, List<Out> blocks) {
    return switch (group.tag().name()) {
      case "tr" -> true;
      case "li" ->
          !blocks.isEmpty()
              && blocks.get(0).shown().to().isPresent()
              && blocks.stream().noneMatch(o -> o.shown().clause());
      default -> false;
    };
  }

  private static boolean isLost(Piece.Group group, List<Out> blocks) {
    boolean nothing = blocks.stream().allMatch(Out::lost);
    return switch (group.tag().name()) {
      case "tr", "thead" -> blocks.stream().anyMatch(Out::lost);
      case "table" -> nothing || blocks.stream().anyMatch(Out::lost);
      case "li" -> !group.blocks().isEmpty() && (nothing || blocks.get(0).lost());
      default -> !group.blocks().isEmpty() && nothing;
    };
  }

  /** A list that its items leave one by one is not marked itself: an empty one is not seen. */
  private String html(Out out) {
    boolean empties = out.tag() != null && out.tag().isList() && !out.shown().clause();
    String when = empties ? "" : out.shown().attributes();
    if (out.tag() == null) {
      return when.isEmpty() ? out.inner() : "<span" + when + ">" + out.inner() + "</span>";
    }
    int level = out.tag().headingLevel();
    String name = level == 0 ? out.tag().name() : "h" + Math.min(6, level + headingShift);
    String open = "<" + name + out.tag().attributes() + when + ">";
    return name.equals("hr") ? open : open + out.inner() + "</" + name + ">";
  }

  /** Running text, or empty where the job lacks a value in it. */
  Optional<String> inline(List<Piece> pieces) {
    StringBuilder html = new StringBuilder();
    for (Piece piece : pieces) {
      if (piece instanceof Piece.Fixed fixed) {
        html.append(closes(html, fixed.html()) ? fixed.html().substring(1) : fixed.html());
      } else if (piece instanceof Piece.Slot slot) {
        Optional<String> value = facts.value(slot.name());
        if (value.isEmpty()) {
          return Optional.empty();
        }
        String text = escape(value.get());
        html.append(
            facts.changes(slot.name())
                ? "<span data-date=\"" + escape(slot.name()) + "\">" + text + "</span>"
                : text);
      }
    }
    return Optional.of(html.toString());
  }

  /** Whether a value ends with the full stop that follows it, such as "7 p.m.". */
  private static boolean closes(StringBuilder before, String after) {
    return before.length() > 0
        && before.charAt(before.length() - 1) == '.'
        && after.startsWith(".")
        && !after.startsWith("..");
  }

  private static String escape(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }
}
