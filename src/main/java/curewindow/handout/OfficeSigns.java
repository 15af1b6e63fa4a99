package curewindow.handout;

import java.util.TreeSet;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** Takes out of running text what the fonts of papers cannot print. */
final class OfficeSigns {

  private static final Pattern ISOLATES = Pattern.compile("[\u2066-\u2069]");
  private static final String LEFT_TO_RIGHT = "\u200E";

  private OfficeSigns() {}

  /**
   * Leaves only what can be printed.
   *
   * @param document a filled template
   * @return the signs that were taken out as no font has them, each once
   */
  static String keepPrintable(Document document) {
    TreeSet<Integer> lacking = new TreeSet<>();
    keepPrintable(document.getDocumentElement(), lacking);
    return lacking.stream()
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  private static void keepPrintable(Node node, TreeSet<Integer> lacking) {
    if (node.getNodeType() == Node.TEXT_NODE) {
      node.setNodeValue(printable(node.getNodeValue(), lacking));
    }
    if (!"style".equals(node.getNodeName())) {
      NodeList inside = node.getChildNodes();
      for (int i = 0; i < inside.getLength(); i++) {
        keepPrintable(inside.item(i), lacking);
      }
    }
  }

  private static String printable(String said, TreeSet<Integer> lacking) {
    // What the fonts have not, but a mark in its place: it keeps Latin letters in their order.
    String text = ISOLATES.matcher(said).replaceAll(LEFT_TO_RIGHT);
    String missing = PaperFont.lackingInAll(text);
    missing.codePoints().forEach(lacking::add);
    return text.codePoints()
        .filter(c -> missing.indexOf(c) < 0 && !TextBoxes.isVowelSign(c))
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }
}
