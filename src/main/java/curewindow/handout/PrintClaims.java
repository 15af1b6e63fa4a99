package curewindow.handout;

import curewindow.shop.PrintingCondition;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * Says in a PDF that it is PDF/X-1a:2003 (ISO 15930-4), and makes it so where its pages do not yet
 * hold it: inks alone, all fonts within, nothing that shines through, PDF 1.4.
 */
final class PrintClaims {

  static final String STANDARD = "PDF/X-1a:2003";

  private static final String MAKER = "Curewindow";

  private PrintClaims() {}

  /**
   * Makes and says it.
   *
   * @param condition what is printed to
   * @param id another one for other pages
   */
  static void make(PDDocument pdf, PrintingCondition condition, UUID id) throws IOException {
    pdf.setVersion(1.4f);
    pdf.getDocumentCatalog().getCOSObject().removeItem(COSName.VERSION);
    pdf.getPages().forEach(PrintClaims::bound);
    intend(pdf, condition);
    PDDocumentInformation information = pdf.getDocumentInformation();
    information.setCreator(MAKER);
    information.setCustomMetadataValue("GTS_PDFXVersion", STANDARD);
    information.setTrapped("False");
    // What it asks of a viewer's printing is newer than PDF 1.4, and of no use to a print shop.
    PDViewerPreferences shown = new PDViewerPreferences(new COSDictionary());
    shown.setDisplayDocTitle(true);
    pdf.getDocumentCatalog().setViewerPreferences(shown);
    PDMetadata metadata = new PDMetadata(pdf);
    metadata.importXMPMetadata(packet(information, id).getBytes(StandardCharsets.UTF_8));
    pdf.getDocumentCatalog().setMetadata(metadata);
  }

  /** Each page has one box that says what is left when it is cut, and no links to tap on. */
  private static void bound(PDPage page) {
    page.setTrimBox(page.getTrimBox());
    page.setBleedBox(page.getBleedBox());
    page.getCOSObject().removeItem(COSName.ART_BOX);
    page.getCOSObject().removeItem(COSName.ANNOTS);
  }

  private static void intend(PDDocument pdf, PrintingCondition condition) {
    COSDictionary intent = new COSDictionary();
    intent.setItem(COSName.TYPE, COSName.OUTPUT_INTENT);
    intent.setName(COSName.S, "GTS_PDFX");
    intent.setString(COSName.OUTPUT_CONDITION_IDENTIFIER, condition.id());
    intent.setString(COSName.OUTPUT_CONDITION, condition.description());
    intent.setString(COSName.REGISTRY_NAME, "http://www.color.org");
    pdf.getDocumentCatalog().setOutputIntents(List.of(new PDOutputIntent(intent)));
  }

  private static String packet(PDDocumentInformation information, UUID id) {
    Instant made = information.getCreationDate().toInstant();
    return """
        <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
        <x:xmpmeta xmlns:x="adobe:ns:meta/">
        <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
        <rdf:Description rdf:about=""
          xmlns:dc="http://purl.org/dc/elements/1.1/"
          xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
          xmlns:pdfx="http://ns.adobe.com/pdfx/1.3/"
          xmlns:xmp="http://ns.adobe.com/xap/1.0/"
          xmlns:xmpMM="http://ns.adobe.com/xap/1.0/mm/">
        <dc:format>application/pdf</dc:format>
        <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>
        <pdf:Producer>%s</pdf:Producer>
        <pdf:Trapped>False</pdf:Trapped>
        <pdfx:GTS_PDFXVersion>%s</pdfx:GTS_PDFXVersion>
        <xmp:CreateDate>%s</xmp:CreateDate>
        <xmp:CreatorTool>%s</xmp:CreatorTool>
        <xmp:ModifyDate>%s</xmp:ModifyDate>
        <xmpMM:DocumentID>uuid:%s</xmpMM:DocumentID>
        </rdf:Description>
        </rdf:RDF>
        </x:xmpmeta>
        <?xpacket end="r"?>
        """
        .formatted(escaped(information.getTitle()), MAKER, STANDARD, made, MAKER, made, id);
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
