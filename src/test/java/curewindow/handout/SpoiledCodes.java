package curewindow.handout;

import com.google.zxing.ResultPoint;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** One code cut out of a page, spoiled in every way, the same each time. */
final class SpoiledCodes {

  /** How much of the code's square is looked at, with what stands round it. */
  private static final double SEEN = 1.3;

  private final Cut cut;
  private final List<Spoiled> all = new ArrayList<>();

  /** A spoiled picture, what was done to it, and the code that it is of. */
  record Spoiled(Harm harm, BufferedImage picture, Cut of) {

    /** As a camera sees it from farther away, with so many dots a module. */
    BufferedImage farther(int dots) {
      return Spoiling.reduced(picture, dots / of.module());
    }
  }

  /** A code cut out of a page: the symbol's middle is the picture's; measures in dots. */
  record Cut(BufferedImage picture, double module, int modules, String text) {

    double side() {
      return module * modules;
    }
  }

  private SpoiledCodes(Cut cut) {
    this.cut = cut;
  }

  /**
   * All spoiled pictures of a page's code.
   *
   * @param page the page, rasterised
   * @param code the code on it
   * @param side the side of its square, dots
   * @param often more pictures of each kind
   */
  static List<Spoiled> of(BufferedImage page, QrCode code, double side, boolean often) {
    SpoiledCodes codes = new SpoiledCodes(cut(page, code, side));
    codes.addSteady(often);
    for (int seed = 0; seed < (often ? 8 : 2); seed++) {
      codes.addChance(seed + page.getWidth());
    }
    return codes.all;
  }

  private static Cut cut(BufferedImage page, QrCode code, double side) {
    ResultPoint[] marks = CodeReaders.zxing(page).orElseThrow().getResultPoints();
    double x = (marks[0].getX() + marks[2].getX()) / 2;
    double y = (marks[0].getY() + marks[2].getY()) / 2;
    int width = (int) Math.round(side * SEEN);
    int left = (int) Math.round(x - width / 2.0);
    int top = (int) Math.round(y - width / 2.0);
    BufferedImage cut = Spoiling.cut(page, left, top, width);
    return new Cut(cut, code.module(side), code.modules(), code.text());
  }

  private void add(Harm harm, BufferedImage picture) {
    all.add(new Spoiled(harm, picture, cut));
  }

  private void addSteady(boolean often) {
    BufferedImage picture = cut.picture();
    add(Harm.NONE, picture);
    for (int angle : often ? new int[] {7, 15, 22, 30, 38, 45} : new int[] {45}) {
      add(Harm.TURNED, Spoiling.turned(picture, angle));
      add(Harm.TILTED, Spoiling.tilted(picture, 30, angle * 4));
    }
    add(Harm.BLURRED, Spoiling.blurred(picture, cut.module() * 0.35));
    add(Harm.BLURRED_MUCH, Spoiling.blurred(picture, cut.module() * 0.5));
    add(Harm.FAINT, Spoiling.faint(picture, 0.2));
  }

  private void addChance(long seed) {
    add(Harm.NOISY, Spoiling.noisy(cut.picture(), 0.2, seed));
    add(Harm.SPECKLED, Spoiling.speckled(cut.picture(), 0.2, seed));
    add(Harm.STAINED_BESIDE, stained(seed, true));
    add(Harm.STAINED, stained(seed, false));
    add(Harm.MANY, many(seed));
  }

  private BufferedImage many(long seed) {
    BufferedImage seen = Spoiling.tilted(cut.picture(), 15, 40 * seed);
    seen = Spoiling.turned(seen, 13 * seed % 45);
    seen = Spoiling.blurred(seen, cut.module() / 4);
    return Spoiling.noisy(Spoiling.faint(seen, 0.5), 0.04, seed);
  }

  /** A dark or a white disc over a tenth of the symbol. */
  private BufferedImage stained(long seed, boolean beside) {
    Random random = new Random(seed);
    double radius = cut.side() * Math.sqrt(0.1 / Math.PI);
    double room = cut.side() / 2 - radius;
    double x;
    double y;
    do {
      x = room * (2 * random.nextDouble() - 1);
      y = room * (2 * random.nextDouble() - 1);
    } while (beside && onCornerMark(x, y, radius));
    return Spoiling.stained(cut.picture(), new double[] {x, y}, radius, seed % 2 == 0 ? 40 : 255);
  }

  /** A corner mark has 7 modules, and a light edge of one; the lower right corner has none. */
  private boolean onCornerMark(double x, double y, double radius) {
    return inCorner(x, y, radius) || inCorner(-x, y, radius) || inCorner(x, -y, radius);
  }

  private boolean inCorner(double x, double y, double radius) {
    double inner = cut.side() / 2 - 8 * cut.module();
    return Math.hypot(Math.max(0, x + inner), Math.max(0, y + inner)) < radius;
  }
}
