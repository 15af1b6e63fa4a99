package curewindow.why;

import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.json.JsonMapper;

/** Writes names and values, and lists of them, as JSON. */
final class WhyJson {

  private static final DefaultIndenter INDENT = new DefaultIndenter("  ", "\n");
  private static final ObjectWriter WRITER =
      JsonMapper.builder()
          .build()
          .writer()
          .with(new DefaultPrettyPrinter().withObjectIndenter(INDENT).withArrayIndenter(INDENT));

  private WhyJson() {}

  static String write(Object data) {
    return WRITER.writeValueAsString(data) + "\n";
  }
}
