package curewindow.handout;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.Arrays;
import java.util.Random;
import java.util.function.ToIntFunction;

/**
 * What happens to the picture of a code between paper and phone. All are on grey pictures with the
 * symbol in their middle, and give the same pixels for the same numbers.
 */
final class Spoiling {

  private static final int WHITE = 255;

  private Spoiling() {}

  /** Where on the untouched picture a pixel of the spoiled one comes from. */
  private interface From {

    /** The place {x, y}, from the middle of the picture, of a pixel {x, y} from the middle. */
    double[] at(double x, double y);
  }

  /** A square part of a page, white where it goes beyond the page. */
  static BufferedImage cut(BufferedImage page, int left, int top, int side) {
    Grey grey = Grey.of(page);
    return filled(
        new BufferedImage(side, side, BufferedImage.TYPE_BYTE_GRAY),
        at -> grey.at(left + at[0], top + at[1]));
  }

  /** Turned on its place by some degrees. */
  static BufferedImage turned(BufferedImage picture, double degrees) {
    double a = Math.toRadians(degrees);
    return warped(
        picture,
        (x, y) ->
            new double[] {x * Math.cos(a) + y * Math.sin(a), y * Math.cos(a) - x * Math.sin(a)});
  }

  /**
   * Seen from the side by a pinhole camera that is three widths of the picture away.
   *
   * @param degrees between the line of sight and the upright on the paper
   * @param axis the direction on the paper of the axis it is tilted about, degrees
   */
  static BufferedImage tilted(BufferedImage picture, double degrees, double axis) {
    double t = Math.toRadians(degrees);
    double a = Math.toRadians(axis);
    double far = 3.0 * picture.getWidth();
    return warped(
        picture,
        (x, y) -> {
          double along = x * Math.cos(a) + y * Math.sin(a);
          double across = y * Math.cos(a) - x * Math.sin(a);
          double v = across * far / (far * Math.cos(t) - across * Math.sin(t));
          double u = along * (far + v * Math.sin(t)) / far;
          return new double[] {
            u * Math.cos(a) - v * Math.sin(a), u * Math.sin(a) + v * Math.cos(a)
          };
        });
  }

  /** With each pixel smeared by a Gaussian of this standard deviation, in pixels. */
  static BufferedImage blurred(BufferedImage picture, double deviation) {
    int reach = (int) Math.ceil(3 * deviation);
    double[] weights = new double[2 * reach + 1];
    for (int i = -reach; i <= reach; i++) {
      weights[i + reach] = Math.exp(-0.5 * i * i / (deviation * deviation));
    }
    return smeared(smeared(picture, weights, 1, 0), weights, 0, 1);
  }

  private static BufferedImage smeared(BufferedImage picture, double[] weights, int dx, int dy) {
    Grey grey = Grey.of(picture);
    double all = Arrays.stream(weights).sum();
    int reach = weights.length / 2;
    return mapped(
        picture,
        at -> {
          double sum = 0;
          for (int i = -reach; i <= reach; i++) {
            sum += weights[i + reach] * grey.at(at[0] + i * dx, at[1] + i * dy);
          }
          return (int) Math.round(sum / all);
        });
  }

  /** With Gaussian noise; its standard deviation is a share of the way from black to white. */
  static BufferedImage noisy(BufferedImage picture, double share, long seed) {
    Grey grey = Grey.of(picture);
    Random random = new Random(seed);
    return mapped(
        picture, at -> clamp(grey.at(at[0], at[1]) + random.nextGaussian() * share * WHITE));
  }

  /** With a share of all pixels black or white by chance. */
  static BufferedImage speckled(BufferedImage picture, double share, long seed) {
    Grey grey = Grey.of(picture);
    Random random = new Random(seed);
    return mapped(
        picture,
        at ->
            random.nextDouble() < share
                ? (random.nextBoolean() ? WHITE : 0)
                : grey.at(at[0], at[1]));
  }

  /** With only a share of the contrast left, round a middle grey. */
  static BufferedImage faint(BufferedImage picture, double share) {
    Grey grey = Grey.of(picture);
    return mapped(picture, at -> clamp(128 + (grey.at(at[0], at[1]) - 128) * share));
  }

  /** With a disc of one shade over it; place and radius in pixels from the middle. */
  static BufferedImage stained(BufferedImage picture, double[] place, double radius, int shade) {
    Grey grey = Grey.of(picture);
    double middleX = picture.getWidth() / 2.0 + place[0];
    double middleY = picture.getHeight() / 2.0 + place[1];
    return mapped(
        picture,
        at ->
            Math.hypot(at[0] + 0.5 - middleX, at[1] + 0.5 - middleY) < radius
                ? shade
                : grey.at(at[0], at[1]));
  }

  /** Made smaller: each dot is the mean of those that it covers. */
  static BufferedImage reduced(BufferedImage picture, double scale) {
    Grey grey = Grey.of(picture);
    int width = (int) Math.floor(picture.getWidth() * scale);
    int height = (int) Math.floor(picture.getHeight() * scale);
    return filled(
        new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY),
        at -> {
          int right = (int) Math.round((at[0] + 1) / scale);
          int bottom = (int) Math.round((at[1] + 1) / scale);
          int left = (int) Math.round(at[0] / scale);
          int top = (int) Math.round(at[1] / scale);
          int sum = 0;
          for (int x = left; x < right; x++) {
            for (int y = top; y < bottom; y++) {
              sum += grey.at(x, y);
            }
          }
          return sum / ((right - left) * (bottom - top));
        });
  }

  /** Large enough that no corner of the picture is lost when it is turned. */
  private static BufferedImage warped(BufferedImage picture, From from) {
    Grey grey = Grey.of(picture);
    int width = (int) Math.ceil(picture.getWidth() * 1.45);
    int height = (int) Math.ceil(picture.getHeight() * 1.45);
    BufferedImage result = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
    double middleX = picture.getWidth() / 2.0 - 0.5;
    double middleY = picture.getHeight() / 2.0 - 0.5;
    return filled(
        result,
        at -> {
          double[] place = from.at(at[0] + 0.5 - width / 2.0, at[1] + 0.5 - height / 2.0);
          return between(grey, place[0] + middleX, place[1] + middleY);
        });
  }

  private static int between(Grey grey, double x, double y) {
    int left = (int) Math.floor(x);
    int top = (int) Math.floor(y);
    double right = x - left;
    double down = y - top;
    double upper = grey.at(left, top) * (1 - right) + grey.at(left + 1, top) * right;
    double lower = grey.at(left, top + 1) * (1 - right) + grey.at(left + 1, top + 1) * right;
    return clamp(upper * (1 - down) + lower * down);
  }

  private static BufferedImage mapped(BufferedImage picture, ToIntFunction<int[]> shade) {
    return filled(
        new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_BYTE_GRAY),
        shade);
  }

  private static BufferedImage filled(BufferedImage result, ToIntFunction<int[]> shade) {
    byte[] shades = shades(result);
    int[] at = new int[2];
    for (int i = 0; i < shades.length; i++) {
      at[0] = i % result.getWidth();
      at[1] = i / result.getWidth();
      shades[i] = (byte) shade.applyAsInt(at);
    }
    return result;
  }

  /** The shades of a picture, white beyond its edges. */
  private record Grey(int width, int height, byte[] shades) {

    static Grey of(BufferedImage picture) {
      return new Grey(picture.getWidth(), picture.getHeight(), Spoiling.shades(picture));
    }

    int at(int x, int y) {
      boolean inside = x >= 0 && y >= 0 && x < width && y < height;
      return inside ? shades[y * width + x] & 0xFF : WHITE;
    }
  }

  /** The pixels of a picture that is no part of another one. */
  static byte[] shades(BufferedImage picture) {
    return ((DataBufferByte) picture.getRaster().getDataBuffer()).getData();
  }

  private static int clamp(double shade) {
    return (int) Math.max(0, Math.min(WHITE, Math.round(shade)));
  }
}
