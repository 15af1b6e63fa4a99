package curewindow.shop;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What the shop fits, where, and what must be held off from afterwards. Maps keep the order of the
 * files.
 *
 * @param services by id
 * @param films by id
 * @param spots by id
 * @param holds by id
 * @param rules all hold rules
 * @param visits when the shop would like to look at its work, by service
 * @param unusable what the files define besides, with errors
 */
public record Catalogue(
    Map<String, Service> services,
    Map<String, Film> films,
    Map<String, Spot> spots,
    Map<String, Hold> holds,
    List<RuleFor> rules,
    List<VisitRule> visits,
    Unusable unusable) {

  /** Copies the maps, keeping their order. */
  public Catalogue {
    services = Collections.unmodifiableMap(new LinkedHashMap<>(services));
    films = Collections.unmodifiableMap(new LinkedHashMap<>(films));
    spots = Collections.unmodifiableMap(new LinkedHashMap<>(spots));
    holds = Collections.unmodifiableMap(new LinkedHashMap<>(holds));
    rules = List.copyOf(rules);
    visits = List.copyOf(visits);
    Objects.requireNonNull(unusable, "unusable");
  }

  /**
   * A catalogue without errors.
   *
   * @param services by id
   * @param films by id
   * @param spots by id
   * @param holds by id
   * @param rules all hold rules
   * @param visits when the shop would like to look at its work, by service
   */
  public Catalogue(
      Map<String, Service> services,
      Map<String, Film> films,
      Map<String, Spot> spots,
      Map<String, Hold> holds,
      List<RuleFor> rules,
      List<VisitRule> visits) {
    this(services, films, spots, holds, rules, visits, Unusable.NOTHING);
  }

  /**
   * Whether something is true of a hold.
   *
   * @param hold the hold's id
   * @param mark what
   * @return true where the catalogue has the hold and says so
   */
  public boolean is(String hold, Hold.Mark mark) {
    Hold known = holds.get(hold);
    return known != null && known.is(mark);
  }

  /**
   * Whether something is true of a spot.
   *
   * @param spot the spot's id
   * @param fact what
   * @return true where the catalogue has the spot and says so
   */
  public boolean is(String spot, SpotFact fact) {
    Spot known = spots.get(spot);
    return known != null && known.facts().contains(fact);
  }
}
