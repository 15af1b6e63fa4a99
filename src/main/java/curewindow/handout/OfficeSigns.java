package curewindow.handout;

import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** Takes out of running text what the fonts of papers cannot print. */
final class OfficeSigns {

  private static final Pattern ISOLATED =
      Pattern.compile("[\u2066-\u2068]([^\u2066-\u2069]*)\u2069");
  private static final Pattern ISOLATES = Pattern.compile("[\u2066-\u2069]");

  private OfficeSigns() {}

  /**
   * Leaves only what can be printed.
   *
   * @param document a filled template
   * @return the signs that were taken out as no font has them, each once
   */
  static String keepPrintable(Document document) {
    TreeSet<Integer> lacking = new TreeSet<>();
    boolean turned = "rtl".equals(document.getDocumentElement().getAttribute("dir"));
    keepPrintable(document.getDocumentElement(), turned, lacking);
    return lacking.stream()
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  private static void keepPrintable(Node node, boolean turned, TreeSet<Integer> lacking) {
    if (node.getNodeType() == Node.TEXT_NODE) {
      node.setNodeValue(printable(marked(node.getNodeValue(), turned), lacking));
    }
    if (!"style".equals(node.getNodeName())) {
      NodeList inside = node.getChildNodes();
      for (int i = 0; i < inside.getLength(); i++) {
        keepPrintable(inside.item(i), turned, lacking);
      }
    }
  }

  /**
   * Marks instead of isolates, which the fonts do not have: inside one that keeps the text in its
   * own order, outside one that keeps it apart from its neighbors.
   */
  private static String marked(String said, boolean turned) {
    String outside = turned ? CommonWords.RIGHT_TO_LEFT : CommonWords.LEFT_TO_RIGHT;
    String left = said;
    for (Matcher m = ISOLATED.matcher(left); m.find(); m = ISOLATED.matcher(left)) {
      String inside = runsLeft(m.group(1)) ? CommonWords.RIGHT_TO_LEFT : CommonWords.LEFT_TO_RIGHT;
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

  private static String printable(String text, TreeSet<Integer> lacking) {
    String missing = PaperFont.lackingInAll(text);
    missing.codePoints().forEach(lacking::add);
    return TextBoxes.without(text, c -> missing.indexOf(c) >= 0 || TextBoxes.isVowelSign(c));
  }
}
