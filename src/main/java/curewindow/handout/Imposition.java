package curewindow.handout;

import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.util.Matrix;

/** Lays the pages of a PDF on larger sheets, ready to be cut. */
final class Imposition {

  private final PDDocument pdf;
  private final PaperFormat format;
  private final SheetPlan plan;
  private final CutMarks.Pen pen;

  Imposition(PDDocument pdf, PaperFormat format, SheetPlan plan, CutMarks.Pen pen) {
    this.pdf = pdf;
    this.format = format;
    this.plan = plan;
    this.pen = pen;
  }

  /**
   * Replaces the pages by sheets: fronts, and for two sides after each of them its backs.
   *
   * @param sides how many pages a handout has, 1 or 2
   * @param used how many places of the first sheet are used already, not all
   */
  void lay(int sides, int used) throws IOException {
    List<PDPage> pages = new ArrayList<>();
    pdf.getPages().forEach(pages::add);
    for (int i = pages.size() - 1; i >= 0; i--) {
      pdf.removePage(i);
    }
    int items = pages.size() / sides;
    for (int first = -used; first < items; first += plan.places()) {
      for (int side = 0; side < sides; side++) {
        SortedMap<Integer, PDPage> shown = new TreeMap<>();
        for (int place = Math.max(0, -first); place < plan.places(); place++) {
          if (first + place < items) {
            shown.put(place, pages.get((first + place) * sides + side));
          }
        }
        sheet(shown, side == 1);
      }
    }
  }

  private void sheet(SortedMap<Integer, PDPage> shown, boolean back) throws IOException {
    PDRectangle box =
        new PDRectangle(
            PaperFormat.points(plan.sheet().width()), PaperFormat.points(plan.sheet().height()));
    PDPage sheet = new PDPage(box);
    pdf.addPage(sheet);
    try (PDPageContentStream out = new PDPageContentStream(pdf, sheet)) {
      for (int place : shown.keySet()) {
        SheetPlan.Corner corner = back ? plan.back(place) : plan.front(place);
        out.saveGraphicsState();
        out.transform(
            Matrix.getTranslateInstance(
                PaperFormat.points(corner.x() - format.margin()),
                PaperFormat.points(corner.y() - format.margin())));
        out.drawForm(form(shown.get(place)));
        out.restoreGraphicsState();
      }
    }
    CutMarks.draw(pdf, sheet, plan.cuts(), plan.sheet(), pen);
  }

  /** The page as a picture of its own, up to its bleed, and below it the carrier. */
  private PDFormXObject form(PDPage page) throws IOException {
    PDFormXObject form = new PDFormXObject(content(page));
    form.setResources(page.getResources());
    form.setMatrix(new AffineTransform());
    double away = format.margin() - format.bleed();
    double carrier = format.edge().carrier();
    form.setBBox(
        new PDRectangle(
            PaperFormat.points(away),
            PaperFormat.points(away - carrier),
            PaperFormat.points(format.cut().width() + 2 * format.bleed()),
            PaperFormat.points(format.cut().height() + 2 * format.bleed() + carrier)));
    return form;
  }

  private PDStream content(PDPage page) throws IOException {
    COSBase content = page.getCOSObject().getDictionaryObject(COSName.CONTENTS);
    if (content instanceof COSStream single) {
      return new PDStream(single);
    }
    try (InputStream all = page.getContents()) {
      return new PDStream(pdf, all, COSName.FLATE_DECODE);
    }
  }
}
