package curewindow.page;

import tools.jackson.databind.json.JsonMapper;

/** Writes data that stands in a page. */
final class Json {

  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private Json() {}

  /**
   * A value made of maps, lists, texts and numbers, as JSON that cannot end the element it stands
   * in, nor open a comment there.
   */
  static String of(Object value) {
    return MAPPER
        .writeValueAsString(value)
        .replace("<", "\\u003c")
        .replace(">", "\\u003e")
        .replace("&", "\\u0026");
  }
}
