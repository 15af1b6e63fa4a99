package curewindow.handout;

import curewindow.shop.Ink;
import curewindow.shop.InkChoice;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDSeparation;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/** Gives a PDF that was set for a screen the inks it is printed with. */
final class InkPress {

  private final InkChoice choice;
  private final Rgb accent;

  /** Of all that is on the pages. */
  private UUID id = new UUID(0, 0);

  /**
   * A press.
   *
   * @param choice the inks
   * @param accent the shop's color: red, green and blue, eight bits each
   */
  InkPress(InkChoice choice, int accent) {
    this.choice = choice;
    this.accent = Rgb.of(accent);
  }

  /** Puts inks for the colors of all pages. */
  void recolor(PDDocument pdf) throws IOException {
    if (choice.ink() == Ink.SCREEN) {
      return;
    }
    Making making = new Making(pdf, new InkColors(choice.ink(), accent), choice.spot().orElse(""));
    MessageDigest all = sha256();
    for (PDPage page : pdf.getPages()) {
      all.update(making.recolor(page));
    }
    id = UUID.nameUUIDFromBytes(all.digest());
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /** What crop marks are drawn with: for a print shop all inks, so that they are on every plate. */
  CutMarks.Pen marks() {
    if (!choice.ink().isForPlates()) {
      return CutMarks.Pen.BLACK;
    }
    PDSeparation everyPlate;
    try {
      everyPlate = new PDSeparation(InkSpaces.everyPlate(), null);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
    return out -> out.setStrokingColor(new PDColor(new float[] {1}, everyPlate));
  }

  /** Says in the file what it is, for a print shop. */
  void claim(PDDocument pdf) throws IOException {
    if (choice.ink().isForPlates()) {
      PrintClaims.make(pdf, choice.condition().orElseThrow(), id);
    }
  }

  /** PDF 1.4, and with it PDF/X-1a, does not know the way to pack more into a file. */
  static CompressParameters packing(PDDocument pdf) {
    return pdf.getDocumentCatalog().getOutputIntents().isEmpty()
        ? CompressParameters.DEFAULT_COMPRESSION
        : CompressParameters.NO_COMPRESSION;
  }

  /** Makes the pages of one PDF and their parts, each drawing once for each way it is drawn in. */
  private static final class Making implements InkParts.Making {

    private final PDDocument pdf;
    private final InkColors colors;
    private final InkImages images;
    private final COSArray spot;
    private final Map<Drawn, COSStream> drawings = new HashMap<>();

    /** A drawing, and what its inks depend on. */
    private record Drawn(COSStream drawing, long scale, Rgb fill, Rgb stroke, double line) {}

    Making(PDDocument pdf, InkColors colors, String spotName) {
      InkSpaces spaces = new InkSpaces(pdf, spotName, colors.instead());
      this.pdf = pdf;
      this.colors = colors;
      this.images = new InkImages(pdf, colors, spaces);
      this.spot = spaces.spot();
    }

    byte[] recolor(PDPage page) throws IOException {
      InkParts parts = new InkParts(page.getResources(), this);
      byte[] content = InkStream.rewrite(page, parts, colors, InkState.start());
      page.setContents(packed(content));
      page.setResources(parts.gathered());
      page.getCOSObject().removeItem(COSName.GROUP);
      return content;
    }

    private PDStream packed(byte[] content) throws IOException {
      return new PDStream(pdf, new ByteArrayInputStream(content), COSName.FLATE_DECODE);
    }

    @Override
    public COSStream inked(PDImageXObject picture) throws IOException {
      return images.inked(picture);
    }

    @Override
    public COSStream inked(PDFormXObject drawing, InkState start) throws IOException {
      InkState inner = start.within(drawing.getMatrix().createAffineTransform());
      Drawn drawn =
          new Drawn(
              drawing.getCOSObject(),
              Math.round(inner.scale() * 1000),
              inner.fill.color,
              inner.stroke.color,
              inner.lineWidth);
      COSStream known = drawings.get(drawn);
      if (known == null) {
        known = draw(drawing, inner);
        drawings.put(drawn, known);
      }
      return known;
    }

    private COSStream draw(PDFormXObject drawing, InkState inner) throws IOException {
      InkParts parts = new InkParts(drawing.getResources(), this);
      byte[] content = InkStream.rewrite(drawing, parts, colors, inner);
      PDFormXObject made = new PDFormXObject(packed(content));
      made.setResources(parts.gathered());
      made.setBBox(drawing.getBBox());
      made.setMatrix(drawing.getMatrix().createAffineTransform());
      return made.getCOSObject();
    }

    @Override
    public Ink ink() {
      return colors.ink();
    }

    @Override
    public COSBase spot() {
      return spot;
    }
  }
}
