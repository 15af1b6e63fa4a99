package curewindow.shop;

import curewindow.climate.EpwFile;
import curewindow.climate.EpwReader;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads the weather files that places point to; they must lie in the shop folder. */
final class WeatherFiles {

  private static final String KEY = "weather-file";
  private static final int LONGEST = 200;

  /** Names with forward slashes between them, none of which begins with a dot. */
  private static final Pattern RELATIVE =
      Pattern.compile("(?i)[^/\\\\:.][^/\\\\:]*(/[^/\\\\:.][^/\\\\:]*)*");

  private static final double FAR_KM = 100;
  private static final double FAR_METRES = 300;

  private final ShopFiles files;
  private final Problems problems;

  WeatherFiles(ShopFiles files, Problems problems) {
    this.files = files;
    this.problems = problems;
  }

  /** The weather file of a place, or empty after telling why it cannot be used. */
  Optional<EpwFile> read(Fields f) {
    Optional<String> name = f.text(KEY, LONGEST).filter(n -> isFit(n, f));
    return name.flatMap(n -> bytes(n, f)).flatMap(b -> parsed(name.get(), b, f));
  }

  private Optional<EpwFile> parsed(String name, byte[] bytes, Fields f) {
    EpwReader.Result result = EpwReader.read(name, bytes);
    if (result instanceof EpwReader.Good good) {
      problems.addAll(good.file().notices());
      return Optional.of(good.file());
    }
    Problem problem = ((EpwReader.Broken) result).problem();
    Where where = new Where(name, problem.line(), problem.column(), "");
    f.source().error(problem.code(), where, problem.message(), problem.fix());
    return Optional.empty();
  }

  private static boolean isFit(String name, Fields f) {
    String low = name.toLowerCase(Locale.ROOT);
    if (!RELATIVE.matcher(name).matches()) {
      tell(
          f,
          "bad-path",
          KEY + " is not a path inside the shop folder: " + Source.shown(name),
          "write it from the shop folder on, with forward slashes, such as weather/harbor.epw");
      return false;
    }
    if (!low.endsWith(".epw") && !low.endsWith(".zip")) {
      tell(
          f,
          "bad-path",
          KEY + " ends neither in .epw nor in .zip: " + Source.shown(name),
          "name an EnergyPlus weather file, or the zip it came in");
      return false;
    }
    return true;
  }

  private Optional<byte[]> bytes(String name, Fields f) {
    try {
      Path real = files.root().resolve(name).toRealPath();
      if (!real.startsWith(files.root().toRealPath())) {
        tell(
            f,
            "bad-path",
            KEY + " leads out of the shop folder: " + Source.shown(name),
            "put the file itself into the shop folder, not a link to it");
        return Optional.empty();
      }
      if (!Files.isRegularFile(real)) {
        tell(f, "missing-file", Source.shown(name) + " is not a file", "name the file itself");
        return Optional.empty();
      }
      try (InputStream in = Files.newInputStream(real)) {
        return Optional.of(in.readNBytes(EpwReader.MAX_BYTES + 1));
      }
    } catch (NoSuchFileException | InvalidPathException e) {
      tell(
          f,
          "missing-file",
          "there is no file " + Source.shown(name),
          "put the weather file there, or correct its name; capital letters count");
    } catch (IOException e) {
      tell(
          f,
          "unreadable",
          Source.shown(name) + " cannot be read",
          "check its permissions and those of its folder");
    }
    return Optional.empty();
  }

  private static void tell(Fields f, String code, String message, String fix) {
    f.source().error(code, f.where(KEY), message, fix);
  }

  /** Notes where a place is typed so far from its weather file that the weather may differ. */
  static void tellIfFar(
      Fields f, Problems problems, EpwFile file, double latitude, double longitude, double height) {
    double km = file.distanceKm(latitude, longitude);
    double metres = Math.abs(height - file.height());
    if (km <= FAR_KM && metres <= FAR_METRES) {
      return;
    }
    problems.add(
        Problem.notice(
            "weather-file-far",
            f.where(KEY),
            String.format(
                Locale.ROOT,
                "the weather file's site lies %.0f km away and %.0f m %s",
                km,
                metres,
                height < file.height() ? "higher" : "lower"),
            "its hours are taken as they are; leave out latitude, longitude and height to use its"
                + " own"));
  }

  /** Where the figures come from, in words. */
  static String source(Fields f, EpwFile file) {
    int years = file.weather().years().size();
    String of = file.source().isEmpty() ? "" : " (" + Source.shown(file.source()) + ")";
    String how =
        file.weather().hasEnoughYears()
            ? years + " years, taken as they are"
            : "normals, spread and persistence of " + (years == 1 ? "one year" : years + " years");
    String name = f.leaf(KEY).map(Node.Leaf::text).orElse("").strip();
    return "weather file " + Source.shown(name, LONGEST) + ": " + file.name() + of + ", " + how;
  }
}
