package curewindow.cli;

import curewindow.why.TrialAsked;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The options that try another case of a job without a change to any file. */
final class TrialOptions {

  @Option(
      names = "--parking",
      paramLabel = "DAY[,NIGHT]",
      description = "try the car parked elsewhere: outside, shade, garage or heated")
  private String parking;

  @Option(
      names = "--place",
      paramLabel = "ID",
      description =
          "try the car in another place; the work stays when it was, dates are told by the clocks"
              + " there")
  private String place;

  @Option(
      names = "--finished",
      paramLabel = "TIME",
      description =
          "try all work finished then, such as 2026-11-25T14:30 by the clocks where the car stands,"
              + " or with an offset behind it; the pickup moves along")
  private String finished;

  @Option(
      names = "--pickup",
      paramLabel = "TIME",
      description = "try the car picked up then, in the same form")
  private String pickup;

  TrialAsked asked() {
    return new TrialAsked(
        Optional.ofNullable(parking),
        Optional.ofNullable(place),
        Optional.ofNullable(finished),
        Optional.ofNullable(pickup));
  }
}
