package curewindow.page;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.ShopFiles;
import curewindow.words.Words;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.thymeleaf.IEngineConfiguration;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.context.Context;
import org.thymeleaf.context.ITemplateContext;
import org.thymeleaf.exceptions.TemplateProcessingException;
import org.thymeleaf.messageresolver.AbstractMessageResolver;
import org.thymeleaf.templatemode.TemplateMode;
import org.thymeleaf.templateresolver.AbstractConfigurableTemplateResolver;
import org.thymeleaf.templateresource.ITemplateResource;
import org.thymeleaf.templateresource.StringTemplateResource;

/**
 * HTML templates, those of a shop folder's pages and those of the program's own screens. What they
 * lack or get wrong is a problem with file and line. Safe for use by several threads.
 */
public final class Templates {

  static final String FOLDER = "site-templates";

  private static final String TOO_DEEP = "an expression or an element is nested too deep";

  private final Map<String, String> texts = new TreeMap<>();
  private final TemplateEngine engine = new TemplateEngine();

  private final UnaryOperator<String> finish;

  private Templates(UnaryOperator<String> finish) {
    this.finish = finish;
    engine.setTemplateResolver(new FromTexts());
    engine.setMessageResolver(new FromWords());
  }

  /** The templates of these names; {@code finish} gets each page as it leaves its template. */
  static Templates read(
      ShopFiles files, Problems problems, UnaryOperator<String> finish, String... names) {
    Templates templates = new Templates(finish);
    for (String name : names) {
      files.text(file(name), problems).ifPresent(text -> templates.texts.put(name, text));
    }
    return templates;
  }

  /**
   * Templates that are no files of a shop folder.
   *
   * @param texts their HTML, by name
   * @return the templates
   */
  public static Templates of(Map<String, String> texts) {
    Templates templates = new Templates(UnaryOperator.identity());
    templates.texts.putAll(texts);
    return templates;
  }

  /**
   * Fills a template.
   *
   * @param name the template's name
   * @param view what it may use, by the names of the record's components
   * @param words its texts
   * @param problems gets the mistake of a template
   * @return the page, or empty where the template has a mistake
   */
  public Optional<String> fill(String name, Record view, Words words, Problems problems) {
    if (!texts.containsKey(name)) {
      problems.add(missing(name));
      return Optional.empty();
    }
    Context context = new Context(Locale.ROOT);
    context.setVariable("page", TemplateValues.of(view));
    context.setVariable("words", words);
    try {
      return Optional.of(finish.apply(engine.process(name, context)));
    } catch (TemplateProcessingException e) {
      problems.add(mistake(name, e));
      return Optional.empty();
    } catch (StackOverflowError e) {
      problems.add(mistake(new Where(file(name), 0, 0, ""), TOO_DEEP));
      return Optional.empty();
    }
  }

  private static String file(String name) {
    return FOLDER + "/" + name + ".html";
  }

  private static Problem missing(String name) {
    return Problem.error(
        "missing-file",
        Where.file(file(name)),
        "the template is missing or cannot be read",
        "create it, or delete your own to use the one that comes with the program");
  }

  /** The innermost mistake that knows its line says most. */
  private static Problem mistake(String name, TemplateProcessingException outer) {
    String file = name;
    int line = 0;
    int column = 0;
    Throwable last = outer;
    for (Throwable t = outer; t != null; t = t.getCause()) {
      last = t;
      if (t instanceof TemplateProcessingException e && e.hasLineAndCol()) {
        file = e.hasTemplateName() ? e.getTemplateName() : file;
        line = e.getLine();
        column = e.getCol();
      }
    }
    String what = last.getMessage() == null ? last.getClass().getSimpleName() : last.getMessage();
    return mistake(
        new Where(file(file), Math.max(0, line), Math.max(0, column), ""),
        what.lines().findFirst().orElse("the template cannot be used"));
  }

  private static Problem mistake(Where where, String what) {
    return Problem.error(
        "template-mistake",
        where,
        what,
        "mend the template at this place; docs/pages.md lists the values it may use");
  }

  private final class FromTexts extends AbstractConfigurableTemplateResolver {
    FromTexts() {
      setTemplateMode(TemplateMode.HTML);
      setCacheable(true);
    }

    @Override
    protected ITemplateResource computeTemplateResource(
        IEngineConfiguration configuration,
        String owner,
        String template,
        String resource,
        String encoding,
        Map<String, Object> attributes) {
      String text = texts.get(template);
      return text == null ? null : new StringTemplateResource(text);
    }
  }

  private static final class FromWords extends AbstractMessageResolver {
    @Override
    public String resolveMessage(
        ITemplateContext context, Class<?> origin, String key, Object[] parameters) {
      Words words = (Words) context.getVariable("words");
      if (!words.has(key)) {
        throw new IllegalArgumentException(
            "the words of language " + words.language() + " have no text '" + key + "'");
      }
      return words.text(key);
    }

    @Override
    public String createAbsentMessageRepresentation(
        ITemplateContext context, Class<?> origin, String key, Object[] parameters) {
      throw new IllegalStateException(key + " was resolved to nothing");
    }
  }
}
