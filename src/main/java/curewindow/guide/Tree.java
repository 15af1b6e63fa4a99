package curewindow.guide;

import com.vladsch.flexmark.util.ast.Node;
import java.util.function.ObjIntConsumer;

/** Walks a parsed guide without recursion, so that deep nesting cannot exhaust the stack. */
final class Tree {

  private Tree() {}

  /** Visits a node and all below it in the order of the text, with the depth below the root. */
  static void walk(Node root, ObjIntConsumer<Node> visit) {
    Node node = root;
    int depth = 0;
    while (node != null) {
      visit.accept(node, depth);
      if (node.getFirstChild() != null) {
        node = node.getFirstChild();
        depth++;
        continue;
      }
      while (node != root && node.getNext() == null) {
        node = node.getParent();
        depth--;
      }
      node = node == root ? null : node.getNext();
    }
  }
}
