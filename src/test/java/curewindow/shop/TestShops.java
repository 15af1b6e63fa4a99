package curewindow.shop;

import curewindow.problem.Problem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;

/** Shop folders for tests: the base shop with what a test adds or replaces. */
final class TestShops {

  static final Path CASES = Path.of("src/test/resources/shop");

  private TestShops() {}

  /** Copies the base shop into a folder. */
  static Path base(Path into) throws IOException {
    copy(CASES.resolve("base"), into);
    return into;
  }

  static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      all.filter(Files::isRegularFile)
          .forEach(
              file -> {
                try {
                  Path target = to.resolve(from.relativize(file).toString());
                  Files.createDirectories(target.getParent());
                  Files.copy(file, target, StandardCopyOption.REPLACE_EXISTING);
                } catch (IOException e) {
                  throw new UncheckedIOException(e);
                }
              });
    }
  }

  /** Reads a shop folder at a time by which all that the tests call measured is over. */
  static ShopRead read(Path dir) {
    return read(dir, Instant.parse("2027-06-01T00:00:00Z"));
  }

  static ShopRead read(Path dir, Instant now) {
    return ShopFolder.read(new ShopFiles(dir), now);
  }

  static List<String> lines(ShopRead read) {
    return read.problems().stream().map(Problem::oneLine).toList();
  }
}
