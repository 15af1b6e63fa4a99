package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Shop folders under {@code src/test/resources/shop}: each is laid over the base shop and read; the
 * problems, good jobs and jobs left out must be those of its {@code expected.txt}.
 */
class GoldenShopsTest {

  static Stream<String> cases() throws IOException {
    try (Stream<Path> all = Files.list(TestShops.CASES)) {
      return all
          .map(p -> p.getFileName().toString())
          .filter(name -> !name.equals("base"))
          .sorted()
          .toList()
          .stream();
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void reads(String name, @TempDir Path dir) throws IOException {
    TestShops.base(dir);
    TestShops.copy(TestShops.CASES.resolve(name), dir);
    Files.deleteIfExists(dir.resolve("expected.txt"));
    ShopRead read = TestShops.read(dir);
    StringBuilder actual = new StringBuilder();
    TestShops.lines(read).forEach(line -> actual.append(line).append('\n'));
    actual.append("shop: ").append(read.shop().map(Shop::name).orElse("none")).append('\n');
    actual.append("good: ").append(list(read.jobs().stream().map(Job::id).toList()));
    actual
        .append("left out: ")
        .append(list(read.brokenJobs().stream().map(BrokenJob::name).toList()));
    Path expected = TestShops.CASES.resolve(name).resolve("expected.txt");
    if (System.getenv("WRITE_EXPECTED") != null) {
      Files.writeString(expected, actual);
    }
    assertEquals(Files.readString(expected), actual.toString());
  }

  private static String list(List<String> names) {
    return String.join(" ", names) + "\n";
  }
}
