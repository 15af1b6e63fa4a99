package curewindow.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.GZIPOutputStream;

/** What a page weighs on its way to a phone, and on disk. */
final class Weight {

  /** Ten packets of 1460 bytes: what a new TCP connection sends at first (RFC 6928). */
  static final int MOST = 14_600;

  /** Bytes of a page as it is; its calendars and manifest have up to 16.5 kB of the 80 of a job. */
  private static final int MOST_ON_DISK = 63_400;

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

  /**
   * How much too heavy a page is.
   *
   * @return bytes as gzipped, above 0 where it is; by what it has on disk where that is more
   */
  static int over(String html) {
    long bytes = html.getBytes(StandardCharsets.UTF_8).length;
    long onDisk = Math.floorDiv((bytes - MOST_ON_DISK) * MOST, MOST_ON_DISK);
    return (int) Math.max(of(html) - MOST, onDisk);
  }

  /** How many questions to take away at once where a page is so many bytes too heavy. */
  static int questions(int over) {
    return Math.max(1, over / QUESTION);
  }
}
