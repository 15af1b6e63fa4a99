package curewindow.handout;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.graphics.color.PDColorSpace;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceCMYK;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceGray;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.graphics.color.PDPattern;

/** Reads the colors that a content stream sets. */
final class InkColorReader {

  private final PDResources resources;

  InkColorReader(PDResources resources) {
    this.resources = resources;
  }

  /** Notes the color that an operator sets. */
  void read(Operator operator, List<COSBase> operands, InkState.Side side) throws IOException {
    switch (operator.getName()) {
      case "g", "G" -> side.space = PDDeviceGray.INSTANCE;
      case "rg", "RG" -> side.space = PDDeviceRGB.INSTANCE;
      case "k", "K" -> side.space = PDDeviceCMYK.INSTANCE;
      case "cs", "CS" -> {
        side.space = PDColorSpace.create(operands.get(0), resources);
        side.color = Rgb.BLACK;
        if (side.space instanceof PDPattern) {
          throw blend();
        }
        side.color = rgb(side.space, side.space.getInitialColor().getComponents());
        return;
      }
      default -> {
        // Another color of the same space.
      }
    }
    side.color = rgb(side.space, numbers(operands));
  }

  /** That colors run into each other, or are repeated. */
  static Unprintable blend() {
    return new Unprintable(
        "a color gradient or a pattern cannot be turned into other inks",
        "use plain colors in the template, its style sheet and the logo");
  }

  private static float[] numbers(List<COSBase> operands) throws Unprintable {
    float[] numbers = new float[operands.size()];
    for (int i = 0; i < numbers.length; i++) {
      if (operands.get(i) instanceof COSName) {
        throw blend();
      }
      numbers[i] = ((COSNumber) operands.get(i)).floatValue();
    }
    return numbers;
  }

  private static Rgb rgb(PDColorSpace space, float[] c) throws IOException {
    if (space instanceof PDDeviceCMYK) {
      return Rgb.ofProcess(c[0], c[1], c[2], c[3]);
    }
    float[] rgb = space.toRGB(c);
    return new Rgb(rgb[0], rgb[1], rgb[2]);
  }
}
