package curewindow.climate;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * Takes the one weather file out of a zip. Names of entries are looked at, never used as paths, and
 * nothing is written to disk; what is unpacked is counted, so a small zip cannot fill the memory.
 */
final class EpwZip {

  private static final int MOST_ENTRIES = 1000;
  private static final int BUFFER = 1 << 16;
  private static final int LONGEST_END = 22 + (1 << 16);

  private int unpacked;

  private EpwZip() {}

  /** Whether a file is to be read as a zip, by its ending or its first bytes. */
  static boolean isZip(String file, byte[] bytes) {
    return file.toLowerCase(Locale.ROOT).endsWith(".zip") || marked(bytes, 0, 3, 4);
  }

  /** Whether a zip's mark, the letters PK and two numbers, stands at a place. */
  private static boolean marked(byte[] bytes, int at, int third, int fourth) {
    return bytes.length >= at + 4
        && bytes[at] == 'P'
        && bytes[at + 1] == 'K'
        && bytes[at + 2] == third
        && bytes[at + 3] == fourth;
  }

  /** The content of the only entry whose name ends in .epw. */
  static byte[] only(byte[] zip) throws EpwFault {
    if (!marked(zip, 0, 3, 4) || !hasEnd(zip)) {
      throw new EpwFault(
          "epw-bad-zip",
          0,
          marked(zip, 0, 3, 4) ? "the end of the zip is missing" : "the file is not a zip",
          "download it again; if it is not a zip, let its name end in .epw");
    }
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
      return new EpwZip().only(in);
    } catch (IOException | IllegalArgumentException e) {
      throw new EpwFault(
          "epw-bad-zip",
          0,
          "the zip is damaged or packed in a way that is not known here",
          "download it again, or unpack it and name the .epw file instead");
    }
  }

  private byte[] only(ZipInputStream in) throws IOException, EpwFault {
    byte[] found = null;
    int entries = 0;
    for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
      if (++entries > MOST_ENTRIES) {
        throw unfit("the zip has more than " + MOST_ENTRIES + " entries");
      }
      byte[] content = content(in, isWeather(entry));
      if (isWeather(entry)) {
        if (found != null) {
          throw unfit("the zip has more than one .epw file");
        }
        found = content;
      }
    }
    if (found == null) {
      throw unfit("the zip has no .epw file");
    }
    return found;
  }

  private static EpwFault unfit(String what) {
    return new EpwFault(
        "epw-bad-zip", 0, what, "unpack it, choose the right file, and name that one instead");
  }

  private static boolean isWeather(ZipEntry entry) {
    String name = entry.getName().replace('\\', '/');
    // Some machines put a twin of each file with their own notes under this name.
    boolean note = name.startsWith("__MACOSX/");
    return !note && !entry.isDirectory() && name.toLowerCase(Locale.ROOT).endsWith(".epw");
  }

  private byte[] content(ZipInputStream in, boolean keep) throws IOException, EpwFault {
    ByteArrayOutputStream content = new ByteArrayOutputStream();
    byte[] buffer = new byte[BUFFER];
    for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
      unpacked += read;
      if (unpacked > EpwReader.MAX_BYTES) {
        throw tooLarge();
      }
      if (keep) {
        content.write(buffer, 0, read);
      }
    }
    return content.toByteArray();
  }

  static EpwFault tooLarge() {
    return new EpwFault(
        "too-large",
        0,
        "the weather file has more than the " + EpwReader.MAX_BYTES + " bytes that are read",
        "check that it is the file you meant");
  }

  private static boolean hasEnd(byte[] zip) {
    for (int at = zip.length - 22; at >= Math.max(0, zip.length - LONGEST_END); at--) {
      if (marked(zip, at, 5, 6)) {
        return true;
      }
    }
    return false;
  }
}
