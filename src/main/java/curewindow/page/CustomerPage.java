package curewindow.page;

import curewindow.guide.GuideLibrary;
import curewindow.guide.GuideQuestion;
import curewindow.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Gathers what stands on a job's page. */
final class CustomerPage {

  private final JobView view;
  private final Words words;
  private final Look look;
  private final GuideLibrary guides;
  private final List<GuideQuestion> questions;

  CustomerPage(JobView view, Look look, GuideLibrary guides) {
    this.view = view;
    this.words = view.words();
    this.look = look;
    this.guides = guides;
    this.questions = Questions.answered(view, guides);
  }

  /** Whose page it is. */
  JobView job() {
    return view;
  }

  /** The questions that apply to the job. */
  List<GuideQuestion> questions() {
    return questions;
  }

  /**
   * All that stands on the page.
   *
   * @param room how many questions there is room for
   */
  CustomerView view(int room) {
    Map<String, String> job = Map.of("id", view.job().id(), "car", view.car());
    JobFacts facts = new JobFacts(view);
    CareText texts = new CareText(guides, words.language(), facts);
    Contact contact = new Contact(view.shop(), words);
    Asking asking = new Asking(view, contact, questions);
    Dated dated = new Dated(view);
    CardNotes notes = new CardNotes(view);
    Fittings fittings = new Fittings(view);
    List<CustomerView.Answer> answers = dated.answers();
    List<CareText.Text> care = texts.care(view);
    Map<String, String> place = Map.of("place", view.place().name());
    Map<String, String> basis =
        Map.of("place", view.place().name(), "parking", facts.value("job.parking").orElse(""));
    return new CustomerView(
        words.language(),
        words.rightToLeft() ? "rtl" : "ltr",
        true,
        words.text("page.title", Map.of("car", view.car(), "shop", view.shop().name())),
        notes.later(),
        greeting(view),
        look,
        contact.card(words.text("page.reach.subject", job), words.text("page.reach.body", job)),
        answers,
        !answers.isEmpty(),
        words.text(answers.isEmpty() ? "page.now.none" : "page.now.done"),
        dated.freed(),
        new SeenWords(view).note(),
        notes.sooner(),
        new Order(view).note(),
        VisitWords.invitation(view),
        dated.then(),
        links(!care.isEmpty()),
        words.text("page.dates.zone", place),
        dated.groups(),
        words.text("page.dates.basis", basis),
        new Strip(view).picture(),
        new CarPicture(view).picture(),
        Questions.language(view, guides),
        asking.first(room),
        !asking.rest(room).isEmpty(),
        care.isEmpty() ? Optional.empty() : Optional.of(careLink(care)),
        texts.cautions(),
        fittings.work(),
        Parked.up(view),
        new Parked(view).table(),
        words.text("page.private", job));
  }

  /** Whose page it is. */
  static String greeting(JobView view) {
    Words words = view.words();
    String car = view.car();
    String name = view.job().firstName();
    return name.isBlank()
        ? words.text("page.greeting-nameless", Map.of("car", car))
        : words.text("page.greeting", Map.of("name", name, "car", car));
  }

  /** What the care texts are of, such as "Window tint, washing". */
  private String careLink(List<CareText.Text> care) {
    List<String> titles = care.stream().map(CareText.Text::title).toList();
    return String.join(" · ", titles);
  }

  private List<CustomerView.Link> links(boolean hasCare) {
    List<CustomerView.Link> links = new ArrayList<>();
    List<String> parts =
        hasCare
            ? List.of("dates", "car", "normal", "fitted", "care", "reach")
            : List.of("dates", "car", "normal", "fitted", "reach");
    for (String part : parts) {
      links.add(new CustomerView.Link("#" + part, words.text("page.nav." + part)));
      if (part.equals("normal") && !view.parkings().cases().isEmpty()) {
        links.add(new CustomerView.Link("#parking", words.text("parked.nav")));
      }
    }
    return links;
  }
}
