package curewindow.site;

import java.util.Optional;
import java.util.stream.Stream;

/** What became of a question that a customer called with. */
public enum CallOutcome {
  /** It was answered on the phone. */
  SOLVED("solved"),
  /** The car comes in for a look. */
  COMING_IN("coming-in"),
  /** It is still to be answered. */
  OPEN("open");

  private final String id;

  CallOutcome(String id) {
    this.id = id;
  }

  /**
   * The name in the file and on the command line.
   *
   * @return lower case
   */
  public String id() {
    return id;
  }

  /**
   * The outcome of a name.
   *
   * @param id the name
   * @return the outcome, or empty where none has it
   */
  public static Optional<CallOutcome> of(String id) {
    return Stream.of(values()).filter(o -> o.id.equals(id)).findFirst();
  }
}
