package curewindow.handout;

import curewindow.shop.Ink;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/** Turns pictures into the inks they are printed with, each once. What shines through is white. */
final class InkImages {

  private final PDDocument pdf;
  private final InkColors colors;
  private final InkSpaces spaces;
  private final Map<COSStream, COSStream> made = new IdentityHashMap<>();
  private final Map<Integer, Paint> paints = new HashMap<>();

  InkImages(PDDocument pdf, InkColors colors, InkSpaces spaces) {
    this.pdf = pdf;
    this.colors = colors;
    this.spaces = spaces;
  }

  /**
   * The picture in its inks; one that is only a shape, for a color to be painted through, stays.
   */
  COSStream inked(PDImageXObject picture) throws IOException {
    if (picture.isStencil()) {
      return picture.getCOSObject();
    }
    COSStream known = made.get(picture.getCOSObject());
    if (known == null) {
      known = make(picture.getImage());
      made.put(picture.getCOSObject(), known);
    }
    return known;
  }

  private COSStream make(BufferedImage picture) throws IOException {
    int[] dots =
        picture.getRGB(0, 0, picture.getWidth(), picture.getHeight(), null, 0, picture.getWidth());
    Paint[] inks = new Paint[dots.length];
    boolean hasSpot = false;
    boolean hasHoles = false;
    for (int i = 0; i < dots.length; i++) {
      inks[i] =
          paints.computeIfAbsent(
              onWhite(dots[i]), d -> colors.of(Rgb.of(d), InkColors.Use.PICTURE));
      hasSpot |= inks[i].plates() == Paint.Plates.SPOT;
      hasHoles |= dots[i] >>> 24 == 0;
    }
    int parts = colors.ink() == Ink.PROCESS ? 4 : hasSpot ? 2 : 1;
    COSStream made = stream(picture, bytes(inks, parts));
    made.setItem(COSName.COLORSPACE, space(parts));
    made.setInt(COSName.BITS_PER_COMPONENT, 8);
    if (hasHoles) {
      made.setItem(COSName.MASK, holes(picture, dots));
    }
    return made;
  }

  private COSBase space(int parts) {
    return switch (parts) {
      case 4 -> COSName.DEVICECMYK;
      case 2 -> spaces.blackAndSpot();
      default -> COSName.DEVICEGRAY;
    };
  }

  /** The dot as it looks on white paper. */
  private static int onWhite(int dot) {
    int alpha = dot >>> 24;
    int seen = 0;
    for (int shift = 16; shift >= 0; shift -= 8) {
      int part = dot >> shift & 255;
      seen |= (part * alpha + 255 * (255 - alpha) + 127) / 255 << shift;
    }
    return seen;
  }

  private static byte[] bytes(Paint[] inks, int parts) {
    byte[] bytes = new byte[inks.length * parts];
    for (int i = 0; i < inks.length; i++) {
      Paint paint = inks[i];
      for (int part = 0; part < parts; part++) {
        bytes[i * parts + part] = (byte) Math.round(255 * value(paint, part, parts));
      }
    }
    return bytes;
  }

  /** Gray counts light, all others count ink. */
  private static float value(Paint paint, int part, int parts) {
    boolean black = paint.plates() == Paint.Plates.BLACK;
    return switch (parts) {
      case 1 -> 1 - paint.tint(0);
      case 2 -> black == (part == 0) ? paint.tint(0) : 0;
      default -> !black ? paint.tint(part) : part == 3 ? paint.tint(0) : 0;
    };
  }

  private COSStream stream(BufferedImage picture, byte[] bytes) throws IOException {
    COSStream made =
        new PDStream(pdf, new ByteArrayInputStream(bytes), COSName.FLATE_DECODE).getCOSObject();
    made.setItem(COSName.TYPE, COSName.XOBJECT);
    made.setItem(COSName.SUBTYPE, COSName.IMAGE);
    made.setInt(COSName.WIDTH, picture.getWidth());
    made.setInt(COSName.HEIGHT, picture.getHeight());
    return made;
  }

  /** Where nothing of the picture is, what lies under it stays. */
  private COSStream holes(BufferedImage picture, int[] dots) throws IOException {
    int width = picture.getWidth();
    int row = (width + 7) / 8;
    byte[] bits = new byte[row * picture.getHeight()];
    for (int i = 0; i < dots.length; i++) {
      if (dots[i] >>> 24 == 0) {
        bits[i / width * row + i % width / 8] |= (byte) (128 >> i % width % 8);
      }
    }
    COSStream made = stream(picture, bits);
    made.setBoolean(COSName.IMAGE_MASK, true);
    made.setInt(COSName.BITS_PER_COMPONENT, 1);
    return made;
  }
}
