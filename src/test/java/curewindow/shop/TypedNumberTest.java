package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers as people type them. */
class TypedNumberTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0,5 | 0.5",
        "0.5 | 0.5",
        "28,5 % | 28.5",
        "35% | 35",
        "-3,25 | -3.25",
        "0,125 | 0.125",
        "12,5 | 12.5",
        // Two thousand, or two: nobody knows, so the reader asks.
        "2,000 | 2,000",
        "12,500 | 12,500",
        "1,5,2 | 1,5,2",
        "fine | fine"
      })
  void aNumberIsWrittenAsFilesHaveIt(String typed, String plain) {
    assertEquals(plain, TypedNumber.plain(typed));
  }
}
