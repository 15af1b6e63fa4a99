package curewindow.cure;

import java.lang.ref.SoftReference;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * Keeps what was worked out while there is room in memory; what gave way is worked out again when
 * it is asked for. Any number of threads may ask.
 *
 * @param <K> what it is worked out from
 * @param <V> what is worked out
 */
final class WhileThereIsRoom<K, V> {

  private final Function<K, V> work;
  private final Map<K, SoftReference<V>> kept = new ConcurrentHashMap<>();

  /**
   * @param work works a value out; asked once for each key while the value stays in memory
   */
  WhileThereIsRoom(Function<K, V> work) {
    this.work = work;
  }

  V of(K key) {
    SoftReference<V> known = kept.get(key);
    V value = known == null ? null : known.get();
    while (value == null) {
      kept.entrySet().removeIf(entry -> !isThere(entry.getValue()));
      value = kept.compute(key, (k, was) -> isThere(was) ? was : worked(k)).get();
    }
    return value;
  }

  private SoftReference<V> worked(K key) {
    return new SoftReference<>(work.apply(key));
  }

  private static boolean isThere(SoftReference<?> value) {
    return value != null && value.get() != null;
  }
}
