package curewindow.handout;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDStream;

/** The color spaces of inks with a name, each of which gets a plate (PDF Reference 1.4, 4.5.5). */
final class InkSpaces {

  private final PDDocument pdf;
  private final String name;
  private final Paint instead;
  private COSArray blackAndSpot;

  /**
   * Color spaces for a document.
   *
   * @param name what the print shop calls the ink of the shop's color
   * @param instead the process colors that stand in where there is no such ink
   */
  InkSpaces(PDDocument pdf, String name, Paint instead) {
    this.pdf = pdf;
    this.name = name;
    this.instead = instead;
  }

  /** The ink of the shop's color. */
  COSArray spot() {
    return separation(name, instead);
  }

  /** All inks at once, for marks that are to be on every plate. */
  static COSArray everyPlate() {
    return separation("All", Paint.of(Paint.Plates.PROCESS, 1, 1, 1, 1));
  }

  private static COSArray separation(String ink, Paint instead) {
    COSArray space = new COSArray();
    space.add(COSName.getPDFName("Separation"));
    space.add(COSName.getPDFName(ink));
    space.add(COSName.DEVICECMYK);
    space.add(straight(instead));
    return space;
  }

  /** From none of each process color to so much. */
  private static COSDictionary straight(Paint full) {
    COSDictionary function = new COSDictionary();
    function.setInt(COSName.FUNCTION_TYPE, 2);
    function.setItem(COSName.DOMAIN, numbers(0f, 1f));
    function.setItem(COSName.C0, numbers(0f, 0f, 0f, 0f));
    COSArray most = new COSArray();
    full.tints().forEach(tint -> most.add(new COSFloat(tint)));
    function.setItem(COSName.C1, most);
    function.setItem(COSName.N, COSInteger.ONE);
    return function;
  }

  private static COSArray numbers(float... values) {
    COSArray numbers = new COSArray();
    numbers.setFloatArray(values);
    return numbers;
  }

  /** Black and the ink of the shop's color together, for pictures. */
  COSArray blackAndSpot() {
    if (blackAndSpot == null) {
      COSArray inks = new COSArray();
      inks.add(COSName.getPDFName("Black"));
      inks.add(COSName.getPDFName(name));
      blackAndSpot = new COSArray();
      blackAndSpot.add(COSName.DEVICEN);
      blackAndSpot.add(inks);
      blackAndSpot.add(COSName.DEVICECMYK);
      blackAndSpot.add(sum());
    }
    return blackAndSpot;
  }

  /** Takes black and spot from the stack, and leaves cyan, magenta, yellow and black. */
  private COSStream sum() {
    String program =
        String.format(
            Locale.ROOT,
            "{dup %s mul exch dup %s mul exch dup %s mul exch %s mul 5 -1 roll add"
                + " dup 1 gt {pop 1} if}",
            instead.tints().toArray());
    try {
      COSStream function =
          new PDStream(
                  pdf,
                  new ByteArrayInputStream(program.getBytes(StandardCharsets.US_ASCII)),
                  COSName.FLATE_DECODE)
              .getCOSObject();
      function.setInt(COSName.FUNCTION_TYPE, 4);
      function.setItem(COSName.DOMAIN, numbers(0f, 1f, 0f, 1f));
      function.setItem(COSName.RANGE, numbers(0f, 1f, 0f, 1f, 0f, 1f, 0f, 1f));
      return function;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
