package curewindow.page;

import curewindow.cure.Release;
import curewindow.guide.GuideQuestion;
import curewindow.words.Words;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The part of a customer's page that answers: is this normal? */
final class Asking {

  /** The questions under one heading. */
  record Group(String title, List<Card> cards) {}

  /** A question, its answer, and a link that prepares a message to the shop. */
  record Card(
      String id,
      String text,
      Optional<Stand> stand,
      String html,
      Optional<String> photo,
      String href,
      String button) {}

  /** How it stands now, and, where time alone changes it, from {@code to} on. */
  record Stand(String shape, String now, Optional<Long> to, String thenShape, String then) {}

  private final JobView view;
  private final Words words;
  private final Contact contact;
  private final When when;
  private final List<GuideQuestion> questions;

  /** The questions that apply to a job, with their answers. */
  Asking(JobView view, Contact contact, List<GuideQuestion> questions) {
    this.view = view;
    this.words = view.words();
    this.contact = contact;
    this.when = new When(view);
    this.questions = questions;
  }

  /**
   * The questions that stand on the page with the dates: at most so many, those that are tied to a
   * date before the others.
   */
  List<Group> first(int most) {
    Set<String> kept = kept(most);
    return groups(q -> kept.contains(q.id()));
  }

  /** The others. */
  List<Group> rest(int most) {
    Set<String> kept = kept(most);
    return groups(q -> !kept.contains(q.id()));
  }

  private Set<String> kept(int most) {
    return questions.stream()
        .filter(q -> !q.later())
        .sorted(Comparator.comparing(q -> q.standing().isEmpty()))
        .limit(most)
        .map(GuideQuestion::id)
        .collect(Collectors.toSet());
  }

  private List<Group> groups(Predicate<GuideQuestion> here) {
    List<Group> groups = new ArrayList<>();
    for (GuideQuestion question : questions.stream().filter(here).toList()) {
      int last = groups.size() - 1;
      List<Card> cards = new ArrayList<>();
      if (last >= 0 && groups.get(last).title().equals(question.group())) {
        cards.addAll(groups.remove(last).cards());
      }
      cards.add(card(question));
      groups.add(new Group(question.group(), cards));
    }
    return groups;
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
        question.id(),
        question.heading(),
        question.standing().flatMap(this::stand),
        question.html().strip(),
        photo,
        message.orElseGet(() -> "tel:" + Contact.dialled(view.shop().phone())),
        button);
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

  private Optional<Stand> stand(GuideQuestion.Standing standing) {
    return view.timeline().of(standing.hold()).map(r -> standing.normal() ? normal(r) : awaited(r));
  }

  /**
   * How a question stands at a time, for the shop itself: in few words with the date; empty where
   * it hangs on no date.
   */
  Optional<String> standing(GuideQuestion question, Instant at) {
    return question.standing().flatMap(this::stand).map(s -> told(s, at));
  }

  private static String told(Stand stand, Instant at) {
    return stand.to().filter(to -> to <= at.getEpochSecond()).isPresent()
        ? stand.then()
        : stand.now();
  }

  private Stand normal(Release release) {
    return new Stand(
        "rest",
        words.text("page.normal.until", Map.of("when", when.shortDay(release))),
        Optional.of(release.end().at().getEpochSecond()),
        "ask",
        words.text("page.state.show"));
  }

  private Stand awaited(Release release) {
    return new Stand(
        "wait",
        words.text("page.normal.wait", Map.of("when", when.shortDay(release))),
        Optional.of(release.end().at().getEpochSecond()),
        "go",
        Dated.freeWords(release, when, words));
  }
}
