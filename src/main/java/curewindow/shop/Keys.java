package curewindow.shop;

import java.util.List;
import java.util.stream.Stream;

/**
 * The keys that a place of a file takes.
 *
 * @param required must be there
 * @param optional may be there
 */
record Keys(List<String> required, List<String> optional) {

  static Keys needs(String... keys) {
    return new Keys(List.of(keys), List.of());
  }

  Keys allows(String... keys) {
    return new Keys(required, List.of(keys));
  }

  List<String> all() {
    return Stream.concat(required.stream(), optional.stream()).toList();
  }
}
