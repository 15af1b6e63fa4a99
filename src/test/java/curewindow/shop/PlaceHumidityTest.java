package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.climate.Psychrometrics;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Places whose months are typed with relative humidity. */
class PlaceHumidityTest {

  @TempDir Path dir;

  private ShopRead read(String latitude, String month) throws IOException {
    TestShops.base(dir);
    Path places = Files.createDirectories(dir.resolve("content/places"));
    Files.writeString(
        places.resolve("odd.yaml"),
        ("name: Odd\nlatitude: " + latitude + "\nlongitude: 0\nheight: 0\nzone: UTC\nnormals:\n")
            + ("  - {" + month + "}\n").repeat(12));
    return TestShops.read(dir);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "min: 50, max: 60, humidity: 95, sun: 5 | dew point of 53.9 C, outside -90 to 40",
        "min: -80, max: -78, humidity: 1, sun: 0 | outside -90 to 40"
      })
  void monthsThatNoPlaceHasAreOneProblemEach(String month, String said) throws IOException {
    List<String> lines = TestShops.lines(read("0", month));
    assertEquals(12, lines.size(), lines::toString);
    for (String line : lines) {
      assertTrue(line.startsWith("content/places/odd.yaml:") && line.contains(said), line);
    }
  }

  @Test
  void theColdestMonthsOfTheEarthAreRead() throws IOException {
    ShopRead read = read("-78", "min: -75, max: -66, humidity: 60, sun: 0");
    assertEquals(List.of(), TestShops.lines(read));
    double dew = read.places().get("odd").normals().get(0).dewPoint();
    assertEquals(60, Psychrometrics.relativeHumidity(-70.5, dew), 1e-6);
  }
}
