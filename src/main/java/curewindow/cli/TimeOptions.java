package curewindow.cli;

import curewindow.shop.Times;
import curewindow.shop.TypedTime;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Reads what is typed behind options that take a day or a time, all in the same forms. */
final class TimeOptions {

  private TimeOptions() {}

  /**
   * The moment that is meant.
   *
   * @param option the option's name
   * @param typed a day, a time by the shop's clock, or one with its offset
   * @param zone the shop's zone
   * @param spec the command
   * @return the moment; of a day its first one
   */
  static Instant moment(String option, String typed, ZoneId zone, CommandSpec spec) {
    TypedTime read = Times.readOrDay(typed, zone);
    if (read instanceof TypedTime.Wrong wrong) {
      throw new ParameterException(
          spec.commandLine(), option + " " + wrong.what() + "; " + wrong.fix());
    }
    return ((TypedTime.Moment) read).at();
  }

  /** The day, by the shop's clock, of the moment that is meant. */
  static LocalDate day(String option, String typed, ZoneId zone, CommandSpec spec) {
    return moment(option, typed, zone, spec).atZone(zone).toLocalDate();
  }
}
