package curewindow.why;

/**
 * Explains the dates of a job: which item and which driver decide each, the weather that went in,
 * the way there day by day, and the ends in all weathers.
 */
public final class Why {

  private final ExplanationInputs inputs;

  private Why(ExplanationInputs inputs) {
    this.inputs = inputs;
  }

  /**
   * The explanation of a job's dates.
   *
   * @param inputs what it is made from
   * @return the explanation
   */
  public static Why of(ExplanationInputs inputs) {
    return new Why(inputs);
  }

  /**
   * The explanation as text for a terminal, in English, no line wider than 80 characters.
   *
   * @param look what is shown, and how
   * @return lines, each ended by a line feed
   */
  public String text(ExplanationChoice look) {
    return new WhyText(inputs, look).text();
  }

  /**
   * The explanation as JSON with stable field names, described in {@code docs/why.md}.
   *
   * @param look what is shown; all fields are given for each hold shown
   * @return one JSON object, indented, ended by a line feed
   */
  public String json(ExplanationChoice look) {
    return WhyJson.write(new WhyData(inputs, look).data());
  }
}
