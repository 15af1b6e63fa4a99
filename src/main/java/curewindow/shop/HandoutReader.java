package curewindow.shop;

import curewindow.problem.Problem;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Reads what a shop hands out, from shop.yaml. */
final class HandoutReader {

  private static final Keys HANDOUT =
      Keys.needs().allows("as", "sheet", "ink", "spot", "condition");
  private static final Names HANDOUTS = Names.of("handout", Handout.ids());
  private static final Names PAPERS = Names.of("paper", SheetPaper.ids());
  private static final Names INKS = Names.of("ink", Ink.ids());
  private static final Names CONDITIONS = Names.of("printing condition", PrintingCondition.ids());

  /** Bytes; what a name may have in PDF 1.4 (PDF Reference, appendix C), less room to spare. */
  private static final int LONGEST_SPOT = 60;

  /** What these name in a PDF is not an ink of its own (PDF Reference, 4.5.5). */
  private static final Set<String> RESERVED =
      Set.of("all", "none", "cyan", "magenta", "yellow", "black");

  private final Source source;

  HandoutReader(Source source) {
    this.source = source;
  }

  HandoutChoice read(Fields shop) {
    Optional<Fields> handout = shop.fields("handout", HANDOUT);
    return new HandoutChoice(
        handout
            .flatMap(h -> h.name("as", HANDOUTS))
            .flatMap(Handout::of)
            .orElse(HandoutChoice.USUAL.as()),
        handout.flatMap(h -> h.name("sheet", PAPERS)).flatMap(SheetPaper::of),
        HandoutChoice.USUAL.start(),
        handout.map(this::inks).orElse(InkChoice.USUAL));
  }

  private InkChoice inks(Fields handout) {
    Ink ink = handout.name("ink", INKS).flatMap(Ink::of).orElse(Ink.SCREEN);
    Optional<String> spot = handout.text("spot", LONGEST_SPOT).flatMap(s -> spot(s, handout));
    if (ink == Ink.SPOT && !handout.has("spot")) {
      source.error(
          Problem.missing(
              handout.where("ink"),
              "spot",
              "spot is missing, the name of the ink of the shop's color",
              "add spot: and the name as the print shop has it, or choose another ink"));
    }
    return new InkChoice(
        ink == Ink.SPOT && spot.isEmpty() ? Ink.SCREEN : ink,
        spot,
        handout.name("condition", CONDITIONS).flatMap(PrintingCondition::of));
  }

  private Optional<String> spot(String name, Fields handout) {
    if (RESERVED.contains(name.toLowerCase(Locale.ROOT))) {
      source.error(
          "bad-spot",
          handout.where("spot"),
          Source.shown(name) + " is not the name of a color of its own to print shops",
          "write the name of the ink as the print shop has it");
      return Optional.empty();
    }
    return Optional.of(name);
  }
}
