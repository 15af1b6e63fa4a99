package curewindow.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Guards what stands where a paper is to be written. */
final class PaperOut {

  private PaperOut() {}

  /**
   * Refuses names that are no paper's, and files that are none, so that a slip of the hand costs no
   * file of the shop's.
   *
   * @throws IOException where the file is not to be written; the message is for the user
   */
  static void refuseOthers(Path file) throws IOException {
    boolean pdf = file.toString().endsWith(".pdf");
    if (!pdf && !file.toString().endsWith(".html")) {
      throw new IOException(file + " ends neither in .pdf nor in .html; name another with --out");
    }
    if (Files.isDirectory(file)) {
      throw new IOException(file + " is a folder; name another file with --out");
    }
    String begin = pdf ? "%PDF" : "<!DOCTYPE html>";
    if (Files.exists(file) && !begins(file, begin)) {
      throw new IOException(
          file + " is there and is no " + (pdf ? "PDF" : "HTML") + "; name another with --out");
    }
  }

  private static boolean begins(Path file, String begin) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return new String(in.readNBytes(begin.length()), StandardCharsets.UTF_8)
          .equalsIgnoreCase(begin);
    }
  }
}
