package curewindow.cli;

import java.time.Clock;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** The option that says as of which time something is asked. */
final class AtOption {

  private final Clock clock;

  @Spec(Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--at",
      paramLabel = "TIME",
      description =
          "calls and cars to hand over as of this time, such as 2026-11-25T14:30-08:00; now if left out")
  private String at;

  AtOption(Clock clock) {
    this.clock = clock;
  }

  Instant time() {
    try {
      return at == null ? clock.instant() : OffsetDateTime.parse(at).toInstant();
    } catch (DateTimeException e) {
      throw new ParameterException(
          spec.commandLine(), "\"" + at + "\" is not a time like 2026-11-25T14:30-08:00");
    }
  }
}
