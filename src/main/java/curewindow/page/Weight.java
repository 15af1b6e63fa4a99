package curewindow.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.GZIPOutputStream;

/** What a page weighs on its way to a phone. */
final class Weight {

  /** Ten packets of 1460 bytes: what a new TCP connection sends at first (RFC 6928). */
  static final int MOST = 14_600;

  /** Hardly any question weighs more, so taking away by this never takes away too many by far. */
  private static final int QUESTION = 150;

  private Weight() {}

  /** The bytes of a page, gzipped as servers do. */
  static int of(String html) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (GZIPOutputStream gzip = new GZIPOutputStream(bytes)) {
      gzip.write(html.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.size();
  }

  /** How many questions to take away at once where a page is so many bytes too heavy. */
  static int questions(int over) {
    return Math.max(1, over / QUESTION);
  }
}
