package curewindow.site;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.ShopFiles;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoField;
import java.time.temporal.TemporalAccessor;
import java.time.temporal.ValueRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;

/**
 * How the files that the program keeps in a shop folder are read and written: CSV with a fixed
 * header and as many fields in every row.
 *
 * @param file the file, relative to the shop folder
 * @param code the kind of problem that it has where it is broken
 * @param name what the file holds, for messages, such as {@code the link ledger}
 * @param header the names of the columns
 * @param fix what to do where it is broken
 */
record LedgerCsv(String file, String code, String name, List<String> header, String fix) {

  /** The years that can stand in what the program keeps. */
  private static final ValueRange YEARS = ValueRange.of(1970, 2199);

  /** What is done with a row. */
  interface Row {
    void read(List<String> fields, Fault fault);
  }

  /** Where it is said what is wrong with a row. */
  interface Fault {
    void say(String message);
  }

  /**
   * Reads all rows that have the right number of fields; the others, and the header, are told. A
   * shop folder without the file has no rows.
   *
   * @param shop the shop folder
   * @param problems where it is said what is wrong with the file
   * @param rows what is done with each row
   * @return false where something is wrong with the file: it must then not be written
   */
  boolean read(Path shop, Problems problems, Row rows) {
    int before = problems.errorCount();
    Path path = shop.resolve(file);
    if (isThere(shop)) {
      ShopFiles.insteadOfFile(path)
          .or(() -> nothingIn(path))
          .ifPresentOrElse(told -> tell(told, problems), () -> read(path, rows, problems));
    }
    return problems.errorCount() == before;
  }

  /** Whether something has the file's name, be it a link that leads nowhere today. */
  boolean isThere(Path shop) {
    return Files.exists(shop.resolve(file), LinkOption.NOFOLLOW_LINKS);
  }

  private static Optional<String> nothingIn(Path path) {
    return path.toFile().length() == 0
        ? Optional.of("the file is empty, although the first line is always written")
        : Optional.empty();
  }

  /** Tells that something is wrong with the whole file. */
  void tell(String message, Problems problems) {
    tell(0, message, problems);
  }

  private void tell(int line, String message, Problems problems) {
    problems.add(Problem.error(code, new Where(file, line, line == 0 ? 0 : 1, ""), message, fix));
  }

  /**
   * A row with dates, which are text in the file.
   *
   * @param fault told where one of them is no date
   * @param row reads them, and makes the row
   */
  static <T> Optional<T> dated(Fault fault, Supplier<T> row) {
    try {
      return Optional.of(row.get());
    } catch (DateTimeParseException e) {
      fault.say("\"" + e.getParsedString() + "\" is not a date that Curewindow wrote");
      return Optional.empty();
    }
  }

  /** What a customer was told: a day where it is of a visit, else a time with its offset. */
  static String told(String text, boolean visit) {
    return visit
        ? likely(LocalDate.parse(text), text).toString()
        : likely(OffsetDateTime.parse(text), text).toString();
  }

  /** When something was told, by the shop's clock: a day and its time, or a day alone as of old. */
  static LocalDateTime time(String text, LocalTime ofDayAlone) {
    return likely(
        text.contains("T") ? LocalDateTime.parse(text) : LocalDate.parse(text).atTime(ofDayAlone),
        text);
  }

  /** Counting the days up to a year that no car lives to see would take minutes, or go wrong. */
  private static <T extends TemporalAccessor> T likely(T time, String text) {
    if (!YEARS.isValidValue(time.get(ChronoField.YEAR))) {
      throw new DateTimeParseException("the year is none of " + YEARS, text, 0);
    }
    return time;
  }

  private void read(Path path, Row rows, Problems problems) {
    try (CsvReader<CsvRecord> records =
        CsvReader.builder()
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
            .ofCsvRecord(Files.readString(path, StandardCharsets.UTF_8))) {
      records.forEach(
          record -> read(record.getFields(), (int) record.getStartingLineNumber(), rows, problems));
    } catch (IOException | CsvParseException e) {
      tell(name + " cannot be read", problems);
    }
  }

  private void read(List<String> fields, int line, Row rows, Problems problems) {
    if (line == 1) {
      if (!fields.equals(header)) {
        tell(1, "the first line is not " + String.join(",", header), problems);
      }
    } else if (fields.size() != header.size()) {
      String message = "the row has " + fields.size() + " fields instead of " + header.size();
      tell(line, message, problems);
    } else {
      rows.read(fields, message -> tell(line, message, problems));
    }
  }

  /**
   * Takes out the rows of some jobs, in a file whose first column is the job.
   *
   * @param shop the shop folder, which is locked
   * @param jobs their ids
   * @return how many rows they had
   * @throws IOException where the file is broken or cannot be written
   */
  int drop(Path shop, Set<String> jobs) throws IOException {
    List<List<String>> rows = rows(shop);
    List<List<String>> left = rows.stream().filter(row -> !jobs.contains(row.get(0))).toList();
    if (left.size() < rows.size()) {
      write(shop, left);
    }
    return rows.size() - left.size();
  }

  /**
   * Takes out the last row of a kind.
   *
   * @param shop the shop folder, which is locked
   * @param which tells the kind, by the fields
   * @return whether there was one
   * @throws IOException where the file is broken or cannot be written
   */
  boolean dropLast(Path shop, Predicate<List<String>> which) throws IOException {
    List<List<String>> rows = rows(shop);
    for (int i = rows.size() - 1; i >= 0; i--) {
      if (which.test(rows.get(i))) {
        rows.remove(i);
        write(shop, rows);
        return true;
      }
    }
    return false;
  }

  /** A row of a job, in a file whose second column says when. */
  static Predicate<List<String>> ofDay(String job, LocalDate day) {
    return row -> row.get(0).equals(job) && row.get(1).startsWith(day.toString());
  }

  /**
   * Gives the rows of a job to another id; nothing is done where it has none.
   *
   * @param shop the shop folder, which is locked
   * @param job the job's id
   * @param to the other id
   * @param keepsOwn whether that one keeps the rows that it has already
   * @throws IOException where the file is broken or cannot be written
   */
  void move(Path shop, String job, String to, boolean keepsOwn) throws IOException {
    List<List<String>> rows = rows(shop);
    if (rows.stream().anyMatch(row -> row.get(0).equals(job))) {
      write(
          shop,
          rows.stream()
              .filter(row -> keepsOwn || !row.get(0).equals(to))
              .map(row -> row.get(0).equals(job) ? named(row, to) : row)
              .toList());
    }
  }

  private static List<String> named(List<String> row, String job) {
    List<String> other = new ArrayList<>(row);
    other.set(0, job);
    return other;
  }

  private List<List<String>> rows(Path shop) throws IOException {
    List<List<String>> rows = new ArrayList<>();
    if (!read(shop, new Problems(), (fields, fault) -> rows.add(fields))) {
      throw new IOException(file + " is broken; check tells where");
    }
    return rows;
  }

  /** Writes the file whole, or leaves the old one. */
  void write(Path shop, List<List<String>> rows) throws IOException {
    StringWriter text = new StringWriter();
    try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
      csv.writeRecord(header);
      rows.forEach(csv::writeRecord);
    }
    AtomicFiles.writePrivate(shop.resolve(file), text.toString().getBytes(StandardCharsets.UTF_8));
  }
}
