package curewindow.desk;

import curewindow.intake.ForeignTable;
import curewindow.problem.Problems;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/**
 * A table as forms carry it from screen to screen, so that the desk need not keep it.
 *
 * @param name the name of its file, for messages
 * @param coded its bytes (RFC 4648, section 5, without padding)
 */
record SentTable(String name, String coded) {

  /**
   * The largest table that fits into a form, in bytes: as letters they are a third more, and the
   * form has other fields too.
   */
  static final int MOST = 5_900_000;

  private static final String PASTED = "pasted.csv";
  private static final int LONGEST_NAME = 100;

  /** The table of a form: that of a file, or else the rows that were pasted; empty where none. */
  static Optional<SentTable> of(Request.Values form) {
    String coded = whole(form, "table");
    if (!coded.isBlank()) {
      // No page of the desk sends what cannot be decoded.
      return Optional.of(new SentTable(name(form.one("name")), coded.strip()))
          .filter(sent -> sent.bytes().isPresent());
    }
    String rows = whole(form, "rows");
    return rows.isBlank() ? Optional.empty() : Optional.of(pasted(rows));
  }

  private static SentTable pasted(String rows) {
    byte[] bytes = rows.getBytes(StandardCharsets.UTF_8);
    return new SentTable(PASTED, Base64.getUrlEncoder().withoutPadding().encodeToString(bytes));
  }

  private static String whole(Request.Values form, String name) {
    List<String> values = form.list(name);
    return values.isEmpty() ? "" : values.get(0);
  }

  /** The last part of what a browser says, which some give with folders. */
  private static String name(String typed) {
    String last = typed.replaceFirst("^.*[/\\\\]", "").replaceAll("\\p{Cntrl}", "");
    int letters = last.codePointCount(0, last.length());
    String cut =
        letters > LONGEST_NAME
            ? last.substring(last.offsetByCodePoints(0, letters - LONGEST_NAME))
            : last;
    return cut.isBlank() ? PASTED : cut;
  }

  /** The table; empty after telling why it cannot be read. */
  Optional<ForeignTable> read(Problems problems) {
    return bytes().flatMap(bytes -> ForeignTable.of(name, bytes, problems));
  }

  private Optional<byte[]> bytes() {
    try {
      return Optional.of(Base64.getUrlDecoder().decode(coded));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  boolean isTooLarge() {
    return coded.length() / 4L * 3 > MOST;
  }
}
