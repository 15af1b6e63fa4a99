package curewindow.shop;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import java.util.Set;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/**
 * Takes a PNG (W3C Portable Network Graphics, third edition) as a logo: only the chunks that make
 * its picture, so that nothing a camera or a program has noted is published.
 */
final class PngLogo {

  /** Dots of a side, so that a small file does not fill the memory. */
  private static final int MOST_DOTS = 2_000;

  /** Dots of a side; less cannot be read on any paper. */
  private static final int LEAST_DOTS = 16;

  private static final byte[] SIGNATURE = HexFormat.of().parseHex("89504e470d0a1a0a");
  private static final Set<String> KEPT =
      Set.of("IHDR", "PLTE", "tRNS", "sRGB", "gAMA", "IDAT", "IEND");

  /** Length, type and sum of a chunk, bytes. */
  private static final int FRAME = 12;

  /** A running desk reads its shop folder again and again. */
  private static volatile byte[] lastGood;

  private final String file;
  private final Problems problems;

  PngLogo(String file, Problems problems) {
    this.file = file;
    this.problems = problems;
  }

  Optional<ShopLogo> read(byte[] bytes) {
    Optional<byte[]> clean = clean(bytes);
    if (clean.isEmpty()) {
      return torn();
    }
    ByteBuffer head = ByteBuffer.wrap(clean.get(), SIGNATURE.length + 8, 8);
    int width = head.getInt();
    int height = head.getInt();
    // The size is looked at before memory is taken for the picture.
    boolean tooLarge = Math.max(width, height) > MOST_DOTS;
    if (!tooLarge && !decodes(clean.get())) {
      return torn();
    }
    if (tooLarge || Math.min(width, height) < LEAST_DOTS) {
      return bad(
          "the logo has " + width + " by " + height + " dots",
          "save it with "
              + LEAST_DOTS
              + " to "
              + MOST_DOTS
              + " dots a side; 600 of width are plenty");
    }
    return LogoShape.of(width, height, file, problems)
        .map(shape -> new ShopLogo(ShopLogo.Kind.PNG, file, width, height, clean.get()));
  }

  private Optional<ShopLogo> torn() {
    return bad("the logo is no whole PNG", "save it as PNG once more");
  }

  private Optional<ShopLogo> bad(String message, String fix) {
    problems.add(Problem.error("bad-logo", Where.file(file), message, fix));
    return Optional.empty();
  }

  /** The file with its picture alone; empty where it is torn. */
  private static Optional<byte[]> clean(byte[] bytes) {
    ByteBuffer in = ByteBuffer.wrap(bytes);
    if (bytes.length < SIGNATURE.length || !Arrays.equals(take(in, SIGNATURE.length), SIGNATURE)) {
      return Optional.empty();
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(SIGNATURE);
    String type = "";
    while (!type.equals("IEND")) {
      if (in.remaining() < FRAME) {
        return Optional.empty();
      }
      int length = in.getInt(in.position());
      if (length < 0 || length > in.remaining() - FRAME) {
        return Optional.empty();
      }
      byte[] chunk = take(in, length + FRAME);
      boolean first = type.isEmpty();
      type = new String(chunk, 4, 4, StandardCharsets.ISO_8859_1);
      if (!isWhole(chunk) || first != type.equals("IHDR") || first && length != 13) {
        return Optional.empty();
      }
      if (KEPT.contains(type)) {
        out.writeBytes(chunk);
      }
    }
    return Optional.of(out.toByteArray());
  }

  private static byte[] take(ByteBuffer in, int count) {
    byte[] taken = new byte[count];
    in.get(taken);
    return taken;
  }

  /** Whether the sum at a chunk's end is that of its type and data. */
  private static boolean isWhole(byte[] chunk) {
    CRC32 sum = new CRC32();
    sum.update(chunk, 4, chunk.length - 8);
    return (int) sum.getValue() == ByteBuffer.wrap(chunk).getInt(chunk.length - 4);
  }

  /** Whether its picture can be read; decoded anew only where the logo has changed. */
  private static boolean decodes(byte[] bytes) {
    if (Arrays.equals(bytes, lastGood)) {
      return true;
    }
    try {
      if (ImageIO.read(new ByteArrayInputStream(bytes)) == null) {
        return false;
      }
      lastGood = bytes;
      return true;
    } catch (IOException | RuntimeException e) {
      // The decoder throws either, depending on what is torn.
      return false;
    }
  }
}
