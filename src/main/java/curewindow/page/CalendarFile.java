package curewindow.page;

/** How the calendar files beside a customer's page are called. */
public final class CalendarFile {

  /** The file with all dates of a job. */
  public static final String ALL = "care.ics";

  /** The name of the event that asks the customer to come in. */
  public static final String VISIT = "visit";

  private CalendarFile() {}

  /**
   * The file with one date.
   *
   * @param event a hold's id, or the name of something due later
   * @return the file's name, never that of {@link #ALL}
   */
  public static String of(String event) {
    String name = event + ".ics";
    return name.equals(ALL) ? "hold." + name : name;
  }
}
