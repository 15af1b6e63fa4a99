package curewindow.send;

import java.util.Locale;
import java.util.Objects;

/**
 * How an address answers where it does not answer with the page that was made.
 *
 * @param how the kind of answer
 * @param detail the status, or the reason that the network gave, in English; may be empty
 */
public record NotLive(How how, String detail) {

  /** Refuses missing parts. */
  public NotLive {
    Objects.requireNonNull(how, "how");
    Objects.requireNonNull(detail, "detail");
  }

  /** The kind of answer. */
  public enum How {
    /** There is none. */
    NO_ANSWER,
    /** An HTTP status other than 200, in the detail. */
    STATUS,
    /** Something else stands there. */
    OTHER_PAGE,
    /** No page was made that could stand there. */
    NO_PAGE;

    /**
     * The name in texts.
     *
     * @return lower case, words joined with hyphens
     */
    public String id() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  static NotLive of(How how) {
    return new NotLive(how, "");
  }

  /** In a few English words. */
  String told() {
    return switch (how) {
      case NO_ANSWER -> "no answer (" + detail + ")";
      case STATUS -> "HTTP status " + detail;
      case OTHER_PAGE -> "another page than was sent, perhaps an older copy";
      case NO_PAGE -> "no page yet";
    };
  }
}
