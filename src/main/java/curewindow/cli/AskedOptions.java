package curewindow.cli;

import curewindow.site.CallNote;
import curewindow.site.CallNotes;
import curewindow.site.CallOutcome;
import curewindow.site.LoadedShop;
import java.io.IOException;
import java.time.Instant;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** The options that note that a customer called with a question. */
final class AskedOptions {

  @Option(
      names = "--asked",
      paramLabel = "JOB",
      required = true,
      description = "notes that the customer of this job called with a question, now")
  private String job;

  @Option(
      names = "--about",
      paramLabel = "QUESTION",
      description =
          "the question's id in the guides, such as haze; a wrong one lists them all; other if left"
              + " out")
  private String question = CallNote.OTHER;

  @Option(
      names = "--outcome",
      paramLabel = "OUTCOME",
      description = "what became of it: solved, coming-in or open; open if left out")
  private String outcome = CallOutcome.OPEN.id();

  /** Notes the call, and says so. */
  int note(LoadedShop loaded, Instant now, CommandSpec spec) throws IOException {
    CallOutcome became =
        CallOutcome.of(outcome)
            .orElseThrow(
                () ->
                    new ParameterException(
                        spec.commandLine(), "--outcome " + outcome + " is none of " + outcomes()));
    try {
      CallNotes.note(loaded, job, question, became, now);
    } catch (IllegalArgumentException e) {
      spec.commandLine().getErr().println(e.getMessage());
      return Exit.PROBLEMS;
    }
    spec.commandLine()
        .getOut()
        .println("noted: " + job + " called, " + question + ", " + became.id());
    return Exit.OK;
  }

  private static String outcomes() {
    return Stream.of(CallOutcome.values()).map(CallOutcome::id).collect(Collectors.joining(", "));
  }
}
