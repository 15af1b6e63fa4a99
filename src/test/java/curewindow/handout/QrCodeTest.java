package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ResultMetadataType;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.net.URI;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class QrCodeTest {

  /** Byte capacity: ISO/IEC 18004. */
  @ParameterizedTest
  @CsvSource({"2, 32, 26, 20, 14", "3, 53, 42, 32, 24", "4, 78, 62, 46, 34", "5, 106, 84, 60, 44"})
  void versionsHoldAsManyBytesAsTheStandardSays(int version, int l, int m, int q, int h) {
    Map<CodeLevel, Integer> capacity =
        Map.of(CodeLevel.L, l, CodeLevel.M, m, CodeLevel.Q, q, CodeLevel.H, h);
    capacity.forEach(
        (level, bytes) -> {
          assertEquals(version, QrCode.of("a".repeat(bytes), level).orElseThrow().version());
          assertEquals(
              version + 1, QrCode.of("a".repeat(bytes + 1), level).orElseThrow().version());
        });
  }

  /** Alphanumeric capacity: ISO/IEC 18004, from memory. */
  @ParameterizedTest
  @CsvSource({"3, 61, 47", "4, 90, 67", "5, 122, 87"})
  void capitalsTakeLessRoom(int version, int m, int q) {
    assertEquals(version, QrCode.of("A".repeat(m), CodeLevel.M).orElseThrow().version());
    assertEquals(version + 1, QrCode.of("A".repeat(m + 1), CodeLevel.M).orElseThrow().version());
    assertEquals(version, QrCode.of("A".repeat(q), CodeLevel.Q).orElseThrow().version());
    assertEquals(version + 1, QrCode.of("A".repeat(q + 1), CodeLevel.Q).orElseThrow().version());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "HTTPS://CARE.EXAMPLE/C/7K3MPQ9W2XHTR4VBD6NC/",
        "HTTPS://WWW.LONG-HARBOR-NAME.EXAMPLE/aftercare/C/7K3MPQ9W2XHTR4VBD6NC/",
        "HTTP://127.0.0.1:8080/C/A/"
      })
  void anIndependentDecoderReadsTheText(String text) throws Exception {
    for (CodeLevel level : CodeLevel.values()) {
      QrCode code = QrCode.of(text, level).orElseThrow();
      var read =
          new QRCodeReader().decode(picture(code), Map.of(DecodeHintType.PURE_BARCODE, true));
      assertEquals(text, read.getText());
      assertEquals(
          level.name(), read.getResultMetadata().get(ResultMetadataType.ERROR_CORRECTION_LEVEL));
      assertEquals(17 + 4 * code.version(), code.modules());
    }
  }

  private static BinaryBitmap picture(QrCode code) {
    int scale = 4;
    int side = (code.modules() + 2 * QrCode.QUIET_ZONE) * scale;
    int[] pixels = new int[side * side];
    Arrays.setAll(
        pixels,
        i ->
            code.dark(i % side / scale - QrCode.QUIET_ZONE, i / side / scale - QrCode.QUIET_ZONE)
                ? 0
                : 0xFFFFFF);
    return new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(side, side, pixels)));
  }

  @Test
  void levelQWhereItsModulesAreWideEnoughElseM() {
    // 50 capitals and digits: version 4 at Q (33 modules), version 3 at M (29 modules).
    String text = "HTTPS://CARE-DATES.EXAMPLE/C/7K3MPQ9W2XHTR4VBD6NC/";
    assertEquals(50, text.length());
    QrCode roomy = QrCode.fitting(text, 41 * 0.45 + 0.001).orElseThrow();
    assertEquals("Q 4", roomy.level() + " " + roomy.version());
    assertEquals(0.45, roomy.module(41 * 0.45), 1e-12);
    QrCode tight = QrCode.fitting(text, 41 * 0.45 - 0.01).orElseThrow();
    assertEquals("M 3", tight.level() + " " + tight.version());
    assertTrue(tight.module(41 * 0.45 - 0.01) >= QrCode.SMALLEST_MODULE);
    assertFalse(QrCode.fitting(text, 37 * 0.4 - 0.01).isPresent());
  }

  @Test
  void aTextThatNoCodeHoldsIsRefused() {
    assertFalse(QrCode.of("a".repeat(3000), CodeLevel.L).isPresent());
    assertFalse(QrCode.fitting("a".repeat(5000), 100).isPresent());
    for (double bad : new double[] {0, -1, Double.NaN, 5000}) {
      assertThrows(IllegalArgumentException.class, () -> QrCode.fitting("A", bad));
    }
  }

  @Test
  void anAddressOnPaper() {
    PrintedAddress printed =
        PrintedAddress.of(URI.create("https://Care.Example/shop/C/7K3MPQ9W2XHTR4VBD6NC/"));
    assertEquals("HTTPS://CARE.EXAMPLE/shop/C/7K3MPQ9W2XHTR4VBD6NC/", printed.code());
    assertEquals("care.example/shop/C/", printed.site());
    assertEquals(List.of("7K3M", "PQ9W", "2XHT", "R4VB", "D6NC"), printed.groups());
    assertThrows(IllegalArgumentException.class, () -> PrintedAddress.of(URI.create("C/7K3M/")));
  }
}
