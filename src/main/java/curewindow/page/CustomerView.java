package curewindow.page;

import java.util.List;
import java.util.Optional;

/**
 * A customer's page, ready to be put into its template. Instants stand twice: as text for people,
 * and as seconds since 1970 for the script.
 */
record CustomerView(
    String lang,
    String dir,
    boolean hidden,
    String title,
    List<Note> changed,
    String greeting,
    Look look,
    Contact.Card shop,
    List<Answer> answers,
    boolean doneHidden,
    String done,
    List<Freed> freed,
    Optional<Note> seen,
    List<Note> sooner,
    Optional<Note> order,
    Optional<String> visit,
    List<Next> then,
    List<Link> links,
    String zoneNote,
    List<Group> groups,
    String basis,
    Optional<Strip.Picture> strip,
    CarPicture.Picture car,
    Optional<String> askedLang,
    List<Asking.Group> asked,
    boolean moreAsked,
    Optional<String> care,
    Optional<CareText.Text> cautions,
    Work work,
    String up,
    Optional<Parked.Table> parked,
    String privacy) {

  /**
   * One sentence with a date: what must not be done yet, and until when; and what else there is to
   * say of it.
   */
  record Answer(
      String hold,
      String before,
      String weekday,
      String date,
      String time,
      List<String> after,
      String dateClass,
      String iso,
      long at,
      String state,
      String over,
      boolean hidden) {}

  /** That a date is not the one on the card; not shown from {@code to} on. */
  record Note(String text, Optional<Long> to) {}

  /** What may be done again from an instant on, as nothing else forbids it. */
  record Freed(long at, String text) {}

  /** One of the holds that come after the first answer; {@code room} says where there is room. */
  record Next(
      String hold, String label, String when, long to, Optional<String> room, boolean hidden) {}

  /** A link with its text. */
  record Link(String href, String text) {}

  /** The rows of one kind in the table of dates. */
  record Group(String title, List<Row> rows) {}

  /** A line of the table of dates. */
  record Row(
      String hold,
      String label,
      String shape,
      String state,
      String thenShape,
      String thenState,
      long to,
      String iso,
      String day,
      String time,
      String likelyDay) {}

  /**
   * The record of what was done and what is due later; {@code law} and {@code removal} are cautions
   * where they apply.
   */
  record Work(
      List<Fitted> fitted,
      Optional<String> law,
      List<Contact.Pair> found,
      List<Contact.Pair> seen,
      List<Later> later,
      Optional<String> removal) {}

  /** Something due later: its day, and the calendar file that has it. */
  record Later(String label, String ics, String day, Optional<String> again) {}

  /** What was fitted, with its facts. */
  record Fitted(String service, List<Contact.Pair> facts) {}
}
