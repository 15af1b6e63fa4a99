package curewindow.page;

import curewindow.problem.Nearest;
import java.lang.reflect.RecordComponent;
import java.util.AbstractMap;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A view record as a template sees it: its components by name, an empty optional as nothing, and a
 * name that does not exist as a mistake rather than as nothing.
 */
final class TemplateValues extends AbstractMap<String, Object> {

  /**
   * What the template language answers of any map itself, before it asks for a value; a component
   * of such a name would never reach the page.
   */
  private static final Set<String> TAKEN =
      Set.of("class", "size", "empty", "isEmpty", "keys", "keySet", "values", "entrySet");

  private final Map<String, Object> values;

  private TemplateValues(Map<String, Object> values) {
    this.values = Collections.unmodifiableMap(values);
  }

  static TemplateValues of(Record view) {
    Map<String, Object> values = new LinkedHashMap<>();
    for (RecordComponent part : view.getClass().getRecordComponents()) {
      if (TAKEN.contains(part.getName())) {
        throw new IllegalArgumentException(
            view.getClass().getName() + " may not name a component " + part.getName());
      }
      try {
        part.getAccessor().setAccessible(true);
        values.put(part.getName(), plain(part.getAccessor().invoke(view)));
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException(e);
      }
    }
    return new TemplateValues(values);
  }

  private static Object plain(Object value) {
    if (value instanceof Record view) {
      return of(view);
    }
    if (value instanceof List<?> list) {
      return list.stream().map(TemplateValues::plain).toList();
    }
    if (value instanceof Optional<?> optional) {
      return optional.map(TemplateValues::plain).orElse(null);
    }
    return value;
  }

  @Override
  public Object get(Object key) {
    if (!values.containsKey(key)) {
      String near = Nearest.to(String.valueOf(key), values.keySet()).orElse("");
      throw new IllegalArgumentException(
          "there is no value '"
              + key
              + "' here"
              + (near.isEmpty() ? "" : "; " + near + " is near"));
    }
    return values.get(key);
  }

  @Override
  public boolean containsKey(Object key) {
    return values.containsKey(key);
  }

  @Override
  public Set<Entry<String, Object>> entrySet() {
    return values.entrySet();
  }
}
