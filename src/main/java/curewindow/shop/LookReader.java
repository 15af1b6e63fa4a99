package curewindow.shop;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads {@code logo} and {@code color} of shop.yaml. What is wrong with them is an error, and the
 * shop goes on without: with its name, or the program's color.
 */
final class LookReader {

  /** Bytes of a logo; a phone loads it with the first page it opens. */
  static final int MOST_BYTES = 65_536;

  private static final Pattern NAME =
      Pattern.compile("(?i)[\\p{L}\\p{N}_][\\p{L}\\p{N}_. /-]*\\.(svg|png)");

  private final ShopFiles files;
  private final Problems problems;

  LookReader(ShopFiles files, Problems problems) {
    this.files = files;
    this.problems = problems;
  }

  ShopLook read(Fields f) {
    return new ShopLook(f.text("logo", 100).flatMap(name -> logo(f, name)), color(f));
  }

  private Optional<ShopColor> color(Fields f) {
    String quotes = "write it in quotes, such as color: \"#0b5d57\"";
    if (f.isEmpty("color")) {
      tell(f, "color", "color has no value, as # begins a note outside of quotes", quotes);
      return Optional.empty();
    }
    Optional<String> text = f.code("color", 40);
    Optional<Rgb> color = text.flatMap(Rgb::of);
    if (text.isPresent() && color.isEmpty()) {
      String shown = Source.shown(text.get());
      tell(f, "color", "color is no color of a screen: " + shown, quotes);
    }
    color.filter(c -> ShopColor.of(c).isEmpty()).ifPresent(c -> tellFaint(f, c));
    return color.flatMap(ShopColor::of);
  }

  private void tellFaint(Fields f, Rgb color) {
    String nearest = ShopColor.nearest(color).onLight();
    tell(
        f,
        "color",
        "text in the color "
            + color.hex()
            + " has a contrast of "
            + ShopColor.measured(color)
            + " to 1 on a page, under 4.5",
        "the nearest that can be read is " + nearest + "; write color: \"" + nearest + '"');
  }

  private void tell(Fields f, String key, String message, String fix) {
    problems.add(Problem.error("bad-" + key, f.where(key), message, fix));
  }

  private Optional<ShopLogo> logo(Fields f, String name) {
    if (!NAME.matcher(name).matches() || name.contains("//") || !isInside(name)) {
      tell(
          f,
          "logo",
          "logo names no SVG or PNG of the shop folder: " + Source.shown(name),
          "put the file into the shop folder and write its name, such as logo.svg");
      return Optional.empty();
    }
    Optional<byte[]> bytes = bytes(f, name);
    return name.toLowerCase(Locale.ROOT).endsWith(".svg")
        ? bytes.flatMap(b -> new SvgLogo(name, problems).read(b))
        : bytes.flatMap(b -> new PngLogo(name, problems).read(b));
  }

  /** Neither by its name nor by a link does it lead out of the shop folder. */
  private boolean isInside(String name) {
    try {
      Path root = files.root();
      Path file = root.resolve(name).normalize();
      return file.startsWith(root)
          && (!Files.exists(file) || file.toRealPath().startsWith(root.toRealPath()));
    } catch (IOException e) {
      return false;
    }
  }

  private Optional<byte[]> bytes(Fields f, String name) {
    Path file = files.root().resolve(name);
    try {
      if (!Files.isRegularFile(file)) {
        tell(f, "logo", "there is no file " + name, "put it into the shop folder, or delete logo");
      } else if (Files.size(file) > MOST_BYTES) {
        tell(
            f,
            "logo",
            name + " has " + Files.size(file) + " bytes, more than " + MOST_BYTES,
            "make it simpler, or a PNG smaller; 600 dots of width are plenty");
      } else {
        return Optional.of(Files.readAllBytes(file));
      }
    } catch (IOException e) {
      tell(f, "logo", name + " cannot be read", "check its permissions");
    }
    return Optional.empty();
  }
}
