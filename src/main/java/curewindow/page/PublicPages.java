package curewindow.page;

import curewindow.guide.GuideLibrary;
import curewindow.problem.Problems;
import curewindow.shop.Shop;
import curewindow.words.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The shop's pages for anyone: home and guides in each language, and the page for lost visitors.
 */
final class PublicPages {

  private static final String INDEX = "index.html";

  private final Shop shop;
  private final List<Words> languages;
  private final Look look;
  private final GuideLibrary guides;

  PublicPages(Shop shop, List<Words> languages, Look look, GuideLibrary guides) {
    this.shop = shop;
    this.languages = List.copyOf(languages);
    this.look = look;
    this.guides = guides;
  }

  SortedMap<String, String> fill(Templates templates, Problems problems) {
    SortedMap<String, String> pages = new TreeMap<>();
    Words own = own();
    templates.fill("home", home(own, ""), own, problems).ifPresent(html -> pages.put(INDEX, html));
    templates
        .fill("not-found", lost(own), own, problems)
        .ifPresent(html -> pages.put("404.html", html));
    for (Words words : languages) {
      String folder = words.language() + "/";
      templates
          .fill("home", home(words, "../"), words, problems)
          .ifPresent(html -> pages.put(folder + INDEX, html));
      for (String id : guides.ids(words.language())) {
        templates
            .fill("guide", guide(words, id), words, problems)
            .ifPresent(html -> pages.put(folder + id + ".html", html));
      }
    }
    return pages;
  }

  private Words own() {
    return languages.stream()
        .filter(w -> w.language().equals(shop.language()))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "no words for the shop's language " + shop.language()));
  }

  private PublicView home(Words words, String root) {
    String folder = root.isEmpty() ? words.language() + "/" : "";
    List<CustomerView.Link> links =
        guides.ids(words.language()).stream()
            .map(id -> new CustomerView.Link(folder + id + ".html", title(words, id)))
            .toList();
    String title = words.text("page.home.title", Map.of("shop", shop.name()));
    return view(words, title, "", links, languages(words, root, INDEX), Optional.empty());
  }

  private PublicView guide(Words words, String id) {
    CareText texts = new CareText(guides, words.language(), new PublicFacts(shop, words));
    String title = title(words, id) + " · " + shop.name();
    List<PublicView.Language> others =
        languages(words, "../", id + ".html").stream()
            .filter(l -> guides.find(l.lang(), id).isPresent())
            .toList();
    return view(words, title, INDEX, List.of(), others, texts.text(id, 0));
  }

  private PublicView lost(Words words) {
    String title = words.text("page.lost.title") + " · " + shop.name();
    return view(words, title, shop.address().toString(), List.of(), List.of(), Optional.empty());
  }

  private String title(Words words, String id) {
    return guides.find(words.language(), id).map(g -> g.title()).orElse(id);
  }

  private List<PublicView.Language> languages(Words shown, String root, String file) {
    return languages.stream()
        .map(
            w ->
                new PublicView.Language(
                    w.language(),
                    root + w.language() + "/" + file,
                    w.text("language.name"),
                    w.language().equals(shown.language()) ? Optional.of("page") : Optional.empty()))
        .toList();
  }

  private PublicView view(
      Words words,
      String title,
      String home,
      List<CustomerView.Link> links,
      List<PublicView.Language> others,
      Optional<CareText.Text> text) {
    return new PublicView(
        words.language(),
        words.rightToLeft() ? "rtl" : "ltr",
        false,
        title,
        look,
        new Contact(shop, words).card("", ""),
        home,
        links,
        others,
        text);
  }
}
