package curewindow.handout;

import com.google.zxing.Binarizer;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.LuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.Result;
import com.google.zxing.client.j2se.BufferedImageLuminanceSource;
import com.google.zxing.common.GlobalHistogramBinarizer;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/**
 * Two readers of codes that know nothing of each other: ZXing, and the program zbarimg. Where
 * zbarimg is not installed the calling test is skipped, and says so; with {@code
 * CUREWINDOW_REQUIRE_ZBAR} set in the environment it fails.
 */
public final class CodeReaders {

  private static final Pattern SEEN =
      Pattern.compile("<source href='(\\d+)\\.pgm'|<data[^>]*><!\\[CDATA\\[(.*?)\\]\\]></data>");

  private CodeReaders() {}

  /** What ZXing finds, with the first of its two ways to tell dark from light that leads to it. */
  public static Optional<Result> zxing(BufferedImage picture) {
    LuminanceSource source = new BufferedImageLuminanceSource(picture);
    return zxing(new HybridBinarizer(source)).or(() -> zxing(new GlobalHistogramBinarizer(source)));
  }

  private static Optional<Result> zxing(Binarizer darkAndLight) {
    try {
      Map<DecodeHintType, Object> hints = Map.of(DecodeHintType.TRY_HARDER, true);
      return Optional.of(new QRCodeReader().decode(new BinaryBitmap(darkAndLight), hints));
    } catch (ReaderException e) {
      return Optional.empty();
    }
  }

  /** What zbarimg finds on each picture, in the order of the pictures; empty where nothing. */
  static List<String> zbar(List<BufferedImage> pictures, Path folder) throws Exception {
    if (pictures.isEmpty()) {
      return List.of();
    }
    List<String> command = new ArrayList<>();
    command.addAll(List.of("zbarimg", "--quiet", "--xml", "-Sdisable", "-Sqrcode.enable"));
    for (int i = 0; i < pictures.size(); i++) {
      command.add(write(pictures.get(i), folder, i));
    }
    Path said = folder.resolve("said.xml");
    Process process = start(new ProcessBuilder(command), folder, said);
    if (!process.waitFor(300, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      Assertions.fail("zbarimg did not end in time");
    }
    String[] found = new String[pictures.size()];
    Arrays.fill(found, "");
    Matcher seen = SEEN.matcher(Files.readString(said, StandardCharsets.UTF_8));
    int picture = -1;
    while (seen.find()) {
      if (seen.group(1) != null) {
        picture = Integer.parseInt(seen.group(1));
      } else {
        found[picture] = seen.group(2);
      }
    }
    return List.of(found);
  }

  private static Process start(ProcessBuilder builder, Path folder, Path said) {
    try {
      return builder
          .directory(folder.toFile())
          .redirectOutput(said.toFile())
          .redirectError(ProcessBuilder.Redirect.DISCARD)
          .start();
    } catch (IOException e) {
      if (System.getenv("CUREWINDOW_REQUIRE_ZBAR") != null) {
        return Assertions.fail("zbarimg is missing, though CUREWINDOW_REQUIRE_ZBAR asks for it", e);
      }
      return Assumptions.abort("Skipped: zbarimg is not installed (Debian: zbar-tools)");
    }
  }

  /** As a portable grey map, which needs no packing. */
  private static String write(BufferedImage picture, Path folder, int number) throws IOException {
    String name = number + ".pgm";
    try (var out = Files.newOutputStream(folder.resolve(name))) {
      String head = "P5\n" + picture.getWidth() + " " + picture.getHeight() + "\n255\n";
      out.write(head.getBytes(StandardCharsets.US_ASCII));
      out.write(Spoiling.shades(picture));
    }
    return name;
  }
}
