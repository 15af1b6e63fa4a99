package curewindow.intake;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * The text of a table, and how its bytes stand for it.
 *
 * @param text the text without a byte order mark
 * @param coding how it was coded, so that what is written beside it is coded alike
 */
record TableText(String text, Coding coding) {

  /** What stands where bytes are no text. */
  static final char BROKEN = '\uFFFD';

  private static final Charset WESTERN = Charset.forName("windows-1252");

  /** The codings of tables. */
  enum Coding {
    UTF_8("UTF-8", StandardCharsets.UTF_8),
    UTF_8_MARKED("UTF-8", StandardCharsets.UTF_8, 0xEF, 0xBB, 0xBF),
    UTF_16_BIG("UTF-16", StandardCharsets.UTF_16BE, 0xFE, 0xFF),
    UTF_16_LITTLE("UTF-16", StandardCharsets.UTF_16LE, 0xFF, 0xFE),
    WINDOWS_1252("Windows-1252", WESTERN);

    private final String told;
    private final Charset charset;
    private final int[] mark;

    Coding(String told, Charset charset, int... mark) {
      this.told = told;
      this.charset = charset;
      this.mark = mark;
    }

    /** What it is called for people. */
    String told() {
      return told;
    }

    private boolean begins(byte[] bytes) {
      for (int i = 0; i < mark.length; i++) {
        if (i >= bytes.length || (bytes[i] & 0xFF) != mark[i]) {
          return false;
        }
      }
      return mark.length > 0;
    }

    byte[] encode(String text) {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      for (int one : mark) {
        out.write(one);
      }
      if (this != WINDOWS_1252) {
        out.writeBytes(text.getBytes(charset));
        return out.toByteArray();
      }
      byte[] bytes = text.getBytes(charset);
      for (int i = 0; i < bytes.length && bytes.length == text.length(); i++) {
        char c = text.charAt(i);
        bytes[i] = c >= 0x80 && c <= 0x9F ? (byte) c : bytes[i];
      }
      out.writeBytes(bytes);
      return out.toByteArray();
    }
  }

  /**
   * Guesses how bytes stand for text: by their byte order mark; without one they are UTF-8, or
   * Windows-1252 where more of them break the rules of UTF-8 than keep them.
   */
  static TableText of(byte[] bytes) {
    for (Coding coding : Coding.values()) {
      if (coding.begins(bytes)) {
        int skip = coding.mark.length;
        ByteBuffer rest = ByteBuffer.wrap(bytes, skip, bytes.length - skip);
        return new TableText(coding.charset.decode(rest).toString(), coding);
      }
    }
    return unmarked(bytes);
  }

  private static TableText unmarked(byte[] bytes) {
    try {
      CharBuffer strict =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes));
      return new TableText(strict.toString(), Coding.UTF_8);
    } catch (CharacterCodingException e) {
      String lenient = new String(bytes, StandardCharsets.UTF_8);
      long broken = lenient.chars().filter(c -> c == BROKEN).count();
      long good = lenient.chars().filter(c -> c > 0x7F && c != BROKEN).count();
      return good > broken
          ? new TableText(lenient, Coding.UTF_8)
          : new TableText(western(bytes), Coding.WINDOWS_1252);
    }
  }

  /**
   * The five bytes that Windows-1252 leaves open are kept as the control characters of the same
   * number, as in the Encoding Standard (encoding.spec.whatwg.org, index windows-1252), so that
   * nothing is lost.
   */
  private static String western(byte[] bytes) {
    char[] text = new String(bytes, WESTERN).toCharArray();
    for (int i = 0; i < text.length; i++) {
      text[i] = text[i] == BROKEN ? (char) (bytes[i] & 0xFF) : text[i];
    }
    return new String(text);
  }
}
