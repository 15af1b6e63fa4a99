package curewindow.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;

/** Guards what stands where a paper is to be written. */
final class PaperOut {

  /** A kind of paper and how its files begin. */
  private record Kind(String name, Pattern begin) {}

  private static final Kind PDF = new Kind("PDF", Pattern.compile("%PDF"));
  private static final Kind HTML = new Kind("HTML", Pattern.compile("(?i)<!DOCTYPE html>"));

  /** As many bytes as tell each kind. */
  private static final int ENOUGH = 15;

  private PaperOut() {}

  /**
   * Refuses names that are no paper's, and files that are none.
   *
   * @throws IOException where the file is not to be written; the message is for the user
   */
  static void refuseOthers(Path file) throws IOException {
    boolean pdf = file.toString().endsWith(".pdf");
    if (!pdf && !file.toString().endsWith(".html")) {
      throw new IOException(file + " ends neither in .pdf nor in .html; name another with --out");
    }
    if (pdf) {
      refuseOther(file, PDF);
    } else {
      refuseOther(file, HTML);
    }
  }

  /**
   * Refuses what is no PDF, by its name or by how it begins.
   *
   * @throws IOException where the file is not to be written; the message is for the user
   */
  static void refuseAllButPdf(Path file) throws IOException {
    if (!file.toString().endsWith(".pdf")) {
      throw new IOException(file + " does not end in .pdf; name the PDF to write with --out");
    }
    refuseOther(file, PDF);
  }

  /** Only a file of the same kind is ever replaced, so that a slip of the hand costs no other. */
  private static void refuseOther(Path file, Kind kind) throws IOException {
    if (Files.isDirectory(file)) {
      throw new IOException(file + " is a folder; name another file with --out");
    }
    if (Files.exists(file) && !kind.begin().matcher(begin(file)).lookingAt()) {
      throw new IOException(
          file + " is there and is no " + kind.name() + "; name another file with --out");
    }
  }

  private static String begin(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return new String(in.readNBytes(ENOUGH), StandardCharsets.UTF_8);
    }
  }
}
