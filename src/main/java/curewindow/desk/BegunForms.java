package curewindow.desk;

import curewindow.shop.JobDraft;
import curewindow.shop.JobText;
import curewindow.site.KeptFile;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What the forms began with that change a job, by the version of its file; the last few hundred.
 */
final class BegunForms {

  private static final int MOST = 500;

  private final Map<String, JobDraft> drafts =
      new LinkedHashMap<>() {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, JobDraft> eldest) {
          return size() > MOST;
        }
      };

  /** A form begins with a file as it stands. */
  synchronized Optional<JobDraft> begin(KeptFile file) {
    Optional<JobDraft> draft = JobText.read(file.text());
    draft.ifPresent(d -> drafts.put(file.version(), d));
    return draft;
  }

  /** What a form began with; empty where that is too long ago, or the desk was started since. */
  synchronized Optional<JobDraft> of(String version) {
    return Optional.ofNullable(drafts.get(version));
  }
}
