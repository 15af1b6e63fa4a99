package curewindow.site;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** The private list of all customers' pages, {@code office/pages.csv} in the output folder. */
public final class PageList {

  static final String FILE = "office/pages.csv";

  private static final Pattern FORMULA = Pattern.compile("'*[=+@\t\r-]");

  private PageList() {}

  /**
   * A customer's page.
   *
   * @param job the job's id
   * @param firstName whom it is for; may be empty
   * @param folder the page's folder, relative to the site, ending in a slash
   * @param address the public address
   */
  public record Row(String job, String firstName, String folder, String address) {

    /**
     * The page on another host.
     *
     * @param site the address of the site there
     * @return the page's address
     */
    public URI on(URI site) {
      return site.resolve(folder);
    }
  }

  /**
   * Reads the list that the last press left.
   *
   * @param out the output folder
   * @return the rows, none where there is no list
   * @throws IOException where the list cannot be read
   */
  public static List<Row> read(Path out) throws IOException {
    List<Row> rows = new ArrayList<>();
    Path file = out.resolve(FILE);
    if (Files.isRegularFile(file)) {
      try (CsvReader<NamedCsvRecord> csv =
          CsvReader.builder().ofNamedCsvRecord(Files.readString(file, StandardCharsets.UTF_8))) {
        for (NamedCsvRecord r : csv) {
          rows.add(
              new Row(
                  r.getField("job"),
                  asGiven(r.getField("first-name")),
                  r.getField("folder"),
                  r.getField("address")));
        }
      }
    }
    return rows;
  }

  private static String asGiven(String plain) {
    return plain.startsWith("'") && FORMULA.matcher(plain).lookingAt() ? plain.substring(1) : plain;
  }

  /** A name that a spreadsheet would take for a formula begins with an apostrophe. */
  static String plain(String name) {
    return FORMULA.matcher(name).lookingAt() ? "'" + name : name;
  }

  static String text(List<Row> rows) {
    StringWriter text = new StringWriter();
    try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
      csv.writeRecord("job", "first-name", "folder", "address");
      rows.forEach(r -> csv.writeRecord(r.job(), plain(r.firstName()), r.folder(), r.address()));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
    return text.toString();
  }
}
