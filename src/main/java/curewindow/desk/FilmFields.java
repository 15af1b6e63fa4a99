package curewindow.desk;

import curewindow.desk.FormFields.Choices;
import curewindow.desk.FormFields.Field;
import curewindow.problem.Problem;
import curewindow.shop.Catalogue;
import curewindow.shop.FilmDraft;
import curewindow.shop.FilmText;
import curewindow.shop.Service;
import curewindow.shop.SpotFact;
import curewindow.words.Words;
import java.util.List;
import java.util.Optional;

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

  private final Catalogue catalogue;
  private final FilmDraft draft;
  private final FormFields fields;
  private final Words words;

  /**
   * The fields of a film.
   *
   * @param place the path of the film in films.yaml
   */
  FilmFields(
      Catalogue catalogue, String place, FilmDraft draft, List<Problem> problems, Words words) {
    this.catalogue = catalogue;
    this.draft = draft;
    this.fields = new FormFields(problems, words, place + ".");
    this.words = words;
  }

  All all() {
    Optional<Service> service = Optional.ofNullable(catalogue.services().get(draft.service()));
    return new All(
        fields.choices(
            "service",
            List.copyOf(catalogue.services().keySet()),
            draft.service(),
            s -> words.text("service." + s)),
        fields.field("name", draft.name()),
        fields.field("material", draft.material()),
        catalogue.films().values().stream().map(f -> f.material()).distinct().sorted().toList(),
        service.map(Service::film).orElse(false),
        service.map(this::onGlass).orElse(false),
        service.map(s -> !s.inside()).orElse(false),
        fields.field("thickness", draft.thickness()),
        fields.field("permeance", draft.permeance()),
        draft.metallised().equals("true"),
        fields.field("vlt", draft.vlt()),
        fields.field("reflectance", draft.reflectance()),
        finish());
  }

  private boolean onGlass(Service service) {
    return service.film()
        && service.spots().stream().anyMatch(s -> catalogue.is(s, SpotFact.GLASS));
  }

  private Choices finish() {
    return fields.choices(
        "finish",
        List.of("", "gloss", "satin", "matte"),
        draft.finish(),
        f -> words.text(f.isEmpty() ? "desk.films.no-finish" : "finish." + f));
  }

  /** The problems that no field shows, once the fields were asked for. */
  List<String> others() {
    return fields.others(FilmText.FILE);
  }
}
