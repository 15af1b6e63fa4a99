package curewindow.handout;

import curewindow.shop.Ink;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/**
 * The parts that a content stream names, gathered anew: only what it needs, and in its inks. What
 * it leaves out, such as other color spaces, is not in the file any more.
 */
final class InkParts {

  private static final COSName SPOT = COSName.getPDFName("Spot");

  /** Of a graphics state: what PDF/X-1a forbids, though it changes nothing where it is allowed. */
  private static final List<COSName> DROPPED =
      List.of(
          COSName.CA,
          COSName.CA_NS,
          COSName.BM,
          COSName.SMASK,
          COSName.AIS,
          COSName.TK,
          COSName.getPDFName("TR"),
          COSName.getPDFName("TR2"));

  private final PDResources from;
  private final Making making;
  private final COSDictionary gathered = new COSDictionary();

  /** Makes what parts hold themselves. */
  interface Making {

    /** A picture in its inks. */
    COSStream inked(PDImageXObject picture) throws IOException;

    /** A drawing in its inks, where such is set. */
    COSStream inked(PDFormXObject drawing, InkState start) throws IOException;

    /** Which inks there are. */
    Ink ink();

    /** The color space of the ink of the shop's color. */
    COSBase spot();
  }

  InkParts(PDResources from, Making making) {
    this.from = from;
    this.making = making;
    for (COSName kept : List.of(COSName.FONT, COSName.PROPERTIES)) {
      COSBase parts = from.getCOSObject().getDictionaryObject(kept);
      if (parts != null) {
        gathered.setItem(kept, parts);
      }
    }
  }

  /** What the stream needs. */
  PDResources gathered() {
    return new PDResources(gathered);
  }

  /** Whether a color is painted through a picture. */
  boolean isShape(COSName name) throws IOException {
    return from.getXObject(name) instanceof PDImageXObject picture && picture.isStencil();
  }

  /** The name of a part in its inks. */
  COSName placed(COSName name, InkState now) throws IOException {
    PDXObject part = from.getXObject(name);
    if (part instanceof PDImageXObject picture) {
      put(COSName.XOBJECT, name, making.inked(picture));
      return name;
    }
    if (part instanceof PDFormXObject drawing) {
      try {
        return drawing(name, making.inked(drawing, now));
      } catch (Unprintable e) {
        // Of all that papers show, the logo alone is a drawing of its own.
        throw e.ofLogo();
      }
    }
    throw new Unprintable(
        "the page has a part that is neither picture nor drawing", "take it out of the template");
  }

  /**
   * The same drawing needs other inks where it is drawn smaller, and then has a name of its own.
   */
  private COSName drawing(COSName name, COSStream inked) {
    COSDictionary known = gathered.getCOSDictionary(COSName.XOBJECT);
    COSName free = name;
    for (int i = 2; known != null && known.containsKey(free); i++) {
      if (known.getDictionaryObject(free) == inked) {
        return free;
      }
      free = COSName.getPDFName(name.getName() + "-" + i);
    }
    put(COSName.XOBJECT, free, inked);
    return free;
  }

  /** The name of a graphics state, or empty where nothing is left of it. */
  Optional<COSName> state(COSName name) throws IOException {
    COSDictionary state = from.getExtGState(name).getCOSObject();
    if (shinesThrough(state)) {
      throw new Unprintable(
          "something lets shine through what is below it, which these inks cannot",
          "use plain colors without opacity in the template, its style sheet and the logo");
    }
    COSDictionary left = new COSDictionary(state);
    DROPPED.forEach(left::removeItem);
    left.removeItem(COSName.TYPE);
    if (left.size() == 0) {
      return Optional.empty();
    }
    put(COSName.EXT_G_STATE, name, left);
    return Optional.of(name);
  }

  private static boolean shinesThrough(COSDictionary state) {
    COSBase mask = state.getDictionaryObject(COSName.SMASK);
    COSBase blend = state.getDictionaryObject(COSName.BM);
    return state.getFloat(COSName.CA, 1) < 1
        || state.getFloat(COSName.CA_NS, 1) < 1
        || mask != null && !mask.equals(COSName.NONE)
        || blend != null && !List.of(COSName.NORMAL, COSName.COMPATIBLE).contains(blend);
  }

  /** What sets inks, for areas or for lines. */
  List<Object> setting(Paint paint, boolean lines) {
    List<Object> set = new ArrayList<>();
    if (paint.plates() == Paint.Plates.SPOT) {
      put(COSName.COLORSPACE, SPOT, making.spot());
      set.add(SPOT);
      set.add(operator("cs", lines));
      set.add(new COSFloat(paint.tint(0)));
      set.add(operator("scn", lines));
    } else if (making.ink() == Ink.PROCESS) {
      boolean black = paint.plates() == Paint.Plates.BLACK;
      List<Float> tints = black ? List.of(0f, 0f, 0f, paint.tint(0)) : paint.tints();
      tints.forEach(tint -> set.add(new COSFloat(tint)));
      set.add(operator("k", lines));
    } else {
      set.add(new COSFloat(Math.round(100 * (1 - paint.tint(0))) / 100f));
      set.add(operator("g", lines));
    }
    return set;
  }

  private static Operator operator(String fills, boolean lines) {
    return Operator.getOperator(lines ? fills.toUpperCase(java.util.Locale.ROOT) : fills);
  }

  private void put(COSName kind, COSName name, COSBase part) {
    COSDictionary parts = gathered.getCOSDictionary(kind);
    if (parts == null) {
      parts = new COSDictionary();
      gathered.setItem(kind, parts);
    }
    parts.setItem(name, part);
  }
}
