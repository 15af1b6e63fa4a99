package curewindow.handout;

import java.util.ArrayList;
import java.util.List;

/**
 * Room for a text on paper.
 *
 * @param width millimetres
 * @param lines how many lines at most
 * @param points the size the text starts from
 * @param least the smallest size it may get
 * @param font its font
 */
record TextBox(double width, int lines, double points, double least, PaperFont font) {

  /** Where a line may end in a word that is longer than a line: Unicode's zero-width space. */
  static final String MAY_BREAK = "\u200B";

  private static final double STEP = 0.25;
  private static final double BARELY_SMALLER = 0.85;
  private static final String ELLIPSIS = "…";

  /**
   * A text made to fit.
   *
   * @param lines its lines
   * @param points their size
   * @param whole false where it had to be cut
   */
  record Fitted(List<String> lines, double points, boolean whole) {}

  /** The same room for a text that is to be no larger than another. */
  TextBox upTo(double size) {
    return new TextBox(width, lines, Math.max(least, Math.min(points, size)), least, font);
  }

  /**
   * Fits a text: on as few lines as do without much shrinking, else on all lines, shrunk to {@link
   * #least}, a word that is longer than a line being broken; what does not fit even then is cut at
   * a word, with an ellipsis.
   */
  Fitted fit(String text) {
    String clean = clean(text);
    for (int most = 1; most <= lines; most++) {
      double floor = most == lines ? least : Math.max(least, points * BARELY_SMALLER);
      for (double size = points; size >= floor; size = smaller(size, floor)) {
        List<String> wrapped = wrap(clean, size);
        if (wrapped.size() <= most && fits(wrapped, size)) {
          return new Fitted(balanced(clean, wrapped, size), size, true);
        }
      }
    }
    List<String> broken = wrap(broken(clean), least);
    return broken.size() <= lines && fits(broken, least)
        ? new Fitted(broken, least, true)
        : new Fitted(cut(wrap(clean, least)), least, false);
  }

  /** Fits a text in the size the box starts from where it has room, or else as {@link #fit}. */
  Fitted inItsSize(String text) {
    String clean = clean(text);
    List<String> wrapped = wrap(clean, points);
    return wrapped.size() <= lines && fits(wrapped, points)
        ? new Fitted(balanced(clean, wrapped, points), points, true)
        : fit(text);
  }

  private static String clean(String text) {
    return text.strip().replaceAll("[ \\t\\r\\n]+", " ");
  }

  /** As many lines, the last of which is at least half as long as the longest where words allow. */
  private List<String> balanced(String text, List<String> wrapped, double size) {
    List<String> best = wrapped;
    for (double most = longest(best, size) - 0.01;
        best.size() > 1 && isShort(best.get(best.size() - 1), longest(best, size), size);
        most = longest(best, size) - 0.01) {
      List<String> narrower = new TextBox(most, lines, points, least, font).wrap(text, size);
      if (narrower.size() > best.size() || longest(narrower, size) > most) {
        break;
      }
      best = narrower;
    }
    return best;
  }

  private boolean isShort(String last, double longest, double size) {
    return font.width(last, size) < longest / 2;
  }

  private double longest(List<String> wrapped, double size) {
    return wrapped.stream().mapToDouble(line -> font.width(line, size)).max().orElse(0);
  }

  /** The next size to try; the least one is always tried. */
  private static double smaller(double size, double least) {
    return size > least ? Math.max(least, size - STEP) : 0;
  }

  private boolean fits(List<String> wrapped, double size) {
    return wrapped.stream().allMatch(line -> font.width(line, size) <= width);
  }

  /** A part of a text that stays on one line, and what stands before it on the same line. */
  private record Piece(String before, String text) {}

  /** A word is broken only where it has no room on a line of its own. */
  private List<Piece> pieces(String text, double size) {
    List<Piece> pieces = new ArrayList<>();
    for (String word : text.split(" ")) {
      String whole = word.replace(MAY_BREAK, "");
      String before = " ";
      for (String part : font.width(whole, size) <= width ? List.of(whole) : parts(word)) {
        pieces.add(new Piece(before, part));
        before = "";
      }
    }
    return pieces;
  }

  private static List<String> parts(String word) {
    return List.of(word.split(MAY_BREAK));
  }

  private List<String> wrap(String text, double size) {
    List<String> wrapped = new ArrayList<>();
    String line = "";
    for (Piece piece : pieces(text, size)) {
      String word = piece.text();
      String longer = line.isEmpty() ? word : line + piece.before() + word;
      if (line.isEmpty() || font.width(longer, size) <= width) {
        line = longer;
      } else {
        wrapped.add(line);
        line = word;
      }
    }
    wrapped.add(line);
    return wrapped;
  }

  /** The text with breaks in words that are longer than a line. */
  private String broken(String text) {
    StringBuilder broken = new StringBuilder();
    String line = "";
    for (int at = 0; at < text.length(); at = text.offsetByCodePoints(at, 1)) {
      String sign = Character.toString(text.codePointAt(at));
      boolean full = font.width(line + sign, least) > width;
      broken.append(full ? MAY_BREAK : "").append(sign);
      line = sign.equals(" ") ? "" : full ? sign : line + sign;
    }
    return broken.toString();
  }

  private List<String> cut(List<String> wrapped) {
    List<String> kept = new ArrayList<>(wrapped.subList(0, Math.min(lines, wrapped.size())));
    for (int i = 0; i < kept.size(); i++) {
      boolean more = i == kept.size() - 1 && wrapped.size() > kept.size();
      if (more || font.width(kept.get(i), least) > width) {
        kept.set(i, shortened(kept.get(i)));
        return new ArrayList<>(kept.subList(0, i + 1));
      }
    }
    return kept;
  }

  private String shortened(String line) {
    String rest = line;
    while (!rest.isEmpty() && font.width(rest + ELLIPSIS, least) > width) {
      int space = rest.lastIndexOf(' ');
      int end = space > 0 ? space : rest.offsetByCodePoints(rest.length(), -1);
      rest = rest.substring(0, end);
    }
    return rest + ELLIPSIS;
  }
}
