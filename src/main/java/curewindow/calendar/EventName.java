package curewindow.calendar;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.UUID;

/** The name by which calendars know an event again when its date has moved. */
final class EventName {

  private EventName() {}

  /**
   * A UUID (RFC 9562, version 8) from the job's secret token and the event. It stays the same for
   * ever, and tells neither token nor job.
   */
  static String of(String token, String hold) {
    byte[] text = ("event\n" + token + "\n" + hold).getBytes(StandardCharsets.UTF_8);
    ByteBuffer hash = ByteBuffer.wrap(sha256(text));
    long high = hash.getLong() & ~0xF000L | 0x8000L;
    long low = hash.getLong() & ~(0b11L << 62) | 0b10L << 62;
    return new UUID(high, low).toString();
  }

  static byte[] sha256(byte[] text) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(text);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
