package curewindow.desk;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What the desk answers.
 *
 * @param status the HTTP status (RFC 9110)
 * @param type the media type; empty where there is no body
 * @param body the body
 * @param headers further header fields
 */
record Answer(int status, String type, byte[] body, Map<String, String> headers) {

  private static final byte[] NOTHING = {};

  static Answer html(int status, String html) {
    return new Answer(
        status, "text/html; charset=utf-8", html.getBytes(StandardCharsets.UTF_8), Map.of());
  }

  static Answer of(String type, byte[] body) {
    return new Answer(200, type, body, Map.of());
  }

  /** Something was done; the browser looks at what came of it (RFC 9110, section 15.4.4). */
  static Answer see(String path) {
    return new Answer(303, "", NOTHING, Map.of("Location", path));
  }

  static Answer refused(int status) {
    return new Answer(status, "", NOTHING, Map.of());
  }

  Answer with(String name, String value) {
    Map<String, String> more = new LinkedHashMap<>(headers);
    more.put(name, value);
    return new Answer(status, type, body, more);
  }
}
