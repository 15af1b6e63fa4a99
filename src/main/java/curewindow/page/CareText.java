package curewindow.page;

import curewindow.guide.Guide;
import curewindow.guide.GuideFacts;
import curewindow.guide.GuideLibrary;
import curewindow.shop.Catalogue;
import curewindow.shop.Job;
import curewindow.shop.Service;
import curewindow.told.JobView;
import curewindow.words.WordsLibrary;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The guides that belong on a job's page, filled with its facts. */
final class CareText {

  /** A guide on a page; {@code lang} only where it is not in the page's language. */
  record Text(String id, Optional<String> lang, String title, String html) {}

  private static final String CAUTIONS = "cautions";

  private final GuideLibrary guides;
  private final String language;
  private final GuideFacts facts;

  CareText(GuideLibrary guides, String language, GuideFacts facts) {
    this.guides = guides;
    this.language = language;
    this.facts = facts;
  }

  /** The cautions, then the care of exactly what was fitted and of what was found, then washing. */
  static Set<String> ids(Job job, Catalogue catalogue) {
    Set<String> ids = new LinkedHashSet<>();
    ids.add(CAUTIONS);
    job.items().stream()
        .map(i -> catalogue.services().get(i.service()))
        .filter(s -> s != null)
        .map(Service::guide)
        .forEach(ids::add);
    job.found().forEach(f -> ids.add(f.kind().id()));
    ids.add("washing");
    return ids;
  }

  /** The texts of the guides that belong on a job's page. */
  List<Text> care(JobView view) {
    return ids(view.job(), view.catalogue()).stream()
        .flatMap(id -> text(id, 1).stream())
        .map(t -> t.id().equals(CAUTIONS) ? firstPart(t) : t)
        .toList();
  }

  /** The cautions up to their second heading: people first. The rest stands in the guide. */
  private static Text firstPart(Text cautions) {
    String html = cautions.html();
    int second = html.indexOf("<h3", html.indexOf("<h3") + 1);
    return new Text(
        cautions.id(),
        cautions.lang(),
        cautions.title(),
        second < 0 ? html : html.substring(0, second));
  }

  /** A guide in the page's language, else in English; empty where both lack it. */
  Optional<Text> text(String id, int shift) {
    Optional<Guide> own = guides.find(language, id);
    Optional<Guide> any = own.or(() -> guides.find(WordsLibrary.FALLBACK, id));
    return any.map(
            g ->
                new Text(
                    id,
                    own.isPresent() ? Optional.empty() : Optional.of(g.language()),
                    g.title(),
                    g.html(facts, shift)))
        .filter(t -> !t.html().isBlank());
  }
}
