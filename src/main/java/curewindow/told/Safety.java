package curewindow.told;

import curewindow.cure.Release;
import curewindow.shop.Hold;
import java.util.List;
import java.util.Optional;

/** The cautions that are printed with holds that danger ends at once. */
public final class Safety {

  private Safety() {}

  /**
   * The caution of a hold.
   *
   * @param release one of the job's releases
   * @param view the job
   * @return a short sentence; empty where the catalogue marks nothing of the kind
   */
  public static Optional<String> of(Release release, JobView view) {
    return view.catalogue().is(release.hold(), Hold.Mark.SAFETY)
        ? Optional.of(view.words().text("hold." + release.hold() + ".safety"))
        : Optional.empty();
  }

  /**
   * The cautions of several holds on one paper.
   *
   * @param releases some of the job's releases
   * @param view the job
   * @return the sentences, each once, with a space between; empty text for none
   */
  public static String of(List<Release> releases, JobView view) {
    return String.join(
        " ", releases.stream().flatMap(r -> of(r, view).stream()).distinct().toList());
  }
}
