package curewindow.page;

import java.util.List;
import java.util.Optional;

/** A page of the shop that anyone may read, ready to be put into its template. */
record PublicView(
    String lang,
    String dir,
    boolean hidden,
    String title,
    Look look,
    Contact.Card shop,
    String home,
    List<CustomerView.Link> guides,
    List<Language> languages,
    Optional<CareText.Text> text) {

  /** The same page in a language; {@code current} is {@code page} for the one shown. */
  record Language(String lang, String href, String text, Optional<String> current) {}
}
