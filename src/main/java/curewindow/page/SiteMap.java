package curewindow.page;

import java.io.StringWriter;
import java.net.URI;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * What robots read: the sitemap (sitemaps.org protocol 0.9, with the other languages of each page)
 * and robots.txt (RFC 9309). Both name the public pages only.
 */
final class SiteMap {

  private static final String MAP = "http://www.sitemaps.org/schemas/sitemap/0.9";
  private static final String XHTML = "http://www.w3.org/1999/xhtml";

  /** A page with its addresses in all languages that have it, its own included. */
  record Page(String address, List<PublicView.Alternate> alternates) {}

  private SiteMap() {}

  /** Without dates of change: files of the same text have none that would be honest. */
  static String xml(List<Page> pages) {
    StringWriter text = new StringWriter();
    try {
      XMLStreamWriter xml = XMLOutputFactory.newFactory().createXMLStreamWriter(text);
      text.write("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
      xml.writeStartElement("urlset");
      xml.writeDefaultNamespace(MAP);
      xml.writeNamespace("xhtml", XHTML);
      for (Page page : pages) {
        xml.writeCharacters("\n");
        xml.writeStartElement("url");
        xml.writeStartElement("loc");
        xml.writeCharacters(ascii(page.address()));
        xml.writeEndElement();
        for (PublicView.Alternate other : page.alternates()) {
          xml.writeEmptyElement("xhtml:link");
          xml.writeAttribute("rel", "alternate");
          xml.writeAttribute("hreflang", other.lang());
          xml.writeAttribute("href", ascii(other.href()));
        }
        xml.writeEndElement();
      }
      xml.writeCharacters("\n");
      xml.writeEndElement();
      xml.close();
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
    return text.append('\n').toString();
  }

  /** Addresses in a sitemap are URIs of RFC 3986, without letters beyond ASCII. */
  private static String ascii(String address) {
    return URI.create(address).toASCIIString();
  }

  /**
   * Everything may be read. A line that forbids the customers' folder would tell where it is, and
   * would keep robots from reading there that they should not list the page.
   */
  static String robots(URI shop) {
    String note =
        isTop(shop)
            ? ""
            : "# Robots look for this file at the top of the host only. Put what it says there.\n";
    return note + "User-agent: *\nAllow: /\n\nSitemap: " + ascii(shop + "sitemap.xml") + "\n";
  }

  /** Whether an address is that of a host, without a path. */
  static boolean isTop(URI address) {
    return address.getPath().isEmpty() || address.getPath().equals("/");
  }
}
