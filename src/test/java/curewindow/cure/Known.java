package curewindow.cure;

import curewindow.climate.Doubt;
import curewindow.climate.Place;
import curewindow.climate.Places;
import curewindow.climate.Places.Near;
import java.util.Optional;

/** What promises are made from. */
enum Known {
  /** The file's monthly normals alone, as of a station near by. */
  OWN_NORMALS("the site's own normals") {
    @Override
    Optional<Place> of(Place site) {
      return Optional.of(site);
    }
  },

  /** A built-in place near by and about as high, as a shop names it that has nothing else. */
  BUILT_IN("the nearest built-in place within 50 km and 300 m of height") {
    @Override
    Optional<Place> of(Place site) {
      return Optional.of(nearest(site)).filter(near -> isHere(near, site)).map(Near::place);
    }
  },

  /** A built-in place up to 200 km off, moved to the site as {@code places near} does. */
  MOVED("a built-in place up to 200 km away or at another height, moved to the site") {
    @Override
    Optional<Place> of(Place site) {
      Near near = nearest(site);
      return isHere(near, site) || near.distanceKm() > FARTHEST_KM
          ? Optional.empty()
          : Optional.of(
              Places.at(
                  site.id(),
                  site.name(),
                  site.latitude(),
                  site.longitude(),
                  site.height(),
                  site.zone()));
    }
  };

  /** Up to this difference a place is about as high as a site, as weather files have it, m. */
  private static final double AS_HIGH = 300;

  /** Up to this far the nearest built-in place, moved to the site, is judged, km. */
  private static final double FARTHEST_KM = 200;

  private final String words;

  Known(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }

  /** The place that a shop at a site uses, if there is one. */
  abstract Optional<Place> of(Place site);

  private static Near nearest(Place site) {
    return Places.nearest(site.latitude(), site.longitude());
  }

  private static boolean isHere(Near near, Place site) {
    return near.distanceKm() <= Doubt.NEAR_KM
        && Math.abs(site.height() - near.place().height()) <= AS_HIGH;
  }
}
