package curewindow.site;

import curewindow.problem.Problems;
import curewindow.shop.Job;
import curewindow.shop.PastVisit;
import curewindow.shop.ShopFolder;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Adds what came of a visit to visits.csv, which the shop may write by hand as well. */
public final class VisitNotes {

  /** The file, relative to the shop folder. */
  private static final String FILE = "visits.csv";

  private static final String HEADER = "job,day,what,result,note\n";

  private VisitNotes() {}

  /**
   * Adds a row; those that are there stay as they are, and none is written twice. It is on the disk
   * when this returns.
   *
   * @param shop the shop folder
   * @param job one of its good jobs
   * @param visit the day on which the shop saw the car, or a photo of it, by its own clock and not
   *     in the future; what came of it, fine or mended, as work done anew has times of its own; and
   *     a note in one line
   * @param now the time of reading
   * @return whether it counts; nothing is written where it does not, as no work was finished before
   *     that day
   * @throws IOException where the file cannot be read as a table or written; the message is for the
   *     user
   */
  public static boolean add(LoadedShop shop, Job job, PastVisit visit, Instant now)
      throws IOException {
    if (visit.result() == PastVisit.Result.REFITTED) {
      throw new IllegalArgumentException("work that was done anew needs its times");
    }
    try (FolderLock lock = FolderLock.on(shop.files().root())) {
      Path file = lock.folder().resolve(FILE);
      boolean isThere = Files.exists(file);
      String text = isThere ? text(shop) : HEADER;
      String row = row(text, job, visit);
      String whole = text.isEmpty() || text.endsWith("\n") ? text : text + "\n";
      if (text.lines().anyMatch(row.strip()::equals)) {
        return true;
      }
      if (!counts(shop, job, whole + row, now)) {
        return false;
      }
      byte[] bytes = (whole + row).getBytes(StandardCharsets.UTF_8);
      if (isThere) {
        AtomicFiles.replace(file, bytes);
      } else {
        AtomicFiles.writePrivate(file, bytes);
      }
      return true;
    }
  }

  /** Whether the job is still a good one with such a table. */
  private static boolean counts(LoadedShop shop, Job job, String text, Instant now) {
    return ShopFolder.read(shop.files().with(FILE, text), now).jobs().stream()
        .anyMatch(j -> j.id().equals(job.id()));
  }

  private static String text(LoadedShop shop) throws IOException {
    Optional<String> text = shop.files().text(FILE, new Problems());
    return text.orElseThrow(() -> new IOException(FILE + " cannot be read: check tells why"));
  }

  /** A row with the file's own columns and separator. */
  private static String row(String text, Job job, PastVisit visit) throws IOException {
    Map<String, String> values =
        Map.of(
            "job", job.id(),
            "day", visit.day().toString(),
            "result", visit.result().id(),
            "note", visit.note());
    String header = text.lines().findFirst().orElse("");
    char separator = header.contains(";") ? ';' : header.contains("\t") ? '\t' : ',';
    List<String> columns = columns(header, separator);
    if (!columns.containsAll(List.of("job", "day", "result"))) {
      throw new IOException(FILE + " lacks a column: check tells which");
    }
    StringWriter row = new StringWriter();
    // Without a buffer there is nothing to close.
    CsvWriter csv =
        CsvWriter.builder()
            .bufferSize(0)
            .fieldSeparator(separator)
            .lineDelimiter(text.contains("\r\n") ? LineDelimiter.CRLF : LineDelimiter.LF)
            .build(row);
    csv.writeRecord(columns.stream().map(c -> values.getOrDefault(c, "")).toList());
    return row.toString();
  }

  private static List<String> columns(String header, char separator) throws IOException {
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder().fieldSeparator(separator).ofCsvRecord(header)) {
      return reader.stream()
          .findFirst()
          .map(r -> r.getFields().stream().map(String::strip).toList())
          .orElse(List.of());
    }
  }
}
