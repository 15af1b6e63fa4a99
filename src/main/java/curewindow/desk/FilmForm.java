package curewindow.desk;

import curewindow.shop.Catalogue;
import curewindow.shop.FilmDraft;
import curewindow.shop.Service;
import curewindow.shop.TypedNumber;
import curewindow.shop.UsualPermeance;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A film as a form has it: each field is named by its key in films.yaml. */
final class FilmForm {

  static final FilmDraft EMPTY = new FilmDraft("", "", "", "", "", "", "", "", "");

  /** There whenever the form asks for a metal layer, as a box that is not checked sends nothing. */
  static final String METAL_ASKED = "metal-asked";

  /**
   * Rolls are sold by the mil, a thousandth of an inch, which is 25.4 micrometres by definition.
   */
  private static final Pattern MIL = Pattern.compile("([0-9]{1,2}(?:[.,][0-9]{1,2})?) ?mils?");

  private static final BigDecimal MICROMETRES = new BigDecimal("25.4");

  private FilmForm() {}

  /** What was typed; a field that the form did not show is as it was before. */
  static FilmDraft draft(Request.Values form, FilmDraft before) {
    return new FilmDraft(
        typed(form, "service", before.service()),
        typed(form, "name", before.name()),
        typed(form, "material", before.material()),
        thickness(typed(form, "thickness", before.thickness())),
        TypedNumber.plain(typed(form, "permeance", before.permeance())),
        TypedNumber.plain(typed(form, "vlt", before.vlt())),
        TypedNumber.plain(typed(form, "reflectance", before.reflectance())),
        metal(form, before),
        typed(form, "finish", before.finish()));
  }

  private static String typed(Request.Values form, String key, String before) {
    return form.has(key) ? form.one(key) : before;
  }

  private static String metal(Request.Values form, FilmDraft before) {
    if (!form.has(METAL_ASKED)) {
      return before.metallised();
    }
    boolean checked = form.one("metallised").equals("true");
    return checked ? "true" : before.metallised().isEmpty() ? "" : "false";
  }

  private static String thickness(String typed) {
    Matcher mil = MIL.matcher(typed);
    return mil.matches()
        ? new BigDecimal(TypedNumber.plain(mil.group(1)))
            .multiply(MICROMETRES)
            .setScale(1, RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString()
        : TypedNumber.plain(typed);
  }

  /** The permeance that such a film usually has; empty for a coating, or where it is not known. */
  static OptionalDouble usual(FilmDraft draft, Catalogue catalogue) {
    boolean film =
        Optional.ofNullable(catalogue.services().get(draft.service()))
            .filter(Service::film)
            .isPresent();
    try {
      return film
          ? UsualPermeance.of(
              draft.material(),
              Double.parseDouble(draft.thickness()),
              draft.metallised().equals("true"))
          : OptionalDouble.empty();
    } catch (NumberFormatException e) {
      return OptionalDouble.empty();
    }
  }

  /** The same film, of which nobody named the permeance, with the usual one. */
  static FilmDraft filled(FilmDraft draft, Catalogue catalogue) {
    OptionalDouble usual = usual(draft, catalogue);
    if (!draft.permeance().isEmpty() || usual.isEmpty()) {
      return draft;
    }
    return new FilmDraft(
        draft.service(),
        draft.name(),
        draft.material(),
        draft.thickness(),
        BigDecimal.valueOf(usual.getAsDouble()).stripTrailingZeros().toPlainString(),
        draft.vlt(),
        draft.reflectance(),
        draft.metallised(),
        draft.finish());
  }
}
