package curewindow.shop;

import curewindow.shop.Node.Branch;
import curewindow.shop.ShopDraft.BayDraft;
import curewindow.shop.ShopDraft.SendDraft;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The text of shop.yaml: written from a draft, and read back into one. */
public final class ShopText {

  /** The file, relative to the shop folder. */
  public static final String FILE = ShopReader.FILE;

  private ShopText() {}

  /**
   * The file of a new shop, with the comments that help in writing it.
   *
   * @param draft the shop
   * @return YAML, ended by a line feed
   */
  public static String of(ShopDraft draft) {
    return changed(NewShop.text(FILE), draft)
        .orElseThrow(() -> new IllegalStateException("the sample's shop.yaml cannot be changed"));
  }

  /**
   * The text of a file in which something was changed. What stays the same keeps its lines, their
   * order and comments.
   *
   * @param text the file as it stands
   * @param draft what it should say; keys that a draft does not have stay as they are
   * @return the new text; empty where the file is not written a key on a line, so that somebody has
   *     to change it by hand
   */
  public static Optional<String> changed(String text, ShopDraft draft) {
    Optional<Branch> root = Typed.root(text);
    Optional<ShopDraft> before = root.map(ShopText::draft);
    return before
        .flatMap(b -> YamlLines.changed(text, root.orElseThrow(), b.tree(), draft.tree()))
        .filter(now -> read(now).equals(Optional.of(draft)));
  }

  /**
   * What the file says, as far as a draft has it.
   *
   * @param text the file's text
   * @return the draft; empty where the text is not YAML with keys
   */
  public static Optional<ShopDraft> read(String text) {
    return Typed.root(text).map(ShopText::draft);
  }

  private static ShopDraft draft(Branch shop) {
    return new ShopDraft(
        Typed.text(shop, "name"),
        Typed.text(shop, "phone"),
        Typed.text(shop, "text-number"),
        Typed.text(shop, "email"),
        Typed.texts(shop, "street"),
        Typed.text(shop, "address"),
        Typed.text(shop, "zone"),
        Typed.text(shop, "language"),
        Typed.text(shop, "place"),
        Typed.branch(shop, "opening").map(ShopText::opening).orElse(Map.of()),
        Typed.texts(shop, "closed"),
        Typed.text(shop, "locale"),
        Typed.text(shop, "units"),
        Typed.branch(shop, "bay").map(ShopText::bay).orElse(BayDraft.NONE),
        Typed.branch(shop, "send").map(ShopText::send).orElse(SendDraft.NONE));
  }

  private static BayDraft bay(Branch bay) {
    return new BayDraft(
        Typed.text(bay, "temperature"), Typed.text(bay, "humidity"), Typed.text(bay, "lamp"));
  }

  private static SendDraft send(Branch send) {
    return new SendDraft(
        Typed.text(send, "to"), Typed.text(send, "host-key"), Typed.text(send, "key-file"));
  }

  private static Map<String, String> opening(Branch days) {
    Map<String, String> opening = new LinkedHashMap<>();
    ShopDraft.days().forEach(day -> opening.put(day, Typed.text(days, day)));
    return opening;
  }
}
