package curewindow.desk;

import curewindow.desk.JobFields.Choice;
import curewindow.desk.JobFields.Choices;
import curewindow.desk.JobFields.Field;
import curewindow.problem.Problem;
import curewindow.shop.Catalogue;
import curewindow.shop.FilmDraft;
import curewindow.shop.Service;
import curewindow.shop.SpotFact;
import curewindow.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** The fields of a film's form, each with what is wrong with its value beside it. */
final class FilmFields {

  /**
   * All fields.
   *
   * @param materials what films are made of; any other can be typed
   * @param film whether it is a film; a coating has neither thickness nor permeance nor metal
   * @param glass whether it lies on glass, so that its light matters
   * @param body whether it lies on the outside, so that its finish matters
   */
  record All(
      Choices service,
      Field name,
      Field material,
      List<String> materials,
      boolean film,
      boolean glass,
      boolean body,
      Field thickness,
      Field permeance,
      boolean metal,
      Field vlt,
      Field reflectance,
      Choices finish) {}

  private static final List<String> NAMES =
      List.of(
          "service", "name", "material", "thickness", "permeance", "vlt", "reflectance", "finish");

  private final Catalogue catalogue;
  private final String place;
  private final FilmDraft draft;
  private final FieldProblems problems;
  private final Words words;

  /**
   * The fields of a film.
   *
   * @param place the path of the film in films.yaml
   */
  FilmFields(
      Catalogue catalogue, String place, FilmDraft draft, List<Problem> problems, Words words) {
    this.catalogue = catalogue;
    this.place = place + ".";
    this.draft = draft;
    this.problems = new FieldProblems(problems, words);
    this.words = words;
  }

  All all() {
    Optional<Service> service = Optional.ofNullable(catalogue.services().get(draft.service()));
    return new All(
        choices(
            "service",
            List.copyOf(catalogue.services().keySet()),
            draft.service(),
            s -> words.text("service." + s)),
        field("name", draft.name()),
        field("material", draft.material()),
        catalogue.films().values().stream().map(f -> f.material()).distinct().sorted().toList(),
        service.map(Service::film).orElse(false),
        service.map(this::onGlass).orElse(false),
        service.map(s -> !s.inside()).orElse(false),
        field("thickness", draft.thickness()),
        field("permeance", draft.permeance()),
        draft.metallised().equals("true"),
        field("vlt", draft.vlt()),
        field("reflectance", draft.reflectance()),
        finish());
  }

  private boolean onGlass(Service service) {
    return service.film()
        && service.spots().stream().anyMatch(s -> catalogue.is(s, SpotFact.GLASS));
  }

  private Choices finish() {
    List<Choice> all =
        Stream.of("", "gloss", "satin", "matte")
            .map(
                f ->
                    new Choice(
                        f,
                        words.text(f.isEmpty() ? "desk.films.no-finish" : "finish." + f),
                        f.equals(draft.finish())))
            .toList();
    return new Choices("finish", all, problems.at(place + "finish"));
  }

  private Field field(String name, String value) {
    return new Field(name, value, problems.at(place + name));
  }

  private Choices choices(
      String name, List<String> values, String chosen, Function<String, String> text) {
    return new Choices(
        name,
        values.stream().map(v -> new Choice(v, text.apply(v), v.equals(chosen))).toList(),
        problems.at(place + name));
  }

  /** The problems that no field shows. */
  List<String> others() {
    return problems.elsewhere(NAMES.stream().map(n -> place + n).toList());
  }
}
