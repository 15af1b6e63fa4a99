package curewindow.page;

import curewindow.told.Contact;
import java.util.List;
import java.util.Optional;

/**
 * A customer's page, ready to be put into its template. Instants stand twice: as text for people,
 * and as seconds since 1970 for the script.
 *
 * @param below the address of the style of what stands below the first screen
 * @param script the address of the script
 * @param logo the shop's logo, before its name at the top
 * @param calendars of the cases of parking beside the noted one, as JSON; empty where there is none
 */
record CustomerView(
    String lang,
    String dir,
    boolean hidden,
    String title,
    Share share,
    String greeting,
    PageLook look,
    String below,
    String script,
    Contact.Card shop,
    Optional<HouseLogo> logo,
    List<Cases.Said<Note>> changed,
    List<Answers.Answer> answers,
    boolean clear,
    List<Cases.Said<Note>> notes,
    DateList.Dates dates,
    Optional<ParkingChoice.Choice> parked,
    Optional<String> calendars,
    List<Cases.Text> here,
    List<Cases.Text> basis,
    Asking.Cards asked,
    CarPicture.Picture car,
    Work work,
    List<Fold> care,
    String kept,
    String privacy) {

  /** The same with other questions, care texts and calendars. */
  CustomerView with(Asking.Cards someAsked, List<Fold> someCare, Optional<String> someCalendars) {
    return new CustomerView(
        lang,
        dir,
        hidden,
        title,
        share,
        greeting,
        look,
        below,
        script,
        shop,
        logo,
        changed,
        answers,
        clear,
        notes,
        dates,
        parked,
        someCalendars,
        here,
        basis,
        someAsked,
        car,
        work,
        someCare,
        kept,
        privacy);
  }

  /**
   * What is shown of the page where its address is sent to somebody; it tells nothing of the job.
   */
  record Share(String title, String text, String image) {}

  /** Something that needs to be said from an instant, or until one, in seconds since 1970. */
  record Note(String text, Optional<Long> from, Optional<Long> to) {

    /** Said at once. */
    Note(String text, Optional<Long> to) {
      this(text, Optional.empty(), to);
    }
  }

  /**
   * The record of the car: what was found, seen and is due; {@code law} and {@code removal} are
   * cautions where they apply.
   */
  record Work(Optional<String> law, List<Contact.Pair> facts, Optional<String> removal) {}

  /**
   * A care text under its heading, and the page of its guide.
   *
   * @param lang where it is not in the page's language
   * @param html the text, or nothing where there is no room for it
   */
  record Fold(Optional<String> lang, String title, Optional<String> html, String href) {

    /** The same where there is no room for the text. */
    Fold withoutText() {
      return new Fold(lang, title, Optional.empty(), href);
    }
  }
}
