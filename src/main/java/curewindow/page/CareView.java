package curewindow.page;

import curewindow.guide.GuideLibrary;
import curewindow.words.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A customer's care texts, ready to be put into their template. */
record CareView(
    String lang,
    String dir,
    boolean hidden,
    String title,
    String greeting,
    Look look,
    Contact.Card shop,
    List<CareText.Text> care,
    Optional<String> askedLang,
    List<Asking.Group> asked,
    boolean moreAsked,
    String privacy) {

  /** Gathers the texts for what was fitted and found, and the questions left from the page. */
  static CareView of(CustomerPage page, Look look, GuideLibrary guides, int questions) {
    JobView view = page.job();
    Words words = view.words();
    Map<String, String> job = Map.of("id", view.job().id(), "car", view.car());
    Contact contact = new Contact(view.shop(), words);
    return new CareView(
        words.language(),
        words.rightToLeft() ? "rtl" : "ltr",
        true,
        words.text("page.care.page", Map.of("car", view.car(), "shop", view.shop().name())),
        CustomerPage.greeting(view),
        look,
        contact.card(words.text("page.reach.subject", job), words.text("page.reach.body", job)),
        new CareText(guides, words.language(), new JobFacts(view)).care(view),
        Questions.language(view, guides),
        new Asking(view, contact, page.questions()).rest(questions),
        false,
        words.text("page.private", job));
  }
}
