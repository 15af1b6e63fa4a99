package curewindow.calendar;

/** Text as RFC 5545 section 3.3.11 allows it: without control characters but line breaks. */
final class Plain {

  private Plain() {}

  static String text(String any) {
    StringBuilder kept = new StringBuilder(any.length());
    any.replace("\r\n", "\n")
        .replace('\r', '\n')
        .codePoints()
        .filter(c -> c == '\n' || !Character.isISOControl(c))
        .forEach(kept::appendCodePoint);
    return kept.toString();
  }
}
