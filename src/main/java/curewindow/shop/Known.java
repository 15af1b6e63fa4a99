package curewindow.shop;

import curewindow.problem.Where;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a job may refer to.
 *
 * @param catalogue the catalogue's good entries
 * @param broken entries of the catalogue's files with problems, by file
 * @param brokenRules rules of the catalogue with problems
 * @param places the places
 * @param languages languages with words and guides
 * @param shop the shop and what jobs fall back to
 * @param now the time of reading
 */
record Known(
    Catalogue catalogue,
    Map<String, Broken> broken,
    List<BrokenRule> brokenRules,
    Names places,
    List<String> languages,
    ShopReader.Read shop,
    Instant now) {

  /** The shop's time zone. */
  Optional<ZoneId> zone() {
    return shop.zone();
  }

  /** The shop's language. */
  Optional<String> language() {
    return shop.language();
  }

  /** The shop's place. */
  Optional<String> place() {
    return shop.place();
  }

  /** Where the errors stand that leave the dates of a job in doubt. */
  List<Where> doubts(Job job) {
    return brokenRules.stream()
        .filter(rule -> rule.concerns(job, catalogue.spots()))
        .map(BrokenRule::cause)
        .toList();
  }

  Names services() {
    return names("service", catalogue.services().keySet(), CatalogueReader.SERVICES);
  }

  Names films() {
    return names("film", catalogue.films().keySet(), CatalogueReader.FILMS);
  }

  Names spots() {
    return names("spot", catalogue.spots().keySet(), CatalogueReader.SPOTS);
  }

  private Names names(String what, Set<String> known, String file) {
    return new Names(what, known, broken.get(file));
  }
}
