package curewindow.handout;

import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** Takes out of texts what the fonts of papers cannot print. */
final class PaperSigns {

  private static final Pattern ISOLATED =
      Pattern.compile("[\u2066-\u2068]([^\u2066-\u2069]*)\u2069");
  private static final Pattern ISOLATES = Pattern.compile("[\u2066-\u2069]");

  private static final String LEFT_TO_RIGHT = "\u200E";
  private static final String RIGHT_TO_LEFT = "\u200F";

  private PaperSigns() {}

  /**
   * Leaves only what can be printed.
   *
   * @param document a filled template
   * @return the signs that were taken out as no font has them, each once
   */
  static String keepPrintable(Document document) {
    TreeSet<Integer> lacking = new TreeSet<>();
    keepPrintable(document.getDocumentElement(), false, lacking);
    return lacking.stream()
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  private static void keepPrintable(Node node, boolean turned, TreeSet<Integer> lacking) {
    if (node.getNodeType() == Node.TEXT_NODE) {
      PaperFont.lackingInAll(node.getNodeValue()).codePoints().forEach(lacking::add);
      node.setNodeValue(marked(printable(node.getNodeValue()), turned));
    }
    if (!"style".equals(node.getNodeName())) {
      boolean inside = node instanceof Element e ? isTurned(e, turned) : turned;
      NodeList children = node.getChildNodes();
      for (int i = 0; i < children.getLength(); i++) {
        keepPrintable(children.item(i), inside, lacking);
      }
    }
  }

  private static boolean isTurned(Element element, boolean turned) {
    return element.hasAttribute("dir") ? element.getAttribute("dir").equals("rtl") : turned;
  }

  /**
   * Marks instead of isolates, which the fonts do not have: inside one that keeps the text in its
   * own order, outside one that keeps it apart from its neighbors.
   */
  private static String marked(String said, boolean turned) {
    String outside = turned ? RIGHT_TO_LEFT : LEFT_TO_RIGHT;
    String left = said;
    for (Matcher m = ISOLATED.matcher(left); m.find(); m = ISOLATED.matcher(left)) {
      String inside = runsLeft(m.group(1)) ? RIGHT_TO_LEFT : LEFT_TO_RIGHT;
      String own = outside + inside + m.group(1) + inside + outside;
      left = left.substring(0, m.start()) + own + left.substring(m.end());
    }
    return ISOLATES.matcher(left).replaceAll(outside);
  }

  /** By the first letter that has a direction (UAX 9, rules P2 and P3). */
  private static boolean runsLeft(String text) {
    return text.codePoints()
        .filter(Character::isLetter)
        .mapToObj(c -> PaperFont.isRightToLeft(Character.toString(c)))
        .findFirst()
        .orElse(false);
  }

  /** A text without the signs that no font has, and without Arabic vowel signs. */
  static String printable(String text) {
    String missing = PaperFont.lackingInAll(text);
    return without(text, c -> missing.indexOf(c) >= 0 || isVowelSign(c));
  }

  /** A text without some signs. */
  static String without(String text, IntPredicate signs) {
    return text.codePoints()
        .filter(signs.negate())
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  /** Whether a character is an Arabic vowel sign, which nothing here can place. */
  static boolean isVowelSign(int c) {
    return c >= 0x064B && c <= 0x0652 || c == 0x0670;
  }
}
