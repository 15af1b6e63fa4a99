package curewindow.desk;

import curewindow.shop.Job;
import curewindow.shop.JobDraft;
import curewindow.shop.JobText;
import curewindow.site.JobFiles;
import curewindow.site.Saved;
import java.io.IOException;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Saves new cars. Two people may be shown the same number: the second to save gets the next one,
 * unless the number was typed. A form that is sent twice is one car.
 */
final class NewCars {

  private static final int MOST = 500;

  /** So many numbers may be taken by files that the desk has not read yet. */
  private static final int TRIES = 50;

  private final DeskShop desk;
  private final Map<String, Begun> forms = new LastFew<>(MOST);
  private long count;

  NewCars(DeskShop desk) {
    this.desk = desk;
  }

  /**
   * A form that was opened.
   *
   * @param number the number that it was given
   * @param savedAs the number of the car that came of it
   */
  private record Begun(String number, Optional<String> savedAs) {}

  /** Another form is opened with a number; its key comes back with it. */
  synchronized String begin(String number) {
    // The time tells forms apart that another run of the desk opened.
    String key = desk.time().toEpochMilli() + "-" + ++count;
    forms.put(key, new Begun(number, Optional.empty()));
    return key;
  }

  /**
   * Saves a form.
   *
   * @param key of the form; of one that is not known any more, the number counts as typed
   * @return the car, which may have another number than the draft
   */
  synchronized Saved<Job> save(String key, JobDraft draft) throws IOException {
    Optional<Begun> form = Optional.ofNullable(forms.get(key));
    Optional<Job> already = form.flatMap(Begun::savedAs).flatMap(desk::job);
    if (already.filter(job -> isSame(job, draft)).isPresent()) {
      return new Saved.Written<>(already.get());
    }
    boolean given =
        form.filter(f -> f.savedAs().isEmpty() && f.number().equals(draft.id())).isPresent();
    Saved<Job> result = given ? nextFree(draft) : JobFiles.add(desk.now().shop(), draft);
    if (result instanceof Saved.Written<Job> written) {
      desk.put(written.what());
      form.ifPresent(f -> forms.put(key, new Begun(f.number(), Optional.of(written.what().id()))));
    }
    return result;
  }

  private boolean isSame(Job job, JobDraft draft) {
    return JobFiles.of(desk.now().shop(), job)
        .filter(file -> file.text().equals(JobText.of(draft.withId(job.id()))))
        .isPresent();
  }

  private Saved<Job> nextFree(JobDraft draft) throws IOException {
    Saved<Job> first = JobFiles.add(desk.now().shop(), draft);
    Saved<Job> result = first;
    Set<String> taken = new HashSet<>(Set.of(draft.id()));
    for (int i = 0; i < TRIES && isTaken(result); i++) {
      String next = NextNumber.of(desk.now().shop(), taken);
      taken.add(next);
      result = JobFiles.add(desk.now().shop(), draft.withId(next));
    }
    return isTaken(result) ? first : result;
  }

  private static boolean isTaken(Saved<Job> result) {
    return result instanceof Saved.Refused<Job> refused
        && refused.problems().stream().allMatch(p -> p.code().equals("id-taken"));
  }
}
