package curewindow.site;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Spoils a file as a slip of the hand, a broken disk, or somebody with bad intentions would. */
final class Mutations {

  /**
   * What parsers of YAML, CSV, Markdown, HTML, ICU messages and dates have been seen to choke on.
   */
  private static final List<String> NASTY =
      List.of(
          "\0",
          "\uFEFF",
          "\u202E",
          "\uD800",
          "\r",
          "\t",
          "\"",
          "'",
          "\"\"",
          ",,,,",
          ";",
          "|",
          ">",
          "- ",
          ": ",
          "? ",
          "&a ",
          "*a",
          "&a [*a, *a]",
          "!!java.net.URL x",
          "!tag ",
          "%YAML 9.9\n",
          "---\n",
          "...\n",
          "<<: *a\n",
          "~",
          "null",
          "true",
          ".nan",
          "-.inf",
          "1e999",
          "-1",
          "0",
          "99999999999999999999",
          "0x7fffffffffffffff",
          "2026-13-45",
          "9999999-01-01",
          "-0001-01-01",
          "2026-11-24T25:61",
          "2026-03-08T02:30",
          "T",
          "P1M",
          "{",
          "}",
          "[",
          "]",
          "{{",
          "}}",
          "#",
          "`",
          "```\n",
          "[[",
          "]](",
          "![](",
          "<",
          "<!--",
          "</",
          "&#0;",
          "&",
          "(?",
          "?)",
          "(=",
          "=)",
          "(? end ?)",
          "(? if ?)",
          "{n, plural,",
          "{n, plural, other {",
          "'{",
          "${1/0}",
          "#{x}",
          "th:text=\"${",
          "../../",
          "file:///",
          "javascript:",
          "\\",
          "\\u0000",
          "%n%s",
          "$1");

  private static final int LONG = 20_000;

  private Mutations() {}

  /** Another file, the same for the same random numbers. */
  static byte[] of(byte[] file, Random random) {
    byte[] spoilt = file;
    for (int times = 1 + random.nextInt(3); times > 0; times--) {
      spoilt = once(spoilt, random);
    }
    return spoilt;
  }

  private static byte[] once(byte[] file, Random random) {
    int from = random.nextInt(file.length + 1);
    int to = from + random.nextInt(Math.min(file.length - from, 1 << random.nextInt(9)) + 1);
    return switch (random.nextInt(9)) {
      case 0 -> flipped(file, random);
      case 1 -> joined(file, 0, from, new byte[0], to);
      case 2 -> joined(file, 0, from, part(file, from, to), from);
      case 3 -> joined(file, 0, from, new byte[0], file.length);
      case 4 -> joined(file, 0, from, bytes("[".repeat(random.nextInt(LONG))), from);
      case 5 -> joined(file, 0, from, bytes("a1 ".repeat(random.nextInt(LONG))), from);
      case 6 -> lines(file, random);
      default -> joined(file, 0, from, bytes(NASTY.get(random.nextInt(NASTY.size()))), to);
    };
  }

  private static byte[] flipped(byte[] file, Random random) {
    byte[] other = file.clone();
    if (other.length > 0) {
      other[random.nextInt(other.length)] ^= (byte) (1 << random.nextInt(8));
    }
    return other;
  }

  /** Two lines in each other's place. */
  private static byte[] lines(byte[] file, Random random) {
    String[] lines = new String(file, StandardCharsets.UTF_8).split("\n", -1);
    int one = random.nextInt(lines.length);
    int other = random.nextInt(lines.length);
    String kept = lines[one];
    lines[one] = lines[other];
    lines[other] = kept;
    return bytes(String.join("\n", lines));
  }

  private static byte[] joined(byte[] file, int start, int end, byte[] between, int rest) {
    byte[] head = part(file, start, end);
    byte[] tail = part(file, rest, file.length);
    byte[] all = new byte[head.length + between.length + tail.length];
    System.arraycopy(head, 0, all, 0, head.length);
    System.arraycopy(between, 0, all, head.length, between.length);
    System.arraycopy(tail, 0, all, head.length + between.length, tail.length);
    return all;
  }

  private static byte[] part(byte[] file, int from, int to) {
    return Arrays.copyOfRange(file, from, to);
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
