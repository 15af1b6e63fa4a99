package curewindow.calendar;

import curewindow.shop.Sha256;
import java.nio.ByteBuffer;
import java.util.UUID;

/** The name by which calendars know an event again when its date has moved. */
final class EventName {

  private EventName() {}

  /**
   * A UUID (RFC 9562, version 8) from the job's secret token and the event. It stays the same for
   * ever, and tells neither token nor job.
   */
  static String of(String token, String hold) {
    ByteBuffer hash = ByteBuffer.wrap(Sha256.of("event\n" + token + "\n" + hold));
    long high = hash.getLong() & ~0xF000L | 0x8000L;
    long low = hash.getLong() & ~(0b11L << 62) | 0b10L << 62;
    return new UUID(high, low).toString();
  }
}
