package curewindow.page;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.words.Words;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The published ends of a job's holds in words: by the clock where the car is, but by the shop's
 * clock where the customer is asked to come in, and then it says so if the two differ.
 */
public final class When {

  private final Words words;
  private final ZoneId car;
  private final ZoneId shop;

  /**
   * The dates of a job.
   *
   * @param view the job
   */
  public When(JobView view) {
    this.words = view.words();
    this.car = view.timeline().zone();
    this.shop = view.shop().zone();
  }

  /**
   * The zone in which a release's end is told.
   *
   * @param release one of the job's releases
   * @return the shop's zone for visits, else that of the place where the car is
   */
  public ZoneId zone(Release release) {
    return Agreed.comesIn(release) ? shop : car;
  }

  /**
   * The day with its weekday, such as {@code Thursday, December 3}.
   *
   * @param release one of the job's releases
   * @return the text
   */
  public String day(Release release) {
    return words.day(at(release), zone(release));
  }

  /**
   * The day in few letters, such as {@code Thu, Dec 3}.
   *
   * @param release one of the job's releases
   * @return the text
   */
  public String shortDay(Release release) {
    return words.shortDay(at(release), zone(release));
  }

  /**
   * The hour, such as {@code 2 PM}.
   *
   * @param release one of the job's releases
   * @return the text
   */
  public String time(Release release) {
    return ours(clock(release), release);
  }

  /**
   * The hour alone, such as {@code 2 PM}, in the zone of {@link #zone}; say whose time it is where
   * {@link #isOurs} is true.
   *
   * @param release one of the job's releases
   * @return the text
   */
  public String clock(Release release) {
    return words.time(at(release), zone(release));
  }

  /**
   * Whether the hour is by the shop's clock while the car's shows another.
   *
   * @param release one of the job's releases
   * @return true where it has to be said whose time it is
   */
  public boolean isOurs(Release release) {
    var there = at(release).atZone(car).toLocalDateTime();
    var here = at(release).atZone(zone(release)).toLocalDateTime();
    return !Objects.equals(there, here);
  }

  /**
   * Day and hour, such as {@code Thursday, December 3, 2 PM}.
   *
   * @param release one of the job's releases
   * @return the text
   */
  public String dayAndTime(Release release) {
    return ours(words.dayAndTime(at(release), zone(release)), release);
  }

  /**
   * The day on which a hold is likely over in few letters, such as {@code Thu, Dec 3}; in the zone
   * in which its end is told, so that it never reads later than the end.
   *
   * @param release one of the job's releases
   * @return the text; empty for a visit, which ends nothing, and where even the middle weather is
   *     not enough by the look-by
   */
  Optional<String> likelyDay(Release release) {
    return release.kind() != HoldKind.VISIT && release.becauseLikely().isMet()
        ? Optional.of(words.shortDay(release.likely(), zone(release)))
        : Optional.empty();
  }

  private String ours(String text, Release release) {
    return isOurs(release) ? words.text("page.our-time", Map.of("when", text)) : text;
  }

  private static Instant at(Release release) {
    return release.end().at();
  }
}
