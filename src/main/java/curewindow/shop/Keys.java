package curewindow.shop;

import java.util.List;
import java.util.stream.Stream;

/**
 * The keys that a place of a file takes.
 *
 * @param required must be there
 * @param optional may be there
 * @param former no longer taken; their reader tells what takes their place
 */
record Keys(List<String> required, List<String> optional, List<String> former) {

  static Keys needs(String... keys) {
    return new Keys(List.of(keys), List.of(), List.of());
  }

  Keys allows(String... keys) {
    return new Keys(required, List.of(keys), former);
  }

  Keys tookOnce(String... keys) {
    return new Keys(required, optional, List.of(keys));
  }

  List<String> all() {
    return Stream.concat(required.stream(), optional.stream()).toList();
  }
}
