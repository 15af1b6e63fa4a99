package curewindow.climate;

import curewindow.problem.Problem;
import curewindow.problem.Where;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Reads weather files in the EnergyPlus format (EPW), plain or in the zip they are downloaded in.
 * Strict: what is not understood is refused, with the line and what to do about it.
 */
public final class EpwReader {

  /** The largest file that is read, in bytes, zipped or unzipped: some 40 years of hours. */
  public static final int MAX_BYTES = 64 << 20;

  private EpwReader() {}

  /** What became of a file. */
  public sealed interface Result {}

  /**
   * The file can be used.
   *
   * @param file what it says
   */
  public record Good(EpwFile file) implements Result {}

  /**
   * The file cannot be used.
   *
   * @param problem the first thing wrong in it, with its line and what to do
   */
  public record Broken(Problem problem) implements Result {}

  /**
   * Reads a file.
   *
   * @param file its name, for messages
   * @param bytes its content, at most {@link #MAX_BYTES}
   * @return what it says, or what is wrong with it
   */
  public static Result read(String file, byte[] bytes) {
    try {
      if (bytes.length > MAX_BYTES) {
        throw EpwZip.tooLarge();
      }
      byte[] plain = EpwZip.isZip(file, bytes) ? EpwZip.only(bytes) : bytes;
      return new Good(parse(file, new String(plain, StandardCharsets.ISO_8859_1)));
    } catch (EpwFault fault) {
      return new Broken(fault.problem(file));
    }
  }

  private static EpwFile parse(String file, String text) throws EpwFault {
    EpwLines lines = new EpwLines(text);
    EpwHeader header = EpwHeader.read(lines);
    EpwHours hours = EpwHours.read(lines);
    EpwGaps gaps = new EpwGaps(file, hours);
    gaps.fillAir();
    double[] clearSky =
        Sun.over(header.latitude(), header.longitude()).clearSkyHours(header.offset());
    List<Problem> notices = new ArrayList<>();
    boolean noSun = allMissing(hours);
    if (noSun) {
      EpwSun.estimate(hours, header.latitude(), clearSky);
      notices.add(noSunNotice(file));
    } else {
      double[] byRow = EpwSun.byRow(hours, clearSky);
      gaps.fillSun(byRow);
      EpwSun.check(hours, byRow);
    }
    notices.addAll(gaps.notices());
    return new EpwFile(
        header.name(),
        header.source(),
        header.latitude(),
        header.longitude(),
        header.height(),
        header.offset(),
        FileWeather.of(years(hours)),
        noSun,
        notices);
  }

  private static boolean allMissing(EpwHours hours) {
    return Arrays.stream(hours.sun(), 0, hours.rows()).allMatch(Double::isNaN);
  }

  private static Problem noSunNotice(String file) {
    return Problem.notice(
        "epw-sun-estimated",
        Where.file(file),
        "the global horizontal radiation is missing in all rows, so it was estimated from the"
            + " daily range of temperature",
        "a file with radiation gives better dates");
  }

  /** The years without their February 29. */
  private static List<WeatherYear> years(EpwHours hours) {
    List<WeatherYear> years = new ArrayList<>();
    double[][] parts = new double[3][WeatherYear.HOURS];
    int hour = 0;
    for (int row = 0; row < hours.rows(); row++) {
      if (hours.onLeapDay(row)) {
        continue;
      }
      parts[0][hour] = hours.air()[row];
      parts[1][hour] = hours.dew()[row];
      parts[2][hour] = hours.sun()[row];
      hour = (hour + 1) % WeatherYear.HOURS;
      if (hour == 0) {
        years.add(WeatherYear.of(parts[0], parts[1], parts[2]));
      }
    }
    return years;
  }
}
