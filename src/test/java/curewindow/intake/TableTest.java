package curewindow.intake;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables as they come: coding, separator, quotes. */
class TableTest {

  private static final String TEXT = "Auftrag;J\u00F6rg\nQ-3140;\u20AC 5,50\n";

  @TempDir Path temp;

  @ParameterizedTest
  @CsvSource({
    "UTF-8, '', UTF-8",
    "UTF-8, \uFEFF, UTF-8",
    "UTF-16LE, \uFEFF, UTF-16",
    "UTF-16BE, \uFEFF, UTF-16",
    "windows-1252, '', Windows-1252"
  })
  void codingsAreGuessedAndComeBack(String charset, String mark, String told) {
    byte[] bytes = (mark + TEXT).getBytes(Charset.forName(charset));
    ForeignTable table = ForeignTable.of("t", bytes, new Problems()).orElseThrow();
    assertEquals(List.of("Auftrag", "J\u00F6rg"), table.headings());
    assertEquals("\u20AC 5,50", table.rows().get(0).cells().get(1));
    assertEquals(told + ", columns separated by semicolons", table.readAs());
    assertArrayEquals(bytes, table.coding().encode(TEXT));
  }

  /** The bytes that windows-1252 leaves open: index windows-1252 of encoding.spec.whatwg.org. */
  @Test
  void noByteOfWindows1252IsLost() {
    byte[] bytes = new byte[257];
    for (int i = 0; i < 256; i++) {
      bytes[i] = (byte) i;
    }
    bytes[256] = (byte) 0xFF;
    TableText text = TableText.of(bytes);
    assertEquals(TableText.Coding.WINDOWS_1252, text.coding());
    assertFalse(text.text().indexOf(TableText.BROKEN) >= 0);
    assertArrayEquals(bytes, text.coding().encode(text.text()));
  }

  @Test
  void aBrokenLetterInUtf8IsNotTakenForWindows1252() {
    byte[] bytes = "A;B\nJ\u00F6rg;Zo\u00EB\nx;\u00FC?\n".getBytes(StandardCharsets.UTF_8);
    for (int i = 0; i < bytes.length; i++) {
      bytes[i] = bytes[i] == '?' ? (byte) 0xFF : bytes[i];
    }
    ForeignTable table = ForeignTable.of("t", bytes, new Problems()).orElseThrow();
    assertEquals("UTF-8, columns separated by semicolons", table.readAs());
    assertEquals(List.of("J\u00F6rg", "Zo\u00EB"), table.rows().get(0).cells());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a;b (x,y,z,w);c#1,5;2;3,5|semicolons",
        "'a,\"b;c;d;e\",f#1,2,3'|commas",
        "a~b, c~d#1~2~3|tabs",
        "sep=,#a,b#1;2;3,4|commas",
        "a#1|commas"
      })
  void separatorsAreGuessed(String text, String told) {
    ForeignTable table = Diary.table(text.replace('#', '\n').replace('~', '\t'));
    assertEquals("UTF-8, columns separated by " + told, table.readAs());
  }

  /** RFC 4180, 2.6 and 2.7: line breaks and doubled quotation marks in quotes. */
  @Test
  void quotedCellsMayHaveLineBreaks() {
    ForeignTable table = Diary.table("A;B;C\r\n1;\"x\r\ny;\"\"z\"\"\";2\r\n3;4;5\r\n");
    assertEquals(List.of("1", "x\r\ny;\"z\"", "2"), table.rows().get(0).cells());
    assertEquals(2, table.rows().get(0).line());
    assertEquals(4, table.rows().get(1).line());
    assertEquals(3, table.where(table.rows().get(0), 2).line());
    assertEquals(10, table.where(table.rows().get(0), 2).column());
    assertEquals("C", table.where(table.rows().get(0), 2).path());
  }

  @Test
  void aLineThatCannotBeReadCostsNoOther() {
    ForeignTable table = Diary.table("A;B\n1;x\n2;\"y\n3;z\n4;\"a\"b\n5;c\n");
    assertEquals(
        List.of("1 x", "2;\"y", "3 z", "4;\"a\"b", "5 c"),
        table.rows().stream().map(r -> String.join(" ", r.cells())).toList());
    assertEquals(
        List.of(true, false, true, false, true),
        table.rows().stream().map(TableRow::whole).toList());
    assertEquals(List.of(2, 3, 4, 5, 6), table.rows().stream().map(TableRow::line).toList());
  }

  @Test
  void whatIsNoTableIsToldByName() throws IOException {
    Path large = temp.resolve("large.csv");
    try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
      file.setLength(ForeignTable.MAX_BYTES + 1);
    }
    assertTold(large, "large.csv  the file has 67108865 bytes, more than the 67108864");
    assertTold(temp, "this is a folder, not a file");
    assertTold(temp.resolve("no.csv"), "no.csv  there is no such file");
    Problems problems = new Problems();
    assertTrue(ForeignTable.of("e.csv", new byte[0], problems).isEmpty());
    assertTrue(ForeignTable.of("h.csv", "A;B\n".getBytes(), problems).isEmpty());
    assertTrue(ForeignTable.of("q.csv", "\"A;B\n1;2\n".getBytes(), problems).isEmpty());
    assertEquals(
        List.of("no-rows", "no-rows", "broken-headings"),
        problems.all().stream().map(Problem::code).toList());
  }

  private static void assertTold(Path file, String message) {
    Problems problems = new Problems();
    assertTrue(ForeignTable.read(file, problems).isEmpty());
    String line = problems.all().get(0).oneLine();
    assertTrue(line.contains(message), line);
  }
}
