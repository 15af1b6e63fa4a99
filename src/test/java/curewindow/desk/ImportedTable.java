package curewindow.desk;

import java.nio.charset.Charset;

/** A table of an invented program, as Windows writes it: one job is good, two have a problem. */
final class ImportedTable {

  static final Charset CODING = Charset.forName("windows-1252");

  static final String TEXT =
      "Order no;Name;Shape;Color;Pick-up;Pick-up time;Product;Area;Done;Roll;Price\r\n"
          + "Q-3140;J\u00F6rg;sedan;black;24/11/2026;17:00;Harbor 35;Rear window;24/11/2026 14:30;H-1;250\r\n"
          + "Q-3141;Mara;wagon;white;24/11/2026;17:00;Harbor 35;Whole front;24/11/2026 14:30;H-1;300\r\n"
          + "Q-3142;Ivo;wagon;white;24/11/2026;;Harbor 35;Rear window;24/11/2026 12:30;H-2;180\r\n";

  private ImportedTable() {}

  static byte[] bytes() {
    return TEXT.getBytes(CODING);
  }
}
