package curewindow.desk;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What was put in last, by its key: the oldest makes room for what is more than a number of them.
 *
 * @param <V> what is kept
 */
final class LastFew<V> extends LinkedHashMap<String, V> {

  private static final long serialVersionUID = 1L;

  private final int most;

  LastFew(int most) {
    this.most = most;
  }

  @Override
  protected boolean removeEldestEntry(Map.Entry<String, V> eldest) {
    return size() > most;
  }
}
