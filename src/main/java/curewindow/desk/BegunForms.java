package curewindow.desk;

import curewindow.site.KeptFile;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * What the forms began with that change a file, by its version; the last few hundred.
 *
 * @param <T> what such a form has
 */
final class BegunForms<T> {

  private static final int MOST = 500;

  private final Map<String, T> drafts = new LastFew<>(MOST);

  private final Function<String, Optional<T>> reader;

  /**
   * No form is open yet.
   *
   * @param reader reads a file's text
   */
  BegunForms(Function<String, Optional<T>> reader) {
    this.reader = reader;
  }

  /** A form begins with a file as it stands. */
  synchronized Optional<T> begin(KeptFile file) {
    Optional<T> draft = reader.apply(file.text());
    draft.ifPresent(d -> drafts.put(file.version(), d));
    return draft;
  }

  /** What a form began with; empty where that is too long ago, or the desk was started since. */
  synchronized Optional<T> of(String version) {
    return Optional.ofNullable(drafts.get(version));
  }
}
