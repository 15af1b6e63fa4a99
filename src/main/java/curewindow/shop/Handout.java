package curewindow.shop;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a customer can be given on paper. */
public enum Handout {
  /** A card for the wallet, 85 by 55 mm. */
  WALLET("wallet", "wallet cards", "card for the wallet, 85 x 55 mm"),
  /** A card for the wallet, 3.5 by 2 inches. */
  WALLET_INCH("wallet-inch", "wallet cards", "card for the wallet, 3.5 x 2 in"),
  /** A tag that hangs on the mirror until the car drives, 70 by 125 mm, with two sides. */
  HANG_TAG(
      "hang-tag", "hang tags", "tag to hang on the parked car's mirror, 70 x 125 mm, two sides"),
  /** A sticker that tells which window stays up and until when, 64 by 42 mm. */
  WINDOW_UP(
      "window-up", "window stickers", "sticker for every window that must stay up, 64 x 42 mm"),
  /** One page with all dates, half an A4 sheet. */
  CARE_A5("care-a5", "care sheets", "care sheet, A5"),
  /** The same page on half a Letter sheet, 5.5 by 8.5 inches. */
  CARE_LETTER("care-letter", "care sheets", "care sheet, half Letter, 5.5 x 8.5 in"),
  /** A label from a roll 62 mm wide, 100 mm long. */
  LABEL_62("label-62", "labels", "label from a 62 mm roll, 100 mm long, black alone"),
  /** A label of 4 by 6 inches from a roll. */
  LABEL_4X6("label-4x6", "labels", "label from a roll, 4 x 6 in, black alone"),
  /** A label of 2.25 by 1.25 inches from a roll. */
  LABEL_SMALL("label-small", "labels", "label from a roll, 2.25 x 1.25 in, black alone");

  private final String id;
  private final String many;
  private final String description;

  Handout(String id, String many, String description) {
    this.id = id;
    this.many = many;
    this.description = description;
  }

  /**
   * The name used in files and commands.
   *
   * @return lower case with hyphens
   */
  public String id() {
    return id;
  }

  /**
   * What several of them are called.
   *
   * @return English words without a size, such as {@code hang tags}
   */
  public String many() {
    return many;
  }

  /**
   * What it is, for those who choose.
   *
   * @return a few English words with its size
   */
  public String description() {
    return description;
  }

  /**
   * The value of a name.
   *
   * @param id the name used in files
   * @return the value, or empty where the name is unknown
   */
  public static Optional<Handout> of(String id) {
    return Arrays.stream(values()).filter(v -> v.id.equals(id)).findFirst();
  }

  /**
   * All names used in files.
   *
   * @return the names in their order
   */
  public static List<String> ids() {
    return Arrays.stream(values()).map(Handout::id).toList();
  }
}
