package curewindow.climate;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;

/**
 * The weathers a place may have: equally likely years, from which dates are taken as quantiles.
 *
 * @param standardOffset the offset of the years' local standard time
 * @param years one or more years
 */
public record Weathers(ZoneOffset standardOffset, List<WeatherYear> years) {

  /** Refuses an empty list. */
  public Weathers {
    Objects.requireNonNull(standardOffset, "standardOffset");
    years = List.copyOf(years);
    if (years.isEmpty()) {
      throw new IllegalArgumentException("at least one year is needed");
    }
  }
}
