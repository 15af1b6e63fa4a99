package curewindow.site;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.BrokenJob;
import curewindow.shop.Job;
import curewindow.shop.PastVisit;
import curewindow.shop.ShopFolder;
import curewindow.shop.ShopRead;
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
import java.time.LocalDate;
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
   * @return why it does not count, in which case nothing is written; empty where it is noted
   * @throws IOException where the file cannot be read as a table or written; the message is for the
   *     user
   */
  public static List<Problem> add(LoadedShop shop, Job job, PastVisit visit, Instant now)
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
        return List.of();
      }
      List<Problem> wrong = wrong(shop, job, whole + row, now);
      if (!wrong.isEmpty()) {
        return wrong;
      }
      byte[] bytes = (whole + row).getBytes(StandardCharsets.UTF_8);
      if (isThere) {
        AtomicFiles.replace(file, bytes);
      } else {
        AtomicFiles.writePrivate(file, bytes);
      }
      return List.of();
    }
  }

  /** What is wrong with the job with such a table; empty where it is still a good one. */
  private static List<Problem> wrong(LoadedShop shop, Job job, String text, Instant now) {
    ShopRead read = ShopFolder.read(shop.files().with(FILE, text), now);
    if (read.jobs().stream().anyMatch(j -> j.id().equals(job.id()))) {
      return List.of();
    }
    List<Problem> errors = read.problems().stream().filter(Problem::isError).toList();
    List<Problem> its =
        errors.stream()
            .filter(
                p ->
                    read.brokenJobs().stream()
                        .filter(b -> BrokenJob.likelyId(b.name()).equals(job.id()))
                        .anyMatch(b -> b.has(p)))
            .toList();
    return its.isEmpty() ? errors : its;
  }

  /**
   * Takes back the last visit of a job that was noted on a day, as {@link #add} wrote it; all else
   * in the file stays as it is.
   *
   * @param shop the shop folder
   * @param job one of its good jobs
   * @param day the day, by the shop's clock
   * @return whether there was such a row
   * @throws IOException where the file cannot be read or written; the message is for the user
   */
  public static boolean takeBack(LoadedShop shop, Job job, LocalDate day) throws IOException {
    try (FolderLock lock = FolderLock.on(shop.files().root())) {
      Path file = lock.folder().resolve(FILE);
      if (!Files.exists(file)) {
        return false;
      }
      String text = text(shop);
      for (int i = job.seen().size() - 1; i >= 0; i--) {
        PastVisit visit = job.seen().get(i);
        String row = visit.what().isEmpty() ? row(text, job, visit) : "";
        int at = text.lastIndexOf("\n" + row);
        if (visit.day().equals(day) && !row.isEmpty() && at >= 0) {
          String left = text.substring(0, at + 1) + text.substring(at + 1 + row.length());
          AtomicFiles.replace(file, left.getBytes(StandardCharsets.UTF_8));
          return true;
        }
      }
      return false;
    }
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
