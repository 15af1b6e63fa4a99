package curewindow.cli;

/** Says in a line that customers have to be called. */
final class CallsLine {

  private CallsLine() {}

  /**
   * The line.
   *
   * @param calls how many dates on cards are too early, above 0
   * @return a sentence without a full stop
   */
  static String of(int calls) {
    return (calls == 1 ? "1 date on a card is" : calls + " dates on cards are")
        + " now too early; run due to see whom to call";
  }
}
