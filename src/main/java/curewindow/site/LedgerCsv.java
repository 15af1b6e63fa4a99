package curewindow.site;

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
import java.nio.file.Path;
import java.util.List;

/**
 * How the files that the program keeps in a shop folder are read and written: CSV with a fixed
 * header and as many fields in every row.
 *
 * @param name what the file holds, for messages, such as {@code the link ledger}
 * @param header the names of the columns
 */
record LedgerCsv(String name, List<String> header) {

  /** What is done with a row. */
  interface Row {
    void read(List<String> fields, int line);
  }

  /** What is done with a fault; line 0 stands for the whole file. */
  interface Fault {
    void say(int line, String message);
  }

  /** Reads all rows that have the right number of fields; the others, and the header, are told. */
  void read(Path file, Row rows, Fault faults) {
    try (CsvReader<CsvRecord> records =
        CsvReader.builder()
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
            .ofCsvRecord(Files.readString(file, StandardCharsets.UTF_8))) {
      records.forEach(
          record -> read(record.getFields(), (int) record.getStartingLineNumber(), rows, faults));
    } catch (IOException | CsvParseException e) {
      faults.say(0, name + " cannot be read");
    }
  }

  private void read(List<String> fields, int line, Row rows, Fault faults) {
    if (line == 1) {
      if (!fields.equals(header)) {
        faults.say(1, "the first line is not " + String.join(",", header));
      }
    } else if (fields.size() != header.size()) {
      faults.say(line, "the row has " + fields.size() + " fields instead of " + header.size());
    } else {
      rows.read(fields, line);
    }
  }

  /** Writes the file whole, or leaves the old one. */
  void write(Path file, List<List<String>> rows) throws IOException {
    StringWriter text = new StringWriter();
    try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
      csv.writeRecord(header);
      rows.forEach(csv::writeRecord);
    }
    AtomicFiles.write(file, text.toString().getBytes(StandardCharsets.UTF_8));
  }
}
