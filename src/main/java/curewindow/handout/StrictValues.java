package curewindow.handout;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Values of a template by name. One that is not there is a mistake, not an empty text. */
final class StrictValues extends LinkedHashMap<String, Object> {

  private static final long serialVersionUID = 1;

  private StrictValues(Map<?, ?> values) {
    values.forEach((name, value) -> put(String.valueOf(name), strict(value)));
  }

  /** The same values, all maps among them strict. */
  static Map<String, Object> of(Map<String, Object> values) {
    return new StrictValues(values);
  }

  private static Object strict(Object value) {
    if (value instanceof Map<?, ?> map) {
      return new StrictValues(map);
    }
    return value instanceof List<?> list ? list.stream().map(StrictValues::strict).toList() : value;
  }

  /**
   * A value.
   *
   * @throws IllegalArgumentException where there is none of this name
   */
  @Override
  public Object get(Object name) {
    if (!containsKey(name)) {
      throw new IllegalArgumentException(
          "there is no value \"" + name + "\" here, but " + String.join(", ", keySet()));
    }
    return super.get(name);
  }
}
