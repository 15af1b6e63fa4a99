package curewindow.why;

/**
 * Explains the dates of a job: which item and which driver decide each, the weather that went in,
 * the way there day by day, and the ends in all weathers.
 */
public final class Why {

  private final Grounds grounds;

  private Why(Grounds grounds) {
    this.grounds = grounds;
  }

  /**
   * The explanation of a job's dates.
   *
   * @param grounds what it is made from
   * @return the explanation
   */
  public static Why of(Grounds grounds) {
    return new Why(grounds);
  }

  /**
   * The explanation as text for a terminal, in English, no line wider than 80 characters.
   *
   * @param look what is shown, and how
   * @return lines, each ended by a line feed
   */
  public String text(Look look) {
    return new WhyText(grounds, look).text();
  }

  /**
   * The explanation as JSON with stable field names, described in {@code docs/why.md}.
   *
   * @param look what is shown; all fields are given for each hold shown
   * @return one JSON object, indented, ended by a line feed
   */
  public String json(Look look) {
    return WhyJson.write(new WhyData(grounds, look).data());
  }
}
