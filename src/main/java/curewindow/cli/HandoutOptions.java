package curewindow.cli;

import curewindow.handout.HandoutPress;
import curewindow.problem.Nearest;
import curewindow.shop.Handout;
import curewindow.shop.HandoutChoice;
import curewindow.shop.Ink;
import curewindow.shop.InkChoice;
import curewindow.shop.PaperChoice;
import curewindow.shop.SheetPaper;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** The options that choose a handout, its paper and its inks. */
final class HandoutOptions {

  @Spec(Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--as",
      paramLabel = "HANDOUT",
      completionCandidates = Described.class,
      description = {"what to make; what shop.yaml says if left out:", "${COMPLETION-CANDIDATES}"})
  private String as;

  @Option(
      names = "--sheet",
      paramLabel = "PAPER",
      description = {
        "a4 or letter: as many as fit on a sheet, ready to be cut; none: each on a page of its own,"
            + " for a print shop; what shop.yaml says if left out, or else what the shop's printer"
            + " is likely to have"
      })
  private String sheet;

  @Option(
      names = "--ink",
      paramLabel = "INK",
      description = {
        "screen: for an office printer; black: one ink, for label printers; process (CMYK) or spot"
            + " (black and the shop's color): for a print shop; what shop.yaml says if left out"
      })
  private String ink;

  @Option(
      names = "--start",
      paramLabel = "PLACE",
      defaultValue = "1",
      description = {
        "the first free place on a sheet that is partly used, counted row by row; 1 if left out"
      })
  private int start;

  private int start() {
    if (start < 1 || start > PaperChoice.MOST) {
      throw new ParameterException(
          spec.commandLine(), "--start takes 1 to " + PaperChoice.MOST + ", not " + start);
    }
    return start;
  }

  /** The handouts as the help lists them. */
  static final class Described implements Iterable<String> {

    @Override
    public Iterator<String> iterator() {
      return Arrays.stream(Handout.values())
          .map(h -> h.id() + " (" + h.description() + ")")
          .iterator();
    }
  }

  /** The handout that was named. */
  Optional<Handout> kind() {
    return Optional.ofNullable(as)
        .map(name -> Handout.of(name).orElseThrow(() -> unknown("--as", name, Handout.ids())));
  }

  /** What was named, and for the rest what is usual. */
  HandoutChoice or(HandoutChoice usual) {
    Handout made = kind().orElse(usual.as());
    return new HandoutChoice(made, paper(made).or(usual::sheet), start(), inks(usual.inks()));
  }

  private Optional<SheetPaper> paper(Handout made) {
    Optional<SheetPaper> paper =
        Optional.ofNullable(sheet)
            .map(
                name ->
                    SheetPaper.of(name)
                        .orElseThrow(() -> unknown("--sheet", name, SheetPaper.ids())));
    if (paper.filter(p -> p != SheetPaper.NONE).isPresent() && HandoutPress.isFromRoll(made)) {
      throw new ParameterException(
          spec.commandLine(), made.id() + " is a label from a roll: leave out --sheet");
    }
    return paper;
  }

  private InkChoice inks(InkChoice usual) {
    if (ink == null) {
      return usual;
    }
    Ink named = Ink.of(ink).orElseThrow(() -> unknown("--ink", ink, Ink.ids()));
    if (named == Ink.SPOT && usual.spot().isEmpty()) {
      throw new ParameterException(
          spec.commandLine(),
          "--ink spot needs the name of the ink of the shop's color: write spot: and the name as"
              + " the print shop has it under handout: in shop.yaml");
    }
    return usual.with(named);
  }

  private ParameterException unknown(String option, String name, List<String> known) {
    return new ParameterException(
        spec.commandLine(),
        option
            + " takes "
            + String.join(", ", known)
            + ", not \""
            + name
            + "\""
            + Nearest.hint(name, known));
  }
}
