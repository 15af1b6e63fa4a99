package curewindow.send;

import java.io.IOException;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/** Why nothing, or not all, was sent: in English, and in parts for whoever says it otherwise. */
public final class SendTrouble extends IOException {

  private static final long serialVersionUID = 1L;

  /** What stands in the way. */
  public enum Kind {
    /** The host shows another key than shop.yaml says: {@code host}, {@code key}. */
    OTHER_KEY,
    /** shop.yaml does not say by which key the host is known: {@code host}, {@code key}. */
    NO_KEY,
    /** The host does not let the user in: {@code host}, {@code user}. */
    NOT_LET_IN,
    /** The host cannot be reached: {@code host}. */
    NOT_REACHED,
    /** The host has no such folder: {@code host}, {@code folder}. */
    NO_FOLDER,
    /** There is no such folder on this machine: {@code folder}. */
    NOT_A_FOLDER,
    /** Too many of the pages that are there are gone: {@code gone}, {@code all}, {@code folder}. */
    PAGES_GONE,
    /** There is nothing to send yet: {@code folder}. */
    NO_SITE,
    /** It broke off after some files: {@code done}, {@code all}. */
    CUT_OFF;

    /**
     * The name in texts.
     *
     * @return lower case, words joined with hyphens
     */
    public String id() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  private final Kind kind;
  private final transient Map<String, Object> parts;

  SendTrouble(Kind kind, Map<String, Object> parts, String message, Throwable cause) {
    super(message, cause);
    this.kind = Objects.requireNonNull(kind, "kind");
    this.parts = Map.copyOf(parts);
  }

  /**
   * What stands in the way.
   *
   * @return the kind
   */
  public Kind kind() {
    return kind;
  }

  /**
   * What is told of it, by the names at its {@link Kind}; no secret is among them.
   *
   * @return texts, and numbers as {@link Integer}
   */
  public Map<String, Object> parts() {
    return parts;
  }
}
