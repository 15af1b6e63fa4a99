package curewindow.handout;

import java.io.Writer;
import org.thymeleaf.standard.StandardDialect;
import org.thymeleaf.standard.serializer.IStandardJavaScriptSerializer;
import org.thymeleaf.standard.serializer.StandardJavaScriptSerializer;

/**
 * What the template engine needs for templates with scripts in them. Paper has none as a rule, so
 * the library behind it is loaded only for a template that asks for it.
 */
final class Scripts implements IStandardJavaScriptSerializer {

  private static final class Usual {
    static final StandardJavaScriptSerializer SERIALIZER = new StandardJavaScriptSerializer(true);
  }

  private Scripts() {}

  /** The engine's standard dialect. */
  static StandardDialect dialect() {
    StandardDialect dialect = new StandardDialect();
    dialect.setJavaScriptSerializer(new Scripts());
    return dialect;
  }

  @Override
  public void serializeValue(Object object, Writer writer) {
    Usual.SERIALIZER.serializeValue(object, writer);
  }
}
