package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Why level H is chosen where its modules are wide enough: the same stains, on both levels. */
final class StainTest {

  private static final String SITE = "HTTPS://CARE.EXAMPLE/C/";
  private static final int ADDRESSES = 20;
  private static final int STAINS = 40;

  /** 24 mm at 300 dpi. */
  private static final int DOTS = 283;

  @Test
  void levelHOutlivesMoreStains() {
    long quarter = read(CodeLevel.Q);
    long high = read(CodeLevel.H);
    int all = ADDRESSES * STAINS;
    System.out.println("10 % stains, of " + all + ": Q " + quarter + ", H " + high);
    assertTrue(high >= quarter + all / 20, "Q " + quarter + ", H " + high);
  }

  /** Of many addresses, as single ones are read much better or worse than others. */
  private static long read(CodeLevel level) {
    Random random = new Random(14);
    return IntStream.range(0, ADDRESSES)
        .mapToLong(i -> read(SITE + token(random) + "/", level))
        .sum();
  }

  private static String token(Random random) {
    String signs = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    return IntStream.range(0, 20)
        .mapToObj(i -> String.valueOf(signs.charAt(random.nextInt(signs.length()))))
        .collect(Collectors.joining());
  }

  private static long read(String text, CodeLevel level) {
    QrCode code = QrCode.of(text, level).orElseThrow();
    BufferedImage drawn = drawn(code);
    double side = code.module(DOTS) * code.modules();
    return IntStream.range(0, STAINS)
        .mapToObj(seed -> CodeReaders.zxing(stained(drawn, side, seed)))
        .filter(found -> found.filter(f -> f.getText().equals(text)).isPresent())
        .count();
  }

  private static BufferedImage drawn(QrCode code) {
    BufferedImage drawn = new BufferedImage(DOTS, DOTS, BufferedImage.TYPE_BYTE_GRAY);
    double module = code.module(DOTS);
    for (int i = 0; i < DOTS * DOTS; i++) {
      int column = (int) Math.floor((i % DOTS + 0.5) / module) - QrCode.QUIET_ZONE;
      int row = (int) Math.floor((i / DOTS + 0.5) / module) - QrCode.QUIET_ZONE;
      Spoiling.shades(drawn)[i] = (byte) (code.dark(column, row) ? 30 : 255);
    }
    return drawn;
  }

  private static BufferedImage stained(BufferedImage drawn, double side, int seed) {
    Random random = new Random(1000L + seed);
    double radius = side * Math.sqrt(0.1 / Math.PI);
    double room = side / 2 - radius;
    double x = room * (2 * random.nextDouble() - 1);
    double y = room * (2 * random.nextDouble() - 1);
    return Spoiling.stained(drawn, new double[] {x, y}, radius, seed % 2 == 0 ? 40 : 255);
  }
}
