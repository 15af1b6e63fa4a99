package curewindow.cli;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
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
          "whom to call and what to do before a pickup as of this day or time, such as 2026-11-25 or"
              + " 2026-11-25T14:30 by the shop's clock; now if left out")
  private String at;

  AtOption(Clock clock) {
    this.clock = clock;
  }

  /** The time, where days and local times are those of a zone. */
  Instant time(ZoneId zone) {
    return at == null ? clock.instant() : TimeOptions.moment("--at", at, zone, spec);
  }
}
