package curewindow.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import picocli.CommandLine;

/** Turns what goes wrong while a command runs into one plain sentence, never a stack trace. */
final class Failures implements CommandLine.IExecutionExceptionHandler {

  @Override
  public int handleExecutionException(Exception e, CommandLine line, CommandLine.ParseResult parsed)
      throws Exception {
    PrintWriter err = line.getErr();
    if (e instanceof IOException io) {
      err.println(sentence(io));
      return Exit.DISK;
    }
    if (e instanceof UncheckedIOException unchecked) {
      err.println(sentence(unchecked.getCause()));
      return Exit.DISK;
    }
    err.println("Curewindow made a mistake of its own: " + e);
    err.println("Nothing half-written was left behind. Please report this line to its makers:");
    err.println("  " + (e.getStackTrace().length > 0 ? e.getStackTrace()[0] : "no place known"));
    return Exit.DISK;
  }

  private static String sentence(IOException e) {
    if (e instanceof AccessDeniedException denied) {
      return denied.getFile() + " may not be read or written; check its permissions";
    }
    if (e instanceof NoSuchFileException missing) {
      return missing.getFile() + " does not exist";
    }
    if (e instanceof FileSystemException disk) {
      String reason = disk.getReason() == null ? "" : ": " + disk.getReason();
      return disk.getFile() + " cannot be read or written" + reason;
    }
    return e.getMessage() == null ? e.toString() : e.getMessage();
  }
}
