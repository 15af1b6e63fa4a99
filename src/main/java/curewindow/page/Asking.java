package curewindow.page;

import curewindow.guide.GuideLibrary;
import curewindow.guide.GuideQuestion;
import curewindow.guide.Questions;
import curewindow.told.Contact;
import curewindow.told.JobView;
import curewindow.words.Words;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The part of a customer's page that answers: is this normal? */
final class Asking {

  /** The likeliest are enough: more, and nobody finds theirs. */
  static final int MOST = 8;

  /** A question, its answer, and a link that prepares a message to the shop. */
  record Card(String text, String html, Optional<String> photo, String href, String button) {}

  /** More than these at a glance are a wall; the others are folded, if it is not just one. */
  private static final int AT_A_GLANCE = 4;

  /** Below a long list of dates, or a box that says that a date has moved. */
  private static final int BELOW_MUCH = 2;

  /** A list of more dates takes a screen and a half by itself. */
  private static final int MANY_DATES = 10;

  /**
   * The likeliest questions, the others, and the page of all that anybody asks.
   *
   * @param lang of the questions, where it is not the page's
   */
  record Cards(Optional<String> lang, List<Card> first, List<Card> more, String all) {}

  private final JobView view;
  private final Words words;
  private final Contact contact;
  private final Optional<String> language;

  /** The likeliest in the noted case. */
  private final List<GuideQuestion> likely;

  /** The same in all cases. */
  private final List<List<GuideQuestion>> answers;

  /** The questions that apply to a job in each of its cases. */
  Asking(Cases cases, Contact contact, GuideLibrary guides) {
    this.view = cases.noted();
    this.words = view.words();
    this.contact = contact;
    this.language = Questions.language(view, guides);
    this.likely = likely(Questions.answered(view, guides)).limit(MOST).toList();
    Set<String> ids = likely.stream().map(GuideQuestion::id).collect(Collectors.toSet());
    this.answers =
        cases.views().stream()
            .map(v -> v == view ? likely : Questions.answered(v, guides, ids::contains))
            .toList();
  }

  /**
   * The questions that people are likely to ask, each group of the guide in turn, as it begins with
   * the likeliest: those tied to a date before the others.
   */
  List<Card> cards() {
    return likely.stream().map(this::card).toList();
  }

  /**
   * Whether there is much to read before the questions.
   *
   * @param moved how many notes say that a date is not the card's
   * @param dates the list of dates
   */
  static boolean isMuch(int moved, DateList.Dates dates) {
    return moved > 0 || dates.rows().size() > MANY_DATES;
  }

  /** How many of some questions are seen at a glance; the others are folded. */
  static int atAGlance(int questions, boolean isBelowMuch) {
    int most = isBelowMuch ? BELOW_MUCH : AT_A_GLANCE;
    return questions > most + 1 ? most : questions;
  }

  /** As many of the questions as there is room for. */
  Cards of(List<Card> room, boolean isBelowMuch) {
    int glance = atAGlance(room.size(), isBelowMuch);
    return new Cards(
        language,
        room.subList(0, glance),
        room.subList(glance, room.size()),
        PublicSite.fromCustomer(language.orElse(words.language()), PublicViews.QUESTIONS));
  }

  static Stream<GuideQuestion> likely(List<GuideQuestion> questions) {
    Map<String, Integer> asked = new HashMap<>();
    Map<GuideQuestion, Integer> turns = new HashMap<>();
    List<GuideQuestion> now =
        questions.stream()
            .filter(q -> !q.later())
            .sorted(Comparator.comparing(q -> q.standing().isEmpty()))
            .toList();
    now.forEach(q -> turns.put(q, asked.merge(q.group(), 1, Integer::sum)));
    return now.stream().sorted(Comparator.comparing(turns::get));
  }

  private Card card(GuideQuestion question) {
    Optional<String> photo =
        Optional.of(question.photo())
            .filter(p -> !p.isEmpty())
            .map(p -> words.text("page.normal.photo", Map.of("photo", p)));
    Optional<String> message = message(question, photo.orElse(""));
    String button =
        message.isEmpty()
            ? words.text("page.reach.call", Map.of("phone", view.shop().phone()))
            : words.text(photo.isPresent() ? "page.normal.write" : "page.normal.ask");
    return new Card(
        question.heading(),
        MergedHtml.of(answers.stream().map(of -> answer(question.id(), of)).toList()),
        photo,
        message.orElseGet(() -> "tel:" + Contact.dialled(view.shop().phone())),
        button);
  }

  /** The answer in a case; that of the noted one, where the guide has none for it. */
  private String answer(String id, List<GuideQuestion> asked) {
    return Stream.of(asked, likely)
        .flatMap(List::stream)
        .filter(q -> q.id().equals(id))
        .findFirst()
        .orElseThrow()
        .html()
        .strip();
  }

  /** A text message where the shop has a number for them, else a mail, else nothing. */
  private Optional<String> message(GuideQuestion question, String photo) {
    Map<String, String> about =
        Map.of("id", view.job().id(), "question", brief(question.heading()), "photo", photo);
    String subject = words.text("page.normal.subject", about);
    return contact
        .sms(words.text("page.normal.body", about).strip())
        .or(() -> contact.mail(subject, photo));
  }

  /** The first sentence, so that the message stays short. */
  static String brief(String question) {
    return question.replaceFirst("(?<=[.?!\u061F])\\s.*$", "");
  }
}
