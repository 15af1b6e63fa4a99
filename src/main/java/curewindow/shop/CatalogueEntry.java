package curewindow.shop;

import curewindow.problem.Problems;
import curewindow.problem.Where;
import java.util.Optional;

/**
 * An entry of the catalogue's files, to say where something is wrong with it.
 *
 * @param kind {@code service}, {@code film}, {@code spot} or {@code hold}
 * @param id its id
 */
public record CatalogueEntry(String kind, String id) {

  /**
   * Where the entry stands. The file is read once more, as this is seldom asked.
   *
   * @param files the shop folder laid over the program's own files
   * @return its place, or the file alone where it cannot be found
   */
  public Where where(ShopFiles files) {
    Problems told = new Problems();
    String file = "content/catalogue/" + kind + "s.yaml";
    Source source = new Source(file, told);
    return files
        .text(file, told)
        .flatMap(text -> YamlTree.read(text, source))
        .flatMap(tree -> in(tree, kind + "s"))
        .flatMap(all -> all instanceof Node.Branch b ? entry(b, id) : Optional.empty())
        .map(Node.Entry::key)
        .orElse(Where.file(file));
  }

  private static Optional<Node> in(Node node, String key) {
    return node instanceof Node.Branch branch
        ? entry(branch, key).map(Node.Entry::value)
        : Optional.empty();
  }

  private static Optional<Node.Entry> entry(Node.Branch branch, String key) {
    return Optional.ofNullable(branch.entries().get(key));
  }
}
