package curewindow.handout;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.InPage;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopLook;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.context.Context;
import org.thymeleaf.exceptions.TemplateProcessingException;
import org.thymeleaf.templatemode.TemplateMode;
import org.thymeleaf.templateresolver.StringTemplateResolver;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** A template for paper and its style sheet, as the shop folder has them. */
final class PaperTemplate {

  private static final String FOLDER = "site-templates/";

  /** The number of a sign beyond ASCII. */
  private static final Pattern NUMBERED = Pattern.compile("&#x([0-9a-f]{3,6}|[a-f89][0-9a-f]);");

  private final String file;
  private final String html;
  private final List<Style> styles;
  private final TemplateEngine engine = new TemplateEngine();

  /** A style sheet and its file. */
  private record Style(String file, String text) {

    int lines() {
      return (int) text.lines().count();
    }
  }

  private PaperTemplate(String file, String html, List<Style> styles) {
    this.file = file;
    this.html = html;
    this.styles = List.copyOf(styles);
    StringTemplateResolver resolver = new StringTemplateResolver();
    resolver.setTemplateMode(TemplateMode.XML);
    engine.setTemplateResolver(resolver);
    engine.setDialect(Scripts.dialect());
  }

  /** Reads {@code site-templates/<name>.html} and {@code .css}; empty where one is missing. */
  static Optional<PaperTemplate> read(ShopFiles files, String name, Problems problems) {
    return read(files, PaperFormat.TemplateFiles.of(name), problems);
  }

  /** Reads a template with one or more style sheets; empty where a file is missing. */
  static Optional<PaperTemplate> read(
      ShopFiles files, PaperFormat.TemplateFiles names, Problems problems) {
    String file = FOLDER + names.page() + ".html";
    Optional<String> html = files.text(file, problems);
    List<Style> styles = new ArrayList<>();
    for (String name : names.styles()) {
      String style = FOLDER + name + ".css";
      files.text(style, problems).ifPresent(text -> styles.add(new Style(style, text)));
    }
    html.map(text -> DroppedPictures.ofPage(file, text)).ifPresent(problems::addAll);
    styles.forEach(s -> problems.addAll(DroppedPictures.ofStyle(s.file(), s.text())));
    return html.isPresent() && styles.size() == names.styles().size()
        ? Optional.of(new PaperTemplate(file, html.get(), styles))
        : Optional.empty();
  }

  /** A template that is in no folder. */
  static PaperTemplate of(String name, String html, String css) {
    return new PaperTemplate(name + ".html", html, List.of(new Style(name + ".css", css)));
  }

  /** The template's file, relative to the shop folder. */
  String file() {
    return file;
  }

  /** The first style sheet's file, relative to the shop folder. */
  String styleFile() {
    return styles.get(0).file();
  }

  /** The place of a line, counted from 1 through all style sheets; of the first one for line 0. */
  Where styleAt(int line) {
    int left = line;
    for (Style style : styles) {
      if (left >= 1 && left <= style.lines()) {
        return new Where(style.file(), left, 1, "");
      }
      left -= style.lines();
    }
    return Where.file(styleFile());
  }

  private String allStyles() {
    return styles.stream()
        .map(s -> s.text().endsWith("\n") ? s.text() : s.text() + "\n")
        .collect(Collectors.joining());
  }

  /**
   * Puts values into the template.
   *
   * @param values by name
   * @param house the shop's color
   * @param pageRule a rule that goes before the style sheet
   * @return the document, or empty where the template has a mistake
   */
  Optional<Document> fill(
      Map<String, Object> values, ShopLook house, String pageRule, Problems problems) {
    try {
      Document document =
          parse(engine.process(html, new Context(Locale.ROOT, StrictValues.of(values))));
      style(document, pageRule + Accent.rules(house) + allStyles());
      return Optional.of(document);
    } catch (TemplateProcessingException e) {
      TemplateProcessingException placed = placed(e);
      int line = placed.hasLineAndCol() ? placed.getLine() : 0;
      int column = placed.hasLineAndCol() ? placed.getCol() : 0;
      problems.add(mistake(line, column, reason(e)));
    } catch (StackOverflowError e) {
      problems.add(mistake(0, 0, "an expression or an element is nested too deep"));
    } catch (SAXParseException e) {
      // The line is that of the filled template, which is of no use to the reader.
      problems.add(mistake(0, 0, e.getMessage()));
    } catch (SAXException e) {
      problems.add(mistake(0, 0, e.getMessage()));
    }
    return Optional.empty();
  }

  /**
   * Puts values into the template, for a screen.
   *
   * @param values by name
   * @param house the shop's color
   * @return HTML with its style sheets in it, or empty where the template has a mistake
   */
  Optional<String> html(Map<String, Object> values, ShopLook house, Problems problems) {
    if (fill(values, house, "", problems).isEmpty()) {
      return Optional.empty();
    }
    String filled =
        readable(engine.process(html, new Context(Locale.ROOT, StrictValues.of(values))));
    String style =
        "<style>\n" + Accent.screenRules(house) + "\n" + InPage.kept(allStyles()) + "</style>\n";
    return Optional.of("<!DOCTYPE html>\n" + filled.replaceFirst("(?=</head>)", quoted(style)));
  }

  /** Letters instead of their numbers, which the template engine writes for all but ASCII. */
  private static String readable(String filled) {
    return NUMBERED
        .matcher(filled)
        .replaceAll(m -> quoted(Character.toString(Integer.parseInt(m.group(1), 16))));
  }

  private static String quoted(String text) {
    return Matcher.quoteReplacement(text);
  }

  /** The innermost cause that knows its line. */
  private static TemplateProcessingException placed(TemplateProcessingException e) {
    TemplateProcessingException found = e;
    for (Throwable cause = e; cause != null; cause = cause.getCause()) {
      if (cause instanceof TemplateProcessingException inner && inner.hasLineAndCol()) {
        found = inner;
      }
    }
    return found;
  }

  private static String reason(TemplateProcessingException e) {
    Throwable cause = e;
    while (cause.getCause() != null) {
      cause = cause.getCause();
    }
    String text = String.valueOf(cause.getMessage());
    int details = text.indexOf(" (template:");
    return (details > 0 ? text.substring(0, details) : text).replaceAll("\\s+", " ");
  }

  private Problem mistake(int line, int column, String reason) {
    return Problem.error(
        "template-mistake",
        new Where(file, line, column, ""),
        "the template cannot be used: " + reason,
        "mend it, or delete it from the shop folder to use the one that comes with the program");
  }

  private static Document parse(String xml) throws SAXException {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      factory.setNamespaceAware(true);
      var builder = factory.newDocumentBuilder();
      builder.setErrorHandler(new Strict());
      return builder.parse(new InputSource(new StringReader(xml)));
    } catch (ParserConfigurationException | IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void style(Document document, String css) {
    Element root = document.getDocumentElement();
    Element style = document.createElementNS(root.getNamespaceURI(), "style");
    style.setTextContent(css);
    NodeList heads = root.getElementsByTagName("head");
    if (heads.getLength() > 0) {
      heads.item(0).appendChild(style);
    } else {
      Element head = document.createElementNS(root.getNamespaceURI(), "head");
      head.appendChild(style);
      root.insertBefore(head, root.getFirstChild());
    }
  }

  /** Throws instead of printing. */
  private static final class Strict implements ErrorHandler {

    @Override
    public void warning(SAXParseException e) {}

    @Override
    public void error(SAXParseException e) throws SAXException {
      throw e;
    }

    @Override
    public void fatalError(SAXParseException e) throws SAXException {
      throw e;
    }
  }
}
