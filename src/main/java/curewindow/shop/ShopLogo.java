package curewindow.shop;

import java.util.Arrays;
import java.util.Objects;

/**
 * The logo of a shop, cleaned of all that does not show: fit to be published, and to be drawn by
 * libraries that trust what they read.
 */
public final class ShopLogo {

  /** What it is drawn with. */
  public enum Kind {
    /** Shapes, as SVG. */
    SVG,
    /** Dots, as PNG. */
    PNG
  }

  private final Kind kind;
  private final String file;
  private final double width;
  private final double height;
  private final byte[] bytes;

  /**
   * A clean logo.
   *
   * @param kind what it is drawn with
   * @param file the file it was read from, relative to the shop folder
   * @param width its width, in dots where it is a PNG; above 0
   * @param height its height in the same unit
   * @param bytes the clean file
   */
  ShopLogo(Kind kind, String file, double width, double height, byte[] bytes) {
    this.kind = Objects.requireNonNull(kind, "kind");
    this.file = Objects.requireNonNull(file, "file");
    if (!(width > 0 && height > 0)) {
      throw new IllegalArgumentException("a logo of " + width + " by " + height);
    }
    this.width = width;
    this.height = height;
    this.bytes = bytes.clone();
  }

  /**
   * What it is drawn with.
   *
   * @return shapes or dots
   */
  public Kind kind() {
    return kind;
  }

  /**
   * The file that it was read from.
   *
   * @return relative to the shop folder, with forward slashes
   */
  public String file() {
    return file;
  }

  /**
   * The name under which it is published, at the top of the site.
   *
   * @return {@code logo.svg} or {@code logo.png}
   */
  public String name() {
    return kind == Kind.SVG ? "logo.svg" : "logo.png";
  }

  /**
   * Its width.
   *
   * @return dots where it is a PNG, else a length of no unit; above 0
   */
  public double width() {
    return width;
  }

  /**
   * Its height.
   *
   * @return in the unit of the width
   */
  public double height() {
    return height;
  }

  /**
   * The clean file.
   *
   * @return its bytes, UTF-8 where it is SVG
   */
  public byte[] bytes() {
    return bytes.clone();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ShopLogo that
        && kind == that.kind
        && file.equals(that.file)
        && Arrays.equals(bytes, that.bytes);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(bytes);
  }

  @Override
  public String toString() {
    return file;
  }
}
